package tutor

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
)

// blame are words that speak of the student and not of the work, or make light of it.
var blame = regexp.MustCompile(`(?i)\b(wrong|mistake|mistaken|error|careless|careful|fail|failed|failure|forgot|forgotten|forget|bad|incorrect|should have|must not|never|obvious|obviously|simply|easy|trivial|sorry|unfortunately)\b`)

// digits are numbers, without those in names of joints and loads.
var digits = regexp.MustCompile(`[0-9]`)

// withoutTerms is a text without the terms that stand on the page: their numbers are no news.
func withoutTerms(l *Lesson, text string) string {
	var terms []string
	for _, step := range l.about.solution.Plan {
		for _, s := range step.Sums {
			for _, t := range s.Terms() {
				if t.Why == statics.Counts {
					terms = append(terms, l.about.words().Product(s, t))
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
func checkWording(t *testing.T, l *Lesson, where, text string) {
	t.Helper()
	bare := withoutTerms(l, text)
	for i, x := range l.about.solution.Actions {
		bare = strings.ReplaceAll(bare, l.about.words().Action(i), "a load")
		bare = strings.ReplaceAll(bare, l.about.words().Whole(x.Load), "a load")
	}
	for _, j := range l.about.solution.Frame.Joints {
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

// wrongs are wrong answers to a question, of many kinds.
func wrongs(q Question) []string {
	switch q.Kind {
	case TermSign:
		return []string{map[bool]string{true: "-", false: "+"}[q.truth.Sign() > 0]}
	case ShapeDegree:
		return []string{"9", "0", "1", "2", "3"}
	case ShapeSlope:
		return []string{map[bool]string{true: "falls", false: "rises"}[q.truth.Sign() > 0]}
	case ChooseSum, TypeSum:
		return nil
	}
	var all []string
	for _, times := range []string{"-1", "2", "0.5", "10", "1.5", "0", "-2", "4.4482216152605"} {
		all = append(all, q.truth.Mul(exact.MustParse(times)).Decimal(12))
	}
	return append(all, "713.17", "-0.03391", "88.419")
}

// All that is said of answers, right and wrong, and in the hints that point and teach, over all of the library.
func TestWordingOfFeedback(t *testing.T) {
	t.Parallel()
	said := map[string]bool{}
	levels := []Level{Values, Terms, Plan, Blank}
	if testing.Short() {
		levels = levels[1:2]
	}
	for _, name := range librarytest.Names() {
		for _, level := range levels {
			l := lesson(t, name, level)
			for {
				q, asking := l.Now()
				if !asking {
					break
				}
				where := name + ", " + level.String() + ", " + q.Name
				check := func(line string) {
					_, text, found := strings.Cut(line, ": ")
					if !found {
						t.Errorf("%s: no verdict: %s", where, line)
					}
					if !said[text] {
						checkWording(t, l, where, text)
					}
					said[text] = true
				}
				hints := l.coach().hints(q)
				check("hint: " + hints[0])
				check("hint: " + hints[1])
				at := l.sheet.at
				for _, line := range wrongs(q) {
					if l.sheet.at == at {
						check(l.Type(line).Lines[0])
					}
				}
				if l.sheet.at == at && !q.Composing() {
					check(l.Type(answerExactly(l, q)).Lines[0])
				}
				if l.sheet.at == at {
					l.Type("tell")
				}
			}
		}
	}
	t.Logf("%d sentences", len(said))
}
