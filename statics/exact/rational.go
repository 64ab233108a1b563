package exact

import (
	"math"
	"math/big"
)

// rational is a fraction in lowest terms. It never changes; the zero value is
// 0. What fits is held in words, and the operations on words take no memory.
type rational struct {
	num, over int64    // num/(over+1), while big is nil
	big       *big.Rat // any other, read only
}

var half = rational{num: 1, over: 1}

// wordRatio is n/d for words in lowest terms, d > 0.
func wordRatio(n, d int64) rational { return rational{num: n, over: d - 1} }

// wholeRatio is the whole number v, which it may keep.
func wholeRatio(v *big.Int) rational {
	if isWord(v) {
		return rational{num: v.Int64()}
	}
	return newRatio(new(big.Rat).SetInt(v))
}

// newRatio is the fraction r, which it may keep.
func newRatio(r *big.Rat) rational {
	if n, d := r.Num(), r.Denom(); isWord(n) && isWord(d) {
		return wordRatio(n.Int64(), d.Int64())
	}
	return rational{big: r}
}

// isWord tells whether v is within ±(2⁶³−1).
func isWord(v *big.Int) bool { return v.IsInt64() && v.Int64() != math.MinInt64 }

// rat is a as a big.Rat to read only.
func (a rational) rat() *big.Rat {
	if a.big != nil {
		return a.big
	}
	return new(big.Rat).SetFrac64(a.num, a.over+1)
}

func (a rational) add(b rational) rational {
	if a.big == nil && b.big == nil {
		if s, ok := addWords(a, b); ok {
			return s
		}
	}
	return newRatio(new(big.Rat).Add(a.rat(), b.rat()))
}

// addWords is a+b held in words, unless a step on the way does not fit.
func addWords(a, b rational) (rational, bool) {
	if a.over|b.over == 0 {
		n, ok := addWord(a.num, b.num)
		return rational{num: n}, ok
	}
	da, db := a.over+1, b.over+1
	g := gcdWord(da, db)
	if g == 1 { // nor can the sum be shortened
		x, ok1 := mulWord(a.num, db)
		y, ok2 := mulWord(b.num, da)
		n, ok3 := addWord(x, y)
		d, ok4 := mulWord(da, db)
		return wordRatio(n, d), ok1 && ok2 && ok3 && ok4
	}
	x, ok1 := mulWord(a.num, db/g)
	y, ok2 := mulWord(b.num, da/g)
	n, ok3 := addWord(x, y)
	if !(ok1 && ok2 && ok3) {
		return rational{}, false
	}
	// What n and the denominator still share divides g.
	h := gcdWord(n, g)
	d, ok := mulWord(da/g, db/h)
	return wordRatio(n/h, d), ok
}

func (a rational) mul(b rational) rational {
	if a.big == nil && b.big == nil {
		if p, ok := mulWords(a, b); ok {
			return p
		}
	}
	return newRatio(new(big.Rat).Mul(a.rat(), b.rat()))
}

// mulWords is a·b held in words, if it fits: common factors are taken out
// before the product.
func mulWords(a, b rational) (rational, bool) {
	if a.over|b.over == 0 {
		n, ok := mulWord(a.num, b.num)
		return rational{num: n}, ok
	}
	da, db := a.over+1, b.over+1
	if g := gcdWord(a.num, db); g > 1 {
		a.num, db = a.num/g, db/g
	}
	if g := gcdWord(b.num, da); g > 1 {
		b.num, da = b.num/g, da/g
	}
	n, ok1 := mulWord(a.num, b.num)
	d, ok2 := mulWord(da, db)
	return wordRatio(n, d), ok1 && ok2
}

func (a rational) neg() rational {
	if a.big == nil {
		return rational{num: -a.num, over: a.over}
	}
	return newRatio(new(big.Rat).Neg(a.big))
}

// inv is 1/a for a ≠ 0.
func (a rational) inv() rational {
	switch {
	case a.big != nil:
		return newRatio(new(big.Rat).Inv(a.big))
	case a.num < 0:
		return wordRatio(-a.over-1, -a.num)
	}
	return wordRatio(a.over+1, a.num)
}

func (a rational) sign() int {
	if a.big != nil {
		return a.big.Sign()
	}
	return signWord(a.num)
}

func (a rational) cmp(b rational) int {
	if a.big == nil && b.big == nil {
		return cmpProducts(a.num, b.over+1, b.num, a.over+1)
	}
	return a.rat().Cmp(b.rat())
}

func (a rational) isZero() bool { return a == rational{} }

func (a rational) isInt() bool {
	if a.big != nil {
		return a.big.IsInt()
	}
	return a.over == 0
}

// floor is the greatest whole number not above a.
func (a rational) floor() *big.Int {
	r := a.rat()
	return new(big.Int).Div(r.Num(), r.Denom())
}
