package tutor

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

// Every equivalent form of a true sum is accepted: whatever the order of its terms, the side each stands on, a factor
// throughout, the positive turn or direction, the senses the unknowns are taken in, and the centre or direction of the
// sum; and with one term turned round, of those that can be told from nothing, none of them is.
func TestEquivalentSums(t *testing.T) {
	t.Parallel()
	names := librarytest.Names()
	rapid.Check(t, func(t *rapid.T) {
		p, _ := problems.Library(rapid.SampledFrom(names).Draw(t, "problem"))
		other := *p
		other.Conventions.Moments = rapid.SampledFrom([]notation.MomentTurn{notation.ClockwiseMoments, notation.CounterClockwiseMoments}).Draw(t, "convention")
		l, err := New(&other, Blank, false)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range l.about.solution.Forces {
			if rapid.Bool().Draw(t, "turn "+f.Name) {
				line := "let " + f.Name + " " + notation.Acting(f, exact.Int(-1)).String()
				if slanting := !f.Along.X.IsZero() && !f.Along.Y.IsZero(); slanting && f.Kind != statics.MemberPull {
					line = "let " + f.Name + " " + map[bool]string{true: "left", false: "right"}[f.Along.X.Sign() > 0]
				}
				if r := l.Type(line); r.Kind != Listed {
					t.Fatalf("%s: %v", line, r.Lines)
				}
			}
		}
		s := drawnSum(t, l)
		if r := l.Type(choiceText(l, s)); !r.Verdict.Right() {
			return // it holds nothing unknown
		}
		equation, flawed := drawnEquation(t, l, l.Display(false).chosen())
		if flawed != "" {
			if r := l.Type(flawed); r.Kind != Judged || r.Verdict.Right() {
				t.Fatalf("%s, %s: %s is accepted: %v", p.Name, choiceText(l, s), flawed, r.Lines)
			}
		}
		if r := l.Type(equation); r.Kind != Judged || r.Verdict != judging.Exact {
			t.Fatalf("%s, %s: %s: %v", p.Name, choiceText(l, s), equation, r.Lines)
		}
	})
}

// drawnSum is a sum of any bodies, about any point or along any direction.
func drawnSum(t *rapid.T, l *Lesson) statics.Sum {
	a := l.about.solution.Assembly
	var body statics.FreeBody
	for b := range a.Bodies() {
		if rapid.Bool().Draw(t, "body") {
			body = append(body, b)
		}
	}
	if len(body) == 0 {
		body = a.Whole()
	}
	x, y := rapid.IntRange(-8, 8).Draw(t, "x"), rapid.IntRange(-8, 8).Draw(t, "y")
	switch kind := rapid.IntRange(0, 2).Draw(t, "kind"); {
	case kind == 0 && (len(body) > 1 || !a.IsPin(body[0])):
		return a.MomentSum(body, rapid.SampledFrom(a.Frame.Joints).Draw(t, "joint").At)
	case kind == 1 && (len(body) > 1 || !a.IsPin(body[0])):
		quarter := exact.MustParse("0.25")
		return a.MomentSum(body, statics.Point{X: exact.Int(int64(x)).Mul(quarter), Y: exact.Int(int64(y)).Mul(quarter)})
	case x == 0 && y == 0:
		return a.ForceSum(body, statics.Vector{Y: exact.Int(1)})
	}
	return a.ForceSum(body, statics.Vector{X: exact.Int(int64(x)), Y: exact.Int(int64(y))})
}

// drawnEquation writes a sum in any order, on any sides and to any scale; and the same with the sense of one term turned,
// if there is more than one and the turned one does not vanish beside the rest.
func drawnEquation(t *rapid.T, l *Lesson, s statics.Sum) (equation, flawed string) {
	scale := rapid.SampledFrom([]string{"1", "-1", "2", "-0.5", "3", "0.125", "-1.7"}).Draw(t, "scale")
	var terms []statics.Term
	for _, term := range s.Terms() {
		if term.Why == statics.Counts && !term.Value().IsZero() {
			terms = append(terms, term)
		}
	}
	terms = rapid.Permutation(terms).Draw(t, "order")
	odd := rapid.IntRange(0, len(terms)-1).Draw(t, "turned")
	var sides, flaws [2][]string
	for i, term := range terms {
		side := rapid.IntRange(0, 1).Draw(t, "side")
		sides[side] = append(sides[side], drawnTerm(l, term, scale, side == 1))
		flaws[side] = append(flaws[side], drawnTerm(l, term, scale, (side == 1) != (i == odd)))
	}
	if len(terms) > 1 && apart(terms, odd) {
		flawed = joined(flaws[0]) + " = " + joined(flaws[1])
	}
	return joined(sides[0]) + " = " + joined(sides[1]), flawed
}

// apart reports whether a sum with one term turned is no longer the same: where it holds only that force, or a load so
// small that it is lost in the others, it is.
func apart(terms []statics.Term, odd int) bool {
	var largest exact.Num
	for i, term := range terms {
		if i != odd && term.Force == terms[odd].Force && term.Force != statics.None {
			return false // two components of one force: turned, one of them may undo the other
		}
		if term.Force == statics.None {
			largest = exact.Max(largest, term.Size.Mul(term.Arm).Abs())
		}
	}
	x := terms[odd]
	return x.Force != statics.None || x.Size.Mul(x.Arm).Abs().Mul(exact.Int(50)).Cmp(largest) > 0
}

// drawnTerm is a term as it is typed: scale*size*arm*name, in brackets.
func drawnTerm(l *Lesson, term statics.Term, scale string, turned bool) string {
	sign := l.about.shownSign(statics.Sum{Moment: true}, term)
	factors := []string{"(" + scale + ")", term.Size.Decimal(14), term.Arm.Decimal(14)}
	if term.Force != statics.None {
		factors = append(factors, l.about.solution.Forces[term.Force].Name)
	}
	return map[bool]string{true: "+", false: "-"}[(sign > 0) != turned] + " " + strings.Join(factors, "*")
}

// joined is one side of an equation.
func joined(terms []string) string {
	if len(terms) == 0 {
		return "0"
	}
	return strings.TrimPrefix(fmt.Sprint(strings.Join(terms, " ")), "+ ")
}
