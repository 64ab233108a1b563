package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Axes to draw on: how far from one another those of N, V and M stand, as a share of the length of one member and of a beam. The
// fine lines across reach half as far beyond the first and the last.
const (
	axisApart     = 0.3
	beamAxisApart = 0.2
)

// OfAxes is the scene of empty axes along members, one beneath the other for each quantity, to draw diagrams on. The members lie
// level one after the other, the joint named first on the left, whichever way they run in the frame; so they had better be one
// member, or those of a beam from left to right. Fine lines stand at the places where what acts changes; those at which V is found to
// be zero are not among them.
func OfAxes(s *statics.Solution, members []int, qs []InternalForce, o Options) Scene {
	a := axes{Scene: Scene{Title: wording.Sentence(axesTitle(s, members)), Names: map[string]Symbolic{}, Letters: lettersOf(&s.Frame, o)}, qs: qs, o: o}
	for _, m := range members {
		a.length = a.length.Add(s.Frame.Length(m))
	}
	a.long = a.length.Float()
	a.apart = axisApart * a.long
	if len(members) > 1 {
		a.apart = beamAxisApart * a.long
	}
	for i, q := range qs {
		a.axis(i, q)
	}
	a.crossing(s, members)
	return a.Scene
}

// axesTitle is what axes are called.
func axesTitle(s *statics.Solution, members []int) string {
	if first := s.Frame.Members[members[0]]; len(members) == 1 {
		return "axes along " + first.Name + ", from " + s.Frame.Joints[first.From].Name + " to " + s.Frame.Joints[first.To].Name
	}
	var names []string
	for _, m := range members {
		names = append(names, s.Frame.Members[m].Name)
	}
	return "axes along " + notation.List(names)
}

// axes are axes in the making.
type axes struct {
	Scene
	qs     []InternalForce
	o      Options
	length exact.Num // of all members
	long   float64
	apart  float64 // of one axis from the next
}

// axis is the axis of one quantity, the one numbered so, with its letter and signs.
func (a *axes) axis(number int, q InternalForce) {
	y, name := -a.apart*float64(number), Look{Role: NameMark}
	a.Guides = append(a.Guides, Stroke{From: Position{0, y}, To: Position{a.long, y}, Look: Look{Role: DimensionMark}})
	a.Names[q.Letter()] = Symbolic{Letter: q.Letter()}
	plus := a.apart * 0.35
	if q == BendingMoment && a.o.Style.Side == notation.TensionSide {
		plus = -plus
	}
	a.Notes = append(a.Notes, Note{Position{0, y}, q.Letter(), name},
		Note{Position{0, y + plus}, "+", name}, Note{Position{0, y - plus}, "−", name})
}

// crossing is the lines across with the distances between them, and the names of the joints.
func (a *axes) crossing(s *statics.Solution, members []int) {
	top := a.apart / 2
	foot := -a.apart*float64(len(a.qs)-1) - top
	name := func(at exact.Num, joint int) {
		a.Notes = append(a.Notes, Note{Position{at.Float(), top}, s.Frame.Joints[joint].Name, Look{Role: NameMark}})
	}
	var start exact.Num
	places := []exact.Num{start}
	name(start, s.Frame.Members[members[0]].From)
	for _, m := range members {
		for _, x := range changes(s.Diagrams[m])[1:] {
			places = append(places, start.Add(x))
		}
		start = start.Add(s.Frame.Length(m))
		name(start, s.Frame.Members[m].To)
	}
	for i, x := range places {
		a.Guides = append(a.Guides, Stroke{From: Position{x.Float(), top}, To: Position{x.Float(), foot}, Look: Look{Role: DimensionMark, Emphasis: Faded}})
		if i > 0 {
			a.distance(places[i-1], x)
		}
	}
}

// distance is the dimension between two lines across.
func (a *axes) distance(from, to exact.Num) {
	text := a.o.given(to.Sub(from), notation.Length)
	a.Dimensions = append(a.Dimensions, Dimension{
		From: from.Float(), To: to.Float(), Text: text, Short: a.o.Style.Given(to.Sub(from), notation.Length), Meaning: text,
	})
}

// changes are the places along a member at which what acts on it changes, with its ends.
func changes(d statics.Diagram) []exact.Num {
	var all []exact.Num
	for _, st := range d.Stations() {
		if !st.Found && (len(all) == 0 || !all[len(all)-1].Equal(st.At)) {
			all = append(all, st.At)
		}
	}
	return all
}

// DescribeAxes says in sentences what OfAxes draws.
func DescribeAxes(s *statics.Solution, members []int, qs []InternalForce, o Options) []string {
	w := wording.New(s.Assembly, o.Style).Spoken()
	var lines []string
	for _, q := range qs {
		lines = append(lines, "an empty axis for "+q.name()+" "+q.Letter())
	}
	for _, m := range members {
		var places []string
		for _, x := range changes(s.Diagrams[m]) {
			places = append(places, w.Along(m, x))
		}
		lines = append(lines, "lines across "+notation.List(places))
	}
	return sentences(lines)
}
