package main

import (
	"bufio"
	"strings"
	"testing"

	"unpin/problems"
)

// Rows: what is typed at the list of problems, the problem it leads to, and how often it is asked.
func TestChooseByLine(t *testing.T) {
	t.Parallel()
	names := problems.Names()
	rows := []struct {
		typed, want string
		asked       int
	}{
		{"1\n", names[0], 1},
		{"3\nnot read here\n", names[2], 1},
		{names[4] + "\n", names[4], 1},
		{" " + strings.ToUpper(names[1]) + " \n", names[1], 1},
		{"0\n999\nno-such\n\n2\n", names[1], 5},
		{"2", names[1], 1}, // no end of the line
		{"", "", 1},
		{"nonsense", "", 1},
		{"quit\n", "", 1},
	}
	for _, r := range rows {
		var out strings.Builder
		got, err := choose(bufio.NewReader(strings.NewReader(r.typed)), &out)
		if asked := strings.Count(out.String(), "? problem [number or name]\n"); err != nil || got != r.want || asked != r.asked {
			t.Errorf("%q leads to %q after %d questions, want %q after %d: %v", r.typed, got, asked, r.want, r.asked, err)
		}
		for _, name := range names {
			if !strings.Contains(out.String(), ": "+name+": ") {
				t.Errorf("%s is not in the list", name)
			}
		}
	}
}
