package marking

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// relateInner lists what ties N, V and M: the pieces that may be kept, the areas between two places of a member, and the
// corners where members are rigidly joined.
func (m *Marker) relateInner() {
	m.empty = make([]bool, len(m.Items))
	for i, item := range m.Items {
		if item.Member == statics.None {
			continue
		}
		for _, side := range []statics.KeptSide{statics.FromStart, statics.ToEnd} {
			r := m.keptRow(i, side)
			m.empty[i] = m.empty[i] || item.Value.IsZero() && !item.Place && len(r.items) == 1 && len(r.rests) == 0
			m.innerRow = append(m.innerRow, r)
		}
	}
	for _, d := range m.Diagrams {
		if !d.Withheld {
			m.areaRows(d)
		}
	}
	for j := range m.Frame.Joints {
		for _, piece := range m.piecesAt(j) {
			m.cornerRows(j, piece)
		}
	}
}

// column is the item that tells N, V or M at a station of a member: the one there, or where nothing has changed since, the
// last one before it. It is −1 where there is none.
func (m *Marker) column(member int, q statics.Quantity, at statics.Station) int {
	best := -1
	for i, item := range m.Items {
		if item.Member != member || item.Quantity != q || item.Place {
			continue
		}
		order := item.Station.At.Cmp(at.At)
		if order < 0 || order == 0 && (item.Station.Side != statics.After || at.Side != statics.Before) {
			if best < 0 || m.Items[best].Station.At.Cmp(item.Station.At) <= 0 {
				best = i
			}
		}
	}
	return best
}

// A face is the cut of a member at a place, with the directions of N and V there.
type face struct {
	at      statics.Point
	e, n    statics.Vector
	facing  int // +1 where the piece from the member's start is kept, −1 where the one to its end is
	joints  []int
	members []int
	part    int
}

func (m *Marker) faceOf(item problems.Item, side statics.KeptSide) face {
	k := statics.Kept{Solution: m.Solution, Member: item.Member, At: item.Station, Side: side}
	f := face{at: m.Frame.Along(item.Member, item.Station.At), facing: 1, part: m.PartOf(item.Member)}
	if side == statics.ToEnd {
		f.facing = -1
	}
	f.e = unit(m.Frame.Span(item.Member))
	f.n = f.e.Left()
	f.joints, f.members = k.Beyond()
	return f
}

// unit is the vector of length 1 in a direction.
func unit(v statics.Vector) statics.Vector {
	k, err := exact.Int(1).Quo(v.Length())
	if err != nil {
		return v
	}
	return v.Times(k)
}

// of is what a force or couple on the piece adds to N, V or M at the face.
func (f face) of(q statics.Quantity, force statics.Vector, couple exact.Num, at statics.Point) exact.Num {
	x := exact.Num{}
	switch q {
	case statics.AxialForce:
		x = f.e.Dot(force).Neg()
	case statics.ShearForce:
		x = f.n.Dot(force)
	default:
		x = f.at.To(at).Cross(force).Add(couple).Neg()
	}
	if f.facing < 0 {
		return x.Neg()
	}
	return x
}

// forceIn is force i of size 1 as it acts on a part.
func (m *Marker) forceIn(i, part int) (force statics.Vector, couple exact.Num) {
	sign, touches := m.Facing(statics.FreeBody{part}, i)
	switch f := m.Forces[i]; {
	case !touches || sign == 0:
		return statics.Vector{}, exact.Num{}
	case f.Couple:
		return statics.Vector{}, exact.Int(int64(sign))
	default:
		return unit(f.Along).Times(exact.Int(int64(sign))), exact.Num{}
	}
}

