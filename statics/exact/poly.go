package exact

import "slices"

// Poly is a polynomial c₀ + c₁x + c₂x² + …, lowest power first. No
// coefficients, or only zeros, is the zero polynomial. No operation changes
// its operands.
type Poly []Num

// Trim is p without zero highest powers; the zero polynomial is one 0.
func (p Poly) Trim() Poly {
	if p.isZero() {
		return Poly{Num{}}
	}
	return slices.Clone(p[:p.Degree()+1])
}

// Degree is the highest power with a coefficient other than zero; of the zero
// polynomial it is 0.
func (p Poly) Degree() int {
	for n := len(p) - 1; n > 0; n-- {
		if !p[n].IsZero() {
			return n
		}
	}
	return 0
}

// isZero tells whether p is zero throughout.
func (p Poly) isZero() bool {
	return !slices.ContainsFunc(p, func(c Num) bool { return !c.IsZero() })
}

// At is p(x), by Horner's rule.
func (p Poly) At(x Num) Num {
	if len(p) == 0 {
		return Num{}
	}
	y := p[len(p)-1]
	for i := len(p) - 2; i >= 0; i-- {
		y = y.Mul(x).Add(p[i])
	}
	return y
}

// Derivative is dp/dx.
func (p Poly) Derivative() Poly {
	var d Poly
	for i := 1; i < len(p); i++ {
		d = append(d, p[i].scale(rational{num: int64(i)}))
	}
	return d.Trim()
}

// Add is p+q.
func (p Poly) Add(q Poly) Poly {
	sum := make(Poly, max(len(p), len(q)))
	copy(sum, p)
	for i, c := range q {
		sum[i] = sum[i].Add(c)
	}
	return sum.Trim()
}

// Scale is k·p.
func (p Poly) Scale(k Num) Poly {
	s := slices.Clone(p)
	s.multiply(k)
	return s.Trim()
}

// Shift is the polynomial p(x+a), by Horner's rule on polynomials.
func (p Poly) Shift(a Num) Poly {
	s := Poly{Num{}}
	for _, c := range slices.Backward(p) {
		timesX := append(Poly{c}, s...)
		s = timesX.Add(s.Scale(a))
	}
	return s.Trim()
}

// quoRem is quotient and remainder of p over q ≠ 0, or both times one positive
// number: a quotient by a sum of roots has long terms, a product short ones.
func (p Poly) quoRem(q Poly) (quo, rem Poly) {
	rem, q = p.Trim(), q.Trim()
	top := len(q) - 1
	lead := q[top]
	quo = make(Poly, max(0, len(rem)-top))
	for i := range slices.Backward(quo) {
		if lead.IsRational() {
			quo[i], _ = rem[i+top].Quo(lead)
		} else {
			quo[i] = rem[i+top].scale(rational{num: int64(lead.Sign())})
			quo[i+1:].multiply(lead.Abs())
			rem.multiply(lead.Abs())
		}
		for j, c := range q[:top] {
			rem[i+j] = rem[i+j].Sub(quo[i].Mul(c))
		}
		rem = rem[:i+top]
	}
	return quo.Trim(), rem.Trim()
}

// multiply multiplies p by k in place.
func (p Poly) multiply(k Num) {
	for i, c := range p {
		p[i] = c.Mul(k)
	}
}

// monic is p ≠ 0 over its highest coefficient.
func (p Poly) monic() Poly {
	m := p.Trim()
	inverse, _ := Int(1).Quo(m[len(m)-1])
	m.multiply(inverse)
	return m
}

func (p Poly) isRational() bool {
	return !slices.ContainsFunc(p, func(c Num) bool { return !c.IsRational() })
}
