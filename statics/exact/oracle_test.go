package exact

import (
	"math"
	"math/big"
	"strings"

	"pgregory.net/rapid"
)

// The oracle carries each number a second time as a big.Float of so many bits
// that no short sum cancels by chance to less than tiny.
const oracleBits = 3000

var tiny = new(big.Float).SetMantExp(big.NewFloat(1), -oracleBits/3)

func newFloat() *big.Float { return new(big.Float).SetPrec(oracleBits) }

// newRat reads a decimal or a fraction. Below the bar big.Rat would take a
// leading zero for the sign of an octal number.
func newRat(s string) (*big.Rat, bool) {
	over, under, isFraction := strings.Cut(s, "/")
	if !isFraction {
		return new(big.Rat).SetString(s)
	}
	n, ok1 := new(big.Int).SetString(over, 10)
	d, ok2 := new(big.Int).SetString(under, 10)
	if !ok1 || !ok2 || d.Sign() == 0 {
		return nil, false
	}
	return new(big.Rat).SetFrac(n, d), true
}

// twin is a number with its oracle.
type twin struct {
	n Num
	f *big.Float
}

func twinOf(r *big.Rat) twin { return twin{FromRat(r), newFloat().SetRat(r)} }

// drawWord draws words, often at the edges of the fast path.
func drawWord(t *rapid.T, label string) int64 {
	edges := []int64{0, 1, -1, 2, 3, math.MaxInt64, math.MaxInt64 - 1, math.MinInt64, math.MinInt64 + 1,
		1 << 31, 1<<31 - 1, 1 << 32, 1<<32 + 1, 3037000499, 3037000500, 1 << 62, -1 << 62}
	if rapid.Bool().Draw(t, label+" is an edge") {
		return rapid.SampledFrom(edges).Draw(t, label)
	}
	return rapid.Int64().Draw(t, label)
}

// drawRat draws fractions with parts at the edges of words.
func drawRat(t *rapid.T, label string) *big.Rat {
	n, d := drawWord(t, label+" over"), drawWord(t, label+" under")
	if d == 0 {
		d = 1
	}
	return new(big.Rat).SetFrac(big.NewInt(n), big.NewInt(d))
}

// drawSmall draws everyday fractions.
func drawSmall(t *rapid.T, low int64) *big.Rat {
	return big.NewRat(rapid.Int64Range(low, 60).Draw(t, "n"), rapid.Int64Range(1, 12).Draw(t, "d"))
}

// drawTwin draws a sum, difference, product or quotient of roots and
// fractions, up to depth operations deep.
func drawTwin(t *rapid.T, depth int) twin {
	if depth == 0 {
		return drawLeaf(t)
	}
	a, b, f := drawTwin(t, depth-1), drawTwin(t, depth-1), newFloat()
	switch rapid.IntRange(0, 4).Draw(t, "operation") {
	case 0:
		return twin{a.n.Add(b.n), f.Add(a.f, b.f)}
	case 1:
		return twin{a.n.Sub(b.n), f.Sub(a.f, b.f)}
	case 2:
		return twin{a.n.Mul(b.n), f.Mul(a.f, b.f)}
	case 3:
		if q, err := a.n.Quo(b.n); err == nil {
			return twin{q, f.Quo(a.f, b.f)}
		}
	}
	return a
}

func drawLeaf(t *rapid.T) twin {
	if rapid.Bool().Draw(t, "rational") {
		return twinOf(drawSmall(t, -60))
	}
	a := twinOf(drawSmall(t, 0))
	root, err := a.n.Sqrt()
	if err != nil {
		t.Fatal(err)
	}
	return twin{root, newFloat().Sqrt(a.f)}
}

// sign is the sign of f, taking what is below tiny for 0.
func sign(f *big.Float) int {
	if newFloat().Abs(f).Cmp(tiny) < 0 {
		return 0
	}
	return f.Sign()
}

// near tells whether the decimal text is within 10^−places of f.
func near(t rapid.TB, text string, f *big.Float, places int) bool {
	t.Helper()
	r, ok := newRat(text)
	if !ok {
		t.Fatalf("%q is no decimal", text)
	}
	gap := newFloat().Sub(newFloat().SetRat(r), f)
	return gap.Abs(gap).Cmp(newFloat().SetRat(pow10(-places).rat())) <= 0
}

// checkShape holds a number to the invariants of its shape.
func checkShape(t rapid.TB, a Num) {
	t.Helper()
	checkFraction(t, a.r())
	for i, s := range a.roots() {
		checkFraction(t, s.q)
		if s.q.isZero() || s.n.Cmp(one) <= 0 {
			t.Fatalf("%v holds the root %v", a, s)
		}
		for _, u := range a.roots()[:i] {
			if _, square := squareRoot(new(big.Int).Mul(s.n, u.n)); square || u.n.Cmp(s.n) >= 0 {
				t.Fatalf("%v holds %v beside %v", a, u, s)
			}
		}
	}
	if a.more != nil && a.big == nil && len(a.more.roots) == 0 && !a.Inexact() {
		t.Fatalf("%v has more than it needs", a)
	}
}

func checkFraction(t rapid.TB, r rational) {
	t.Helper()
	if r.big == nil {
		if r.over < 0 || r.over == math.MaxInt64 || r.num == math.MinInt64 || gcdWord(r.num, r.over+1) != 1 {
			t.Fatalf("the words %d over %d+1", r.num, r.over)
		}
		return
	}
	if isWord(r.big.Num()) && isWord(r.big.Denom()) || r.num != 0 || r.over != 0 {
		t.Fatalf("%v is held as a big.Rat", r.big)
	}
}
