package figure

import (
	"math"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A spreadLoad is a distributed load on its way into the scene.
type spreadLoad struct {
	Spread
	first, last exact.Num // intensities at From and To
	basis       string    // " of run", " of rise", or nothing
	stretch     string    // where on a sloping member it lies, or nothing
}

// spread adds load i to those in hand, on its member or on the projection on which it is counted.
func (d *draft) spread(list []spreadLoad, i int, l statics.Load) []spreadLoad {
	s := spreadLoad{first: l.First, last: l.Last}
	along, span := l.Along, d.f.Span(l.Member)
	if s.first.Sign() <= 0 && s.last.Sign() <= 0 {
		along, s.first, s.last = along.Neg(), s.first.Neg(), s.last.Neg()
	}
	sloping := !span.X.IsZero() && !span.Y.IsZero()
	switch {
	case s.first.IsZero() && s.last.IsZero(),
		l.Per == statics.PerRun && span.X.IsZero(), l.Per == statics.PerRise && span.Y.IsZero():
		return list // it comes to nothing
	case l.Per == statics.PerRun && sloping:
		s.basis, s.Projected = " of run", along.X.IsZero()
	case l.Per == statics.PerRise && sloping:
		s.basis, s.Projected = " of rise", along.Y.IsZero()
	}
	s.From, s.To = point(d.f.Along(l.Member, l.Start)), point(d.f.Along(l.Member, l.End))
	s.Toward, s.Look = vector(along), Look{LoadMark, d.o.load(i)}
	s.stretch = d.stretch(l)
	if s.From.X > s.To.X || s.From.X == s.To.X && s.From.Y > s.To.Y {
		s.From, s.To, s.first, s.last = s.To, s.From, s.last, s.first
	}
	if s.Projected {
		s.Pull = d.leaves(s.Spread)
		s.project()
	}
	if s.Toward.IsZero() || s.From == s.To {
		return list
	}
	return append(list, s)
}

// stretch measures where a distributed load begins and ends, or says it in words where that is better.
func (d *draft) stretch(l statics.Load) string {
	whole := l.Start.IsZero() && l.End.Equal(d.f.Length(l.Member))
	if whole {
		return ""
	}
	span := d.f.Span(l.Member)
	sloping := !span.X.IsZero() && !span.Y.IsZero()
	if !sloping || !l.Start.Terminates() || !l.End.Terminates() {
		d.measure(l.Member, l.Start, "the load")
		d.measure(l.Member, l.End, "the load")
		return ""
	}
	st := d.o.Style
	return ", " + st.Given(l.Start, notation.Length) + " to " + d.o.given(l.End, notation.Length) +
		" from " + d.f.Joints[d.f.Members[l.Member].From].Name
}

// leaves reports whether a load points away from the middle of the frame, so that it is drawn outside, leaving it: suction on a
// wall or a roof. What weighs down lies above.
func (d *draft) leaves(s Spread) bool {
	if s.Toward.Y < 0 {
		return false
	}
	all := d.extent()
	x, y := s.From.X+s.To.X-all.low.X-all.high.X, s.From.Y+s.To.Y-all.low.Y-all.high.Y
	return x*s.Toward.X+y*s.Toward.Y > 0
}

// project moves a load to a line along an axis, at the end of its member that lies furthest out.
func (s *spreadLoad) project() {
	out := s.Outward()
	if out.Upright() {
		y := min(s.From.Y, s.To.Y)
		if out.Y > 0 {
			y = max(s.From.Y, s.To.Y)
		}
		s.From.Y, s.To.Y = y, y
		return
	}
	x := min(s.From.X, s.To.X)
	if out.X > 0 {
		x = max(s.From.X, s.To.X)
	}
	s.From.X, s.To.X = x, x
	if s.From.Y > s.To.Y {
		s.From, s.To, s.first, s.last = s.To, s.From, s.last, s.first
	}
}

// addSpreads adds the distributed load, those that go on in one line as one, with heights to one scale.
func (d *draft) addSpreads(list []spreadLoad) {
	list = joined(levelled(list))
	greatest := d.tallest
	for i := range list {
		s := &list[i]
		s.First, s.Last = s.first.Float(), s.last.Float()
		greatest = max(greatest, math.Abs(s.First), math.Abs(s.Last))
	}
	for i, s := range list {
		s.First, s.Last = s.First/greatest, s.Last/greatest
		d.spreadText(&s, list[:i])
		s.On = d.standsOn(s.Spread)
		d.Spreads = append(d.Spreads, s.Spread)
	}
}

// standsOn lists the loads already in the scene that lie under a new one on the same side of the same line.
func (d *draft) standsOn(s Spread) []int {
	var on []int
	middle := Position{(s.From.X + s.To.X) / 2, (s.From.Y + s.To.Y) / 2}
	for i, u := range d.Spreads {
		if u.Projected == s.Projected && AngleBetween(u.Outward(), s.Outward()) < math.Pi/3 &&
			(u.over(middle) || s.over(Position{(u.From.X + u.To.X) / 2, (u.From.Y + u.To.Y) / 2})) {
			on = append(on, i)
		}
	}
	return on
}

// spreadText writes the intensities: one in the middle if it is the same throughout, else one at each end that is not
// zero, unless the load before goes on with it.
func (d *draft) spreadText(s *spreadLoad, before []spreadLoad) {
	text := func(n exact.Num) string {
		if n.IsZero() {
			return ""
		}
		return d.o.given(n.Abs(), notation.Intensity) + s.basis
	}
	if s.first.Equal(s.last) {
		s.MidText = text(s.first) + s.stretch
		return
	}
	s.FirstText, s.LastText = text(s.first), text(s.last)
	for _, b := range before {
		if b.To == s.From && b.last.Equal(s.first) && b.Toward == s.Toward {
			s.FirstText = ""
		}
		if b.From == s.To && b.first.Equal(s.last) && b.Toward == s.Toward {
			s.LastText = ""
		}
	}
	if s.LastText != "" {
		s.LastText += s.stretch
	} else if s.FirstText != "" {
		s.FirstText += s.stretch
	}
}

// levelled puts projections that adjoin on one line, the outermost of theirs.
func levelled(list []spreadLoad) []spreadLoad {
	var raised []*spreadLoad
	for i := range list {
		if list[i].Projected {
			raised = append(raised, &list[i])
		}
	}
	for moved := true; moved; { // each pass carries a level one further along a chain, outward only
		moved = false
		for _, a := range raised {
			for _, b := range raised {
				moved = levelPair(a, b) || moved
			}
		}
	}
	return list
}

// levelPair moves one projection to the line of another if that lies further out and the two adjoin, and reports whether it
// did.
func levelPair(a, b *spreadLoad) bool {
	if a.To.X != b.From.X && b.To.X != a.From.X && a.To.Y != b.From.Y && b.To.Y != a.From.Y {
		return false // this is quicker told
	}
	out := a.Outward()
	if out != b.Outward() {
		return false
	}
	if out.Upright() {
		if (a.To.X == b.From.X || b.To.X == a.From.X) && (b.From.Y-a.From.Y)*out.Y > 0 {
			a.From.Y, a.To.Y = b.From.Y, b.From.Y
			return true
		}
		return false
	}
	if (a.To.Y == b.From.Y || b.To.Y == a.From.Y) && (b.From.X-a.From.X)*out.X > 0 {
		a.From.X, a.To.X = b.From.X, b.From.X
		return true
	}
	return false
}

// joined makes one of two loads where the second goes on in the line, sense and steepness of the first.
func joined(list []spreadLoad) []spreadLoad {
	begins := map[Position][]int{}
	for j, s := range list {
		begins[s.From] = append(begins[s.From], j)
	}
	for i := range list {
		for _, j := range begins[list[i].To] {
			if i != j && goesOn(list[i], list[j]) {
				list[i].To, list[i].last = list[j].To, list[j].last
				list = append(list[:j], list[j+1:]...)
				return joined(list)
			}
		}
	}
	return list
}

// goesOn reports whether b continues a.
func goesOn(a, b spreadLoad) bool {
	if a.To != b.From || a.Toward != b.Toward || a.Look != b.Look || a.basis != b.basis || a.Projected != b.Projected || a.Pull != b.Pull ||
		!a.last.Equal(b.first) || a.stretch != "" || b.stretch != "" {
		return false
	}
	if AngleBetween(a.From.To(a.To), b.From.To(b.To)) > 1e-6 {
		return false
	}
	rise := func(s spreadLoad) float64 {
		return (s.last.Float() - s.first.Float()) / math.Hypot(s.To.X-s.From.X, s.To.Y-s.From.Y)
	}
	return math.Abs(rise(a)-rise(b)) < 1e-9*(1+math.Abs(rise(a)))
}
