package tutor

import (
	"fmt"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// For every step of the library of one sum and one unknown: of the reasons to choose from one is true, and the others are held against
// the frame: what passes through the centre has no arm there, what is known to be zero is zero.
func TestReasonsToChooseFrom(t *testing.T) {
	t.Parallel()
	asked := 0
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		m, err := matterOf(p)
		if err != nil {
			t.Fatal(err)
		}
		for i, step := range m.solution.Plan {
			if len(step.Sums) != 1 || len(step.Gives) != 1 {
				continue
			}
			a := whyOf(m, i)
			if len(a.right) != 1 || a.answer() != trueReason(m, i) {
				t.Errorf("%s, step %d: %v of %v is right", name, i+1, a.right, a.of)
			}
			for at, text := range a.of {
				if at != a.right[0] && (text == a.answer() || reasonHolds(m, i, text)) {
					t.Errorf("%s, step %d: %q is true", name, i+1, text)
				}
			}
			if len(a.of) > 2 {
				asked++
			}
		}
	}
	if asked < 100 {
		t.Errorf("only %d steps allow the question", asked)
	}
}

// reasonHolds reports whether one of the reasons that should be false is true.
func reasonHolds(m *matter, i int, text string) bool {
	step := m.solution.Plan[i]
	s, f := step.Sums[0], step.Gives[0]
	switch {
	case strings.Contains(text, "passes through"):
		for _, term := range s.Terms() {
			if term.Force == f && !s.About.To(term.At).Cross(term.Toward).IsZero() {
				return false
			}
		}
		return true
	case strings.Contains(text, "perpendicular"):
		for _, term := range s.Terms() {
			if term.Force == f && !term.Toward.Dot(s.Along).IsZero() {
				return false
			}
		}
		return true
	case text == "No load counts in this sum.":
		return s.Residual(make([]exact.Num, len(m.solution.Forces))).IsZero() && len(m.solution.ActionsOn(s.Body)) == 0
	case strings.HasPrefix(text, "The pin forces"):
		for _, k := range m.solution.ForcesOn(s.Body) {
			if m.solution.Forces[k].By != statics.None && !(s.Body.Has(m.solution.Forces[k].On) && s.Body.Has(m.solution.Forces[k].By)) {
				return false
			}
		}
		return true
	case strings.HasPrefix(text, "The other unknowns"):
		before := m.solution.KnownBefore(i)
		for _, k := range m.solution.ForcesOn(s.Body) {
			if _, known := before(k); !known && k != f && !m.solution.Values[k].IsZero() {
				return false
			}
		}
		return true
	}
	panic(fmt.Sprintf("%q is a reason that the test does not know", text))
}

// It is asked once in a problem, at the level gradual alone, and never when earlier work is taken up.
func TestReasonAskedOnce(t *testing.T) {
	t.Parallel()
	for _, level := range []Level{Values, Terms, Gradual} {
		l, asked := lesson(t, "quay-gantry", level), 0
		for {
			q, asking := l.Now()
			if !asking {
				break
			}
			line := q.truth.Decimal(30)
			if word, ok := inWords(q); ok {
				line = word
			}
			if _, open := AsideOf(l); open {
				asked++
				line = "tell"
			}
			l.Type(line)
		}
		if want := map[bool]int{true: 1}[level == Gradual]; asked != want {
			t.Errorf("%s: asked %d times", level, asked)
		}
	}
}
