package screen

import (
	"os"
	"path/filepath"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
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

// A key that does nothing in the list leaves in hand what is in hand.
func TestKeyOfNoUse(t *testing.T) {
	t.Parallel()
	fixed := tutor.Values
	m := New(Options{Entries: func() []Entry {
		return append([]Entry{{Set: &SetEntry{Title: "Week 5", Level: &fixed}}, {Set: &SetEntry{Title: "Others"}}}, Library()...)
	}})
	size(m, 80, 24)
	m.Update(list(m.o)())
	keys := []tea.KeyType{tea.KeyEnter, tea.KeyRight, tea.KeyEnd, tea.KeyBackspace, tea.KeyF5}
	for _, at := range []int{1, 0} {
		m.chooser.at = at
		for _, key := range keys {
			if m.Update(tea.KeyMsg{Type: key}); m.chooser.at != at {
				t.Errorf("after %v the row in hand is %d, not %d", tea.KeyMsg{Type: key}, m.chooser.at, at)
			}
		}
	}
	m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("j")})
	if m.chooser.at != 0 || string(m.chooser.filter.text) != "j" {
		t.Errorf("row %d, %q", m.chooser.at, string(m.chooser.filter.text))
	}
}

// A folder's sets are listed as headings with their problems, which have the set's conventions; a set at fault with the reason.
func TestSets(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	for name, text := range map[string]string{
		"beam.yaml": "title: T\nunits: kN m\njoints: {A: [0, 0], B: [4, 0]}\nmembers: [AB]\nsupports: {A: fixed}\n",
		"a.yaml":    "id: w5\ntitle: Week 5\ncourse: Mechanics\nlevel: terms\nask: {moments: cw}\nproblems: [{problem: beam.yaml, points: 2}, {problem: jetty-deck, points: 3.5}]\n",
		"b.yaml":    "id: w6\ntitle: Week 6\nproblems: [{problem: gone.yaml}]\n",
	} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	list := Sets(folder)
	if len(list) != 4 || !list[0].heads() || list[0].Set.Title != "Week 5" || list[0].Set.Level == nil || list[0].Set.Level.String() != "terms" ||
		list[1].Name != "w5/beam" || list[2].Name != "w5/jetty-deck" || list[2].Problem.Conventions.Word("moments") != "cw" ||
		list[3].Name != "b.yaml" || list[3].Fault == "" || list[3].Problem != nil {
		t.Fatalf("%+v", list)
	}
	if got := list[0].Set.Says; len(got) != 2 || got[0] != "Mechanics" || got[1] != "2 problems, 5.5 points; the set is a.yaml." {
		t.Errorf("it says %q", got)
	}
	if Sets(filepath.Join(folder, "nowhere")) != nil {
		t.Error("a folder that is not there has sets")
	}
}
