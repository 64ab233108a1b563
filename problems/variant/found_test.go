package variant

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the expected texts in testdata")

// TestFound holds the changes of the problems in testdata/handed against testdata/found.txt, one a line: those that their files
// name, and for most those that are found. They are part of what a code means, and never change.
func TestFound(t *testing.T) {
	t.Parallel()
	var text strings.Builder
	names, err := filepath.Glob("testdata/handed/*.yaml")
	if err != nil || len(names) < 24 {
		t.Fatalf("%d problems were handed out (%v)", len(names), err)
	}
	for _, path := range names {
		name := strings.TrimSuffix(filepath.Base(path), ".yaml")
		text.WriteString(name + "\n")
		for _, c := range changesOf(handedOut(t, name)) {
			text.WriteString("  " + c.String() + "\n")
		}
	}
	compare(t, "testdata/found.txt", text.String())
}

// compare holds a text against a file, or writes it there.
func compare(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil || got != string(want) {
		t.Errorf("%s has (%v)\n%s\nand it is\n%s", path, err, want, got)
	}
}