// keptRow is the sum of a kept piece that gives what an item asks for.
func (m *Marker) keptRow(i int, side statics.KeptSide) row {
	item := m.Items[i]
	f := m.faceOf(item, side)
	r := row{gives: -1, inner: relation{kind: "kept", member: item.Member, side: side}}
	own := exact.Int(1)
	if item.Place {
		own = m.Diagrams[item.Member].StretchFrom(item.Station).V.Derivative().At(item.Value)
	}
	r.add(i, own)
	r.targets = []int{i}
	rest := item.Station.Of(item.Quantity)
	for j, force := range m.Forces {
		if !slices.Contains(f.joints, force.Joint) {
			continue
		}
		v, couple := m.forceIn(j, f.part)
		k := f.of(item.Quantity, v, couple, m.Frame.Joints[force.Joint].At)
		r.add(m.ofForce(j), k.Neg())
		if c := slices.Index(r.items, m.ofForce(j)); c >= 0 {
			r.ratios[c] = judging.OnlyLong(k) // a sine, and an arm that comes of a slope
		}
		rest = rest.Sub(k.Mul(m.Values[j]))
	}
	for _, x := range m.Apart().Actions {
		if !m.actsOn(f, x, item.Member) {
			continue
		}
		v, couple := statics.Vector{}, exact.Num{}
		if x.Shape == statics.Turning {
			couple = x.Size
		} else {
			v = unit(x.Along).Times(x.Size)
		}
		if t := f.of(item.Quantity, v, couple, x.At); !t.IsZero() {
			r.rest(t.Neg())
			rest = rest.Sub(t)
		}
	}
	if !rest.IsZero() {
		r.rest(rest.Neg())
	}
	if item.Station.Found {
		m.follow(&r, i, func(x values, at exact.Num) shift { return m.keptAt(f, item, x, at) })
	}
	return r
}

// actsOn reports whether an action on the piece lies beyond the member that is cut.
func (m *Marker) actsOn(f face, x statics.Action, member int) bool {
	l := m.Frame.Loads[x.Load]
	switch {
	case x.Body != f.part:
		return false
	case l.Joint != statics.None:
		return slices.Contains(f.joints, l.Joint)
	}
	return l.Member != member && slices.Contains(f.members, l.Member)
}

// A shift is by how much V and M at a place differ from the true ones with a student's values, what rounding these may
// come to, and the largest of their terms in M.
type shift struct{ v, moment, slackV, slackM, largest exact.Num }

// keptAt is the shift by the sum of a kept piece.
func (m *Marker) keptAt(f face, item problems.Item, x values, at exact.Num) shift {
	f.at = m.Frame.Along(item.Member, at)
	var s shift
	for j, force := range m.Forces {
		i := m.ofForce(j)
		if !slices.Contains(f.joints, force.Joint) || x.whole[i] {
			continue
		}
		u, couple := m.forceIn(j, f.part)
		v := f.of(statics.ShearForce, u, couple, m.Frame.Joints[force.Joint].At)
		moment := f.of(statics.BendingMoment, u, couple, m.Frame.Joints[force.Joint].At)
		off, slack := x.of[i].Sub(m.Values[j]), judging.ThirdFigure(x.of[i])
		s.v, s.moment = s.v.Add(v.Mul(off)), s.moment.Add(moment.Mul(off))
		s.slackV, s.slackM = s.slackV.Add(v.Abs().Mul(slack)), s.slackM.Add(moment.Abs().Mul(slack))
		s.largest = exact.Max(s.largest, moment.Mul(x.of[i]).Abs())
	}
	return s
}

// follow makes of a row one for a place where the shear is zero, or for the moment there: with other forces the place is
// another.
func (m *Marker) follow(r *row, i int, differ func(x values, at exact.Num) shift) {
	item := m.Items[i]
	if item.Place {
		r.off = m.placeOff(i, differ)
		return
	}
	place := m.placeOf(item)
	if place >= 0 {
		r.add(place, exact.MustParse("0.000001")) // it counts, but M is level there
	}
	stretch := m.Diagrams[item.Member].StretchFrom(item.Station)
	r.off = func(x values) (rest, largest, slack exact.Num) {
		at := item.Station.At
		v := differ(x, at).v
		switch {
		case place >= 0 && x.answered[place]:
			at = x.of[place]
		case !v.IsZero():
			at = nearest(stretch.V.Add(exact.Poly{v}).Roots(stretch.From, stretch.Until), at)
		}
		s := differ(x, at)
		gives := stretch.M.At(at).Add(s.moment)
		size := exact.Max(gives.Abs(), x.of[i].Abs())
		slack = judging.ThirdFigure(gives).Add(s.slackM)
		if !ends(item.Value) {
			slack = slack.Add(size.Mul(percent).Mul(half))
		}
		return gives.Sub(x.of[i]), exact.Max(s.largest, size), slack
	}
}

