package statics

import "unpin/statics/exact"

// direction is one along an axis, along a simple slope, or at a multiple of 15°.
func (g *generator) direction() Vector {
	signs := [2]int64{1, -1}
	x, y := signs[g.pick(0, 1)], signs[g.pick(0, 1)]
	slopes := [][2]int64{{3, 4}, {4, 3}, {5, 12}, {1, 1}, {1, 2}, {2, 3}}
	switch g.weighted(4, 3, 3, 2) {
	case 0:
		return Vector{exact.Int(0), exact.Int(y)}
	case 1:
		return Vector{exact.Int(x), exact.Int(0)}
	case 2:
		s := slopes[g.pick(0, len(slopes)-1)]
		return Vector{exact.Int(x * s[0]), exact.Int(y * s[1])}
	}
	a := exact.Int(int64(15 * g.pick(0, 23)))
	return Vector{exact.Cos(a), exact.Sin(a)}
}

// directionOn is a direction, or one along or square to member m.
func (g *generator) directionOn(m int) Vector {
	switch g.weighted(6, 1, 3) {
	case 1:
		return g.f.Span(m)
	case 2:
		return g.f.Span(m).Left().Neg()
	}
	return g.direction()
}

// size is a whole or half number that is not nought, mostly positive.
func (g *generator) size() exact.Num {
	n := frac(int64(g.pick(1, 40)), 2)
	if g.chance(15) {
		return n.Neg()
	}
	return n
}

// load adds a load of any kind.
func (g *generator) load() {
	l := Load{Entry: len(g.f.Loads), Joint: None, Member: None}
	l.Kind = []LoadKind{PointLoad, CoupleLoad, SpreadLoad}[g.weighted(5, 2, 5)]
	if l.Kind != SpreadLoad {
		l.Size = g.size()
	}
	if l.Kind != SpreadLoad && g.chance(45) {
		g.atJoint(&l)
	} else {
		g.onMember(&l)
	}
	g.f.Loads = append(g.f.Loads, l)
}

// atJoint puts a load at a joint; at a connection a couple needs a member, and half of the forces have one.
func (g *generator) atJoint(l *Load) {
	meeting := g.f.meeting()
	l.Joint = g.pick(0, len(meeting)-1)
	at := meeting[l.Joint]
	if g.chance(50) || l.Kind == CoupleLoad && g.connectionAt(l.Joint) != None {
		l.Member = at[g.pick(0, len(at)-1)]
	}
	if l.Kind == PointLoad {
		l.Along = g.directionOn(at[0])
	}
}

func (g *generator) onMember(l *Load) {
	l.Member = g.pick(0, len(g.f.Members)-1)
	length := g.f.Length(l.Member)
	if l.Kind != CoupleLoad {
		l.Along = g.directionOn(l.Member)
	}
	if l.Kind != SpreadLoad {
		l.At = length.Mul(frac(int64(g.pick(0, 8)), 8))
		return
	}
	g.shape(l)
	start := g.pick(0, 3)
	end := g.pick(start+1, 4)
	if g.chance(50) {
		start, end = 0, 4
	}
	l.Start, l.End = length.Mul(frac(int64(start), 4)), length.Mul(frac(int64(end), 4))
	l.Per = Per(g.weighted(5, 2, 2))
}

// shape gives a spread load its intensities: uniform, rising, falling, a trapezoid, or one that changes sense.
func (g *generator) shape(l *Load) {
	q := g.size()
	switch g.pick(0, 4) {
	case 0:
		l.First, l.Last = q, q
	case 1:
		l.Last = q
	case 2:
		l.First = q
	case 3:
		l.First, l.Last = q, g.size()
	case 4:
		l.First, l.Last = q, q.Neg().Mul(g.size().Abs())
	}
}

// rope adds a rope over a wheel at a joint, at half of the connections on a member. Some wheels have no radius, and some
// ropes run back the way they came.
func (g *generator) rope() {
	l := Load{Kind: RopeLoad, Entry: len(g.f.Loads), Member: None, Size: g.size().Abs()}
	g.atJoint(&l)
	l.Along, l.Second = g.direction(), g.direction()
	if l.Along.Cross(l.Second).IsZero() && l.Along.Dot(l.Second).Sign() < 0 {
		l.Second = l.Along
	}
	if g.chance(80) {
		l.Radius = frac(int64(g.pick(1, 8)), 10)
	}
	g.f.Loads = append(g.f.Loads, l)
}
