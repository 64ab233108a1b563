package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A cut is a section with the piece of the part that is kept: what lies on the starting side.
type cut struct {
	Section
	part    int
	at      statics.Point
	along   statics.Vector // of the member
	kept    []int          // joints
	members []int          // members, without the one that is cut
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
	k := &cut{Section: c, at: f.Along(c.Member, c.Station.At), along: f.Span(c.Member)}
	k.part = c.Solution.PartOf(c.Member)
	k.kept = []int{f.Members[c.Member].From}
	for i := 0; i < len(k.kept); i++ {
		for _, m := range c.Solution.Parts[k.part].Members {
			mem := f.Members[m]
			if m == c.Member || slices.Contains(k.members, m) || mem.From != k.kept[i] && mem.To != k.kept[i] {
				continue
			}
			k.members = append(k.members, m)
			for _, j := range []int{mem.From, mem.To} {
				if !slices.Contains(k.kept, j) {
					k.kept = append(k.kept, j)
				}
			}
		}
	}
	return k
}

// before reports whether what acts at distance x of the cut member lies on the starting side.
func (k *cut) before(x exact.Num) bool {
	order := x.Cmp(k.Station.At)
	return order < 0 || order == 0 && k.Station.Side != statics.Before
}

// trimmed is the frame with the loads of the cut member only as far as the section; what lies beyond comes to nothing.
func (k *cut) trimmed() statics.Frame {
	f := k.Solution.Frame
	f.Loads = slices.Clone(f.Loads)
	for i, l := range f.Loads {
		if l.Member != k.Member || l.Joint != statics.None {
			continue
		}
		beyond := !k.before(l.At)
		if l.Kind == statics.SpreadLoad {
			beyond = l.Start.Cmp(k.Station.At) >= 0
		}
		switch {
		case beyond:
			f.Loads[i] = statics.Load{Kind: statics.CoupleLoad, Entry: l.Entry, Joint: statics.None, Member: l.Member}
		case l.Kind == statics.SpreadLoad && l.End.Cmp(k.Station.At) > 0:
			share := over(k.Station.At.Sub(l.Start), l.End.Sub(l.Start))
			f.Loads[i].Last = l.First.Add(l.Last.Sub(l.First).Mul(share))
			f.Loads[i].End = k.Station.At
		}
	}
	return f
}

// sumOf is the sum for a quantity of all that acts on the kept piece.
func (k *cut) sumOf(a *statics.Assembly, q statics.Quantity) statics.Sum {
	body := statics.FreeBody{k.part}
	var s statics.Sum
	switch q {
	case statics.AxialForce:
		s = a.ForceSum(body, k.along)
	case statics.ShearForce:
		s = a.ForceSum(body, k.along.Left())
	default:
		s = a.MomentSum(body, k.at)
	}
	return k.keptTerms(a, s)
}

// keptTerms is a sum with the terms of the kept piece only.
func (k *cut) keptTerms(a *statics.Assembly, s statics.Sum) statics.Sum {
	s.Terms = slices.DeleteFunc(slices.Clone(s.Terms), func(t statics.Term) bool { return !k.keeps(a, t) })
	return s
}

// keeps reports whether what gives a term acts on the kept piece.
func (k *cut) keeps(a *statics.Assembly, t statics.Term) bool {
	if t.Force != statics.None {
		return slices.Contains(k.kept, a.Forces[t.Force].Joint)
	}
	l := a.Frame.Loads[a.Actions[t.Action].Load]
	switch {
	case l.Joint != statics.None:
		return slices.Contains(k.kept, l.Joint)
	case l.Member == k.Member:
		return l.Kind == statics.SpreadLoad || k.before(l.At)
	}
	return slices.Contains(k.members, l.Member)
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
