package judging

import (
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

var update = flag.Bool("update", false, "rewrite the expected part of the files in testdata")

// A sheet is a problem with what a student has found of it so far.
type sheet struct {
	Judge
	name      string
	questions []question
}

// A question is one thing asked of a sheet: a force that a step of the plan gives, or N, V or M at a place.
type question struct {
	Asked
	truth    exact.Num
	step     int // of the plan, or None
	force    int
	member   int
	station  statics.Station
	quantity statics.Quantity
}

// newSheet asks for all that a solution has: the forces in the order of the plan, M at all critical points, and N and V
// where they are not what was asked last.
func newSheet(t testing.TB, p *problems.Problem) *sheet {
	t.Helper()
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	style := p.Style(true)
	style.Figures++
	l := &sheet{Judge: Judge{Solution: s, Own: slices.Clone(s.Values), Style: style}, name: p.Name}
	for i, step := range s.Plan {
		for _, f := range step.Gives {
			force := &s.Forces[f]
			asked := Asked{Name: force.Name, Dim: notation.ForceDimension(*force), Force: force}
			l.questions = append(l.questions, question{Asked: asked, truth: s.Values[f], step: i, force: f, member: statics.None})
		}
	}
	for _, d := range s.Diagrams {
		l.askAlong(d)
	}
	return l
}

// askAlong asks for what is new along a member.
func (l *sheet) askAlong(d statics.Diagram) {
	var last [3]*exact.Num
	stations := d.Stations()
	for i, at := range stations {
		for n, value := range []exact.Num{at.N, at.V, at.M} {
			q := statics.Quantity(n)
			same, again := last[q] != nil && last[q].Equal(value), i > 0 && stations[i-1].At.Equal(at.At)
			if same && (again || q != statics.BendingMoment) || at.Found && q != statics.BendingMoment {
				continue
			}
			last[q] = &value
			asked := Asked{Name: placeName(l.Solution, d.Member, at, q), Axial: q == statics.AxialForce, Dim: dimension(q)}
			l.questions = append(l.questions, question{Asked: asked, truth: value, step: statics.None, member: d.Member, station: at, quantity: q})
		}
	}
}

// dimension is what a quantity measures.
func dimension(q statics.Quantity) notation.Dimension {
	return [...]notation.Dimension{notation.Force, notation.Force, notation.Moment}[q]
}

// placeName is V(BC, 2.4 before).
func placeName(s *statics.Solution, member int, at statics.Station, q statics.Quantity) string {
	side := [...]string{statics.Both: "", statics.Before: " before", statics.After: " after"}[at.Side]
	return q.Letter() + "(" + s.Frame.Members[member].Name + ", " + at.At.Decimal(6) + side + ")"
}

// stepOf is the step of the plan that gives a force, with its terms written or not.
func (l *sheet) stepOf(i int, written bool) Step {
	step, before := l.Solution.Plan[i], l.Solution.KnownBefore(i)
	known := func(f int) bool {
		_, is := before(f)
		return is
	}
	return Step{Sums: step.Sums, Gives: step.Gives, Known: known, Stands: written}
}

// caseOf is what an answer to a question is held against, where the terms of the step were not asked for before.
func (l *sheet) caseOf(q question) *Case { return l.caseWith(q, false) }

func (l *sheet) caseWith(q question, written bool) *Case {
	if q.step == statics.None {
		return l.Section(q.member, q.station, q.quantity)
	}
	return l.Force(l.stepOf(q.step, written), q.force)
}

// read reads a line that has no fault.
func (l *sheet) read(t testing.TB, q question, line string) Typed {
	t.Helper()
	v, err := l.Read(q.Asked, line)
	if err != nil {
		t.Fatalf("%s, %s: %q: %v", l.name, q.Name, line, err)
	}
	return v
}

// libraryProblem is a problem of the library.
func libraryProblem(t testing.TB, name string) *problems.Problem {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("no problem %s in the library", name)
	}
	return p
}

// practiceProblems are the library, the published cases, and problems for slips that occur in neither.
func practiceProblems(t testing.TB) []*problems.Problem {
	t.Helper()
	var all []*problems.Problem
	for _, name := range librarytest.Names() {
		all = append(all, libraryProblem(t, name))
	}
	own, err := filepath.Glob("testdata/slips/*.yaml")
	if err != nil || len(own) == 0 {
		t.Fatalf("no problems for slips that occur nowhere else: %v", err)
	}
	for _, name := range own {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		p, err := problems.Read(name, data)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, p)
	}
	return append(all, publishedProblems(t)...)
}

// publishedProblems are the cases of testdata/cases.
func publishedProblems(t testing.TB) []*problems.Problem {
	t.Helper()
	data, err := os.ReadFile("../../testdata/cases/published.json")
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(err)
	}
	var all []*problems.Problem
	for _, c := range cases {
		p, err := problems.Read(c.ID, c.Problem)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, p)
	}
	return all
}

// eachSheet begins every problem; in a short run, every fifth.
func eachSheet(t testing.TB, play func(l *sheet)) {
	for i, p := range practiceProblems(t) {
		if testing.Short() && i%5 != 0 {
			continue
		}
		play(newSheet(t, p))
	}
}

// eachQuestion plays every problem and gives every question to a test. The student's own values are rounded to that many
// figures; 0 stands for exact values.
func eachQuestion(t testing.TB, figures int, test func(l *sheet, q question)) {
	eachSheet(t, func(l *sheet) {
		for _, q := range l.questions {
			test(l, q)
			if figures > 0 && q.step != statics.None {
				if v := l.read(t, q, l.ownValue(q).Figures(figures)); l.caseOf(q).Verdict(v).Right() {
					l.Own[q.force] = v.Value
				}
			}
		}
	})
}

// eachSlippery is eachQuestion without those at which one sentence is said, whatever led to a wrong value.
func eachSlippery(t testing.TB, figures int, test func(l *sheet, q question)) {
	eachQuestion(t, figures, func(l *sheet, q question) {
		if !l.caseOf(q).OnlyZero() {
			test(l, q)
		}
	})
}

// ownValue is what the student's own values give in the right sum.
func (l *sheet) ownValue(q question) exact.Num {
	switch {
	case q.step == statics.None:
		return l.Cut(q.member, q.station, q.quantity, l.Own).Value()
	case len(l.Solution.Plan[q.step].Sums) > 1:
		return q.truth
	}
	if b, ok := stepBalance(l.Solution.Plan[q.step].Sums[0], q.force, l.Own); ok {
		return b.gives
	}
	return q.truth
}
