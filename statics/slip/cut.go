package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// A cut is a section with the piece of the part that is kept: what lies on the starting side.
type cut struct {
	Section
	kept  statics.Kept
	part  int
	at    statics.Point
	along statics.Vector // of the member
}

// start is the joint from which the cut member runs.
func (k *cut) start() int { return k.Solution.Frame.Members[k.Member].From }

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

// keep finds what lies on the starting side.
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
	for _, y := range k.Solution.Actions {
		if y.Load == x.Load && y.Shape == x.Shape && y.End.Cmp(x.End) > 0 {
			return y, true
		}
	}
	return statics.Action{}, false
}

// piece is the stretch of the diagram that ends at the section or holds it, with the values at its start; false at the
// start of the member, and where the question is not for M.
func (k *cut) piece() (p statics.Stretch, ok bool) {
	if k == nil || k.Quantity != statics.BendingMoment {
		return p, false
	}
	for _, p := range k.Solution.Diagrams[k.Member].Stretches {
		if p.From.Cmp(k.Station.At) < 0 && p.Until.Cmp(k.Station.At) >= 0 && k.Station.Side != statics.After {
			return p, true
		}
	}
	return p, false
}

// straight is the moment at the section on the straight line between the ends of its stretch; false where it lies on it.
func (k *cut) straight() (exact.Num, bool) {
	p, ok := k.piece()
	if !ok || p.Until.Equal(k.Station.At) {
		return exact.Num{}, false
	}
	from, until := p.M.At(p.From), p.M.At(p.Until)
	share := over(k.Station.At.Sub(p.From), p.Until.Sub(p.From))
	return from.Add(until.Sub(from).Mul(share)), true
}
