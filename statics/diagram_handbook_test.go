package statics

import (
	"fmt"
	"testing"

	"unpin/statics/exact"
)

// The closed forms below are those of the usual beam tables: American Institute of Steel Construction, Steel
// Construction Manual, table 3-23 (shears, moments and deflections), and Young and Budynas, Roark's Formulas for Stress
// and Strain, table 8.1. They were written down from memory; each can be derived in a few lines. Loads act downward,
// l is the span, a and b are the parts of it, and all beams run from left to right.

// A beamCase is one line of a beam table: a frame, and what the table says of it.
type beamCase struct {
	name    string
	frame   string
	forces  map[string]exact.Num
	member  string    // on which the greatest moment is
	place   exact.Num // of the peak, from the member's start; unused if there is none
	moment  exact.Num // there, or at the start of the member if there is none
	stated  bool      // the table states a place where the shear is nought
	moments func(x exact.Num) exact.Num
}

// TestBeamTables compares simple spans, cantilevers and overhangs under point, uniform, triangular and couple loads with
// the tables, over many sizes.
func TestBeamTables(t *testing.T) {
	t.Parallel()
	cases := 0
	for _, l := range []string{"1", "6", "15/2", "37/3", "0.04", "1000"} {
		for _, share := range []string{"1/2", "1/3", "1/4", "2/7", "9/10"} {
			for _, load := range []string{"1", "12", "7/3", "-5"} {
				span, p := exact.MustParse(l), exact.MustParse(load)
				a := span.Mul(exact.MustParse(share))
				for _, c := range append(spans(span, a, p), cantileversAndOverhangs(span, a, p)...) {
					cases++
					if err := c.check(t); err != nil {
						t.Fatalf("%s: %v\n%s", c.name, err, c.frame)
					}
				}
			}
		}
	}
	t.Logf("%d beams", cases)
}

func (c beamCase) check(t *testing.T) error {
	s, err := Solve(build(t, c.frame))
	if err != nil || s.Values == nil {
		return fmt.Errorf("not solved: %v", err)
	}
	for i, f := range s.Forces {
		if want, stated := c.forces[f.Name]; stated && !s.Values[i].Equal(want) {
			return fmt.Errorf("%s = %s, want %s", f.Name, s.Values[i], want)
		}
	}
	for _, d := range s.Diagrams {
		if s.Frame.Members[d.Member].Name == c.member {
			return c.checkMember(d)
		}
	}
	return fmt.Errorf("no member %s", c.member)
}

func (c beamCase) checkMember(d Diagram) error {
	if c.moments != nil {
		for k := int64(0); k <= 6; k++ {
			x := d.Length.Mul(frac(k, 6))
			at, _ := d.Section(x, Both)
			if want := c.moments(x); !at.M.Equal(want) {
				return fmt.Errorf("M at %s is %s, want %s", x, at.M, want)
			}
		}
	}
	if !c.stated {
		if at, _ := d.Section(exact.Num{}, After); !at.M.Equal(c.moment) {
			return fmt.Errorf("M at the start is %s, want %s", at.M, c.moment)
		}
		return nil
	}
	for _, st := range d.Stations() {
		if st.At.Equal(c.place) && st.M.Equal(c.moment) && st.Extreme && st.Exact {
			return nil
		}
	}
	return fmt.Errorf("no peak of %s at %s among %+v", c.moment, c.place, d.Stations())
}

// num works out a product of numbers and strings such as "1/8".
func num(factors ...any) exact.Num {
	product := exact.Int(1)
	for _, f := range factors {
		switch f := f.(type) {
		case exact.Num:
			product = product.Mul(f)
		case string:
			product = product.Mul(exact.MustParse(f))
		case int:
			product = product.Mul(exact.Int(int64(f)))
		}
	}
	return product
}

// spanText is a beam on a pin at A and a roller at B.
func spanText(l exact.Num, load string, args ...any) string {
	return fmt.Sprintf("joint A 0 0\njoint B %s 0\nmember AB A B\nsupport A pinned\nsupport B roller 0 1\n", l) +
		fmt.Sprintf(load, args...)
}

