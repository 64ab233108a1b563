package notation

import (
	"testing"

	"unpin/statics/exact"
)

func num(s string) exact.Num { return exact.MustParse(s) }

func TestGiven(t *testing.T) {
	kN := Style{Units: Units{"kN", "m"}}
	comma := NewStyle(Conventions{Decimal: DecimalComma}, Units{"kN", "m"}, false)
	letters := Style{Units: Units{"P", "L"}}
	root := num("2")
	root, _ = root.Sqrt()
	for _, c := range []struct {
		st   Style
		n    exact.Num
		d    Dimension
		want string
	}{
		{kN, num("7.25"), Length, "7.25"},
		{kN, num("20/3"), Length, "6.667"},
		{kN, num("12000"), Force, "12000"},
		{kN, num("-1234.5678"), Force, "−1235"},
		{kN, root, Length, "1.414"},
		{comma, num("7.25"), Length, "7,25"},
		{letters, num("3/8"), Force, "3/8 P"},
		{letters, num("-1/4"), Moment, "−PL/4"},
		{letters, num("1"), Intensity, "P/L"},
		{letters, num("30"), Degrees, "30"},
	} {
		if got := c.st.Given(c.n, c.d); got != c.want {
			t.Errorf("%v as %v: %s, not %s", c.n, c.d, got, c.want)
		}
	}
}
