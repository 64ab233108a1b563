package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A cut is a section with the piece of the part that is kept.
type cut struct {
	Section
	kept  statics.Kept
	part  int
	at    statics.Point
	along statics.Vector // of the member
}

// far is the joint of the cut member on the piece.
func (k *cut) far() int {
	if k.Side == statics.ToEnd {
		return k.Solution.Frame.Members[k.Member].To
	}
	return k.Solution.Frame.Members[k.Member].From
}

// place is the joint at the section, or None between the ends of the member.
func (k *cut) place() int {
	m := k.Solution.Frame.Members[k.Member]
	switch {
	case k.Station.At.IsZero():
		return m.From
	case k.Station.At.Equal(k.Solution.Diagrams[k.Member].Length):
		return m.To
	}
	return statics.None
}

// keep finds what lies on the side of the section that is kept.
func (c Section) keep() *cut {
	f := &c.Solution.Frame
	return &cut{
		Section: c,
		kept:    statics.Kept{Solution: c.Solution, Member: c.Member, At: c.Station, Side: c.Side},
		part:    c.Solution.PartOf(c.Member),
		at:      f.Along(c.Member, c.Station.At),
		along:   f.Span(c.Member),
	}
}

// loadsHere lists the point loads on the cut member at the section itself, be they before it or beyond.
func (k *cut) loadsHere() []statics.Load {
	var all []statics.Load
	for _, l := range k.Solution.Frame.Loads {
		if l.Kind == statics.PointLoad && l.Joint == statics.None && l.Member == k.Member && l.At.Equal(k.Station.At) {
			all = append(all, l)
		}
	}
	return all
}

// whole is an action of a trimmed distributed load as it was before the cut; false if the cut does not go through it.
func (k *cut) whole(x statics.Action) (statics.Action, bool) {
	for _, y := range k.Solution.Apart().Actions {
		if y.Load == x.Load && y.Shape == x.Shape && y.End.Sub(y.Start).Cmp(x.End.Sub(x.Start)) > 0 {
			return y, true
		}
	}
	return statics.Action{}, false
}

// parts reports whether the section cuts through a distributed load.
func (k *cut) parts(load int) bool {
	l := k.Solution.Frame.Loads[load]
	return l.Kind == statics.SpreadLoad && l.Joint == statics.None && l.Member == k.Member &&
		l.Start.Cmp(k.Station.At) < 0 && l.End.Cmp(k.Station.At) > 0
}

// resultantBeyond reports whether the resultant of a distributed load on the cut member lies beyond the cut.
func (k *cut) resultantBeyond(load int) bool {
	var force, moment exact.Num
	for _, y := range k.Solution.Apart().Actions {
		if y.Load == load {
			force = force.Add(y.Size)
			moment = moment.Add(y.Size.Mul(k.at.To(y.At).Dot(k.along)))
		}
	}
	return moment.Sign()*force.Sign() == k.kept.Facing()
}

// A span is a stretch of the member up to the section or beyond it, over which a student may find the moment from the area
// under the shear, or draw it as one line: of the diagram, or as long as a distributed load.
type span struct {
	from, until           exact.Num
	first, section, final statics.InternalForces // at its start, at the section and at its end
}

// spans lists those that end at the section or hold it; none at the start of the member, and where the question is not for M.
func (s *setting) spans() []span {
	k := s.cut
	if k == nil || k.Quantity != statics.BendingMoment {
		return nil
	}
	var all []span
	add := func(from, until exact.Num) {
		if p, ok := s.span(from, until); ok && !slices.ContainsFunc(all, func(q span) bool { return q.from.Equal(from) && q.until.Equal(until) }) {
			all = append(all, p)
		}
	}
	for _, p := range k.Solution.Diagrams[k.Member].Stretches {
		if k.Station.Side != statics.After {
			add(p.From, p.Until)
		}
	}
	for _, l := range k.Solution.Frame.Loads {
		if l.Kind == statics.SpreadLoad && l.Member == k.Member && l.Joint == statics.None {
			add(l.Start, l.End)
		}
	}
	return all
}

// span is that between two distances, with the question's values of the forces; false where it does not reach the section.
func (s *setting) span(from, until exact.Num) (span, bool) {
	k := s.cut
	d, at := k.Solution.Diagrams[k.Member], k.Station
	if from.Cmp(at.At) >= 0 || until.Cmp(at.At) < 0 {
		return span{}, false
	}
	first, ok := d.Section(from, statics.After)
	final, too := d.Section(until, statics.Before)
	section, here := d.Section(at.At, at.Side)
	if !here { // just before or just after it, which side is not told
		section, here = d.Section(at.At, statics.Before)
	}
	if !ok || !too || !here {
		return span{}, false
	}
	// Other values of the forces make the shear differ by the same all along, and the moment by what that adds up to.
	shear := k.Section
	shear.Quantity = statics.ShearForce
	dV, dM := shear.Value().Sub(section.V), s.right.Sub(section.M)
	own := func(f statics.InternalForces, x exact.Num) statics.InternalForces {
		f.V, f.M = f.V.Add(dV), f.M.Add(dM).Add(dV.Mul(x.Sub(at.At)))
		return f
	}
	return span{from, until, own(first, from), own(section, at.At), own(final, until)}, true
}

// straight is the moment at the section on the straight line between the ends of a span; false where the section is its end.
func (k *cut) straight(p span) (exact.Num, bool) {
	if p.until.Equal(k.Station.At) {
		return exact.Num{}, false
	}
	share := over(k.Station.At.Sub(p.from), p.until.Sub(p.from))
	return p.first.M.Add(p.final.M.Sub(p.first.M).Mul(share)), true
}