// spans are the simple beams: span l, load p or intensity p, at or up to a.
func spans(l, a, p exact.Num) []beamCase {
	b := l.Sub(a)
	root3 := root(exact.Int(3))
	partly := num(p, a, over(l.Add(b), l), "1/2") // left reaction under a uniform load from the left support up to a
	third := l.Add(a)
	return []beamCase{
		{
			name: "simple beam, uniform load", frame: spanText(l, "spread %s %s 0 -1 on AB 0 %s", p, p, l),
			forces: map[string]exact.Num{"Ay": num(p, l, "1/2"), "RB": num(p, l, "1/2"), "Ax": {}},
			member: "AB", place: num(l, "1/2"), moment: num(p, l, l, "1/8"), stated: true,
			moments: func(x exact.Num) exact.Num { return num(p, x, l.Sub(x), "1/2") },
		}, {
			name: "simple beam, point load at a", frame: spanText(l, "point %s 0 -1 on AB %s", p, a),
			forces: map[string]exact.Num{"Ay": num(p, over(b, l)), "RB": num(p, over(a, l))},
			member: "AB", place: a, moment: num(p, a, over(b, l)), stated: true,
		}, {
			name: "simple beam, load rising to the right end", frame: spanText(l, "spread 0 %s 0 -1 on AB 0 %s", p, l),
			forces: map[string]exact.Num{"Ay": num(p, l, "1/6"), "RB": num(p, l, "1/3")},
			member: "AB", place: over(l, root3), moment: over(num(p, l, l, "1/9"), root3), stated: true,
			moments: func(x exact.Num) exact.Num {
				return over(num(p, x, l.Square().Sub(x.Square()), "1/6"), l)
			},
		}, {
			name: "simple beam, load falling from the left end", frame: spanText(l, "spread %s 0 0 -1 on AB 0 %s", p, l),
			forces: map[string]exact.Num{"Ay": num(p, l, "1/3"), "RB": num(p, l, "1/6")},
			member: "AB", place: l.Sub(over(l, root3)), moment: over(num(p, l, l, "1/9"), root3), stated: true,
		}, {
			name: "simple beam, uniform load from the left end up to a", frame: spanText(l, "spread %s %s 0 -1 on AB 0 %s", p, p, a),
			forces: map[string]exact.Num{"Ay": partly, "RB": over(num(p, a, a, "1/2"), l)},
			member: "AB", place: over(partly, p), moment: over(num(partly, partly, "1/2"), p), stated: true,
		}, {
			name: "simple beam, two equal loads at equal distances", frame: spanText(l,
				"point %s 0 -1 on AB %s\npoint %s 0 -1 on AB %s", p, num(a, "1/2"), p, l.Sub(num(a, "1/2"))),
			forces: map[string]exact.Num{"Ay": p, "RB": p},
			member: "AB", place: num(a, "1/2"), moment: num(p, a, "1/2"), stated: true,
		}, {
			name: "simple beam, couple at a", frame: spanText(l, "couple %s on AB %s", p, a),
			forces: map[string]exact.Num{"Ay": over(p, l), "RB": over(p, l).Neg()},
			member: "AB",
			moments: func(x exact.Num) exact.Num {
				if x.Cmp(a) < 0 {
					return over(num(p, x), l)
				}
				return over(num(p, x), l).Sub(p)
			},
		}, {
			name: "simple beam, triangle with its top at a", frame: spanText(l,
				"spread 0 %s 0 -1 on AB 0 %s\nspread %s 0 0 -1 on AB %s %s", p, a, p, a, l),
			forces: map[string]exact.Num{"Ay": num(p, l.Add(b), "1/6"), "RB": num(p, third, "1/6")},
			member: "AB",
		},
	}
}

