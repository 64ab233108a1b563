package wording

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Action names a load as it acts on one body: "the 10 kN load on BC", "the uniform load 4 kN/m on BC". Where two would
// bear the same name, the distance from the member's start is added.
func (w actions) Action(i int) string {
	text := w.action(i)
	for j := range w.a.Actions {
		if j != i && alike(w.a, i, j) {
			return text + ", " + w.actionPlace(i)
		}
	}
	return text
}

// Whole names a load as Action does, or where it comes in several actions, all of it: "the linearly varying load 2 to 5 kN/m
// on BC". It is empty if the load acts on no body.
func (w actions) Whole(load int) string {
	for i, x := range w.a.Actions {
		switch l := w.a.Frame.Loads[load]; {
		case !slices.Contains(x.AllLoads(), load):
		case !isPart(w.a, i):
			return w.Action(i)
		case isPull(w.a, x):
			return w.pulls(x)
		default:
			first, last := l.First, l.Last
			if x.Loads != nil {
				first, last = w.endsOf(i)
			}
			if first.Sign() < 0 || first.IsZero() && last.Sign() < 0 {
				first, last = first.Neg(), last.Neg()
			}
			return fmt.Sprintf("the linearly varying load %s to %s%s %s", w.st.Given(first, notation.Intensity),
				w.st.WithUnit(last, notation.Intensity), perText(w.a, x), w.onWhat(i))
		}
	}
	return ""
}

// endsOf are the intensities at the ends of a load that runs on over several members, of which action i is a shape.
func (w actions) endsOf(i int) (first, last exact.Num) {
	x, loads := w.a.Actions[i], w.a.Frame.Loads
	base, final := loads[x.Loads[0]], loads[x.Loads[len(x.Loads)-1]]
	first, last = base.First, final.Last
	if w.against(base, x) {
		first = base.Last
	}
	if w.against(final, x) {
		last = final.First
	}
	return first, last
}

// against reports whether the member of a load leads the other way than that from which an action's distances are counted.
func (w actions) against(l statics.Load, x statics.Action) bool {
	f := &w.a.Frame
	return f.Span(l.Member).Dot(f.Span(f.Loads[x.Load].Member)).Sign() < 0
}

// alike reports whether two actions would bear the same name.
func alike(a *statics.Assembly, i, j int) bool {
	x, y := a.Actions[i], a.Actions[j]
	l, m := a.Frame.Loads[x.Load], a.Frame.Loads[y.Load]
	if l.Kind == statics.RopeLoad && notation.DirectionWord(x.Along) != notation.DirectionWord(y.Along) {
		return false // their names tell them apart
	}
	return (l.Kind == statics.RopeLoad) == (m.Kind == statics.RopeLoad) && slices.Equal(x.Loads, y.Loads) && x.Shape == y.Shape && l.Joint == m.Joint &&
		l.Member == m.Member && l.Per == m.Per && size(x).Abs().Equal(size(y).Abs())
}

// size is the number in the name of an action.
func size(x statics.Action) exact.Num {
	if !x.Shape.Spread() {
		return x.Size
	}
	return x.Intensity
}

// action names action i without its distance along the member.
func (w actions) action(i int) string {
	x := w.a.Actions[i]
	if isPull(w.a, x) {
		return w.pull(x)
	}
	on := " " + w.onWhat(i)
	switch x.Shape {
	case statics.AtPoint:
		return "the " + w.st.WithUnit(x.Size.Abs(), notation.Force) + " load" + on
	case statics.Turning:
		return "the " + w.st.WithUnit(x.Size.Abs(), notation.Moment) + " couple" + on
	}
	q := w.st.WithUnit(x.Intensity.Abs(), notation.Intensity) + perText(w.a, x)
	what := "load "
	if isPart(w.a, i) {
		what, on = "part ", " of the load"+on
	}
	switch x.Shape {
	case statics.RisingRamp:
		return "the triangular " + what + "0 to " + q + on
	case statics.FallingRamp:
		return "the triangular " + what + q + " to 0" + on
	}
	return "the uniform " + what + q + on
}

// isPart reports whether a load comes in several actions, which stand side by side.
func isPart(a *statics.Assembly, i int) bool {
	load := a.Actions[i].Load
	return i > 0 && a.Actions[i-1].Load == load || i+1 < len(a.Actions) && a.Actions[i+1].Load == load
}

