package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Axes to draw on: how far from one another those of N, V and M stand, and how far the fine lines across reach beyond the
// first and the last, as shares of the member's length.
const (
	axisApart = 0.3
	axisReach = 0.15
)

// OfAxes is the scene of empty axes along a member, one beneath the other for each quantity, to draw diagrams on. The member lies
// level with the joint named first on the left, whichever way it runs in the frame. Fine lines stand at the places where what
// acts on it changes; those at which V is found to be zero are not among them.
func OfAxes(s *statics.Solution, member int, qs []InternalForce, o Options) Scene {
	m := s.Frame.Members[member]
	scene := Scene{Title: wording.Sentence("axes along " + m.Name + ", from " + s.Frame.Joints[m.From].Name + " to " + s.Frame.Joints[m.To].Name)}
	scene.Names = map[string]Symbolic{}
	long := s.Frame.Length(member).Float()
	foot := -axisApart * long * float64(len(qs)-1)
	fine, name := Look{Role: DimensionMark}, Look{Role: NameMark}
	for i, q := range qs {
		y := -axisApart * long * float64(i)
		scene.Guides = append(scene.Guides, Stroke{From: Position{0, y}, To: Position{long, y}, Look: fine})
		scene.Names[q.Letter()] = Symbolic{Letter: q.Letter()}
		plus, minus := axisReach*long*0.7, -axisReach*long*0.7
		if q == BendingMoment && o.Style.Side == notation.TensionSide {
			plus, minus = minus, plus
		}
		scene.Notes = append(scene.Notes, Note{Position{0, y}, q.Letter(), name},
			Note{Position{0, y + plus}, "+", name}, Note{Position{0, y + minus}, "−", name})
	}
	places := changes(s.Diagrams[member])
	for _, x := range places {
		scene.Guides = append(scene.Guides, Stroke{From: Position{x.Float(), axisReach * long}, To: Position{x.Float(), foot - axisReach*long}, Look: Look{Role: DimensionMark, Emphasis: Faded}})
	}
	scene.Notes = append(scene.Notes, Note{Position{0, axisReach * long}, s.Frame.Joints[m.From].Name, name},
		Note{Position{long, axisReach * long}, s.Frame.Joints[m.To].Name, name})
	for i := 1; i < len(places); i++ {
		text := o.given(places[i].Sub(places[i-1]), notation.Length)
		scene.Dimensions = append(scene.Dimensions, Dimension{
			From: places[i-1].Float(), To: places[i].Float(), Text: text, Short: o.Style.Given(places[i].Sub(places[i-1]), notation.Length), Meaning: text,
		})
	}
	return scene
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
func DescribeAxes(s *statics.Solution, member int, qs []InternalForce, o Options) []string {
	w := wording.New(s.Assembly, o.Style).Spoken()
	var lines []string
	for _, q := range qs {
		lines = append(lines, "an empty axis for "+q.name()+" "+q.Letter())
	}
	text := "lines across at"
	for i, x := range changes(s.Diagrams[member]) {
		if i > 0 {
			text += ","
		}
		text += " " + w.Along(member, x)
	}
	return sentences(append(lines, text))
}
