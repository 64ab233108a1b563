package figuretest

import (
	"os"
	"strings"
	"testing"
)

// Golden holds sections of text, each under a line == NAME, against a file, or rewrites the file.
func Golden(t *testing.T, file string, update bool, names []string, text map[string]string) {
	var b strings.Builder
	for _, name := range names {
		b.WriteString("== " + name + "\n" + strings.TrimRight(text[name], "\n") + "\n")
	}
	if update {
		if err := os.WriteFile(file, []byte(b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if got := b.String(); got != string(want) {
		t.Errorf("%s, line %d differs:\n%s", file, firstDifference(got, string(want)), got)
	}
}

// firstDifference is the number of the first line in which two texts differ.
func firstDifference(a, b string) int {
	as, bs := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range min(len(as), len(bs)) {
		if as[i] != bs[i] {
			return i + 1
		}
	}
	return min(len(as), len(bs)) + 1
}
