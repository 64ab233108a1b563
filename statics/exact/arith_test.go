package exact

import (
	"errors"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// Sums, differences, products and quotients of roots against big.Float.
func TestOperationsAgreeWithHighPrecision(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawTwin(t, rapid.IntRange(0, 3).Draw(t, "depth"))
		checkShape(t, a.n)
		if a.n.Inexact() {
			t.Skip("past the bound on roots")
		}
		if !near(t, a.n.Places(60), a.f, 60) {
			t.Fatalf("%v = %s, want %s", a.n, a.n.Places(60), a.f.Text('f', 60))
		}
		if a.n.Sign() != sign(a.f) || a.n.IsZero() != (sign(a.f) == 0) {
			t.Fatalf("the sign of %v is %d, want %d", a.n, a.n.Sign(), sign(a.f))
		}
	})
}

func TestField(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, c := drawTwin(t, 1).n, drawTwin(t, 1).n, drawTwin(t, 1).n
		equal := func(law string, x, y Num) {
			if !x.Equal(y) || x.String() != y.String() {
				t.Fatalf("%s: a = %v, b = %v, c = %v: %v ≠ %v", law, a, b, c, x, y)
			}
		}
		equal("a+b = b+a", a.Add(b), b.Add(a))
		equal("(a+b)+c = a+(b+c)", a.Add(b).Add(c), a.Add(b.Add(c)))
		equal("ab = ba", a.Mul(b), b.Mul(a))
		equal("(ab)c = a(bc)", a.Mul(b).Mul(c), a.Mul(b.Mul(c)))
		equal("a(b+c) = ab+ac", a.Mul(b.Add(c)), a.Mul(b).Add(a.Mul(c)))
		equal("a+0 = a", a.Add(Int(0)), a)
		equal("1a = a", a.Mul(Int(1)), a)
		equal("a−a = 0", a.Sub(a), Int(0))
		equal("a−b = −(b−a)", a.Sub(b), b.Sub(a).Neg())
		equal("a² = aa", a.Square(), a.Mul(a))
		equal("sum", Sum(a, b, c), c.Add(a).Add(b))
		if q, err := a.Quo(b); err == nil {
			equal("(a/b)b = a", q.Mul(b), a)
		} else if !b.IsZero() {
			t.Fatalf("%v / %v: %v", a, b, err)
		}
	})
}

func TestOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, c := drawTwin(t, 1).n, drawTwin(t, 1).n, drawTwin(t, 1).n
		if a.Cmp(b) != -b.Cmp(a) || a.Cmp(a) != 0 || a.Equal(b) != (a.Cmp(b) == 0) {
			t.Fatalf("the order of %v and %v", a, b)
		}
		if a.Cmp(b) != a.Add(c).Cmp(b.Add(c)) {
			t.Fatalf("%v and %v change order when %v is added", a, b, c)
		}
		if a.Cmp(b)*c.Sign() != a.Mul(c).Cmp(b.Mul(c)) {
			t.Fatalf("%v and %v, times %v", a, b, c)
		}
		if Min(a, b).Cmp(Max(a, b)) > 0 || !Min(a, b).Add(Max(a, b)).Equal(a.Add(b)) {
			t.Fatalf("least and greatest of %v and %v", a, b)
		}
		if a.Abs().Sign() < 0 || !a.Abs().Square().Equal(a.Square()) {
			t.Fatalf("|%v| = %v", a, a.Abs())
		}
	})
}

// Quotients worked by hand with conjugates.
func TestQuoClearsRoots(t *testing.T) {
	for _, c := range []struct{ a, b, want string }{
		{"1", "sqrt(2)", "sqrt(2)/2"},
		{"1", "1 + sqrt(2)", "-1 + sqrt(2)"},
		{"6", "3 - sqrt(3)", "3 + sqrt(3)"},
		{"1", "sqrt(2) + sqrt(3)", "-sqrt(2) + sqrt(3)"},
		{"1", "1 + sqrt(2) + sqrt(3)", "1/2 + sqrt(2)/4 - sqrt(6)/4"},
		{"sqrt(6)", "sqrt(2)", "sqrt(3)"},
		{"4", "sqrt(6) - sqrt(2)", "sqrt(2) + sqrt(6)"},
		{"1", "sqrt(6) + sqrt(10) + sqrt(15)", "-60/239 + 19*sqrt(6)/239 + 11*sqrt(10)/239 + sqrt(15)/239"},
	} {
		b := num(t, c.b)
		q, err := num(t, c.a).Quo(b)
		if err != nil || !q.Mul(b).Equal(num(t, c.a)) {
			t.Errorf("(%s)/(%s) = %v, %v", c.a, c.b, q, err)
		}
		if q.String() != c.want {
			t.Errorf("(%s)/(%s) = %v, want %s", c.a, c.b, q, c.want)
		}
	}
}

