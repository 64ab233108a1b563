package tutor

import (
	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
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
	for _, item := range problems.SectionItems(sc.about.solution, d) {
		switch {
		case !item.Place:
			all = append(all, sectionQuestion(item))
		case !first && sc.about.levels.along(d.Member) >= Values:
			all = append(all, zeroQuestion(item))
		}
	}
	return all
}

// sectionQuestion asks for N, V or M at a place.
func sectionQuestion(item problems.Item) Question {
	return Question{
		Kind: SectionPart, Name: item.Name, Dim: item.Dim, Step: statics.None,
		Member: item.Member, Station: item.Station, Quantity: item.Quantity, truth: item.Value,
	}
}

// zeroQuestion asks where the shear is zero.
func zeroQuestion(item problems.Item) Question {
	return Question{
		Kind: ZeroPlace, Name: item.Name, Dim: item.Dim, Step: statics.None,
		Member: item.Member, Station: item.Station, Stretch: item.Stretch, truth: item.Value,
	}
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
