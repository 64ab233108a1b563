package statics

import "unpin/statics/exact"

// actions says what each load does to each body, in simple shapes.
func (c *cutter) actions() {
	c.a.Actions = make([]Action, 0, len(c.a.Frame.Loads))
	for i, l := range c.a.Frame.Loads {
		switch l.Kind {
		case SpreadLoad:
			c.spread(i, l)
		case CoupleLoad:
			c.add(Action{Load: i, Shape: Turning, Size: l.Size, At: c.placeOf(l), Body: c.carrier(l)})
		case RopeLoad:
			c.rope(i, &l)
		default:
			c.add(Action{Load: i, Shape: AtPoint, Size: l.Size, Along: l.Along, At: c.placeOf(l), Body: c.carrier(l)})
		}
	}
}

// add notes an action, unless it comes to nothing (S4): it would be a term of zero size with a reason to count.
func (c *cutter) add(x Action) {
	if !x.Size.IsZero() {
		c.a.Actions = append(c.a.Actions, x)
	}
}

// rope adds the two pulls of a rope, each where it leaves the wheel. Their moments about the wheel's joint cancel, so that
// even a pin can carry the wheel.
func (c *cutter) rope(i int, l *Load) {
	for _, p := range l.Pulls() {
		c.add(Action{Load: i, Shape: AtPoint, Size: l.Size, Along: p.Along, At: c.placeOf(*l).Plus(p.Off), Body: c.carrier(*l)})
	}
}

// PullOf tells which pull of a rope an action is, 0 that along the load's Along and 1 the other, or None if it is of no rope.
func (a *Assembly) PullOf(action int) int {
	load := a.Actions[action].Load
	switch {
	case a.Frame.Loads[load].Kind != RopeLoad:
		return None
	case action > 0 && a.Actions[action-1].Load == load:
		return 1
	}
	return 0
}

// placeOf is where a load that is not spread acts; of a rope, where its wheel is.
func (c *cutter) placeOf(l Load) Point {
	if l.Joint != None {
		return c.a.Frame.Joints[l.Joint].At
	}
	return c.a.axes[l.Member].at(l.At)
}

// carrier is the body that a load acts on.
func (c *cutter) carrier(l Load) int {
	if l.Joint != None {
		return c.bodyAt(l.Joint, l.Member)
	}
	return c.partOf[l.Member]
}

// spread splits a distributed load into simple shapes: a uniform and a triangle, or, if it changes sense, two triangles. Their
// resultants together are that of the load (S4).
func (c *cutter) spread(i int, l Load) {
	q1, q2 := l.First, l.Last
	if q1.Sign()*q2.Sign() < 0 {
		turn := l.Start.Add(over(l.End.Sub(l.Start).Mul(q1), q1.Sub(q2)))
		c.shape(i, FallingRamp, q1, l.Start, turn)
		c.shape(i, RisingRamp, q2, turn, l.End)
		return
	}
	if q1.Abs().Cmp(q2.Abs()) <= 0 {
		c.shape(i, Uniform, q1, l.Start, l.End)
		c.shape(i, RisingRamp, q2.Sub(q1), l.Start, l.End)
		return
	}
	c.shape(i, Uniform, q2, l.Start, l.End)
	c.shape(i, FallingRamp, q1.Sub(q2), l.Start, l.End)
}

// centroids are the places of the resultants, as a share of the stretch, and areas the share of intensity × stretch.
var (
	centroids = [...]exact.Num{Uniform: frac(1, 2), RisingRamp: frac(2, 3), FallingRamp: frac(1, 3)}
	areas     = [...]exact.Num{Uniform: exact.Int(1), RisingRamp: frac(1, 2), FallingRamp: frac(1, 2)}
)

// shape adds one simple shape of load i between the distances start and end of its member.
func (c *cutter) shape(i int, shape ActionShape, q, start, end exact.Num) {
	l, length := &c.a.Frame.Loads[i], end.Sub(start)
	x := &c.a.axes[l.Member]
	c.add(Action{
		Load:      i,
		Body:      c.partOf[l.Member],
		Shape:     shape,
		Size:      q.Mul(x.onLength(l.Per)).Mul(length).Mul(areas[shape]),
		Along:     l.Along,
		At:        x.at(start.Add(length.Mul(centroids[shape]))),
		Start:     start,
		End:       end,
		Intensity: q,
	})
}
