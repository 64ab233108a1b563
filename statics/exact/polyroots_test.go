package exact

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestRootsTable(t *testing.T) {
	checkAnswers(t, "testdata/roots.txt", 2, func(t *testing.T, question []string) string {
		ends := strings.Fields(question[1])
		var texts []string
		for _, r := range poly(t, question[0]).Roots(num(t, ends[0]), num(t, ends[1])) {
			text := r.X.String()
			if !r.Exact {
				text = "~" + r.X.Decimal(inexactDigits)
			}
			texts = append(texts, text)
		}
		if texts == nil {
			return "none"
		}
		return strings.Join(texts, ", ")
	})
}

// times is p·(c₀ + c₁x + …).
func (p Poly) times(q Poly) Poly {
	var product Poly
	for i, c := range q {
		product = product.Add(append(make(Poly, i), p.Scale(c)...))
	}
	return product
}

// drawFactor draws a monic factor with its roots, which Roots finds exactly.
func drawFactor(t *rapid.T, most int) (Poly, []Num) {
	x := FromRat(drawSmall(t, -60))
	if most < 2 || rapid.Bool().Draw(t, "linear") {
		return Poly{x.Neg(), Int(1)}, []Num{x}
	}
	square := FromRat(drawSmall(t, -60)) // of half the distance of the roots
	p := Poly{x.Square().Sub(square), x.scale(rational{num: -2}), Int(1)}
	root, err := square.Sqrt()
	if err != nil {
		return p, nil // a complex pair
	}
	return p, []Num{x.Sub(root), x.Add(root)}
}

// Polynomials put together from known roots, up to the third degree, times any
// number: all roots come back exactly, those at the ends included.
func TestRootsOfProducts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, known := Poly{Int(1)}, []Num(nil)
		for degree := rapid.IntRange(1, 3).Draw(t, "degree"); p.Degree() < degree; {
			q, roots := drawFactor(t, degree-p.Degree())
			p, known = p.times(q), append(known, roots...)
		}
		slices.SortFunc(known, Num.Cmp)
		known = slices.CompactFunc(known, Num.Equal)
		lo, hi := Int(-100), Int(100)
		if len(known) > 0 && rapid.Bool().Draw(t, "ends at roots") {
			lo, hi = known[0], known[len(known)-1]
		}
		if k := drawLeaf(t).n; !k.IsZero() {
			p = p.Scale(k)
		}
		roots := p.Roots(lo, hi)
		got := make([]Num, len(roots))
		for i, r := range roots {
			if got[i] = r.X; !r.Exact {
				t.Fatalf("%v: %v is not exact", p, r.X)
			}
		}
		if !slices.EqualFunc(got, known, Num.Equal) {
			t.Fatalf("%v in %v…%v: %v, want %v", p, lo, hi, got, known)
		}
		if inside := p.Roots(lo.Add(Int(1)), hi); !slices.EqualFunc(inside, within(known, lo.Add(Int(1)), hi), sameRoot) {
			t.Fatalf("%v in %v…%v: %v", p, lo.Add(Int(1)), hi, inside)
		}
	})
}

func sameRoot(r Root, x Num) bool { return r.X.Equal(x) }

func within(xs []Num, lo, hi Num) []Num {
	return slices.DeleteFunc(slices.Clone(xs), func(x Num) bool { return x.Cmp(lo) < 0 || x.Cmp(hi) > 0 })
}

// The discriminant of a cubic tells the number of its real roots: three where
// positive, one where negative. Each is held to a change of sign.
func TestCubicRoots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var p Poly
		for range 3 {
			p = append(p, drawLeaf(t).n)
		}
		p = append(p, Int(rapid.Int64Range(1, 9).Draw(t, "lead")))
		a, b, c, d := p[3], p[2], p[1], p[0]
		disc := Sum(
			Int(18).Mul(a).Mul(b).Mul(c).Mul(d), Int(-4).Mul(power(b, 3)).Mul(d), b.Square().Mul(c.Square()),
			Int(-4).Mul(a).Mul(power(c, 3)), Int(-27).Mul(a.Square()).Mul(d.Square()),
		)
		roots := p.Roots(Int(-1000), Int(1000))
		if want := 2 + disc.Sign(); !disc.IsZero() && len(roots) != want {
			t.Fatalf("%v has %d roots, want %d: %v", p, len(roots), want, roots)
		}
		checkRoots(t, p, roots)
	})
}

