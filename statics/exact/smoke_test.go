package exact

import "testing"

func TestSmoke(t *testing.T) {
	r2, _ := Int(2).Sqrt()
	r3, _ := Int(3).Sqrt()
	x := MustParse("1/2").Add(r2.Mul(MustParse("3/4"))).Sub(r3)
	q, err := Int(1).Quo(x)
	t.Log(x, q, err, q.Mul(x), x.Sign(), x.Decimal(20), x.Places(3), x.Figures(3), x.Float(), Sin(Int(20)), Sin(Int(20)).Decimal(40), Cos(Int(75)), Cos(Int(-300)), Cos(Int(90)))
	for _, s := range []string{"15.25", "0.05", "1234.6", "9.697", "9.997", "-0.0004", "0.99996"} {
		t.Log(s, MustParse(s).Figures(3), MustParse(s).Places(-1), MustParse(s).Places(2), MustParse(s).Decimal(3))
	}
	p := Poly{Int(-2), Int(0), Int(1)}
	t.Log(p.Roots(Int(-10), Int(10)))
	p = Poly{Int(-2), Int(0), Int(0), Int(1)}
	t.Log(p.Roots(Int(-10), Int(10)))
	p = Poly{Int(6), Int(-11), Int(6), Int(-1)}
	t.Log(p.Roots(Int(1), Int(3)), p.Shift(Int(1)))
	t.Log(Poly{Int(-2), r2, Int(1), Int(1)}.Roots(Int(-10), Int(10)))
	t.Log(Poly{r2.Neg(), Int(1)}.Roots(r2, r2))
	if !q.Mul(x).Equal(Int(1)) { t.Fatal() }
}
