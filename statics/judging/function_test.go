package judging

import (
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A function is right as it is and with its coefficients rounded to three figures; turned over, of another degree, from the
// other end or off by a tenth of its largest value it is not.
func TestFunctionsAlongAllStretches(t *testing.T) {
	t.Parallel()
	seen := 0
	eachStretch(t, func(name string, a Along) {
		truth, largest := a.truth(), exact.Num{}
		for _, p := range a.places() {
			largest = exact.Max(largest, truth.At(p.x).Abs())
		}
		if v := a.Find(truth).Verdict; v != Exact {
			t.Errorf("%s: its own function is %s", name, v)
		}
		if largest.IsZero() {
			return
		}
		seen++
		if v := a.Find(toThree(truth)).Verdict; !v.Right() {
			t.Errorf("%s: %v rounded to three figures is %s", name, truth, v)
		}
		wrong := []exact.Poly{
			truth.Scale(exact.Int(-1)),
			truth.Add(exact.Poly{largest.Mul(exact.MustParse("0.1"))}),
			truth.Add(exact.Poly{{}, {}, {}, {}, one}),
		}
		for i, f := range wrong {
			if found := a.Find(f); found.Verdict.Right() || found.Says == "" {
				t.Errorf("%s: wrong function %d is %s: %q", name, i, found.Verdict, found.Says)
			}
		}
	})
	if seen < 200 {
		t.Errorf("only %d functions other than zero", seen)
	}
}

// toThree is a polynomial with each coefficient rounded to three figures.
func toThree(p exact.Poly) exact.Poly {
	var f exact.Poly
	for _, c := range p {
		if !c.IsZero() {
			c = exact.MustParse(c.Figures(3))
		}
		f = append(f, c)
	}
	return f
}

// eachStretch goes through N, V and M on all stretches of the library.
func eachStretch(t *testing.T, do func(name string, a Along)) {
	for _, name := range librarytest.Names() {
		p := libraryProblem(t, name)
		s, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		j := Judge{Solution: s, Style: p.Style(false)}
		for _, d := range s.Diagrams {
			for _, in := range d.Stretches {
				for q := statics.AxialForce; q <= statics.BendingMoment; q++ {
					do(name+" "+q.Letter()+" in "+s.Frame.Members[d.Member].Name+" from "+in.From.Decimal(3), j.Along(d.Member, in, q))
				}
			}
		}
	}
}

// What a function is told: by its degree, its slope, its ends, and where x is measured from.
func TestFunctionsSay(t *testing.T) {
	t.Parallel()
	p, err := problems.Read("beam", []byte("title: beam\nunits: kN m\njoints: {A: [0, 0], B: [10, 0]}\nmembers: [AB]\nsupports: {A: pin, B: {roller: up}}\nloads:\n  - {uniform: 4, to: down, on: AB, from: 5}\n"))
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	j := Judge{Solution: s, Style: p.Style(false)}
	m := j.Along(0, s.Diagrams[0].Stretches[1], statics.BendingMoment) // 5x − 2(x − 5)² = −50 + 25x − 2x²
	asked := Asked{Name: "M(AB, 10)", Dim: notation.Moment, Bends: true, Span: s.Frame.Span(0)}
	for typed, says := range map[string]string{
		"M(x) = 25x - 50 - 2x²":   "",
		"5x - 2(x - 5)^2":         "",
		"M(x) = -25x + 50 + 2x^2": "the size is right all along, but not the sense: in which sense does M count as positive?",
		"M(x) = 5(x+5) - 2x^2":    "x is the distance from the first joint of the member, all along it: from where is your x measured?",
		"M(x) = 15x - 2x^2":       "x runs from the first joint of the member, not from its last: from which end is your x measured?",
		"5x":                      "the load on this stretch acts on the kept piece up to the cut, so it is in the function: how much of it does a piece of length x hold?",
		"x^3":                     "M is one degree above V: of which degree is V on this stretch?",
		"75 - 5x + 2(x-5)^2 - 25": "V is the slope of M: where V is positive, M rises along x: which way does your M go?",
		"-40 + 25x - 2x^2":        "its slope is right all along, so what is off is the value from which it starts: what is M where the stretch begins?",
		"25x - 100 - 2x^2 + 5x":   "it is right where the stretch ends, but not where it begins: what is M there?",
		"25 - 2(x - 5)^2":         "it is right where the stretch begins, but not where it ends: what changes M in between?",
		"33.17 - x - (x - 5)^2":   "it is off at both ends of the stretch: what does the kept piece give for M where the stretch begins?",
	} {
		f, err := j.ReadFunction(asked, typed)
		if err != nil {
			t.Errorf("%s: %v", typed, err)
			continue
		}
		if got := m.Find(f).Says; got != says {
			t.Errorf("%s: says %q, want %q", typed, got, says)
		}
	}
}
