package main

import (
	"bytes"
	"strconv"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
)

// TestSolvedTwice solves the same files three times: every output has the same bytes each time, be it text, Markdown, HTML, JSON,
// PDF, each figure, or each step. The order of a map would show.
func TestSolvedTwice(t *testing.T) {
	t.Parallel()
	for _, word := range []string{"boatyard-crane", "hillside-garage", "../../testdata/read/every-field.yaml"} {
		for _, args := range outputsOf(t, word) {
			t.Run(strings.Join(args, " "), func(t *testing.T) {
				t.Parallel()
				first, code := solvedOnce(args)
				if code == badIn {
					t.Fatalf("%s", first)
				}
				for range 2 {
					if again, _ := solvedOnce(args); !bytes.Equal(again, first) {
						t.Fatalf("%d bytes, then %d others", len(first), len(again))
					}
				}
			})
		}
	}
}

// outputsOf are the arguments of all outputs of a problem.
func outputsOf(t *testing.T, word string) [][]string {
	var all [][]string
	for _, format := range []string{"text", "markdown", "html", "json", "pdf"} {
		all = append(all, []string{"solve", "--as", format, word})
	}
	for _, f := range worksheet.Figures {
		all = append(all, []string{"solve", "--as", "svg", "--figure", f, word})
	}
	p, ok := problems.Library(word)
	if !ok {
		return all
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	for n := range s.Plan {
		all = append(all, []string{"solve", "--as", "svg", "--step", strconv.Itoa(n + 1), word})
	}
	return append(all, []string{"inspect", word}, []string{"inspect", "--as", "json", word})
}

// solvedOnce is all that a command writes, and its code.
func solvedOnce(args []string) ([]byte, int) {
	var out, errs bytes.Buffer
	code := run(args, strings.NewReader(""), &out, &errs)
	return append(out.Bytes(), errs.Bytes()...), code
}
