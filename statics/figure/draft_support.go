package figure

import (
	"math"
	"math/big"
	"strconv"

	"unpin/statics"
)

// supportSymbols are the symbols of the kinds of support.
var supportSymbols = [...]SymbolKind{
	statics.Pinned: PinnedSupport, statics.Fixed: FixedSupport, statics.Roller: RollerSupport, statics.Guide: GuideSupport,
}

// support adds the symbol of a support, on the side where the ground must be or where there is room for it.
func (d *draft) support(s statics.Support) {
	at := d.joint(s.Joint)
	toward := d.ground(s, at)
	sym := Symbol{Kind: supportSymbols[s.Kind], At: at, Toward: toward, Look: Look{Role: SupportMark}}
	if !toward.Level() && !toward.Upright() {
		sym.Text = "reaction " + d.slant(inclination(s.Along))
	}
	if s.On != statics.None {
		sym.Text = "holds " + d.f.Members[s.On].Name
	}
	d.block(at, toward)
	d.Symbols = append(d.Symbols, sym)
}

// ground is the direction from a joint to the ground that holds it.
func (d *draft) ground(s statics.Support, at Position) Direction {
	if s.Kind == statics.Roller || s.Kind == statics.Guide {
		toward := vector(s.Along).Opposite()
		if d.crowd(at, toward, narrow) > d.crowd(at, toward.Opposite(), narrow) {
			return toward.Opposite() // it holds both ways
		}
		return toward
	}
	best, least := Direction{0, -1}, 1e9
	back := d.back(s.Joint)
	for i, v := range []Direction{{0, -1}, {-1, 0}, {1, 0}, {0, 1}} {
		cost := d.crowd(at, v, wide) + 0.2*float64(i)
		if s.Kind == statics.Fixed {
			cost += 2 * AngleBetween(v, back)
		} else if d.onWall(s, at, v) {
			cost -= 2
		}
		if cost < least {
			best, least = v, cost
		}
	}
	return best
}

// back is the direction away from the members at a joint.
func (d *draft) back(j int) Direction {
	var sum Direction
	for _, m := range d.meeting(j) {
		a, b := d.ends(m)
		if d.f.Members[m].To == j {
			a, b = b, a
		}
		v := a.To(b)
		sum = Direction{sum.X - v.X, sum.Y - v.Y}
	}
	if v := NewDirection(sum.X, sum.Y); !v.IsZero() {
		return v
	}
	return Direction{0, -1}
}

// onWall reports whether a support stands with another one straight above or below it at the frame's edge on side v, so
// that a wall must hold both.
func (d *draft) onWall(s statics.Support, at Position, v Direction) bool {
	if v.X == 0 {
		return false
	}
	for j := range d.f.Joints {
		if (d.joint(j).X-at.X)*v.X > 1e-9 {
			return false
		}
	}
	for _, other := range d.f.Supports {
		if p := d.joint(other.Joint); other.Joint != s.Joint && p.X == at.X && p.Y != at.Y {
			return true
		}
	}
	return false
}

// inclination is the steepness of a direction as textbooks give it: run to rise as small whole numbers, else the angle
// from the horizontal.
func inclination(v statics.Vector) string {
	x, okX := v.X.Abs().Rat()
	y, okY := v.Y.Abs().Rat()
	if okX && okY && y.Sign() != 0 {
		r := new(big.Rat).Quo(x, y)
		if r.Num().BitLen() < 7 && r.Denom().BitLen() < 7 {
			return r.Num().String() + ":" + r.Denom().String()
		}
	}
	return degrees(v) + "°"
}

// degrees is the angle of a direction from the horizontal.
func degrees(v statics.Vector) string {
	u := vector(statics.Vector{X: v.X.Abs(), Y: v.Y.Abs()})
	return strconv.FormatFloat(roundTenth(AngleBetween(u, Direction{1, 0})), 'f', -1, 64)
}

// roundTenth is an angle in radians as degrees, to a tenth.
func roundTenth(rad float64) float64 { return math.Round(rad*1800/math.Pi) / 10 }
