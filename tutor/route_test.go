package tutor

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/wording"
)

// choiceText names a sum as a student may type it.
func choiceText(l *Lesson, s statics.Sum) string {
	var bodies []string
	for _, b := range s.Body {
		bodies = append(bodies, l.about.solution.BodyName(b))
	}
	body := strings.Join(bodies, " + ")
	switch {
	case s.Moment:
		return fmt.Sprintf("%s M (%s, %s)", body, s.About.X.Decimal(30), s.About.Y.Decimal(30))
	case s.Along.Y.IsZero():
		return body + " x"
	case s.Along.X.IsZero():
		return body + " y"
	}
	return fmt.Sprintf("%s F along [%s, %s]", body, s.Along.X.Decimal(30), s.Along.Y.Decimal(30))
}

// answerExactly answers what is no choice of a sum.
func answerExactly(l *Lesson, q Question) string {
	if word, ok := inWords(q); ok {
		return word
	}
	if q.Kind == TypeSum {
		st := l.about.style()
		st.Figures = 8
		return wording.New(l.about.solution.Assembly, st).Numbers(l.route.chosen, l.sheet.known)
	}
	return q.truth.Decimal(30)
}

// followed plays a lesson in which sums are chosen by next, and reports whether it came to its end.
func followed(t *testing.T, l *Lesson, next func() statics.Sum) bool {
	t.Helper()
	for range 2000 {
		q, asking := l.Now()
		switch {
		case !asking:
			return true
		case q.Kind == ChooseSum:
			if r := l.Type(choiceText(l, next())); r.Kind != Judged {
				t.Fatalf("choice: %v", r.Lines)
			}
			continue
		}
		line := answerExactly(l, q)
		if r := l.Type(line); r.Kind != Judged || !r.Verdict.Right() {
			t.Fatalf("%s answered %q: %v", q.Name, line, r.Lines)
		}
	}
	return false
}

// The expert's plan is one way through.
func TestExpertsRoute(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		for _, level := range []Level{Plan, Blank} {
			l := lesson(t, name, level)
			var sums []statics.Sum
			for _, step := range l.route.expert {
				if !step.Check {
					sums = append(sums, step.Sums...)
				}
			}
			next := func() statics.Sum {
				s := sums[0]
				sums = append(sums[1:], s)
				return s
			}
			if !followed(t, l, next) {
				t.Errorf("%s, %s: the plan does not lead to the end", name, level)
			}
		}
	}
}

// Any sums of any bodies, in any order, lead to the end: what gives nothing is refused, the rest is kept or used.
func TestAnyRoute(t *testing.T) {
	t.Parallel()
	for n, name := range librarytest.Names() {
		random := rand.New(rand.NewPCG(1, uint64(n)))
		for range 3 {
			l := lesson(t, name, Blank)
			if !followed(t, l, func() statics.Sum { return anySum(l, random) }) {
				t.Errorf("%s: no end", name)
			}
		}
	}
}

// anySum is a sum of some bodies along an axis or about a joint.
func anySum(l *Lesson, random *rand.Rand) statics.Sum {
	a := l.about.solution.Assembly
	var body statics.FreeBody
	for b := range a.Bodies() {
		if random.IntN(2) == 0 {
			body = append(body, b)
		}
	}
	if len(body) == 0 {
		body = statics.FreeBody{random.IntN(a.Bodies())}
	}
	axis := []statics.Vector{{X: exact.Int(1)}, {Y: exact.Int(1)}}
	if k := random.IntN(4); k < 2 || a.IsPin(body[0]) {
		return a.ForceSum(body, axis[k%2])
	}
	return a.MomentSum(body, a.Frame.Joints[random.IntN(len(a.Frame.Joints))].At)
}

// tell leads to the end at every level.
func TestToldToTheEnd(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		for _, level := range []Level{Plan, Blank} {
			var out bytes.Buffer
			if err := Plain(lesson(t, name, level), strings.NewReader(strings.Repeat("tell\n", 800)), &out); err != nil {
				t.Fatal(err)
			}
			if !strings.Contains(out.String(), "All done.") {
				t.Errorf("%s, %s does not end", name, level)
			}
		}
	}
}

func TestUselessSums(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Plan)
	l.Type("x")
	l.Type("+")
	l.Type("0")
	for line, says := range map[string]string{"x": "nothing unknown"} {
		if r := l.Type(line); r.Verdict != judging.Wrong || !strings.Contains(r.Lines[0], says) {
			t.Errorf("%s: %v", line, r.Lines)
		}
	}
	l = lesson(t, "hillside-garage", Plan)
	whole, part := l.about.solution.BodyName(0), l.about.solution.BodyName(1)
	for _, line := range []string{whole + " x", part + " x"} {
		if r := l.Type(line); r.Verdict != judging.Exact {
			t.Fatalf("%s: %v", line, r.Lines)
		}
	}
	if r := l.Type("whole x"); r.Verdict != judging.Wrong || !strings.Contains(r.Lines[0], "follows from those you have") {
		t.Errorf("the whole after its parts: %v", r.Lines)
	}
}
