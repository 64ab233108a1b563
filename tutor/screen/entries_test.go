package screen

import (
	"os"
	"path/filepath"
	"testing"
)

// A folder's problems are listed, and files at fault with the reason; sets, which are no problems, are not.
func TestFolderWithoutSets(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	for name, text := range map[string]string{
		"beam.yaml":   "title: T\nunits: kN m\njoints: {A: [0, 0], B: [4, 0]}\nmembers: [AB]\nsupports: {A: fixed}\n",
		"broken.yaml": "title: T\n",
		"week.yaml":   "id: w5\ntitle: Week 5\nproblems: [{problem: beam.yaml}]\n",
	} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	list := Folder(folder)
	if len(list) != 2 || list[0].Name != "beam.yaml" || list[0].Problem == nil || list[1].Name != "broken.yaml" || list[1].Fault == "" {
		t.Errorf("%+v", list)
	}
}
