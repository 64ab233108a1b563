package exact

// Poly is a polynomial c₀ + c₁x + c₂x² + …, lowest power first. No
// coefficients, or only zeros, is the zero polynomial. No operation changes
// its operands.
type Poly []Num

// Trim is p without zero highest powers; the zero polynomial is one 0.
func (p Poly) Trim() Poly {
	n := len(p)
	for n > 0 && p[n-1].IsZero() {
		n--
	}
	if n == 0 {
		return Poly{Num{}}
	}
	return append(Poly(nil), p[:n]...)
}

// Degree is the highest power with a factor other than zero; of the zero
// polynomial it is 0.
func (p Poly) Degree() int { return len(p.Trim()) - 1 }

// isZero tells whether p is zero throughout.
func (p Poly) isZero() bool {
	t := p.Trim()
	return len(t) == 1 && t[0].IsZero()
}

// At is p(x).
func (p Poly) At(x Num) Num {
	var y Num
	for i := len(p) - 1; i >= 0; i-- {
		y = y.Mul(x).Add(p[i])
	}
	return y
}

// Derivative is dp/dx.
func (p Poly) Derivative() Poly {
	var d Poly
	for i := 1; i < len(p); i++ {
		d = append(d, p[i].Mul(Int(int64(i))))
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
	s := make(Poly, len(p))
	for i, c := range p {
		s[i] = c.Mul(k)
	}
	return s.Trim()
}

// Shift is the polynomial p(x+a), by Horner's rule.
func (p Poly) Shift(a Num) Poly {
	var s Poly
	for i := len(p) - 1; i >= 0; i-- {
		s = append(Poly{Num{}}, s...).Add(s.Scale(a)) // x·s + a·s
		s = s.Add(Poly{p[i]})
	}
	return s.Trim()
}

// quoRem is quotient and remainder of p over q ≠ 0.
func (p Poly) quoRem(q Poly) (quo, rem Poly) {
	rem, q = p.Trim(), q.Trim()
	if len(rem) < len(q) {
		return Poly{Num{}}, rem
	}
	quo = make(Poly, len(rem)-len(q)+1)
	for i := len(quo) - 1; i >= 0; i-- {
		k, _ := rem[i+len(q)-1].Quo(q[len(q)-1])
		quo[i] = k
		for j, c := range q {
			rem[i+j] = rem[i+j].Sub(k.Mul(c))
		}
		rem = rem[:i+len(q)-1]
	}
	return quo, rem.Trim()
}

// monic is p ≠ 0 over its highest factor.
func (p Poly) monic() Poly {
	p = p.Trim()
	m := make(Poly, len(p))
	for i, c := range p {
		m[i], _ = c.Quo(p[len(p)-1])
	}
	return m
}
