package qti

import (
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// answerID is the identifier of a response: Cy, V_BC_2.4_after. A place that is to be found is not given away.
func answerID(q Question, item problems.Item) string {
	if found(item) {
		return identifier(item.Quantity.Letter() + "_" + q.Frame.Members[item.Member].Name + "_where_V_0")
	}
	return identifier(item.Name)
}

// found reports whether an item is for a value at a place that is to be found.
func found(item problems.Item) bool {
	return item.Force == statics.None && !item.Place && item.Station.Found
}

// answerLabel says what is asked: "Cy on part CD", "V at 2.4 m, just after", "M at 0 m, at B".
func answerLabel(q Question, item problems.Item, say wording.Speaker) string {
	switch {
	case item.Place:
		return "The distance x to where V = 0, " + between(q, item.Stretch, say)
	case found(item):
		return item.Quantity.Letter() + " where V = 0, " + between(q, q.Diagrams[item.Member].StretchFrom(item.Station), say)
	case item.Force == statics.None:
		return item.Quantity.Letter() + " at " + q.Problem.Style(false).WithUnit(item.Station.At, notation.Length) + sideOf(q, item)
	}
	if f := q.Forces[item.Force]; f.Kind != statics.MemberPull {
		return item.Name + " on " + say.BodyName(f.On)
	}
	return item.Name
}

// sideOf says on which side of its place an item is asked for, where that is part of its name, or at which joint.
func sideOf(q Question, item problems.Item) string {
	m := q.Frame.Members[item.Member]
	switch {
	case strings.HasSuffix(item.Name, " before)"):
		return ", just before"
	case strings.HasSuffix(item.Name, " after)"):
		return ", just after"
	case item.Station.At.IsZero():
		return ", at " + q.Frame.Joints[m.From].Name
	case item.Station.At.Equal(q.Frame.Length(item.Member)):
		return ", at " + q.Frame.Joints[m.To].Name
	}
	return ""
}

// between says in which stretch of a member a place lies.
func between(q Question, in statics.Stretch, say wording.Speaker) string {
	return "between " + say.InFull(in.From) + " and " + q.Problem.Style(false).WithUnit(in.Until, notation.Length)
}

// answerSense says which way of a force counts as positive. Those along a member are told for all of it at once.
func answerSense(q Question, item problems.Item) string {
	if item.Force == statics.None {
		return ""
	}
	f := q.Forces[item.Force]
	if f.Kind == statics.MemberPull {
		return "positive in tension"
	}
	return "positive " + notation.SenseOf(f, exact.Int(1))
}
