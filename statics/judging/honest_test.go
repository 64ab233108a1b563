package judging

import (
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
)

// An honest student writes the sum of a kept piece and rounds to three figures what a way of working says. The ways are
// from the rules of judging alone; nothing here looks at how a verdict is found.
type honest struct {
	side                    statics.KeptSide
	forces, ratio, products bool // what is rounded to three figures; the answer always is
}

var honestWays = []honest{
	{statics.FromStart, true, false, false}, {statics.FromStart, true, true, false}, {statics.FromStart, true, true, true},
	{statics.ToEnd, true, false, false}, {statics.ToEnd, true, true, false}, {statics.ToEnd, true, true, true},
}

// three is a number rounded to three figures, where a student does so.
func three(x exact.Num, rounds bool) exact.Num {
	if !rounds {
		return x
	}
	return exact.MustParse(x.Figures(3))
}

// answer is what a way of working gives for a quantity at a station. A student who sees that on one side nothing has a
// part in the sum keeps that side.
func (h honest) answer(t testing.TB, l *sheet, member int, at statics.Station, q statics.Quantity) string {
	t.Helper()
	given := h.sum(t, l, member, at, q)
	h.side = statics.ToEnd - h.side
	if h.sum(t, l, member, at, q) == "" {
		return "0"
	}
	return given
}

// sum is what the sum of the side kept gives; empty where all its terms are zero.
func (h honest) sum(t testing.TB, l *sheet, member int, at statics.Station, q statics.Quantity) string {
	t.Helper()
	a, sum := statics.Kept{Solution: l.Solution, Member: member, At: at, Side: h.side}.Sum(q)
	own, terms := len(a.Forces)-1, 0
	var rest exact.Num
	for _, term := range sum.Terms() {
		if term.Force == own || term.Why != statics.Counts {
			continue
		}
		var force exact.Num
		ratio := term.Size
		if term.Force != statics.None {
			force = l.Solution.Values[term.Force]
		} else {
			force = a.Actions[term.Action].Size.Abs()
			var err error
			if ratio, err = term.Size.Quo(force); err != nil {
				t.Fatal(err)
			}
		}
		product := three(three(force, h.forces).Mul(three(ratio, h.ratio)).Mul(term.Arm), h.products)
		if !product.IsZero() {
			terms++
		}
		rest = rest.Add(product.Mul(exact.Int(int64(term.Sign))))
	}
	if terms == 0 {
		return ""
	}
	v, err := rest.Neg().Quo(sum.Factor(own))
	if err != nil {
		t.Fatal(err)
	}
	return v.Figures(3)
}

// Nobody who rounds honestly is refused, from either side; and where the truth is zero, 0.5 is not taken for it.
func TestHonestRounding(t *testing.T) {
	t.Parallel()
	values, zeros := 0, 0
	for _, name := range librarytest.Names() {
		l := newSheet(t, libraryProblem(t, name))
		for _, d := range l.Solution.Diagrams {
			for _, at := range d.Stations() {
				for q := statics.AxialForce; q <= statics.BendingMoment; q++ {
					n, isZero := honestAt(t, l, d.Member, at, q)
					values += n
					if isZero {
						zeros++
					}
				}
			}
		}
	}
	t.Logf("%d honest values, %d zeros", values, zeros)
	if values < 4500 || zeros < 190 {
		t.Errorf("only %d values and %d zeros, want over 4,500 and 190, as the library has them", values, zeros)
	}
}

// honestAt types all honest answers at one section, and 0.5 where the truth is zero.
func honestAt(t *testing.T, l *sheet, member int, at statics.Station, q statics.Quantity) (values int, zero bool) {
	held, truth := l.Section(member, at, q), at.Of(q)
	asked := question{Asked: Asked{Name: placeName(l.Solution, member, at, q), Dim: dimension(q)}}
	for _, h := range honestWays {
		line := h.answer(t, l, member, at, q)
		if line == "" {
			line = "0"
		}
		values++
		if verdict := held.Verdict(l.read(t, asked, line)); !verdict.Right() {
			t.Errorf("%s, %s: %s for %s (%+v) is %s", l.name, asked.Name, line, truth.Figures(5), h, verdict.Code())
		}
	}
	if !truth.IsZero() {
		return values, false
	}
	for _, line := range []string{"0.5", "-0.5"} {
		if held.Verdict(l.read(t, asked, line)).Right() {
			t.Errorf("%s, %s: %s is taken for 0", l.name, asked.Name, line)
		}
	}
	return values, true
}
