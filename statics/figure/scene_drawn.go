package figure

import "math"

// A DrawnKind is a kind of thing that a medium has drawn.
type DrawnKind uint8

// The kinds of things.
const (
	DrawnMember DrawnKind = iota
	DrawnArrow
	DrawnSupport // the line of its ground
	DrawnLabel
	DrawnDistributed // a distributed load: the line of its tails, and at At and Hub the ends of its base
)

// A Drawn is where a medium has drawn something, in its own steps, x to the right and y downward, for those who check
// figures.
type Drawn struct {
	Kind     DrawnKind
	Part     int      // of a scene that shows parts apart
	From, To Position // of a member or a support its ends, of an arrow tail and tip, of a label its corners, upper left and lower right
	At       Position // of an arrow or a support, the place of its point
	Hub      Position // of an arrow, where the member is on which it acts: at its point, or of a rope in the middle of the wheel
	Owner    int      // of a label, the arrow that it belongs to by its index, or −1
	Text     string
}

// Moved is the thing moved.
func (d Drawn) Moved(x, y float64) Drawn {
	by := offset{x, y}
	d.From, d.To, d.At, d.Hub = d.From.moved(by), d.To.moved(by), d.At.moved(by), d.Hub.moved(by)
	return d
}

// FromBox is the distance of an arrow from a rectangle with those corners, 0 where they meet, in steps of which those along y
// are so many times as long as those along x.
func (d Drawn) FromBox(upper, lower Position, tall float64) float64 {
	least, bound := math.Inf(1), math.Inf(1)
	const steps = 24
	for i := range steps + 1 {
		t := float64(i) / steps
		p := Position{d.From.X + (d.To.X-d.From.X)*t, d.From.Y + (d.To.Y-d.From.Y)*t}
		x, y := apart(p, p, upper, lower, tall)
		if x*x+y*y > bound { // a root is dear, and this one cannot be the least
			continue
		}
		least = min(least, math.Hypot(x, y))
		bound = least * least * slack
	}
	return least
}

// slack is more than what a square and a root can lose by rounding.
const slack = 1 + 1e-9

// apart is the distance of two rectangles, each given by two corners, along x and along y.
func apart(upper, lower, otherUpper, otherLower Position, tall float64) (x, y float64) {
	return max(otherUpper.X-lower.X, upper.X-otherLower.X, 0), tall * max(otherUpper.Y-lower.Y, upper.Y-otherLower.Y, 0)
}

// IsNearest reports whether a rectangle is at least as near to one of the arrows drawn as to every other.
func IsNearest(drawn []Drawn, own int, upper, lower Position, tall float64) bool {
	most := drawn[own].FromBox(upper, lower, tall)
	for i := range drawn {
		if d := &drawn[i]; i != own && d.Kind == DrawnArrow && !d.isBeyond(most, upper, lower, tall) && d.FromBox(upper, lower, tall) < most {
			return false
		}
	}
	return true
}

// isBeyond reports whether the block that an arrow fills is further from a rectangle than so far.
func (d *Drawn) isBeyond(far float64, upper, lower Position, tall float64) bool {
	first := Position{min(d.From.X, d.To.X), min(d.From.Y, d.To.Y)}
	last := Position{max(d.From.X, d.To.X), max(d.From.Y, d.To.Y)}
	x, y := apart(first, last, upper, lower, tall)
	return x*x+y*y > far*far*slack
}

// Gap is the distance between two strokes, 0 if they cross, in steps as FromBox counts them.
func (d Drawn) Gap(o Drawn, tall float64) float64 {
	for _, p := range []*Position{&d.From, &d.To, &o.From, &o.To} {
		p.Y *= tall
	}
	if d.splits(o) && o.splits(d) {
		return 0
	}
	return min(o.reach(d.From), o.reach(d.To), d.reach(o.From), d.reach(o.To))
}

// Over reports whether a stroke comes nearer than so far to the block of a distributed load, or lies within it, in steps as Gap
// counts them.
func (d Drawn) Over(stroke Drawn, tall, near float64) bool {
	corners := []Position{d.At, d.Hub, d.To, d.From}
	inside := false
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		if (Drawn{From: a, To: b}).Gap(stroke, tall) < near {
			return true
		}
		p := stroke.From
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y) {
			inside = !inside
		}
	}
	return inside
}

// splits reports whether the ends of another stroke lie on either side of the line of this one.
func (d Drawn) splits(o Drawn) bool {
	side := func(p Position) float64 {
		return (d.To.X-d.From.X)*(p.Y-d.From.Y) - (d.To.Y-d.From.Y)*(p.X-d.From.X)
	}
	return side(o.From)*side(o.To) < 0
}

// reach is the distance of a point from the stroke.
func (d Drawn) reach(p Position) float64 {
	x, y := d.To.X-d.From.X, d.To.Y-d.From.Y
	t := 0.0
	if long := x*x + y*y; long > 0 {
		t = min(max(((p.X-d.From.X)*x+(p.Y-d.From.Y)*y)/long, 0), 1)
	}
	return math.Hypot(d.From.X+x*t-p.X, d.From.Y+y*t-p.Y)
}
