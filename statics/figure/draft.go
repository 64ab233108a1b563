package figure

import (
	"math"

	"unpin/statics"
)

// A draft is a scene in the making.
type draft struct {
	Scene
	f          *statics.Frame
	o          Options
	inside     []bool          // members that are drawn
	taken      map[Point][]ray // what stands around a point
	across, up []mark1D        // what is dimensioned along x and along y
	tallest    float64         // the intensity to whose scale spread loads are drawn at least
	later      []func()        // arrows for which only a place beside their member is left
}

// A ray is a direction from a point in which something stands already.
type ray struct {
	toward Vector
	solid  bool // a member or the ground, which no arrow may cross
}

// point and vector are places and directions as floats.
func point(p statics.Point) Point { return Point{p.X.Float(), p.Y.Float()} }

func vector(v statics.Vector) Vector { return unit(v.X.Float(), v.Y.Float()) }

// unit is the direction of (x, y), or nought.
func unit(x, y float64) Vector {
	l := math.Hypot(x, y)
	if l == 0 || math.IsInf(l, 0) || math.IsNaN(l) {
		return Vector{}
	}
	return Vector{x / l, y / l}
}

// to is the direction from p to q.
func (p Point) to(q Point) Vector { return unit(q.X-p.X, q.Y-p.Y) }

// newDraft begins a scene with the members that are inside.
func newDraft(f *statics.Frame, o Options, inside []bool) *draft {
	d := &draft{f: f, o: o, inside: inside, taken: map[Point][]ray{}}
	for m, in := range inside {
		if !in {
			continue
		}
		a, b := d.ends(m)
		d.Strokes = append(d.Strokes, Stroke{a, b, Look{Role: MemberLine}})
		d.taken[a] = append(d.taken[a], ray{a.to(b), true})
		d.taken[b] = append(d.taken[b], ray{b.to(a), true})
	}
	return d
}

// joint is the place of a joint.
func (d *draft) joint(j int) Point { return point(d.f.Joints[j].At) }

// ends are the places of a member's ends.
func (d *draft) ends(m int) (from, to Point) {
	return d.joint(d.f.Members[m].From), d.joint(d.f.Members[m].To)
}

// block notes that something solid stands in a direction from a point.
func (d *draft) block(at Point, toward Vector) {
	d.taken[at] = append(d.taken[at], ray{toward, true})
}

// onMember notes the member that runs both ways through a point between its ends.
func (d *draft) onMember(at Point, m int) {
	if m == statics.None || len(d.taken[at]) > 0 {
		return
	}
	a, b := d.ends(m)
	d.block(at, at.to(a))
	d.block(at, at.to(b))
}

// Angles within which two things from one point are in each other's way.
const (
	narrow = 20 * math.Pi / 180
	wide   = 40 * math.Pi / 180
)

// crowd is what it costs to stand in a direction from a point: much if something solid is there, little if an arrow is.
func (d *draft) crowd(at Point, toward Vector, within float64) float64 {
	cost := 0.0
	for _, r := range d.taken[at] {
		if offAxis(r.toward, toward) > within {
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

// arrow adds an arrow on the side of its point where there is room: pushing if it can, else pulling, else beside the
// member that runs both ways, after all others.
func (d *draft) arrow(a Arrow, sense Vector, last bool) {
	push := d.crowd(a.At, sense.neg(), narrow)
	pull := d.crowd(a.At, sense, narrow) + 1
	if a.Role != LoadMark || !sense.level() && !sense.upright() { // other arrows stand upon a spread load
		push += d.covered(a.At, sense.neg())
		pull += d.covered(a.At, sense)
	}
	outward := sense.neg()
	if pull < push {
		a.Pull = true
		outward = sense
	}
	if min(push, pull) >= 10 && !last {
		d.later = append(d.later, func() { d.arrow(a, sense, true) })
		return
	}
	if min(push, pull) >= 10 {
		a.Pull = false
		outward = sense.neg()
		a.Beside = sense.left()
		if a.Beside.Y < 0 {
			a.Beside = a.Beside.neg()
		}
		if d.besides(a.At, a.Beside) > d.besides(a.At, a.Beside.neg()) {
			a.Beside = a.Beside.neg()
		}
	}
	d.taken[a.At] = append(d.taken[a.At], ray{outward, false})
	if a.Toward != sense { // it turned about, on the side where it stood
		a.Pull = !a.Pull
	}
	d.Arrows = append(d.Arrows, a)
}

// besides is what it costs to draw an arrow on that side of the member it acts along: an arrow square to it leaves room
// next to itself, a spread load none.
func (d *draft) besides(at Point, side Vector) float64 {
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

// covered is what it costs that a spread load lies on that side of a point.
func (d *draft) covered(at Point, toward Vector) float64 {
	for _, s := range d.Spreads {
		out := s.outward()
		if s.First+s.Last < 0 {
			out = out.neg()
		}
		if offAxis(out, toward) < wide && s.over(at) {
			return 1.5
		}
	}
	return 0
}

// over reports whether a point lies on a spread load's line, or in front of its projection.
func (s Spread) over(at Point) bool {
	const slack = 1e-6
	along := s.From.to(s.To)
	x := (at.X-s.From.X)*along.X + (at.Y-s.From.Y)*along.Y
	off := (at.Y-s.From.Y)*along.X - (at.X-s.From.X)*along.Y
	length := math.Hypot(s.To.X-s.From.X, s.To.Y-s.From.Y)
	return x > -slack && x < length+slack && (s.Projected || math.Abs(off) < slack)
}

// freeSide is the freest of the four directions from a point, up before the others.
func (d *draft) freeSide(at Point) Vector {
	best, least := Vector{0, 1}, math.Inf(1)
	for i, v := range []Vector{{0, 1}, {1, 0}, {-1, 0}, {0, -1}} {
		if cost := d.crowd(at, v, wide) + 0.1*float64(i); cost < least {
			best, least = v, cost
		}
	}
	return best
}

// names writes the name of each joint of the members inside.
func (d *draft) names(joints []int) {
	for _, j := range joints {
		d.Notes = append(d.Notes, Note{d.joint(j), d.f.Joints[j].Name, Look{Role: NameMark}})
	}
}

// joints lists the joints of the members inside, in order.
func (d *draft) joints() []int {
	var list []int
	for j := range d.f.Joints {
		if len(d.meeting(j)) > 0 {
			list = append(list, j)
		}
	}
	return list
}

// meeting lists the members inside that end at a joint.
func (d *draft) meeting(j int) []int {
	var list []int
	for m, k := range d.f.Members {
		if d.inside[m] && (k.From == j || k.To == j) {
			list = append(list, m)
		}
	}
	return list
}
