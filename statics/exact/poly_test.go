package exact

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// poly reads "1, 2 - sqrt(2), 3".
func poly(t rapid.TB, text string) Poly {
	t.Helper()
	var p Poly
	for c := range strings.SplitSeq(text, ", ") {
		p = append(p, num(t, c))
	}
	return p
}

func drawPoly(t *rapid.T) Poly {
	p := make(Poly, rapid.IntRange(0, 5).Draw(t, "coefficients"))
	for i := range p {
		p[i] = drawLeaf(t).n
	}
	return p
}

// power is xⁿ.
func power(x Num, n int) Num {
	y := Int(1)
	for range n {
		y = y.Mul(x)
	}
	return y
}

func same(p, q Poly) bool {
	if len(p) != len(q) {
		return false
	}
	for i := range p {
		if !p[i].Equal(q[i]) {
			return false
		}
	}
	return true
}

func TestTrim(t *testing.T) {
	zero := Poly{Num{}}
	for _, c := range []struct {
		p, want Poly
		degree  int
	}{
		{nil, zero, 0},
		{Poly{}, zero, 0},
		{Poly{{}, {}, {}}, zero, 0},
		{Poly{Int(1), {}, {}}, Poly{Int(1)}, 0},
		{Poly{{}, Int(1), {}}, Poly{{}, Int(1)}, 1},
		{Poly{Int(1), {}, Int(2)}, Poly{Int(1), {}, Int(2)}, 2},
	} {
		if got := c.p.Trim(); !same(got, c.want) || c.p.Degree() != c.degree {
			t.Errorf("%v: %v of degree %d, want %v", c.p, got, c.p.Degree(), c.want)
		}
	}
	p := Poly{Int(1), Int(2)}
	p.Trim()[0] = Int(9)
	if !p[0].Equal(Int(1)) {
		t.Error("Trim gave out the polynomial itself")
	}
}

// Each operation means what it says of the values at a point.
func TestPolyOperations(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, q, x, a := drawPoly(t), drawPoly(t), drawLeaf(t).n, drawLeaf(t).n
		before := [2]string{Sum(p...).String(), Sum(q...).String()}
		var sum Num
		for i, c := range p {
			sum = sum.Add(c.Mul(power(x, i)))
		}
		if !p.At(x).Equal(sum) {
			t.Fatalf("%v at %v: %v, want %v", p, x, p.At(x), sum)
		}
		if !p.Add(q).At(x).Equal(p.At(x).Add(q.At(x))) {
			t.Fatalf("%v + %v = %v", p, q, p.Add(q))
		}
		if !p.Scale(a).At(x).Equal(p.At(x).Mul(a)) {
			t.Fatalf("%v · %v = %v", p, a, p.Scale(a))
		}
		shifted := p.Shift(a)
		if !shifted.At(x).Equal(p.At(x.Add(a))) {
			t.Fatalf("%v moved by %v = %v", p, a, shifted)
		}
		// Taylor's theorem: p(x+a) = p(a) + p'(a)x + …
		if len(shifted) > 1 && !shifted[1].Equal(p.Derivative().At(a)) {
			t.Fatalf("the derivative of %v is %v", p, p.Derivative())
		}
		if after := [2]string{Sum(p...).String(), Sum(q...).String()}; after != before {
			t.Fatalf("an operand changed: %v, %v", p, q)
		}
	})
}

func TestDerivative(t *testing.T) {
	for p, want := range map[string]string{
		"5": "0", "5, 3": "3", "1, 2, 3, 4": "2, 6, 12", "0, 0, 0, sqrt(2)": "0, 0, 3*sqrt(2)", "1, 0, 0": "0",
	} {
		if got := poly(t, p).Derivative(); !same(got, poly(t, want)) {
			t.Errorf("d/dx of %s is %v, want %s", p, got, want)
		}
	}
	if got := (Poly{}).Derivative(); !same(got, Poly{Num{}}) {
		t.Errorf("d/dx of nothing is %v", got)
	}
}

func TestQuoRem(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, q := drawPoly(t).Trim(), drawPoly(t)
		if q.isZero() {
			t.Skip("no divisor")
		}
		quo, rem := p.quoRem(q)
		multiple := quo.times(q).Add(rem) // of p, by a positive number
		a, b := p[len(p)-1], multiple[len(multiple)-1]
		if a.Sign() != b.Sign() || !same(multiple.Scale(a), p.Scale(b)) {
			t.Fatalf("%v over %v is %v, rest %v", p, q, quo, rem)
		}
		if rem.Degree() >= max(1, q.Degree()) || q.Degree() == 0 && !rem.isZero() {
			t.Fatalf("%v over %v leaves %v", p, q, rem)
		}
	})
}
