package tutor_test

import (
	"encoding/json"
	"os"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/tutor"
)

// eachProblem gives a test the 48 published cases and all of the library.
func eachProblem(t *testing.T, test func(t *testing.T, p *problems.Problem)) {
	t.Helper()
	data, err := os.ReadFile("../testdata/cases/published.json")
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	if err := json.Unmarshal(data, &cases); err != nil || len(cases) != 48 {
		t.Fatalf("%d cases, want 48 (%v)", len(cases), err)
	}
	for _, c := range cases {
		p, err := problems.Read(c.ID, c.Problem)
		if err != nil {
			t.Fatal(err)
		}
		t.Run(c.ID, func(t *testing.T) { test(t, p) })
	}
	for _, name := range librarytest.Names() {
		p, _ := problems.Library(name)
		t.Run(name, func(t *testing.T) { test(t, p) })
	}
}

// A speaker writes the answer to a question of a lesson; nothing where it has none.
type speaker func(*tutor.Lesson, tutor.Question) string

// answerAll plays a lesson. It types one answer to each question, passes on with tell where there is none or it is not
// accepted, fails where the verdict is not as wanted, and counts the answers.
func answerAll(t *testing.T, p *problems.Problem, level tutor.Level, say speaker, want func(tutor.Question, judging.Verdict) bool) int {
	t.Helper()
	l, err := tutor.New(p, level, false)
	if err != nil {
		t.Fatal(err)
	}
	answers := 0
	for {
		q, asking := l.Now()
		if !asking {
			return answers
		}
		line := ""
		if !q.Shape() { // those have their own test
			line = say(l, q)
		}
		if line == "" {
			l.Type("tell")
			continue
		}
		answers++
		r := l.Type(line)
		if r.Kind != tutor.Judged || !want(q, r.Verdict) {
			t.Errorf("%s (%s): %s = %q, exactly %s: %v", l.Display(false).Title(), level, q.Name, line, truth(l, q), r.Lines)
		}
		if r.Kind != tutor.Judged || !r.Verdict.Right() {
			l.Type("tell")
		}
	}
}

// truth is the value asked for, found from the solution and not from the question.
func truth(l *tutor.Lesson, q tutor.Question) exact.Num {
	switch q.Kind {
	case tutor.ForceValue:
		return l.Solution().Values[q.Force]
	case tutor.SectionPart:
		i := q.Station.InternalForces
		return [...]exact.Num{i.N, i.V, i.M}[q.Quantity]
	}
	sum := l.Solution().Plan[q.Step].Sums[q.Sum]
	term := sum.Terms()[q.Term]
	switch q.Kind {
	case tutor.TermSize:
		return term.Size
	case tutor.TermArm:
		return term.Arm
	}
	if sum.Moment && l.Display(false).Style().Moments == notation.ClockwiseMoments {
		return exact.Int(int64(-term.Sign))
	}
	return exact.Int(int64(term.Sign))
}

var valueRungs = []tutor.Level{tutor.Values, tutor.Terms}

// signed is a value as written by a function, but + or − where a sign is asked for.
func signed(q tutor.Question, v exact.Num, write func(exact.Num) string) string {
	switch {
	case q.Kind != tutor.TermSign:
		return write(v)
	case v.Sign() < 0:
		return "-"
	}
	return "+"
}

// writings are the two ways to write a value: in full or to thirty figures, and to three.
var writings = []func(exact.Num) string{
	func(n exact.Num) string { return n.Decimal(30) },
	func(n exact.Num) string { return n.Figures(3) },
}

func exactly(_ tutor.Question, v judging.Verdict) bool { return v.Exactly() }

// judging.Exact values, and those rounded to three figures, are right at every question.
func TestRightValuesAreRight(t *testing.T) {
	t.Parallel()
	answers := 0
	eachProblem(t, func(t *testing.T, p *problems.Problem) {
		for _, level := range valueRungs {
			for _, write := range writings {
				answers += answerAll(t, p, level, func(l *tutor.Lesson, q tutor.Question) string {
					return signed(q, truth(l, q), write)
				}, exactly)
			}
		}
	})
	t.Logf("%d answers", answers)
}

// The right size in the opposite sense is told from other mistakes where there is a sense, and is wrong in a term. Only a
// value along a member that is small beside the terms of its sum lies within rounding on either side of zero.
func TestOppositeValues(t *testing.T) {
	t.Parallel()
	answers, small := 0, 0
	told := func(q tutor.Question, v judging.Verdict) bool {
		if q.Kind == tutor.SectionPart && v == judging.Rounded {
			small++
			return true
		}
		return opposite(q, v)
	}
	eachProblem(t, func(t *testing.T, p *problems.Problem) {
		for _, level := range valueRungs {
			for _, write := range writings {
				answers += answerAll(t, p, level, func(l *tutor.Lesson, q tutor.Question) string {
					if truth(l, q).IsZero() || q.Kind == tutor.TermSize || q.Kind == tutor.TermArm {
						return "" // a piece of a term has no sign, which TestWholeLines has typed
					}
					return signed(q, truth(l, q).Neg(), write)
				}, told)
			}
		}
	})
	t.Logf("%d answers", answers)
	if small > 8 {
		t.Errorf("%d answers of the opposite sense are taken for rounded ones, of %d", small, answers)
	}
}