// checkRoots holds roots to the order, to zero where exact, and else to a
// change of sign within the 33rd digit.
func checkRoots(t rapid.TB, p Poly, roots []Root) {
	t.Helper()
	for i, r := range roots {
		if i > 0 && roots[i-1].X.Cmp(r.X) >= 0 {
			t.Fatalf("%v: %v before %v", p, roots[i-1].X, r.X)
		}
		if r.Exact == r.X.Inexact() || r.Exact != p.At(r.X).IsZero() {
			t.Fatalf("%v at %v is %v, exact %t, marked %t", p, r.X, p.At(r.X), r.Exact, r.X.Inexact())
		}
		if r.Exact {
			continue
		}
		ulp := r.X.scale(pow10(-33))
		if below, above := p.At(r.X.Sub(ulp)).Sign(), p.At(r.X.Add(ulp)).Sign(); below != -above {
			t.Fatalf("%v has the signs %d, %d about %v", p, below, above, r.X)
		}
	}
}

// A slow oracle: every change of sign between the twentieths from −8 to 8 is a
// root, and no root that is found lies where there is none.
func TestRootsAgainstScan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var p Poly
		for range 4 {
			p = append(p, Int(rapid.Int64Range(-6, 6).Draw(t, "c")))
		}
		roots := p.Roots(Int(-8), Int(8))
		checkRoots(t, p, roots)
		for k := int64(-160); k < 160; k++ {
			lo, hi := MustParse("0.05").Mul(Int(k)), MustParse("0.05").Mul(Int(k+1))
			between := 0
			for _, r := range roots {
				if r.X.Cmp(lo) > 0 && r.X.Cmp(hi) < 0 {
					between++
				}
			}
			changes := p.At(lo).Sign()*p.At(hi).Sign() < 0
			if changes != (between%2 == 1) && p.At(lo).Sign()*p.At(hi).Sign() != 0 {
				t.Fatalf("%v between %v and %v: %d roots", p, lo, hi, between)
			}
		}
	})
}

// Roots of coefficients that are marked are marked.
func TestRootsOfInexactCoefficients(t *testing.T) {
	x := Sin(Int(20))
	for _, p := range []Poly{
		{x.Neg(), Int(1)},
		{x.Neg(), Num{}, Int(1)},
		{Num{}, x.Neg(), Num{}, Int(1)},
		{x, Int(1), Int(1), x},
		Poly{x.Neg(), Int(1)}.times(Poly{Int(-2), Int(0), Int(1)}),
		Poly{x.Neg(), Int(1)}.times(Poly{Int(-3), Int(1)}).times(Poly{Int(-2), Int(1)}),
	} {
		roots := p.Roots(Int(-9), Int(9))
		if len(roots) == 0 {
			t.Errorf("%v has no roots", p)
		}
		for _, r := range roots {
			if r.Exact == r.X.Inexact() || r.Exact && !r.X.IsZero() {
				t.Errorf("%v: the root %v is exact: %t", p, r.X, r.Exact)
			}
		}
	}
}

// Roots nearer than any fixed tolerance are told apart.
func TestCloseRoots(t *testing.T) {
	a, gap := num(t, "sqrt(2)"), num(t, "1/1000000000000000000000000000000")
	p := Poly{a.Neg(), Int(1)}.times(Poly{a.Add(gap).Neg(), Int(1)}).times(Poly{Int(-3), Num{}, Int(1)})
	roots := p.Roots(Int(0), Int(9))
	checkRoots(t, p, roots)
	if len(roots) != 3 {
		t.Errorf("%v", roots)
	}
}
