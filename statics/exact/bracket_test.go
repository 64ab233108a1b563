package exact

import (
	"testing"

	"pgregory.net/rapid"
)

// TestBracket narrows the roots of random cubics to up to 200 places: the ends are as near as asked, p changes its sign
// between them, and the root of 34 digits agrees.
func TestBracket(t *testing.T) {
	narrowed := 0
	rapid.Check(t, func(t *rapid.T) {
		p := Poly{}
		for range 4 {
			p = append(p, Int(rapid.Int64Range(-9, 9).Draw(t, "coefficient")))
		}
		places := rapid.IntRange(0, 200).Draw(t, "places")
		for _, r := range p.Roots(Int(-1000), Int(1000)) {
			lo, hi := p.Bracket(r, places)
			if r.Exact {
				if !lo.Equal(r.X) || !hi.Equal(r.X) {
					t.Fatalf("%v: the exact root %v is put between %v and %v", p, r.X, lo, hi)
				}
				continue
			}
			narrowed++
			if hi.Sub(lo).Cmp(fraction(pow10(-places))) > 0 || lo.Cmp(hi) >= 0 {
				t.Fatalf("%v: %v to %v for %d places", p, lo, hi, places)
			}
			if p.At(lo).Sign()*p.At(hi).Sign() > 0 {
				t.Fatalf("%v has no root between %v and %v", p, lo, hi)
			}
			if ulp := r.X.Abs().scale(pow10(-33)); r.X.Cmp(lo.Sub(ulp)) < 0 || r.X.Cmp(hi.Add(ulp)) > 0 {
				t.Fatalf("%v: %v is not between %v and %v", p, r.X, lo, hi)
			}
		}
	})
	if narrowed == 0 {
		t.Error("no root was narrowed")
	}
}

// TestBracketOfCubeRoot holds a root that has no closed form here to the digits that are printed of it (OEIS A002580).
func TestBracketOfCubeRoot(t *testing.T) {
	p := Poly{Int(-2), {}, {}, Int(1)} // x³ = 2
	roots := p.Roots(Int(0), Int(2))
	if len(roots) != 1 {
		t.Fatalf("%v", roots)
	}
	lo, hi := p.Bracket(roots[0], 60)
	want := MustParse("1.259921049894873164767210607278228350570")
	if lo.Cmp(want.Add(fraction(pow10(-39)))) > 0 || hi.Cmp(want.Sub(fraction(pow10(-39)))) < 0 {
		t.Errorf("between %s and %s, not %s", lo.Decimal(50), hi.Decimal(50), want.Decimal(50))
	}
}
