package wording

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Loads describes the loads of the frame. A load that runs on in one line over several members is one text, and, but spoken,
// what is the same on several members.
func (w givens) Loads() []string {
	var all []string
	loads := w.a.Frame.Loads
	for i := 0; i < len(loads); {
		r, n, runs := w.runAt(i)
		switch {
		case runs && w.spoken:
			all = append(all, w.spokenRun(r, loads[i]))
		case w.spoken:
			all = append(all, w.spokenLoad(loads[i]))
		case runs && !w.plain(loads[i:i+n]):
			all = append(all, w.runText(r, loads[i]))
		default:
			n = w.alike(i, &all)
		}
		i += n
	}
	return all
}

// alike adds the text of load i and of those after it that say the same of other members, and tells how many they are.
func (w givens) alike(i int, all *[]string) int {
	loads := w.a.Frame.Loads
	on := []string{w.carrier(loads[i])}
	what, where := w.load(loads[i])
	n := 1
	for ; i+n < len(loads); n++ {
		nextWhat, nextWhere := w.load(loads[i+n])
		next := w.carrier(loads[i+n])
		if nextWhat != what || nextWhere != where || slices.Contains(on, next) {
			break
		}
		on = append(on, next)
	}
	*all = append(*all, what+" "+notation.List(on)+where)
	return n
}

// Load is a load of the frame: "30 kN down on BC, 2.4 m from B"; spoken, what it does: "a force of 30 kN acts down on BC,
// 2.4 m from B".
func (w givens) Load(l statics.Load) string {
	if w.spoken {
		return w.spokenLoad(l)
	}
	what, where := w.load(l)
	return what + " " + w.carrier(l) + where
}

// carrier is where a load acts, without the place along the member: "on BC" is "BC" but for the first word.
func (w givens) carrier(l statics.Load) string {
	switch {
	case l.Joint == statics.None:
		return w.member(l.Member)
	case l.Member != statics.None:
		return w.joint(l.Joint) + ", on " + w.member(l.Member)
	}
	return w.joint(l.Joint)
}

// load is a load up to the name of what carries it, and what follows that name.
func (w givens) load(l statics.Load) (what, where string) {
	at := " on"
	if l.Joint != statics.None {
		at = " at"
		if l.Member == statics.None && w.pinAt(l.Joint) {
			where = ", on the pin"
		}
	}
	switch l.Kind {
	case statics.CoupleLoad:
		what = "a couple of " + w.st.WithUnit(l.Size.Abs(), notation.Moment) + " " + Turn(l.Size.Sign())
	case statics.SpreadLoad:
		return w.spread(l)
	case statics.RopeLoad:
		what, way := w.rope(l)
		return what, where + way
	default:
		what = w.st.WithUnit(l.Size.Abs(), notation.Force) + " " + w.loadDirection(l, l.Size.Sign())
	}
	if l.Joint == statics.None {
		where = ", " + w.Along(l.Member, l.At)
	}
	return what + at, where
}

// pinAt reports whether the pin at joint j is a body of its own.
func (w givens) pinAt(j int) bool {
	return slices.ContainsFunc(w.a.Pins, func(p statics.PinBody) bool { return p.Joint == j })
}

// loadDirection is the direction of a load, reversed if its size is negative; where it is inclined, how it lies to its
// member or its components.
func (w givens) loadDirection(l statics.Load, sign int) string {
	v := l.Along
	if sign < 0 {
		v = v.Neg()
	}
	if l.Member == statics.None || v.X.IsZero() || v.Y.IsZero() {
		return w.Direction(v)
	}
	span := w.a.Frame.Span(l.Member)
	switch {
	case span.Dot(v).IsZero():
		return notation.DirectionWord(v) + ", perpendicular to the member,"
	case span.Cross(v).IsZero():
		return notation.DirectionWord(v) + ", along the member,"
	}
	return w.Direction(v)
}

// spread is a distributed load up to the name of its member, and its stretch of it.
func (w givens) spread(l statics.Load) (what, where string) {
	sign := l.First.Sign()
	if sign == 0 {
		sign = l.Last.Sign()
	}
	size := func(n exact.Num) exact.Num {
		if sign < 0 {
			return n.Neg()
		}
		return n
	}
	kind, q := "uniform load", w.st.WithUnit(size(l.First), notation.Intensity)
	if !l.First.Equal(l.Last) {
		kind = "linearly varying load"
		q = fmt.Sprintf("%s to %s", w.st.Given(size(l.First), notation.Intensity), w.st.WithUnit(size(l.Last), notation.Intensity))
	}
	per := map[statics.Per]string{statics.PerRun: " of horizontal run", statics.PerRise: " of rise"}[l.Per]
	what = fmt.Sprintf("%s %s%s %s on", kind, q, per, w.loadDirection(l, sign))
	switch {
	case !w.wholeMember(l):
		return what, w.stretch(l.Member, l.Start, l.End)
	case l.First.Equal(l.Last):
		return what, ""
	}
	return what, ", over its whole length from " + w.joint(w.a.Frame.Members[l.Member].From)
}

// stretch is a stretch of a member: ", from 1 to 7.2 m from B", ", from 1 m to C".
func (w givens) stretch(member int, start, end exact.Num) string {
	if end.Equal(w.a.Frame.Length(member)) {
		return ", from " + w.st.WithUnit(start, notation.Length) + " to " + w.joint(w.a.Frame.Members[member].To)
	}
	return fmt.Sprintf(", from %s to %s", w.st.Given(start, notation.Length), w.Along(member, end))
}

// wholeMember reports whether a distributed load covers its member.
func (w givens) wholeMember(l statics.Load) bool {
	return l.Start.IsZero() && l.End.Equal(w.a.Frame.Length(l.Member))
}
