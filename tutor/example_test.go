package tutor

import (
	"slices"
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics/exact"
)

// Every question of every problem has an example from another problem, worked to its result; it is no line that could be
// taken for a verdict or a question, and does not hold the value asked for.
func TestExamples(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		for _, level := range []Level{Values, Terms, Plan, Blank} {
			l := lesson(t, name, level)
			for {
				q, asking := l.Now()
				if !asking {
					break
				}
				r := l.Type("example")
				if r.Kind != Worked || strings.Contains(r.Lines[0], l.about.problem.Title) {
					t.Fatalf("%s, %s, %s: %v", name, level, q.Name, r.Lines)
				}
				for _, line := range r.Lines {
					if strings.HasPrefix(line, "right") || strings.HasPrefix(line, "not yet") || strings.HasPrefix(line, "?") || strings.HasPrefix(line, "told") {
						t.Errorf("%s, %s: %s", name, q.Name, line)
					}
				}
				if asked := q.Kind == ForceValue || q.Kind == SectionPart; asked && slices.Contains(r.Lines, l.about.truthText(q)+".") {
					t.Errorf("%s, %s: the example gives it away: %v", name, q.Name, r.Lines)
				}
				l.Type("tell")
			}
		}
	}
}

// Asked for again, another example comes; the question then counts as helped.
func TestAnotherExample(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Values)
	seen := map[string]bool{}
	for range mostExamples {
		r := l.Type("example")
		if seen[r.Lines[0]] {
			t.Errorf("%s comes twice", r.Lines[0])
		}
		seen[r.Lines[0]] = true
	}
	if l.Type("0"); l.sheet.answers[0].first {
		t.Error("a value after an example counts as found without help")
	}
	l.sheet.exam = true
	if r := l.Type("example"); r.Kind != Unread {
		t.Errorf("in an exam: %v", r.Lines)
	}
}

// The sum that gives N, V or M is one in equilibrium: with the value asked for it comes to nought.
func TestSumsOfSections(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Values)
		for _, q := range l.sheet.questions {
			if q.Kind != SectionPart {
				continue
			}
			a, s := l.about.section(q, l.about.solution.Values).Sum()
			values := append(slices.Clone(l.about.solution.Values), q.truth)
			if r := s.Residual(values); len(values) != len(a.Forces) || !r.IsZero() {
				t.Errorf("%s, %s: the sum comes to %s", name, q.Name, r)
			}
			if got, _ := l.about.knownIn(a)(0); !got.Equal(l.about.solution.Values[0]) || s.Factor(len(a.Forces)-1).Abs().Cmp(exact.Int(1)) != 0 {
				t.Errorf("%s, %s: known is %s", name, q.Name, got)
			}
		}
	}
}
