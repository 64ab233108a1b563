package tutor

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// sectionQuestions asks for N, V and M at the critical points of one member: M at all of them, N and V where they are
// not what was asked last. A place where V is zero is asked for before a name gives it away. From the level terms on, how V
// and M run and where M peaks is asked before any value.
func (sc script) sectionQuestions(d statics.Diagram) []Question {
	var all []Question
	first := sc.about.levels.along(d.Member) >= Terms
	if first {
		all = sc.shapeQuestions(d)
	}
	var last [3]*exact.Num
	stations := d.Stations()
	for i, st := range stations {
		for q := range statics.BendingMoment + 1 {
			value := st.Of(q)
			same := last[q] != nil && last[q].Equal(value)
			again := i > 0 && stations[i-1].At.Equal(st.At)
			if same && (again || q != statics.BendingMoment) || st.Found && q != statics.BendingMoment {
				continue
			}
			last[q] = &value
			if st.Found && !first && sc.about.levels.along(d.Member) >= Values {
				all = append(all, sc.zeroQuestion(d, st))
			}
			all = append(all, Question{
				Kind:     SectionPart,
				Name:     sc.about.sectionName(d.Member, q, st.At, sideWord(stations, i, q)),
				Dim:      [...]notation.Dimension{notation.Force, notation.Force, notation.Moment}[q],
				Step:     statics.None,
				Member:   d.Member,
				Station:  st,
				Quantity: q,
				truth:    value,
			})
		}
	}
	return all
}

// sideWord is "before" or "after" where the quantity steps at station i, and nothing where it does not.
func sideWord(stations []statics.Station, i int, q statics.Quantity) string {
	steps := func(j int) bool {
		return j >= 0 && j < len(stations) && stations[j].At.Equal(stations[i].At) &&
			!stations[j].Of(q).Equal(stations[i].Of(q))
	}
	switch {
	case steps(i + 1):
		return " before"
	case steps(i - 1):
		return " after"
	}
	return ""
}

// sectionName is V(BC, 2.4 before): the quantity, the member and the distance from the start of its name.
func (m *matter) sectionName(member int, q statics.Quantity, at exact.Num, side string) string {
	return q.Letter() + "(" + m.solution.Frame.Members[member].Name + ", " + placeText(at) + side + ")"
}

// placeText is a distance in a name: a decimal where it is one, a fraction where it is rational, else rounded.
func placeText(at exact.Num) string {
	if at.IsRational() && !at.Terminates() && !at.Inexact() {
		return at.String()
	}
	return at.Decimal(6)
}

// knownIn tells the values of the forces in the sum of a section, which is one of the assembly a: all but the last are
// known, by the senses that they are given.
func (m *matter) knownIn(a *statics.Assembly) func(int) (exact.Num, bool) {
	given := m.solution.FullValues(m.asGiven(m.solution.Values))
	return func(f int) (exact.Num, bool) {
		if f == len(a.Forces)-1 {
			return exact.Num{}, false
		}
		return given[f], true
	}
}
