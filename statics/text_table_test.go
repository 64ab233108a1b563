package statics

import (
	"os"
	"strings"
	"testing"
)

// A textCase is one case of a table in testdata: a title, an input and what is expected of it.
type textCase struct{ title, input, want string }

// eachCase reads a table whose cases begin with a line "## title", then the input, then "---" and what is expected,
// and checks each. Under -update it writes what was got in the place of what was expected.
func eachCase(t *testing.T, file string, got func(*testing.T, textCase) string) {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	head, blocks, _ := strings.Cut("\n"+string(text), "\n## ")
	out := strings.TrimPrefix(head, "\n") + "\n"
	for _, block := range strings.Split(blocks, "\n## ") {
		c := readCase(block)
		t.Run(c.title, func(t *testing.T) {
			result := strings.TrimSpace(got(t, c))
			out += "## " + c.title + "\n" + c.input + "\n---\n" + result + "\n\n"
			if !*update && result != c.want {
				t.Errorf("got\n%s\nwant\n%s", result, c.want)
			}
		})
	}
	if *update {
		if err := os.WriteFile(file, []byte(strings.TrimSpace(out)+"\n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

func readCase(block string) textCase {
	title, rest, _ := strings.Cut(block, "\n")
	input, want, _ := strings.Cut(rest, "\n---")
	return textCase{title, strings.TrimSpace(input), strings.TrimSpace(want)}
}
