package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// DescribeDiagram says in sentences what the figure of an internal force shows: what its sign means, and of each member
// the values at its critical points in order.
func DescribeDiagram(s *statics.Solution, q InternalForce, o Options) []string {
	w := memberWords{&s.Frame, o}
	sign := q.meaning(o)
	if q == BendingMoment {
		sign = (&draft{f: &s.Frame}).sagging()
	}
	lines := []string{q.name() + " " + q.Letter() + q.unitWords(o) + ", " + sign}
	for _, g := range s.Diagrams {
		lines = append(lines, w.along(g, q))
	}
	return sentences(lines)
}

// unitWords is " in kN", or nothing.
func (q InternalForce) unitWords(o Options) string {
	if unit := o.Style.UnitOf(q.dimension()); unit != "" && !o.Style.Units.Letters() {
		return " in " + unit
	}
	return ""
}

// memberWords write about the members of a frame.
type memberWords struct {
	f *statics.Frame
	o Options
}

// along lists the values of a quantity along one member.
func (w memberWords) along(g statics.Diagram, q InternalForce) string {
	m := w.f.Members[g.Member]
	start := m.Name + ", " + w.o.given(g.Length, notation.Length) + " from " + w.f.Joints[m.From].Name + " to " + w.f.Joints[m.To].Name + ": "
	if g.Withheld {
		return start + "withheld, for it lies on a ring"
	}
	text, idle := start, true
	steps := q.steps(g.Stations(), w.o)
	for i, st := range steps {
		value := q.of(st.InternalForces, w.o)
		idle = idle && value.IsZero()
		if i > 0 {
			text += q.going(g, steps[i-1].At, st.At)
		}
		text += w.o.Style.ResultNumber(value, q.dimension()) + w.station(g, st)
		if q == BendingMoment && st.Extreme {
			text += ", a peak"
		}
	}
	if idle {
		return start + "0 all along"
	}
	return text
}

// going is how a quantity goes from one critical point to the next: it steps, or it runs level, straight or in a curve.
func (q InternalForce) going(g statics.Diagram, from, to exact.Num) string {
	if from.Equal(to) {
		return "; "
	}
	for _, p := range g.Stretches {
		if p.From.Cmp(from) <= 0 && p.Until.Cmp(to) >= 0 {
			return [...]string{", level to ", ", straight to ", ", in a curve to "}[min(max([...]exact.Poly{p.N, p.V, p.M}[q].Degree(), 0), 2)]
		}
	}
	return "; "
}

// steps are the stations with those made one before and after which only another quantity differs.
func (q InternalForce) steps(stations []statics.Station, o Options) []statics.Station {
	var list []statics.Station
	for _, st := range stations {
		last := len(list) - 1
		if st.Side == statics.After && last >= 0 && list[last].At.Equal(st.At) && q.of(list[last].InternalForces, o).Equal(q.of(st.InternalForces, o)) {
			list[last].Side = statics.Both
			continue
		}
		list = append(list, st)
	}
	return list
}

// station is the place of a critical point on its member.
func (w memberWords) station(g statics.Diagram, st statics.Station) string {
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
