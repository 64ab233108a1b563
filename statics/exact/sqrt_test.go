package exact

import (
	"errors"
	"math"
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestSqrt(t *testing.T) {
	for text, want := range map[string]string{
		"0": "0", "1": "1", "2": "sqrt(2)", "4": "2", "8": "2*sqrt(2)", "12": "2*sqrt(3)", "25/2": "5*sqrt(2)/2",
		"1/3": "sqrt(3)/3", "4/9": "2/3", "0.0001": "1/100", "1000000": "1000", "9223372036854775807": "7*sqrt(188232082384791343)",
		"9998000099":           "sqrt(9998000099)", // 9901 · 1009799: two primes
		"9223372036854775808":  "2147483648*sqrt(2)",
		"10000600009":          "100003", // the square of a prime above the trial divisors
		"18446744073709551616": "4294967296",
	} {
		if root, err := num(t, text).Sqrt(); err != nil || root.String() != want {
			t.Errorf("√%s = %v, %v; want %s", text, root, err, want)
		}
	}
}

func TestSqrtSquared(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRat(t, "r")
		a := FromRat(r.Abs(r))
		root, err := a.Sqrt()
		if err != nil || !root.Square().Equal(a) || root.Sign() < 0 {
			t.Fatalf("√%v = %v, %v", a, root, err)
		}
		checkShape(t, root)
		for _, s := range root.roots() {
			for _, p := range trialPrimes() {
				if square := big.NewInt(p * p); new(big.Int).Rem(s.n, square).Sign() == 0 {
					t.Fatalf("√%v = %v: the square of %d is left under the root", a, root, p)
				}
			}
		}
	})
}

func TestNoRoot(t *testing.T) {
	for _, text := range []string{"-1", "-1/1000000", "sqrt(2)", "3 + 2*sqrt(2)", "-sqrt(2)"} {
		_, err := num(t, text).Sqrt()
		if !errors.Is(err, ErrNoRoot) {
			t.Errorf("the root of %s: %v", text, err)
		}
	}
}

// The square of a prime above the trial divisors can hide in a radicand. Such
// roots are still told apart, or not, by their class.
func TestHiddenSquares(t *testing.T) {
	const p, q, r = 1000003, 1000033, 1000037 // primes
	root := func(factors ...int64) Num {
		n := Int(1)
		for _, f := range factors {
			n = n.Mul(Int(f))
		}
		s, err := n.Sqrt()
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	hidden := root(p, p, q) // p·√q
	if !hidden.roots()[0].loose {
		t.Fatalf("%v hides no square, so this tests nothing", hidden)
	}
	if d := hidden.Sub(Int(p).Mul(root(q))); !d.IsZero() || d.Sign() != 0 {
		t.Errorf("p√q − p√q = %v", d)
	}
	if s := root(p, p, q).Mul(root(r, r, q)); !s.Equal(Int(p).Mul(Int(q)).Mul(Int(r))) {
		t.Errorf("p√q · r√q = %v", s)
	}
	if s := root(p, p, q).Add(root(r, r, q)); !s.Equal(Int(p + r).Mul(root(q))) {
		t.Errorf("p√q + r√q = %v", s)
	}
	x := Int(1).Add(root(p, p, q)).Add(root(q, q, q, r)).Add(root(2))
	inverse, err := Int(1).Quo(x)
	if err != nil || !inverse.Mul(x).Equal(Int(1)) {
		t.Errorf("1/(%v) = %v, %v", x, inverse, err)
	}
	if root(p, q).Equal(root(p, r)) || root(p, p, q).Sub(root(p, p, r)).Sign() != -1 {
		t.Error("two classes are taken for one")
	}
	checkShape(t, x)
}

func TestHypot(t *testing.T) {
	for _, c := range []struct {
		a, b, want string
		inexact    bool
	}{
		{"3", "4", "5", false},
		{"-1/2", "1/2", "sqrt(2)/2", false},
		{"0", "-7", "7", false},
		{"0", "0", "0", false},
		{"sqrt(2)", "sqrt(7)", "3", false},
		{"1 + sqrt(2)", "1 - sqrt(2)", "sqrt(6)", false},
		// √(4 + 2√2) = 2.6131259297527530557…, twice cos 22.5° times √2.
		{"1 + sqrt(2)", "1", "2.613125929752753055713286", true},
	} {
		h, err := Hypot(num(t, c.a), num(t, c.b))
		if err != nil || h.Inexact() != c.inexact {
			t.Errorf("hypot(%s, %s) = %v, %v", c.a, c.b, h, err)
		}
		if got := h.Decimal(25); got != c.want && h.String() != c.want && !strings.HasPrefix(got, c.want) {
			t.Errorf("hypot(%s, %s) = %v, want %s", c.a, c.b, h, c.want)
		}
	}
}

// Where the root is taken in digits, 34 of them are right, at any size.
func TestInexactSqrt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawTwin(t, 1)
		if a.n.Sign() <= 0 {
			t.Skip("no root")
		}
		k := rapid.IntRange(-50, 50).Draw(t, "power of ten")
		scaled := a.n.scale(pow10(k))
		root := scaled.sqrtApprox()
		if a.n.IsRational() {
			root, _ = scaled.MarkInexact().Sqrt()
		}
		f := newFloat().Sqrt(newFloat().Mul(a.f, newFloat().SetRat(pow10(k).rat())))
		if !root.Inexact() || !root.IsRational() || !near(t, root.Places(200), f, 33-root.exponent()) {
			t.Fatalf("√(%v) = %v, want %s", scaled, root, f.Text('g', 40))
		}
	})
}

// TestSplitSquareWord holds the short way for words to the one for any number.
func TestSplitSquareWord(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Int64Range(1, math.MaxInt64).Draw(t, "v")
		if rapid.Bool().Draw(t, "small") {
			v = v%1_000_000 + 1
		}
		s, n, loose := splitSquareWord(v)
		bs, bn, bloose := splitSquare(big.NewInt(v))
		if big.NewInt(s).Cmp(bs) != 0 || big.NewInt(n).Cmp(bn) != 0 || loose != bloose {
			t.Fatalf("%d = %d²·%d, loose %t; as any number %s²·%s, loose %t", v, s, n, loose, bs, bn, bloose)
		}
	})
}
