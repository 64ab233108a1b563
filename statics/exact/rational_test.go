package exact

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// Words and what does not fit them, at every edge, against big.Rat.
func TestFractionsAgreeWithBigRat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, y := drawRat(t, "x"), drawRat(t, "y")
		a, b := newRatio(new(big.Rat).Set(x)), newRatio(new(big.Rat).Set(y))
		check := func(name string, got rational, want *big.Rat) {
			checkFraction(t, got)
			if got.rat().Cmp(want) != 0 {
				t.Fatalf("%v %s %v = %v, want %v", x, name, y, got.rat(), want)
			}
		}
		check("+", a.add(b), new(big.Rat).Add(x, y))
		check("×", a.mul(b), new(big.Rat).Mul(x, y))
		check("neg", a.neg(), new(big.Rat).Neg(x))
		if !a.isZero() {
			check("inv", a.inv(), new(big.Rat).Inv(x))
		}
		if a.cmp(b) != x.Cmp(y) || a.sign() != x.Sign() || a.isInt() != x.IsInt() {
			t.Fatalf("order, sign or wholeness of %v and %v", x, y)
		}
	})
}

// The same operation by way of words and by way of big.Rat gives one shape.
func TestWordPathIsTheBigPath(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := newRatio(drawRat(t, "x")), newRatio(drawRat(t, "y"))
		wide := func(r rational) rational { return rational{big: r.rat()} }
		for _, pair := range [][2]rational{
			{a.add(b), wide(a).add(wide(b))},
			{a.mul(b), wide(a).mul(wide(b))},
			{a.neg(), wide(a).neg()},
		} {
			if pair[0].big == nil && pair[0] != pair[1] || pair[0].cmp(pair[1]) != 0 {
				t.Fatalf("%v by words, %v by big.Rat", pair[0], pair[1])
			}
		}
		if a.cmp(b) != wide(a).cmp(wide(b)) {
			t.Fatalf("order of %v and %v", a.rat(), b.rat())
		}
	})
}

func TestWordArithmeticTellsOverflow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, y := drawWord(t, "x"), drawWord(t, "y")
		a, b := big.NewInt(x), big.NewInt(y)
		if !isWord(a) || !isWord(b) {
			t.Skip("not a word")
		}
		sum, ok := addWord(x, y)
		if want := new(big.Int).Add(a, b); ok != isWord(want) || ok && sum != want.Int64() {
			t.Fatalf("%d + %d = %d, %t; want %v", x, y, sum, ok, want)
		}
		product, ok := mulWord(x, y)
		if want := new(big.Int).Mul(a, b); ok != isWord(want) || ok && product != want.Int64() {
			t.Fatalf("%d × %d = %d, %t; want %v", x, y, product, ok, want)
		}
	})
}

// A program that counts on the fast path can see that it takes no memory.
func TestWordsTakeNoMemory(t *testing.T) {
	a, b := MustParse("12.5"), MustParse("-7/3")
	for name, f := range map[string]func(){
		"Add": func() { a.Add(b) },
		"Sub": func() { a.Sub(b) },
		"Mul": func() { a.Mul(b) },
		"Quo": func() { _, _ = a.Quo(b) },
		"Cmp": func() { a.Cmp(b) },
	} {
		if n := testing.AllocsPerRun(10, f); n != 0 {
			t.Errorf("%s of two words allocates %v times", name, n)
		}
	}
}
