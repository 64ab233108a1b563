package worksheet

import (
	"slices"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/notation"
)

// outlines are the parts without what acts on them, to draw on.
func (s sheet) outlines() {
	if !s.canDrawOn() {
		s.lead("Draw every part by itself, with all that acts on it, names and senses.")
		s.room(sketchRoom * len(s.Parts))
		return
	}
	s.lead("Draw on each outline all that acts on it, with names and senses.")
	o := drawing{s.document}.options()
	for b := range s.Bodies() {
		s.sketch(figure.OfOutline(s.Assembly, b, o), figure.DescribeOutline(s.Assembly, b, o))
	}
}

// canDrawOn reports whether there are pictures that can be drawn on: not those in characters, which stand beside lists.
func (s sheet) canDrawOn() bool { return s.pictures && !s.medium.lists }

// along is what is printed for N, V and M: the sums that give them, at the level that prints sums; axes for every member along
// which they are asked; and room.
func (s sheet) along() {
	members := s.ask.members()
	sums := s.task.Level == ValuesLevel
	if len(members) == 0 || s.task.Level == BlankLevel || !s.canDrawOn() && !sums {
		return
	}
	s.section("N, V and M")
	if sums {
		s.cuts()
	} else {
		defer s.room(alongRoom * len(members))
	}
	if !s.canDrawOn() {
		return
	}
	if beam := s.beam(members); beam != nil {
		s.axes(beam)
	} else {
		for _, m := range members {
			s.axes([]int{m})
		}
	}
}

// beam is the members from left to right, if they are a beam: level, one after the other, and named that way; else nil.
func (s sheet) beam(members []int) []int {
	row := slices.Clone(members)
	start := func(m int) statics.Point { return s.Frame.Joints[s.Frame.Members[m].From].At }
	slices.SortFunc(row, func(a, b int) int { return start(a).X.Cmp(start(b).X) })
	for i, m := range row {
		span := s.Frame.Span(m)
		if span.Y.Sign() != 0 || span.X.Sign() < 0 || i > 0 && s.Frame.Members[m].From != s.Frame.Members[row[i-1]].To {
			return nil
		}
	}
	if len(row) < 2 {
		return nil
	}
	return row
}

// axes are what is drawn on along members that lie one after the other.
func (s sheet) axes(members []int) {
	var qs []figure.InternalForce
	for q := range statics.BendingMoment + 1 {
		if slices.ContainsFunc(members, func(m int) bool { return s.ask.asks(m, q) }) {
			qs = append(qs, figure.InternalForce(q))
		}
	}
	if len(qs) == 0 {
		return
	}
	o := drawing{s.document}.options()
	s.sketch(figure.OfAxes(s.Solution, members, qs, o), figure.DescribeAxes(s.Solution, members, qs, o))
	last := &s.list[len(s.list)-1]
	last.axes, last.alone = true, len(members) > 1
}

// box stands in a cell for a box to write an answer in.
const box = "□"

// answers are the boxes.
func (s sheet) answers() {
	s.section("Answers")
	if forces := s.ask.forces(); len(forces) > 0 {
		t := table{align: "llbll", head: []string{"force", "", "value", "unit", "sense"}, heard: []string{"", "acts", "", "", ""}}
		for _, a := range forces {
			t.add(a.name, a.where, box, a.unit, a.plus+" / "+a.minus)
		}
		s.tabulate(0, t)
	}
	for _, m := range s.ask.members() {
		s.member(m)
	}
}

// member is the boxes for what is asked along one member.
func (s sheet) member(m int) {
	s.subhead(s.say.Member(m))
	s.lead(s.say.SectionSigns(m))
	s.symbolic("NVM")
	force, moment := " ["+s.st.UnitOf(notation.Force)+"]", " ["+s.st.UnitOf(notation.Moment)+"]"
	t := table{align: "lbbbbl", head: []string{"place, x [" + s.st.UnitOf(notation.Length) + "]", "x [" + s.st.UnitOf(notation.Length) + "]", "N" + force, "V" + force, "M" + moment, "stretched"}}
	plus, minus := s.ask.sides(m)
	for _, k := range s.ask.sections(m) {
		row := []string{s.ask.placeName(m, k), "", "", "", "", ""}
		if k.place != nil {
			row[1] = box
		}
		for q, item := range k.values {
			if item != nil {
				row[2+q] = box
			}
		}
		if k.values[statics.BendingMoment] != nil {
			row[5] = plus + " / " + minus
		}
		t.add(row...)
	}
	s.tabulate(0, t)
}