// perText says on what length the intensity of a spread action is counted, if it is not the member's own.
func perText(a *statics.Assembly, x statics.Action) string {
	switch a.Frame.Loads[x.Load].Per {
	case statics.PerRun:
		return " of run"
	case statics.PerRise:
		return " of rise"
	}
	return ""
}

// onWhat is where action i acts: a place of its load, or the members over which that runs on.
func (w actions) onWhat(i int) string {
	x := w.a.Actions[i]
	if x.Loads == nil {
		return w.loadPlace(x.Load)
	}
	var members []int
	for _, l := range x.Loads {
		members = append(members, w.a.Frame.Loads[l].Member)
	}
	return "on " + notation.List(w.members(members))
}

// loadPlace is where a load of the frame acts: "on BC", "at B (on BC)", "at C".
func (w actions) loadPlace(load int) string {
	l := w.a.Frame.Loads[load]
	switch {
	case l.Joint == statics.None:
		return "on " + w.member(l.Member)
	case l.Member != statics.None:
		return "at " + w.joint(l.Joint) + " (on " + w.member(l.Member) + ")"
	}
	return "at " + w.joint(l.Joint)
}

// actionPlace is where along its member action i acts or begins.
func (w actions) actionPlace(i int) string {
	x := w.a.Actions[i]
	l := w.a.Frame.Loads[x.Load]
	if l.Kind == statics.RopeLoad {
		return w.whichPull(i)
	}
	if l.Joint != statics.None {
		return notation.DirectionWord(x.Along)
	}
	if x.Loads != nil {
		return "beginning " + w.placeOn(i, x.Start) + " and ending " + w.placeOn(i, x.End)
	}
	if l.Kind == statics.SpreadLoad {
		return "from " + w.st.WithUnit(x.Start, notation.Length) + " to " + w.st.WithUnit(x.End, notation.Length)
	}
	return w.st.WithUnit(l.At, notation.Length) + " from " + w.joint(w.a.Frame.Members[l.Member].From)
}

// Resultant is a load on a body as it counts there: its text, or, if it is spread, the size and place of its resultant and
// what that is the resultant of.
func (w actions) Resultant(i int) string {
	x := w.a.Actions[i]
	l := w.a.Frame.Loads[x.Load]
	if isPull(w.a, x) {
		return w.atRim(i)
	}
	if !x.Shape.Spread() {
		return w.Load(l)
	}
	text := fmt.Sprintf("%s %s, %s: the resultant of %s", w.st.WithUnit(x.Size.Abs(), notation.Force),
		strings.TrimSuffix(w.loadDirection(l, x.Size.Sign()), ","), w.centroid(i), w.Action(i))
	if x.Loads != nil {
		return w.wholeRun(i, text)
	}
	if x.Start.IsZero() && x.End.Equal(w.a.Frame.Length(l.Member)) || strings.Contains(text, " to "+w.st.WithUnit(x.End, notation.Length)) {
		return text
	}
	return text + w.stretch(l.Member, x.Start, x.End)
}

// wholeRun adds to the text of the resultant of a load that runs on where that begins and ends, unless it covers its members
// or the text says so already.
func (w actions) wholeRun(i int, text string) string {
	x := w.a.Actions[i]
	if from, until := w.a.Frame.Reach(x); from.Equal(x.Start) && until.Equal(x.End) || strings.Contains(text, ", beginning ") {
		return text
	}
	return text + ", beginning " + w.placeOn(i, x.Start) + " and ending " + w.placeOn(i, x.End)
}

// placeOn is a place at a distance as an action has it: on its member, or on one of those over which its load runs on.
func (w actions) placeOn(i int, d exact.Num) string {
	member, at := w.a.Frame.Bearer(w.a.Actions[i], d)
	return w.onOneOf(i, member, at)
}

// centroid is where the resultant of a distributed load stands.
func (w actions) centroid(i int) string {
	member, at := w.a.Frame.CentroidOf(w.a.Actions[i])
	return w.onOneOf(i, member, at)
}

// onOneOf is a place on a member of an action's load, named unless it is clear which one it is.
func (w actions) onOneOf(i, member int, at exact.Num) string {
	x := w.a.Actions[i]
	if x.Loads == nil || member == w.a.Frame.Loads[x.Load].Member || at.IsZero() || at.Equal(w.a.Frame.Length(member)) {
		return w.Along(member, at)
	}
	return w.Along(member, at) + " on " + w.member(member)
}
