package exact

import (
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"
)

// checkWordText holds what is written by words of one number to what big whole numbers give.
func checkWordText(t interface {
	Helper()
	Errorf(string, ...any)
}, a Num, n int) {
	t.Helper()
	hold := func(what, got, want string) {
		if got != want {
			t.Errorf("%s(%d) of %d/%d: %q, want %q", what, n, a.num, uint64(a.over)+1, got, want)
		}
	}
	hold("String", a.String(), a.r().rat().RatString())
	hold("Places", a.Places(n), plain(a.rounded(clamp(n, -maxExponent)), clamp(n, -maxExponent)))
	if !a.IsZero() {
		hold("Decimal", a.Decimal(n), a.decimalBig(n))
		hold("Figures", a.Figures(n), a.figuresBig(n))
		if e, ok := exponentWord(absWord(a.num), uint64(a.over)+1); ok && e != a.Abs().r().exponent() {
			t.Errorf("exponent of %v: %d", a, e)
		}
	}
}

// TestWordText draws fractions up to the edges of words, and figures from none to more than words have.
func TestWordText(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		checkWordText(t, FromRat(drawRat(t, "a")), rapid.IntRange(-25, 45).Draw(t, "n"))
	})
}

// TestWordTextSmall goes through very many fractions such as frames have, among them halves and 9.99…
func TestWordTextSmall(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(1, 2))
	count := 100000
	if testing.Short() {
		count = 10000
	}
	for range count {
		a, err := Frac(random.Int64N(1<<random.IntN(40)+1)-1<<8, 1+random.Int64N(1<<random.IntN(20)))
		if err != nil {
			t.Fatal(err)
		}
		checkWordText(t, a, random.IntN(24)-3)
	}
}
