package figure

import (
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// DescribeInternal says in sentences what the figure of an internal force shows: what its sign means, and of each member
// the values at its critical points in order.
func DescribeInternal(s *statics.Solution, q Quantity, o Options) []string {
	w := words{s.Assembly, &s.Frame, o}
	d := newDraft(&s.Frame, o, make([]bool, len(s.Frame.Members)))
	sign := d.meaning(q)
	if q == BendingMoment {
		sign = sagging
	}
	lines := []string{q.name() + " " + q.Letter() + d.unitWords(q) + ", " + sign}
	for _, g := range s.Diagrams {
		lines = append(lines, w.along(g, q))
	}
	return sentences(lines)
}

// unitWords is " in kN", or nothing.
func (d *draft) unitWords(q Quantity) string {
	if unit := d.o.Style.UnitOf(q.dimension()); unit != "" && !d.o.Style.Units.Letters() {
		return " in " + unit
	}
	return ""
}

// along lists the values of a quantity along one member.
func (w words) along(g statics.Diagram, q Quantity) string {
	m := w.f.Members[g.Member]
	text := m.Name + ", " + w.o.given(g.Length, notation.Length) + " from " + w.f.Joints[m.From].Name + " to " + w.f.Joints[m.To].Name + ": "
	if g.Withheld {
		return text + "withheld, for it lies on a ring"
	}
	var all []string
	idle := true
	for _, st := range q.steps(g.Stations(), w.o) {
		value := q.of(st.Internal, w.o)
		idle = idle && value.IsZero()
		point := w.o.Style.ResultNumber(value, q.dimension()) + w.station(g, st)
		if q == BendingMoment && st.Extreme {
			point += ", a peak"
		}
		all = append(all, point)
	}
	if idle {
		return text + "0 all along"
	}
	return text + strings.Join(all, "; ")
}

// steps are the stations with those made one before and after which only another quantity differs.
func (q Quantity) steps(stations []statics.Station, o Options) []statics.Station {
	var list []statics.Station
	for _, st := range stations {
		last := len(list) - 1
		if st.Side == statics.After && last >= 0 && list[last].At.Equal(st.At) && q.of(list[last].Internal, o).Equal(q.of(st.Internal, o)) {
			list[last].Side = statics.Both
			continue
		}
		list = append(list, st)
	}
	return list
}

// station is the place of a critical point on its member.
func (w words) station(g statics.Diagram, st statics.Station) string {
	m := w.f.Members[g.Member]
	switch {
	case st.At.IsZero():
		return " at " + w.f.Joints[m.From].Name
	case st.At.Equal(g.Length):
		return " at " + w.f.Joints[m.To].Name
	}
	side := map[statics.Side]string{statics.Before: " just before ", statics.After: " just after ", statics.Both: " at "}[st.Side]
	return side + w.o.given(st.At, notation.Length)
}
