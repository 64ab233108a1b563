package exact

import (
	"math/big"
	"sync"
)

// piDigits is π to 75 decimal places, cut.
const piDigits = "3.141592653589793238462643383279502884197169399375105820974944592307816406286"

// seriesBits is the fixed point of the power series.
const seriesBits = 200

// Cos is the cosine of an angle in degrees: exact for multiples of 15, else a
// rational of 34 significant digits marked inexact. An irrational angle is
// first rounded to 40 significant digits.
func Cos(deg Num) Num { return Sin(Int(90).Sub(deg)) }

// Sin is the sine of an angle in degrees, exact where Cos is.
func Sin(deg Num) Num {
	if !deg.IsRational() {
		deg = deg.Rounded(maxTerminating).MarkInexact()
	}
	halfTurn := wholeRatio(big.NewInt(180))
	halves := deg.r().mul(halfTurn.inv()).floor()
	sine := sinHalfTurn(deg.r().add(wholeRatio(halves).mul(halfTurn).neg()))
	if halves.Bit(0) == 1 {
		sine = sine.Neg()
	}
	return sine.markedBy(deg)
}

// sinHalfTurn is the sine of 0 ≤ deg < 180.
func sinHalfTurn(deg rational) Num {
	right := rational{num: 90}
	if deg.cmp(right) > 0 {
		deg = deg.neg().add(rational{num: 180})
	}
	if step := deg.mul(wordRatio(1, 15)); step.isInt() {
		return sines()[step.num]
	}
	if deg.cmp(rational{num: 45}) <= 0 {
		return sinSeries(radians(deg))
	}
	return cosSeries(radians(right.add(deg.neg())))
}

// sines holds the sines of 0°, 15° … 90°.
var sines = sync.OnceValue(func() [7]Num {
	halfRoot := func(n int64) Num {
		r, _ := Int(n).Sqrt()
		return r.scale(half)
	}
	r2, r3, r6 := halfRoot(2), halfRoot(3), halfRoot(6)
	return [7]Num{{}, r6.Sub(r2).scale(half), fraction(half), r2, r3, r6.Add(r2).scale(half), Int(1)}
})

// sinSeries is the sine of 0 < x ≤ π/4 as x·(1 − x²/3! + x⁴/5! − …), which
// keeps its significant digits however small x is.
func sinSeries(x rational) Num { return inexact(x.mul(evenSeries(x, 2))) }

// cosSeries is the cosine of 0 < x ≤ π/4 as 1 − x²/2! + x⁴/4! − …
func cosSeries(x rational) Num { return inexact(evenSeries(x, 1)) }

// inexact is r to 34 significant digits, marked.
func inexact(r rational) Num { return fraction(r).Rounded(inexactDigits).MarkInexact() }

func radians(deg rational) rational {
	pi, _ := new(big.Rat).SetString(piDigits)
	return newRatio(pi).mul(deg).mul(wordRatio(1, 180))
}

// evenSeries is 1 − x²/k(k+1) + x⁴/k(k+1)(k+2)(k+3) − … in fixed point.
func evenSeries(x rational, k int64) rational {
	unit := new(big.Int).Lsh(one, seriesBits)
	square := fixed(x.mul(x))
	part, sum := new(big.Int).Set(unit), new(big.Int).Set(unit)
	for ; part.Sign() != 0; k += 2 {
		part.Mul(part, square)
		part.Quo(part, unit).Quo(part, big.NewInt(-k*(k+1)))
		sum.Add(sum, part)
	}
	return newRatio(new(big.Rat).SetFrac(sum, unit))
}

// fixed is r·2^seriesBits cut to a whole number.
func fixed(r rational) *big.Int {
	v := new(big.Int).Lsh(r.rat().Num(), seriesBits)
	return v.Quo(v, r.rat().Denom())
}
