package figure

import (
	"math/big"
	"strconv"

	"unpin/statics"
)

// Given is the scene of a frame as a problem gives it: members, connections, supports, loads, names and dimensions.
func Given(f *statics.Frame, o Options) Scene {
	inside := make([]bool, len(f.Members))
	for i := range inside {
		inside[i] = true
	}
	d := newDraft(f, o, inside)
	d.Title = "The frame as given"
	for _, c := range f.Connections {
		d.connection(c)
	}
	for _, s := range f.Supports {
		d.support(s)
	}
	loads := make([]int, len(f.Loads))
	for i := range loads {
		loads[i] = i
	}
	d.loads(loads)
	d.finish()
	d.names(d.joints())
	d.dimension()
	return d.Scene
}

// connection adds the symbol of a pin, slot or sleeve.
func (d *draft) connection(c statics.Connection) {
	at := d.joint(c.Joint)
	look := Look{Role: PinMark}
	switch c.Kind {
	case statics.Slot:
		d.Symbols = append(d.Symbols, Symbol{Kind: SlotSymbol, At: at, Toward: vector(c.Along), Text: "slot", Look: look})
		return
	case statics.Sleeve:
		d.Symbols = append(d.Symbols, Symbol{Kind: SleeveSymbol, At: at, Toward: vector(c.Along), Text: "sleeve", Look: look})
		return
	}
	for _, toward := range d.hinges(c) {
		d.Symbols = append(d.Symbols, Symbol{Kind: PinSymbol, At: at, Toward: toward, Look: look})
	}
}

// hinges tells where the circles of a pin stand: on the joint, or, where one piece runs through and the others are
// single members hinged to it, beside the joint on each of these.
func (d *draft) hinges(c statics.Connection) []Vector {
	if c.Main == statics.None || len(c.Pieces[c.Main]) < 2 {
		return []Vector{{}}
	}
	var list []Vector
	for i, piece := range c.Pieces {
		if i == c.Main || !d.inside[piece[0]] {
			continue
		}
		if len(piece) > 1 {
			return []Vector{{}}
		}
		a, b := d.ends(piece[0])
		if d.f.Members[piece[0]].To == c.Joint {
			a, b = b, a
		}
		list = append(list, a.to(b))
	}
	return list
}

// supportSymbols are the symbols of the kinds of support.
var supportSymbols = [...]SymbolKind{
	statics.Pinned: PinnedSupport, statics.Fixed: FixedSupport, statics.Roller: RollerSupport, statics.Guide: GuideSupport,
}

// support adds the symbol of a support, on the side where the ground must be or where there is room for it.
func (d *draft) support(s statics.Support) {
	at := d.joint(s.Joint)
	toward := d.ground(s, at)
	sym := Symbol{Kind: supportSymbols[s.Kind], At: at, Toward: toward, Look: Look{Role: SupportMark}}
	if !toward.level() && !toward.upright() {
		sym.Text = "reaction " + d.slant(inclination(s.Along))
	}
	if s.On != statics.None {
		sym.Text = "holds " + d.f.Members[s.On].Name
	}
	d.block(at, toward)
	d.Symbols = append(d.Symbols, sym)
}

// ground is the direction from a joint to the ground that holds it.
func (d *draft) ground(s statics.Support, at Point) Vector {
	if s.Kind == statics.Roller || s.Kind == statics.Guide {
		toward := vector(s.Along).neg()
		if d.crowd(at, toward, narrow) > d.crowd(at, toward.neg(), narrow) {
			return toward.neg() // it holds both ways
		}
		return toward
	}
	best, least := Vector{0, -1}, 1e9
	back := d.back(s.Joint)
	for i, v := range []Vector{{0, -1}, {-1, 0}, {1, 0}, {0, 1}} {
		cost := d.crowd(at, v, wide) + 0.2*float64(i)
		if s.Kind == statics.Fixed {
			cost += 2 * offAxis(v, back)
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
func (d *draft) back(j int) Vector {
	var sum Vector
	for _, m := range d.meeting(j) {
		a, b := d.ends(m)
		if d.f.Members[m].To == j {
			a, b = b, a
		}
		v := a.to(b)
		sum = Vector{sum.X - v.X, sum.Y - v.Y}
	}
	if v := unit(sum.X, sum.Y); !v.isZero() {
		return v
	}
	return Vector{0, -1}
}

// onWall reports whether a support stands with another one straight above or below it at the frame's edge on side v, so
// that a wall must hold both.
func (d *draft) onWall(s statics.Support, at Point, v Vector) bool {
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
	return strconv.FormatFloat(roundTenth(offAxis(u, Vector{1, 0})), 'f', -1, 64)
}
