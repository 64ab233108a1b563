package variant

import (
	"flag"
	"os"
	"strings"
	"testing"

	"unpin/problems"
)

var update = flag.Bool("update", false, "rewrite the expected texts in testdata")

// TestFound holds the changes that are found for the library against testdata/found.txt, one a line. They are part of what a
// code means: a problem's line changes only if its file does.
func TestFound(t *testing.T) {
	t.Parallel()
	var text strings.Builder
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		text.WriteString(name + "\n")
		for _, c := range changesOf(p) {
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
