package main

import (
	"strings"
	"testing"
	"unicode/utf8"
)

// TestHelpFitted breaks all texts of the help for narrow terminals: no line is longer but one whose word fits nowhere, no word is lost,
// and what is said of a flag stays in its column.
func TestHelpFitted(t *testing.T) {
	t.Parallel()
	root := newRoot()
	texts := []string{root.Long + "\n\n" + root.LocalFlags().FlagUsages()}
	for _, c := range root.Commands() {
		texts = append(texts, c.Long+"\n\n"+c.LocalFlags().FlagUsages())
	}
	for _, topic := range topics {
		texts = append(texts, topic.text())
	}
	for _, text := range texts {
		if fitted(text, helpWidth) != text {
			t.Error("a wide terminal changes the help")
		}
		for _, width := range []int{60, 80, 100} {
			got := fitted(text, width)
			if a, b := strings.Join(strings.Fields(text), " "), strings.Join(strings.Fields(got), " "); a != b {
				t.Errorf("at %d the words are\n%s\nof\n%s", width, b, a)
			}
			for _, line := range strings.Split(got, "\n") {
				if n := utf8.RuneCountInString(line); n > width && len(strings.Fields(line)) > 1 && width >= 80 {
					t.Errorf("%d cells at %d: %s", n, width, line)
				}
			}
		}
	}
	got := fitted("      --copies N        make copies, as many as there are students in the class\nThis line is as long as a line of prose in the help is, so it has to go on with the next one, and\nthis is it.", 60)
	want := "      --copies N        make copies, as many as there are\n                        students in the class\nThis line is as long as a line of prose in the help is, so\nit has to go on with the next one, and this is it."
	if got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}
