package statics

import (
	"unpin/statics/exact"
)

var one = exact.Int(1)

// over is a ÷ b for a divisor known not to be zero.
func over(a, b exact.Num) exact.Num {
	q, err := a.Quo(b)
	if err != nil {
		panic("internal error: division by zero that an earlier check excludes")
	}
	return q
}

func frac(n, d int64) exact.Num { return over(exact.Int(n), exact.Int(d)) }