func TestDivideByZero(t *testing.T) {
	for _, a := range []Num{{}, Int(1), num(t, "sqrt(2)")} {
		for _, zero := range []Num{{}, Num{}.MarkInexact(), num(t, "sqrt(2)").Sub(num(t, "sqrt(2)"))} {
			if _, err := a.Quo(zero); !errors.Is(err, ErrDivideByZero) {
				t.Errorf("%v/0: %v", a, err)
			}
		}
	}
}

func TestInexactMark(t *testing.T) {
	x, zero := Sin(Int(20)), Num{}
	quo := func(a, b Num) Num {
		q, err := a.Quo(b)
		if err != nil {
			t.Fatal(err)
		}
		return q
	}
	root2 := num(t, "sqrt(2)")
	for name, c := range map[string]struct {
		n    Num
		want bool
	}{
		"x":           {x, true},
		"x+1":         {x.Add(Int(1)), true},
		"1+x":         {Int(1).Add(x), true},
		"x−x":         {x.Sub(x), true},
		"√2·x":        {root2.Mul(x), true},
		"x·√2":        {x.Mul(root2), true},
		"(√2+x)(√2)":  {root2.Add(x).Mul(root2), true},
		"−x":          {x.Neg(), true},
		"|x|":         {x.Neg().Abs(), true},
		"x/√2":        {quo(x, root2), true},
		"√2/x":        {quo(root2, x), true},
		"√2/(x+√2)":   {quo(root2, x.Add(root2)), true},
		"x+0":         {x.Add(zero), true},
		"0·x":         {zero.Mul(x), false},
		"x·0":         {x.Mul(zero), false},
		"0/x":         {quo(zero, x), false},
		"0/(x+√2)":    {quo(zero, x.Add(root2)), false},
		"1+0":         {Int(1).Add(zero), false},
		"1·(x−x)":     {Int(1).Mul(x.Sub(x)), true},
		"max of 1, x": {Max(Int(1), x), false},
		"min of 1, x": {Min(Int(1), x), true},
		"√2·√2":       {root2.Mul(root2), false},
	} {
		if c.n.Inexact() != c.want {
			t.Errorf("%s is marked %t, want %t", name, c.n.Inexact(), c.want)
		}
	}
	if !zero.Mul(x).IsZero() || !x.Equal(x.Neg().Neg()) || Int(1).MarkInexact().Equal(Int(2)) {
		t.Error("the mark changed a value")
	}
}

// rootsOf is Σ √n over the first count primes.
func rootsOf(t rapid.TB, count int) Num {
	t.Helper()
	var sum Num
	for _, p := range trialPrimes()[:count] {
		r, err := Int(p).Sqrt()
		if err != nil {
			t.Fatal(err)
		}
		sum = sum.Add(r)
	}
	return sum
}

// Past the bounds a result is a marked rational right to 33 digits at least.
func TestWorkIsBounded(t *testing.T) {
	oracle := newFloat()
	for _, p := range trialPrimes()[:maxRoots+1] {
		oracle.Add(oracle, newFloat().Sqrt(newFloat().SetInt64(p)))
	}
	sum := rootsOf(t, maxRoots)
	if sum.Inexact() || len(sum.roots()) != maxRoots {
		t.Errorf("%d roots are held as %d, inexact %t", maxRoots, len(sum.roots()), sum.Inexact())
	}
	sum = rootsOf(t, maxRoots+1)
	if !sum.Inexact() || !sum.IsRational() || !near(t, sum.Places(33), oracle, 29) {
		t.Errorf("past the bound: %s, want %s", sum.Places(33), oracle.Text('f', 33))
	}
	for _, count := range []int{20, 100} { // past the roots, past the products
		a := rootsOf(t, count).Add(Int(1))
		square := a.Square()
		if !square.Inexact() || !square.IsRational() {
			t.Errorf("the square of %d roots has %d, inexact %t", count, len(square.roots()), square.Inexact())
		}
		gap := new(big.Float).Sub(newFloat().SetRat(square.r().rat()), squareOfRoots(count))
		if gap.Abs(gap).Cmp(newFloat().SetRat(pow10(-26).rat())) > 0 {
			t.Errorf("the square of %d roots is off by %v", count, gap)
		}
		if q, err := Int(1).Quo(a); err != nil || !q.Inexact() || q.Mul(a).Places(25) != Int(1).Places(25) {
			t.Errorf("1 over %d roots is %s, %v", count, q.Places(40), err)
		}
	}
}

// squareOfRoots is (1 + Σ √n)² over the first count primes.
func squareOfRoots(count int) *big.Float {
	sum := newFloat().SetInt64(1)
	for _, p := range trialPrimes()[:count] {
		sum.Add(sum, newFloat().Sqrt(newFloat().SetInt64(p)))
	}
	return sum.Mul(sum, sum)
}