// cantileversAndOverhangs are beams fixed at A, and beams on A and B with an overhang of a beyond B.
func cantileversAndOverhangs(l, a, p exact.Num) []beamCase {
	fixed := func(load string, args ...any) string {
		return fmt.Sprintf("joint A 0 0\njoint B %s 0\nmember AB A B\nsupport A fixed\n", l) + fmt.Sprintf(load, args...)
	}
	hung := func(load string, args ...any) string {
		return fmt.Sprintf("joint A 0 0\njoint B %s 0\njoint C %s 0\nmember AB A B\nmember BC B C\nsupport A pinned\nsupport B roller 0 1\n", l, l.Add(a)) +
			fmt.Sprintf(load, args...)
	}
	peak := num(l, "1/2", exact.Int(1).Sub(over(a, l).Square())) // under a uniform load all along
	return []beamCase{
		{
			name: "cantilever, uniform load", frame: fixed("spread %s %s 0 -1 on AB 0 %s", p, p, l),
			forces: map[string]exact.Num{"Ay": num(p, l), "MA": num(p, l, l, "1/2")},
			member: "AB", moment: num(p, l, l, "-1/2"),
			moments: func(x exact.Num) exact.Num { return num(p, l.Sub(x).Square(), "-1/2") },
		}, {
			name: "cantilever, point load at a", frame: fixed("point %s 0 -1 on AB %s", p, a),
			forces: map[string]exact.Num{"Ay": p, "MA": num(p, a)},
			member: "AB", moment: num(p, a, -1),
		}, {
			name: "cantilever, load rising to the fixed end", frame: fixed("spread %s 0 0 -1 on AB 0 %s", p, l),
			forces: map[string]exact.Num{"Ay": num(p, l, "1/2"), "MA": num(p, l, l, "1/6")},
			member: "AB", moment: num(p, l, l, "-1/6"),
			moments: func(x exact.Num) exact.Num { return over(num(p, l.Sub(x), l.Sub(x).Square(), "-1/6"), l) },
		}, {
			name: "cantilever, load rising to the free end", frame: fixed("spread 0 %s 0 -1 on AB 0 %s", p, l),
			forces: map[string]exact.Num{"Ay": num(p, l, "1/2"), "MA": num(p, l, l, "1/3")},
			member: "AB", moment: num(p, l, l, "-1/3"),
		}, {
			name: "cantilever, couple", frame: fixed("couple %s on AB %s", p, a),
			forces: map[string]exact.Num{"Ay": {}, "MA": p.Neg()},
			member: "AB", moment: p,
		}, {
			name: "overhang, uniform load all along", frame: hung("spread %s %s 0 -1 on AB 0 %s\nspread %s %s 0 -1 on BC 0 %s", p, p, l, p, p, a),
			forces: map[string]exact.Num{
				"Ay": over(num(p, l.Square().Sub(a.Square()), "1/2"), l),
				"RB": over(num(p, l.Add(a).Square(), "1/2"), l),
			},
			member: "AB", place: peak, stated: true,
			moment: over(num(p, l.Add(a).Square(), l.Sub(a).Square(), "1/8"), l.Square()),
		}, {
			name: "overhang, uniform load on the overhang", frame: hung("spread %s %s 0 -1 on BC 0 %s", p, p, a),
			forces: map[string]exact.Num{"Ay": over(num(p, a, a, "-1/2"), l), "RB": over(num(p, a, num(l, 2).Add(a), "1/2"), l)},
			member: "BC", moment: num(p, a, a, "-1/2"),
		}, {
			name: "overhang, point load at its end", frame: hung("point %s 0 -1 at C", p),
			forces: map[string]exact.Num{"Ay": over(num(p, a), l).Neg(), "RB": over(num(p, l.Add(a)), l)},
			member: "BC", moment: num(p, a, -1),
		},
	}
}

// TestInclinedSpans checks the rule of the tables for inclined beams under vertical load counted on the run: the moments
// are those of a level beam of the same run, and N and V are its shear split along the slope.
func TestInclinedSpans(t *testing.T) {
	for _, rise := range []string{"0", "3", "4.5", "-8", "7"} {
		s, err := Solve(build(t, "joint A 0 0\njoint B 6 "+rise+`
			member AB A B
			support A pinned
			support B roller 0 1
			spread 4 4 0 -1 on AB 0 1L run`))
		if err != nil {
			t.Fatal(err)
		}
		d := s.Diagrams[0]
		h := exact.MustParse(rise)
		for k := int64(0); k <= 4; k++ {
			run := frac(6*k, 4)
			at, _ := d.Section(d.Length.Mul(frac(k, 4)), Both)
			shear := num(4, exact.Int(3).Sub(run))
			want := InternalForces{N: over(num(shear, h), d.Length).Neg(), V: over(num(shear, 6), d.Length), M: num(2, run, exact.Int(6).Sub(run))}
			if !at.Equal(want) {
				t.Errorf("rise %s, run %s: %s, want %s", rise, run, show(at), show(want))
			}
		}
	}
}
