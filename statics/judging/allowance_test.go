package judging

import (
	"testing"

	"unpin/statics/exact"
)

// TestOnlyLong: half a unit in the third figure of what does not end within three, however small: a zero that rests on an
// angle beyond the exact ones is a number with more than thirty zeros.
func TestOnlyLong(t *testing.T) {
	t.Parallel()
	tiny := exact.MustParse("1/3")
	for range 3 {
		tiny = tiny.Mul(exact.MustParse("0.00000000000001"))
	}
	for _, c := range []struct{ of, want exact.Num }{
		{exact.Int(0), exact.Int(0)},
		{exact.MustParse("12.3"), exact.Int(0)},
		{exact.MustParse("1230"), exact.Int(0)},
		{exact.MustParse("12.34"), exact.MustParse("0.05")},
		{exact.MustParse("9.996"), exact.MustParse("0.005")},
		{tiny, powerOfTen(-45).Mul(half)},
	} {
		if got := OnlyLong(c.of); !got.Equal(c.want) {
			t.Errorf("%s: %s, want %s", c.of.Decimal(9), got.Decimal(9), c.want.Decimal(9))
		}
	}
}
