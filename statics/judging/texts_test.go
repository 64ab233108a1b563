package judging

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
)

// blame are words that speak of the student and not of the work, or make light of it.
var blame = regexp.MustCompile(`(?i)\b(wrong|mistake|mistaken|error|careless|careful|fail|failed|failure|forgot|forgotten|forget|bad|incorrect|should have|must not|never|obvious|obviously|simply|easy|trivial|sorry|unfortunately)\b`)

// digits are numbers, without those in names of joints and loads.
var digits = regexp.MustCompile(`[0-9]`)

// withoutTerms is a text without the terms that stand on the page: their numbers are no news.
func withoutTerms(l *sheet, text string) string {
	var terms []string
	for _, step := range l.Solution.Plan {
		for _, s := range step.Sums {
			for _, t := range s.Terms() {
				if t.Why == statics.Counts {
					terms = append(terms, l.say().Product(s, t))
				}
			}
		}
	}
	slices.SortFunc(terms, func(a, b string) int { return len(b) - len(a) })
	for _, term := range terms {
		text = strings.ReplaceAll(text, " "+term, " a term")
	}
	return text
}

// checkWording holds a piece of feedback to what feedback is: one sentence, without a number of its own, without blame.
func checkWording(t *testing.T, l *sheet, where, text string) {
	t.Helper()
	bare := withoutTerms(l, text)
	for i, x := range l.Solution.Actions {
		bare = strings.ReplaceAll(bare, l.say().Action(i), "a load")
		bare = strings.ReplaceAll(bare, l.say().Whole(x.Load), "a load")
	}
	for _, j := range l.Solution.Frame.Joints {
		if digits.MatchString(j.Name) {
			bare = strings.ReplaceAll(bare, j.Name, "J")
		}
	}
	switch end := text[len(text)-1]; {
	case end != '.' && end != '?':
		t.Errorf("%s: no end: %s", where, text)
	case strings.Contains(text[:len(text)-1], ". ") || strings.Contains(text[:len(text)-1], "? "):
		t.Errorf("%s: more than one sentence: %s", where, text)
	case digits.MatchString(bare):
		t.Errorf("%s: a number: %s", where, text)
	case blame.MatchString(text):
		t.Errorf("%s: blame: %s", where, text)
	}
}

// TestAsksOnce holds that nothing is asked twice over: neither the same again, nor what another question begins with.
func TestAsksOnce(t *testing.T) {
	t.Parallel()
	got := asksOnce([]string{"how large is it", "how large is it, and where", "which way", "how large is it", "which way"})
	if want := []string{"how large is it, and where", "which way"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