// nearest is the root that lies nearest to a place, or the place where there is none.
func nearest(roots []exact.Root, at exact.Num) exact.Num {
	best := at
	for i, r := range roots {
		if i == 0 || r.X.Sub(at).Abs().Cmp(best.Sub(at).Abs()) < 0 {
			best = r.X
		}
	}
	return best
}

// placeOff holds a place against where the shear is zero with a student's values.
func (m *Marker) placeOff(i int, differ func(x values, at exact.Num) shift) func(values) (rest, largest, slack exact.Num) {
	item := m.Items[i]
	stretch := m.Diagrams[item.Member].StretchFrom(item.Station)
	return func(x values) (rest, largest, slack exact.Num) {
		at := x.of[i]
		s := differ(x, at)
		first, last := stretch.V.At(stretch.From).Add(s.v), stretch.V.At(stretch.Until).Add(s.v)
		if slack = s.slackV; !x.whole[i] || !ends(item.Value) {
			slack = slack.Add(judging.ThirdFigure(at).Mul(stretch.V.Derivative().At(at).Abs()))
		}
		return stretch.V.At(at).Add(s.v), exact.Max(first.Abs(), last.Abs()), slack
	}
}

// placeOf is the item that asks for the place of another, or −1.
func (m *Marker) placeOf(item problems.Item) int {
	return slices.IndexFunc(m.Items, func(p problems.Item) bool {
		return p.Place && p.Member == item.Member && p.Station.At.Equal(item.Station.At)
	})
}

// ends reports whether a number ends within three figures.
func ends(x exact.Num) bool { return x.Rounded(3).Equal(x) }

// areaRows tie N, V and M at each two places of a member.
func (m *Marker) areaRows(d statics.Diagram) {
	stations := d.Stations()
	for j, to := range stations {
		for _, from := range stations[:j] {
			for q := range statics.BendingMoment + 1 {
				m.areaRow(d.Member, q, from, to, from)
			}
			m.areaRow(d.Member, statics.BendingMoment, from, to, to)
		}
	}
}

// areaRow ties a quantity at two places, for M by the shear at one of them.
func (m *Marker) areaRow(member int, q statics.Quantity, from, to, shear statics.Station) {
	first, last := m.column(member, q, from), m.column(member, q, to)
	if from.Found || shear.Found || first == last || first < 0 || last < 0 || q != statics.BendingMoment && (from.Found || to.Found) {
		return
	}
	r := row{gives: -1, inner: relation{kind: "area", member: member}}
	r.add(last, exact.Int(1))
	r.add(first, exact.Int(-1))
	r.targets = []int{first, last}
	rest := to.Of(q).Sub(from.Of(q))
	by := exact.Num{}
	v := -1
	if q == statics.BendingMoment {
		by = to.At.Sub(from.At)
		rest = rest.Sub(by.Mul(shear.V))
		if v = m.column(member, statics.ShearForce, shear); v >= 0 {
			r.add(v, by.Neg())
		}
	}
	if !rest.IsZero() {
		r.rest(rest.Neg())
	}
	if q == statics.BendingMoment && to.Found {
		r.targets = []int{last}
		m.follow(&r, last, func(x values, at exact.Num) shift {
			s := m.shearShift(v, x)
			by := at.Sub(from.At)
			s.moment, s.slackM = x.of[first].Sub(m.Items[first].Value).Add(s.v.Mul(by)), s.slackV.Mul(by.Abs())
			s.largest = exact.Max(x.of[first].Abs(), s.largest.Mul(by.Abs()))
			if !x.whole[first] {
				s.slackM = s.slackM.Add(judging.ThirdFigure(x.of[first]))
			}
			return s
		})
		m.placeRow(member, to, v)
	}
	m.innerRow = append(m.innerRow, r)
}

