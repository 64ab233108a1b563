package notation

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
)

// ActionText names a load as it acts on one body: "the 10 kN load on BC", "the uniform load 4 kN/m on BC". Where two
// would bear the same name, the distance from the member's start is added.
func ActionText(a *statics.Assembly, i int, st Style) string {
	text := st.action(a, i)
	for j := range a.Loads {
		if j != i && alike(a, i, j) {
			return text + ", " + st.place(a, i)
		}
	}
	return text
}

// alike reports whether two actions would bear the same name.
func alike(a *statics.Assembly, i, j int) bool {
	x, y := a.Loads[i], a.Loads[j]
	l, m := a.Frame.Loads[x.Load], a.Frame.Loads[y.Load]
	return x.Shape == y.Shape && l.Joint == m.Joint && l.Member == m.Member && l.Per == m.Per &&
		size(x).Abs().Equal(size(y).Abs())
}

// size is the number in the name of an action.
func size(x statics.Action) exact.Num {
	if !x.Shape.Spread() {
		return x.Size
	}
	return x.Intensity
}

// action names action i without its distance along the member.
func (st Style) action(a *statics.Assembly, i int) string {
	x := a.Loads[i]
	on := " " + LoadPlace(a, x.Load)
	switch x.Shape {
	case statics.AtPoint:
		return "the " + st.WithUnit(x.Size.Abs(), Force) + " load" + on
	case statics.Turning:
		return "the " + st.WithUnit(x.Size.Abs(), Moment) + " couple" + on
	}
	q := st.WithUnit(x.Intensity.Abs(), Intensity) + perText(a, x)
	what := "load "
	if isShare(a, i) {
		what = "share "
	}
	switch x.Shape {
	case statics.RisingRamp:
		return "the triangular " + what + "0 to " + q + on
	case statics.FallingRamp:
		return "the triangular " + what + q + " to 0" + on
	}
	return "the uniform " + what + q + on
}

// isShare reports whether a load comes in several actions, which stand side by side.
func isShare(a *statics.Assembly, i int) bool {
	load := a.Loads[i].Load
	return i > 0 && a.Loads[i-1].Load == load || i+1 < len(a.Loads) && a.Loads[i+1].Load == load
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

// LoadPlace is where a load of the frame acts: "on BC", "at B (on BC)", "at pin C".
func LoadPlace(a *statics.Assembly, load int) string {
	l := a.Frame.Loads[load]
	switch {
	case l.Joint == statics.None:
		return "on " + a.Frame.Members[l.Member].Name
	case l.Member != statics.None:
		return "at " + a.Frame.Joints[l.Joint].Name + " (on " + a.Frame.Members[l.Member].Name + ")"
	}
	return "at " + a.Frame.Joints[l.Joint].Name
}

// place is where along its member action i acts or begins.
func (st Style) place(a *statics.Assembly, i int) string {
	x := a.Loads[i]
	l := a.Frame.Loads[x.Load]
	if l.Joint != statics.None {
		return DirectionWord(x.Along)
	}
	start := a.Frame.Joints[a.Frame.Members[l.Member].From].Name
	if l.Kind == statics.SpreadLoad {
		return "from " + st.WithUnit(x.Start, Length) + " to " + st.WithUnit(x.End, Length)
	}
	return st.WithUnit(l.At, Length) + " from " + start
}

// BodyText names a free body: "part CD", "pin C", "parts BC and CD", "the whole frame". A frame of one part is that part.
func BodyText(a *statics.Assembly, b statics.FreeBody) string {
	if len(b) == a.Bodies() && len(b) > 1 {
		return "the whole frame"
	}
	var parts, pins []string
	for _, i := range b {
		if a.IsPin(i) {
			pins = append(pins, a.BodyName(i))
		} else {
			parts = append(parts, a.BodyName(i))
		}
	}
	word := "part "
	if len(parts) > 1 {
		word = "parts "
	}
	switch {
	case len(parts) == 0:
		return List(pins)
	case len(pins) == 0:
		return word + List(parts)
	}
	return word + strings.Join(parts, ", ") + " and " + List(pins)
}
