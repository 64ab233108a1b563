package figure

import (
	"math"

	"unpin/statics"
)

// A ray is a direction from a point in which something stands already.
type ray struct {
	toward Direction
	solid  bool // a member or the ground, which no arrow may cross
}

// block notes that something solid stands in a direction from a point.
func (d *draft) block(at Position, toward Direction) {
	d.taken[at] = append(d.taken[at], ray{toward, true})
}

// onMember notes the member that runs both ways through a point between its ends.
func (d *draft) onMember(at Position, m int) {
	if m == statics.None || len(d.taken[at]) > 0 {
		return
	}
	a, b := d.ends(m)
	d.block(at, at.To(a))
	d.block(at, at.To(b))
}

// Angles within which two things from one point are in each other's way.
const (
	narrow = 20 * math.Pi / 180
	wide   = 40 * math.Pi / 180
	walled = 50 * math.Pi / 180 // the ground of a support reaches as far
)

// crowd is what it costs to stand in a direction from a point: much if something solid is there, little if an arrow is.
func (d *draft) crowd(at Position, toward Direction, within float64) float64 {
	cost := 0.0
	for _, r := range d.taken[at] {
		if AngleBetween(r.toward, toward) > within {
			continue
		}
		if r.solid {
			cost = max(cost, 10)
		} else {
			cost = max(cost, 3)
		}
	}
	return cost
}

// farBar is how far off a member may stand across the way of an arrow and be in it, as a share of the longer side of what is
// drawn: about so long is an arrow.
const farBar = 0.25

// barred is what it costs that a member runs across the way out of a point, so that an arrow there would seem to act on it.
func (d *draft) barred(at Position, toward Direction) float64 {
	far := farBar * d.extent().longer()
	way := Drawn{From: at, To: Position{at.X + far*toward.X, at.Y + far*toward.Y}}
	for _, k := range d.Strokes {
		if bar := (Drawn{From: k.From, To: k.To}); k.Role == MemberLine && bar.reach(at) > 1e-6*far && bar.Gap(way, 1) == 0 {
			return 4
		}
	}
	return 0
}

// crossed is what it costs that an arrow at another point stands across a way from a point: beyond it this one would seem to act
// on that.
func (d *draft) crossed(at Position, toward Direction) float64 {
	const long = 0.15 // of the frame, about what an arrow takes up
	far := long * d.extent().longer()
	along := func(from Position, v Direction) Drawn {
		return Drawn{From: from, To: Position{from.X + far*v.X, from.Y + far*v.Y}}
	}
	for _, a := range d.Arrows {
		out := a.Toward.Opposite()
		if a.Pull {
			out = a.Toward
		}
		if a.At != at && along(a.At, out).Gap(along(at, toward), 1) == 0 {
			return 1.5
		}
	}
	return 0
}

// arrow adds an arrow on the side of its point where there is room: pushing if it can, else pulling, else beside the
// member that runs both ways, after all others.
func (d *draft) arrow(a Arrow, sense Direction, last bool) {
	push := d.crowd(a.At, sense.Opposite(), narrow) + d.barred(a.At, sense.Opposite()) + d.crossed(a.At, sense.Opposite())
	pull := d.crowd(a.At, sense, narrow) + d.barred(a.At, sense) + d.crossed(a.At, sense) + 1
	asked := a
	if a.Pull { // what pulls had better be seen to
		pull -= 2
	}
	a.Pull = false
	if a.Role != LoadMark || !sense.Level() && !sense.Upright() { // other arrows stand upon a distributed load
		push += d.covered(a.At, sense.Opposite())
		pull += d.covered(a.At, sense)
	}
	outward := sense.Opposite()
	if pull < push {
		a.Pull = true
		outward = sense
	}
	if min(push, pull) >= 10 && !last {
		d.later = append(d.later, func() { d.arrow(asked, sense, true) })
		return
	}
	if min(push, pull) >= 10 {
		a.Pull = false
		outward = sense.Opposite()
		a.Beside = sense.Left()
		if a.Beside.Y < 0 {
			a.Beside = a.Beside.Opposite()
		}
		if d.besides(a.At, a.Beside) > d.besides(a.At, a.Beside.Opposite()) {
			a.Beside = a.Beside.Opposite()
		}
	}
	d.taken[a.At] = append(d.taken[a.At], ray{outward, false})
	if a.Toward != sense { // it turned about, on the side where it stood
		a.Pull = !a.Pull
	}
	d.Arrows = append(d.Arrows, a)
}

// besides is what it costs to draw an arrow on that side of the member it acts along: an arrow perpendicular to it leaves room
// next to itself, a distributed load none.
func (d *draft) besides(at Position, side Direction) float64 {
	cost := d.covered(at, side)
	switch c := d.crowd(at, side, narrow); {
	case c >= 10:
		cost += c
	case c > 0:
		cost += 0.5
	}
	return cost
}

// finish adds the arrows that waited for the others to take their sides.
func (d *draft) finish() {
	for _, add := range d.later {
		add()
	}
}

// covered is what it costs that a distributed load lies on that side of a point.
func (d *draft) covered(at Position, toward Direction) float64 {
	for _, s := range d.Spreads {
		out := s.Outward()
		if s.First+s.Last < 0 {
			out = out.Opposite()
		}
		if AngleBetween(out, toward) < wide && s.over(at) {
			return 1.5
		}
	}
	return 0
}

// over reports whether a point lies on a distributed load's line, or in front of its projection.
func (s Spread) over(at Position) bool {
	const slack = 1e-6
	along := s.From.To(s.To)
	x := (at.X-s.From.X)*along.X + (at.Y-s.From.Y)*along.Y
	off := (at.Y-s.From.Y)*along.X - (at.X-s.From.X)*along.Y
	length := math.Hypot(s.To.X-s.From.X, s.To.Y-s.From.Y)
	return x > -slack && x < length+slack && (s.Projected || math.Abs(off) < slack)
}

// freeSide is the freest of the four directions from a point, up before the others.
func (d *draft) freeSide(at Position) Direction {
	best, least := Direction{0, 1}, math.Inf(1)
	for i, v := range []Direction{{0, 1}, {1, 0}, {-1, 0}, {0, -1}} {
		if cost := d.crowd(at, v, wide) + 0.1*float64(i); cost < least {
			best, least = v, cost
		}
	}
	return best
}
