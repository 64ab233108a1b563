package wording

import (
	"math/big"
	"sort"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Point is a place as a pair of coordinates: "(8, 19.67)".
func (w places) Point(p statics.Point) string { return w.st.Pair(p.X, p.Y, notation.Length) }

// Place is a place by its joint: "C"; where none is, "the point (8, 19.67)".
func (w places) Place(p statics.Point) string {
	if j := w.a.JointAt(p); j != statics.None {
		return w.joint(j)
	}
	return "the point " + w.Point(p)
}

// Along is a place along a member at distance x from its start: "2.4 m from B", "at B", "at C".
func (w places) Along(member int, x exact.Num) string {
	m := w.a.Frame.Members[member]
	switch {
	case x.IsZero():
		return "at " + w.joint(m.From)
	case x.Equal(w.a.Frame.Length(member)):
		return "at " + w.joint(m.To)
	}
	return w.st.WithUnit(x, notation.Length) + " from " + w.joint(m.From)
}

// Direction is a direction in words: "up"; inclined, with its components, "up to the right along (3, 4)", or spoken with
// its steepness, "up to the right, 3 across for 4 up".
func (w places) Direction(v statics.Vector) string {
	word := notation.DirectionWord(v)
	switch {
	case v.X.IsZero() || v.Y.IsZero():
		return word
	case w.spoken:
		return word + ", " + steepness(v)
	}
	return word + " along " + w.ratio(v)
}

// ratio is an inclined direction by its components, in lowest terms where these are short whole numbers: (3, 4) for (24, 32).
func (w places) ratio(v statics.Vector) string {
	const short = 1000
	x, okX := v.X.Rat()
	y, okY := v.Y.Rat()
	if okX && okY {
		q := new(big.Rat).Quo(x, y)
		across, up := new(big.Int).Abs(q.Num()), q.Denom()
		if limit := big.NewInt(short); across.Cmp(limit) < 0 && up.Cmp(limit) < 0 {
			v = statics.Vector{X: exact.Int(int64(x.Sign()) * across.Int64()), Y: exact.Int(int64(y.Sign()) * up.Int64())}
		}
	}
	return w.st.Pair(v.X, v.Y, notation.Pure)
}

// clause is a direction with a sentence going on after it.
func (w places) clause(v statics.Vector) string {
	if v.X.IsZero() || v.Y.IsZero() {
		return w.Direction(v)
	}
	return w.Direction(v) + ","
}

// line is a line of sliding, which has no sense: "horizontally", spoken "along a horizontal line".
func (w places) line(v statics.Vector) string {
	level, upright := "horizontally", "vertically"
	if w.spoken {
		level, upright = "along a horizontal line", "along a vertical line"
	}
	switch {
	case v.Y.IsZero():
		return level
	case v.X.IsZero():
		return upright
	case w.spoken:
		return "along a line " + w.Direction(v)
	}
	return "along " + w.ratio(v)
}

// steepness says how an inclined direction lies: "3 across for 4 up" where it is a short ratio, else "20.5 degrees from
// the horizontal".
func steepness(v statics.Vector) string {
	const short = 7 // bits of each number
	x, okX := v.X.Abs().Rat()
	y, okY := v.Y.Abs().Rat()
	if okX && okY && y.Sign() != 0 {
		if r := new(big.Rat).Quo(x, y); r.Num().BitLen() < short && r.Denom().BitLen() < short {
			return r.Num().String() + " across for " + r.Denom().String() + map[bool]string{true: " up", false: " down"}[v.Y.Sign() > 0]
		}
	}
	return degrees(v) + " degrees from the horizontal"
}

// degrees is the angle of a direction from the horizontal, to a tenth of a degree: that of which both neighbours by half
// a tenth lie on either side.
func degrees(v statics.Vector) string {
	v = statics.Vector{X: v.X.Abs(), Y: v.Y.Abs()}
	const tenths = 900
	k := sort.Search(tenths, func(k int) bool {
		angle := over(exact.Int(int64(2*k+1)), exact.Int(20))
		return statics.Vector{X: exact.Cos(angle), Y: exact.Sin(angle)}.Cross(v).Sign() < 0
	})
	return strings.TrimSuffix(over(exact.Int(int64(k)), exact.Int(10)).Decimal(1), ".0")
}