// placeRow ties the place where the shear is zero to the shear at another place.
func (m *Marker) placeRow(member int, at statics.Station, shear int) {
	i := m.placeOf(problems.Item{Member: member, Station: at})
	if i < 0 || shear < 0 {
		return
	}
	r := row{gives: -1, inner: relation{kind: "area", member: member}}
	stretch := m.Diagrams[member].StretchFrom(at)
	r.add(i, stretch.V.Derivative().At(at.At))
	r.add(shear, exact.Int(1))
	r.targets = []int{i}
	m.follow(&r, i, func(x values, _ exact.Num) shift { return m.shearShift(shear, x) })
	m.innerRow = append(m.innerRow, r)
}

// shearShift is the shift of V by an item that tells it at another place.
func (m *Marker) shearShift(i int, x values) shift {
	if i < 0 || x.whole[i] {
		return shift{}
	}
	return shift{v: x.of[i].Sub(m.Items[i].Value), slackV: judging.ThirdFigure(x.of[i]), largest: x.of[i].Abs()}
}

// piecesAt lists the rigid pieces of two members or more that meet at a joint, without those whose N, V and M are withheld.
func (m *Marker) piecesAt(joint int) [][]int {
	var all []int
	for i, b := range m.Frame.Members {
		if b.From == joint || b.To == joint {
			all = append(all, i)
		}
	}
	pieces := [][]int{all}
	for _, c := range m.Frame.Connections {
		if c.Joint == joint {
			pieces = c.Pieces
		}
	}
	return slices.DeleteFunc(slices.Clone(pieces), func(p []int) bool {
		return len(p) < 2 || slices.ContainsFunc(p, func(b int) bool { return m.Diagrams[b].Withheld })
	})
}

// cornerRows balance a rigid piece at a joint: along x and y, along and across its members, and of moments.
func (m *Marker) cornerRows(joint int, piece []int) {
	one := exact.Int(1)
	along := []statics.Vector{{X: one}, {Y: one}}
	for _, b := range piece {
		if e := m.Frame.Span(b); !e.X.IsZero() && !e.Y.IsZero() {
			along = append(along, unit(e), unit(e).Left())
		}
	}
	for _, v := range along {
		m.cornerRow(joint, piece, func(force statics.Vector, _ exact.Num) exact.Num { return v.Dot(force) })
	}
	m.cornerRow(joint, piece, func(_ statics.Vector, couple exact.Num) exact.Num { return couple })
}

// cornerRow is one sum of all that acts on a piece at a joint; part tells what a force or couple adds to it.
func (m *Marker) cornerRow(joint int, piece []int, part func(force statics.Vector, couple exact.Num) exact.Num) {
	r := row{gives: -1, inner: relation{kind: "joint", joint: joint}}
	rest := exact.Num{}
	add := func(item int, truth, factor exact.Num) {
		rest = rest.Add(truth.Mul(factor))
		if item >= 0 {
			r.add(item, factor)
		}
	}
	for _, b := range piece {
		stations := m.Diagrams[b].Stations()
		st, facing := stations[0], exact.Int(1)
		if m.Frame.Members[b].To == joint {
			st, facing = stations[len(stations)-1], exact.Int(-1)
		}
		e := unit(m.Frame.Span(b)).Times(facing)
		add(m.column(b, statics.AxialForce, st), st.N, part(e, exact.Num{}))
		add(m.column(b, statics.ShearForce, st), st.V, part(e.Left().Neg(), exact.Num{}))
		add(m.column(b, statics.BendingMoment, st), st.M, part(statics.Vector{}, facing))
	}
	body := m.PartOf(piece[0])
	for i, f := range m.Forces {
		if f.Joint == joint {
			v, couple := m.forceIn(i, body)
			add(m.ofForce(i), m.Values[i], part(v, couple))
		}
	}
	if !rest.IsZero() {
		r.rest(rest.Neg())
	}
	if len(r.items) > 0 {
		m.innerRow = append(m.innerRow, r)
	}
}
