package exact

import (
	"math"
	"math/bits"
)

// The word-size fast path: rationals num/den in lowest terms, den > 0, both
// within ±(2⁶³−1). Each operation tells whether its result stayed inside.

// isSmall tells whether a is held in machine words.
func (a Num) isSmall() bool { return len(a.terms) == 0 }

// small is the word-size number n/d, d > 0, brought to lowest terms.
func small(n, d int64) Num {
	if d != 1 {
		g := gcd(n, d)
		n, d = n/g, d/g
	}
	return Num{num: n, over: d - 1}
}

// addSmall is a+b, if it fits.
func addSmall(a, b Num) (Num, bool) {
	if a.over|b.over == 0 {
		n, ok := addWord(a.num, b.num)
		return Num{num: n}, ok
	}
	da, db := a.over+1, b.over+1
	g := gcd(da, db)
	x, ok1 := mulWord(a.num, db/g)
	y, ok2 := mulWord(b.num, da/g)
	d, ok3 := mulWord(da/g, db)
	n, ok4 := addWord(x, y)
	if !(ok1 && ok2 && ok3 && ok4) {
		return Num{}, false
	}
	return small(n, d), true
}

// mulSmall is a·b, if it fits. Common factors are taken out before the
// product, so what fits is never missed.
func mulSmall(a, b Num) (Num, bool) {
	if a.num == 0 || b.num == 0 {
		return Num{}, true
	}
	da, db := a.over+1, b.over+1
	g, h := gcd(a.num, db), gcd(b.num, da)
	n, ok1 := mulWord(a.num/g, b.num/h)
	d, ok2 := mulWord(da/h, db/g)
	return Num{num: n, over: d - 1}, ok1 && ok2
}

// invertSmall is 1/a for a ≠ 0.
func invertSmall(a Num) Num {
	if a.num < 0 {
		return Num{num: -(a.over + 1), over: -a.num - 1}
	}
	return Num{num: a.over + 1, over: a.num - 1}
}

// cmpSmall orders a and b by their cross products in double words.
func cmpSmall(a, b Num) int {
	if s, t := signWord(a.num), signWord(b.num); s != t {
		return signWord(int64(s - t))
	}
	h1, l1 := bits.Mul64(absWord(a.num), uint64(b.over+1))
	h2, l2 := bits.Mul64(absWord(b.num), uint64(a.over+1))
	switch {
	case h1 == h2 && l1 == l2:
		return 0
	case h1 > h2 || h1 == h2 && l1 > l2:
		return signWord(a.num)
	}
	return -signWord(a.num)
}

// addWord is x+y for words within ±(2⁶³−1), if the sum is too.
func addWord(x, y int64) (int64, bool) {
	s := x + y
	return s, (s > x) == (y > 0) && s != math.MinInt64
}

// mulWord is x·y for words within ±(2⁶³−1), if the product is too.
func mulWord(x, y int64) (int64, bool) {
	hi, lo := bits.Mul64(absWord(x), absWord(y))
	if hi != 0 || lo > 1<<63-1 {
		return 0, false
	}
	if (x < 0) != (y < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}

func absWord(x int64) uint64 {
	if x < 0 {
		return uint64(-x)
	}
	return uint64(x)
}

func signWord(x int64) int {
	switch {
	case x > 0:
		return 1
	case x < 0:
		return -1
	}
	return 0
}

// gcd is the greatest common divisor of |x| and d > 0.
func gcd(x, d int64) int64 {
	a, b := absWord(x), uint64(d)
	for a != 0 {
		a, b = b%a, a
	}
	return int64(b)
}
