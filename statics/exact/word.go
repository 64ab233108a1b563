package exact

import (
	"math"
	"math/bits"
)

// Arithmetic on machine words within ±(2⁶³−1) that tells when a result is
// not. Leaving out −2⁶³ means that every word has a negative.

// addWord is x+y, if it is a word.
func addWord(x, y int64) (int64, bool) {
	s := x + y
	return s, (s > x) == (y > 0) && s != math.MinInt64
}

// mulWord is x·y, if it is a word.
func mulWord(x, y int64) (int64, bool) {
	hi, lo := bits.Mul64(absWord(x), absWord(y))
	if hi != 0 || lo > math.MaxInt64 {
		return 0, false
	}
	if (x < 0) != (y < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}

// cmpProducts orders the products x·y and u·v, y and v positive.
func cmpProducts(x, y, u, v int64) int {
	s := signWord(x)
	if t := signWord(u); s != t {
		return signWord(int64(s - t))
	}
	h1, l1 := bits.Mul64(absWord(x), uint64(y))
	h2, l2 := bits.Mul64(absWord(u), uint64(v))
	switch {
	case h1 == h2 && l1 == l2:
		return 0
	case h1 > h2 || h1 == h2 && l1 > l2:
		return s
	}
	return -s
}

// gcdWord is the greatest common divisor of |x| and d > 0.
func gcdWord(x, d int64) int64 {
	if d == 1 {
		return 1
	}
	a, b := absWord(x), uint64(d)
	for a > 1 {
		a, b = b%a, a
	}
	if a == 1 {
		return 1
	}
	return int64(b)
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
