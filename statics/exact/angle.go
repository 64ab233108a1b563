package exact

import "math/big"

// piDigits is π to 75 decimal places.
const piDigits = "3.141592653589793238462643383279502884197169399375105820974944592307816406286"

// Cos is the cosine of an angle in degrees: exact for multiples of 15, else a
// rational of 34 significant digits marked inexact. An irrational angle is
// first rounded to 40 significant digits.
func Cos(deg Num) Num { return Sin(Int(90).Sub(deg)) }

// Sin is the sine of an angle in degrees, exact as Cos is.
func Sin(deg Num) Num {
	if !deg.IsRational() {
		deg = deg.approx(40).MarkInexact()
	}
	turn, inexact := modulo(deg.marked(false), 360), deg.inexact
	if turn.Cmp(Int(180)) >= 0 {
		return sinHalfTurn(turn.Sub(Int(180))).Neg().marked2(inexact)
	}
	return sinHalfTurn(turn).marked2(inexact)
}

func (a Num) marked2(inexact bool) Num { return a.marked(a.inexact || inexact) }

// modulo is a rational a brought into 0 ≤ a < m.
func modulo(a Num, m int64) Num {
	turns := a.Mul(Num{num: 1, over: m - 1}).Floor()
	return a.Sub(Int(m).Mul(ratNum(new(big.Rat).SetInt(turns))))
}

// sinHalfTurn is the sine of 0 ≤ deg < 180.
func sinHalfTurn(deg Num) Num {
	if deg.Cmp(Int(90)) > 0 {
		deg = Int(180).Sub(deg)
	}
	if step := deg.Mul(Num{num: 1, over: 14}); step.IsInt() {
		return sinTable[step.num]
	}
	if deg.Cmp(Int(45)) <= 0 {
		return sinSeries(deg.rat())
	}
	return cosSeries(Int(90).Sub(deg).rat())
}

// sinTable holds the sines of 0°, 15° … 90°.
var sinTable = func() [7]Num {
	half := Num{num: 1, over: 1}
	root := func(n int64) Num { r, _ := Int(n).Sqrt(); return r.Mul(half) }
	r2, r3, r6 := root(2), root(3), root(6)
	return [7]Num{{}, r6.Sub(r2).Mul(half), half, r2, r3, r6.Add(r2).Mul(half), Int(1)}
}()

// seriesBits is the fixed point of the power series.
const seriesBits = 200

// sinSeries is the sine of 0 < deg ≤ 45 as x·(1 − x²/3! + x⁴/5! − …), x in
// radians, which keeps its significant digits however small x is.
func sinSeries(deg *big.Rat) Num {
	x := radians(deg)
	return ratNum(x.Mul(x, evenSeries(x, 2))).approx(34).MarkInexact()
}

// cosSeries is the cosine of 0 < deg ≤ 45 as 1 − x²/2! + x⁴/4! − …
func cosSeries(deg *big.Rat) Num {
	return ratNum(evenSeries(radians(deg), 1)).approx(34).MarkInexact()
}

func radians(deg *big.Rat) *big.Rat {
	pi, _ := new(big.Rat).SetString(piDigits)
	x := pi.Mul(pi, deg)
	return x.Mul(x, big.NewRat(1, 180))
}

// evenSeries is 1 − x²/k(k+1) + x⁴/k(k+1)(k+2)(k+3) − … in fixed point.
func evenSeries(x *big.Rat, k int64) *big.Rat {
	scale := new(big.Int).Lsh(one, seriesBits)
	square := new(big.Int).Mul(x.Num(), x.Num())
	square.Lsh(square, seriesBits).Quo(square, new(big.Int).Mul(x.Denom(), x.Denom()))
	part, sum := new(big.Int).Set(scale), new(big.Int).Set(scale)
	for ; part.Sign() != 0; k += 2 {
		part.Mul(part, square).Rsh(part, seriesBits)
		part.Quo(part, big.NewInt(-k*(k+1)))
		sum.Add(sum, part)
	}
	return new(big.Rat).SetFrac(sum, scale)
}
