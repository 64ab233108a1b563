package figure

import (
	"math"
	"math/big"
	"slices"
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
	if (s.Kind == statics.Roller || s.Kind == statics.Guide) && d.crowd(at, toward, walled) >= 10 {
		sym.Aside = d.aside(at, toward)
		d.block(at, sym.Aside)
	}
	if !toward.Level() && !toward.Upright() {
		sym.Text, sym.Slope = "reaction "+d.slant(inclination(s.Along)), slopeOf(s.Along)
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
		if d.hindrance(at, toward)+pressed(d, s.Joint, toward) > d.hindrance(at, toward.Opposite())+pressed(d, s.Joint, toward.Opposite()) {
			return toward.Opposite() // it holds both ways
		}
		return toward
	}
	best, least := Direction{0, -1}, 1e9
	back := d.back(s.Joint)
	for i, v := range []Direction{{0, -1}, {-1, 0}, {1, 0}, {0, 1}} {
		cost := d.crowd(at, v, wide) + d.passing(at, v) + pressed(d, s.Joint, v) + 0.2*float64(i)
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

// hindrance is what it costs to set a roller or a guide on that side of a point.
func (d *draft) hindrance(at Position, toward Direction) float64 {
	return d.crowd(at, toward, narrow) + 0.5*d.crowd(at, toward, walled) + d.passing(at, toward)
}

// pressed is what it costs that a distributed load stands on that side of a member at a joint, where a symbol would lie over it.
func pressed(d *draft, j int, toward Direction) float64 {
	for _, l := range d.f.Loads {
		if l.Kind != statics.SpreadLoad || !slices.Contains(d.meeting(j), l.Member) {
			continue
		}
		tails := vector(l.Along).Opposite()
		if l.First.Sign() <= 0 && l.Last.Sign() <= 0 {
			tails = tails.Opposite()
		}
		if AngleBetween(tails, toward) < narrow {
			return 6
		}
	}
	return 0
}

// aside is the freer of the directions perpendicular to a support that has no room on its joint: it stands there beside it.
func (d *draft) aside(at Position, toward Direction) Direction {
	v := toward.Left()
	here, there := d.crowd(at, v, walled), d.crowd(at, v.Opposite(), walled)
	if here < there || here == there && v.Y > 0 {
		return v
	}
	return v.Opposite()
}

// symbolShare is about how deep, and to each side how wide, a support's symbol is, as a share of the frame's longer side.
const symbolShare = 0.09

// passing is what it costs that a member which does not end at a point passes where a symbol on that side of it would stand.
func (d *draft) passing(at Position, toward Direction) float64 {
	size := symbolShare * d.extent().longer()
	for _, k := range d.Strokes {
		if k.From == at || k.To == at {
			continue
		}
		for i := range passingSteps + 1 {
			t := float64(i) / passingSteps
			v := offset{k.From.X + (k.To.X-k.From.X)*t - at.X, k.From.Y + (k.To.Y-k.From.Y)*t - at.Y}
			deep, off := v.X*toward.X+v.Y*toward.Y, math.Abs(v.X*toward.Y-v.Y*toward.X)
			if deep >= 0 && deep < size && off < size {
				return 8
			}
		}
	}
	return 0
}

const passingSteps = 40 // places along a member that are looked at

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
	if s := slopeOf(v); !s.IsZero() {
		return s.String()
	}
	return degrees(v) + "°"
}

// slopeOf is the slope of an inclined direction, if it is a ratio of small numbers.
func slopeOf(v statics.Vector) Slope {
	const short = 7 // bits of each number
	x, okX := v.X.Abs().Rat()
	y, okY := v.Y.Abs().Rat()
	if !okX || !okY || x.Sign() == 0 || y.Sign() == 0 {
		return Slope{}
	}
	r := new(big.Rat).Quo(x, y)
	if r.Num().BitLen() >= short || r.Denom().BitLen() >= short {
		return Slope{}
	}
	return Slope{r.Num().String(), r.Denom().String()}
}

// degrees is the angle of a direction from the horizontal.
func degrees(v statics.Vector) string {
	u := vector(statics.Vector{X: v.X.Abs(), Y: v.Y.Abs()})
	return strconv.FormatFloat(roundTenth(AngleBetween(u, Direction{1, 0})), 'f', -1, 64)
}

// roundTenth is an angle in radians as degrees, to a tenth.
func roundTenth(rad float64) float64 { return math.Round(rad*1800/math.Pi) / 10 }