func opposite(q tutor.Question, v judging.Verdict) bool {
	if q.Kind == tutor.ForceValue || q.Kind == tutor.SectionPart {
		return v == judging.OtherSense
	}
	return v == judging.Wrong
}

// otherUnits are units for each dimension, of which there are no more than six.
var otherUnits = map[notation.Dimension][]string{
	notation.Force:  {"N", "kN", "MN", "lb", "kip"},
	notation.Length: {"mm", "m", "in", "ft"},
	notation.Moment: {"N·mm", "N·m", "kN·m", "lb·in", "lb·ft", "kip·ft"},
}

// Values in any unit of either system are right, to thirty figures and to three.
func TestValuesInOtherUnits(t *testing.T) {
	t.Parallel()
	answers := 0
	eachProblem(t, func(t *testing.T, p *problems.Problem) {
		if p.Units.Letters() {
			return
		}
		for n := range 6 {
			for _, write := range writings {
				answers += answerAll(t, p, tutor.Terms, func(l *tutor.Lesson, q tutor.Question) string {
					units := otherUnits[q.Dim]
					if q.Kind == tutor.TermSign {
						return signed(q, truth(l, q), write)
					}
					return inUnit(t, truth(l, q), units[n%len(units)], p.Units, q.Dim, write)
				}, exactly)
			}
		}
	})
	t.Logf("%d answers", answers)
}

// inUnit is a value of a problem's units written in another.
func inUnit(t *testing.T, v exact.Num, unit string, u notation.Units, d notation.Dimension, write func(exact.Num) string) string {
	t.Helper()
	one, err := notation.Factor(unit, u, d)
	if err != nil {
		t.Fatal(err)
	}
	if v, err = v.Quo(one); err != nil {
		t.Fatal(err)
	}
	return write(v) + " " + unit
}

// The size with the word for the sense is right, and with the word for the opposite sense is the other sense.
func TestSizesWithSenses(t *testing.T) {
	t.Parallel()
	answers := 0
	word := func(turned bool) func(*tutor.Lesson, tutor.Question) string {
		return func(l *tutor.Lesson, q tutor.Question) string {
			if q.Kind != tutor.ForceValue || truth(l, q).IsZero() {
				return ""
			}
			v := truth(l, q)
			acts := v
			if turned {
				acts = v.Neg()
			}
			return v.Abs().Decimal(30) + " " + notation.SenseOf(l.Solution().Forces[q.Force], acts)
		}
	}
	eachProblem(t, func(t *testing.T, p *problems.Problem) {
		answers += answerAll(t, p, tutor.Values, word(false), exactly)
		answers += answerAll(t, p, tutor.Values, word(true), opposite)
	})
	t.Logf("%d answers", answers)
}

// A student who puts own rounded values into the right sum, and rounds each result to three figures, is right; sums
// solved together are taken as solved exactly and then rounded.
func TestRoundedValuesCarriedOn(t *testing.T) {
	t.Parallel()
	answers := 0
	eachProblem(t, func(t *testing.T, p *problems.Problem) {
		var mine []exact.Num
		answers += answerAll(t, p, tutor.Values, func(l *tutor.Lesson, q tutor.Question) string {
			if q.Kind != tutor.ForceValue {
				return truth(l, q).Figures(3)
			}
			if mine == nil {
				for i := range l.Solution().Forces {
					mine = append(mine, l.Solution().Values[i])
				}
			}
			value := mine[q.Force]
			if step := l.Solution().Plan[q.Step]; len(step.Sums) == 1 {
				value = given(t, step.Sums[0], q.Force, mine)
			}
			mine[q.Force] = exact.MustParse(value.Figures(3))
			return value.Figures(3)
		}, func(_ tutor.Question, v judging.Verdict) bool { return v.Right() })
	})
	t.Logf("%d answers", answers)
}

// given is what a sum gives for a force when the others have these values.
func given(t *testing.T, s statics.Sum, force int, values []exact.Num) exact.Num {
	t.Helper()
	with := append([]exact.Num(nil), values...)
	with[force] = exact.Num{}
	v, err := s.Residual(with).Neg().Quo(s.Factor(force))
	if err != nil {
		t.Fatal(err)
	}
	return v
}
