package worksheet

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// loadTexts describes the loads. What is the same on several members is one line.
func (d *document) loadTexts() []string {
	if len(d.Frame.Loads) == 0 {
		return []string{"none"}
	}
	var all []string
	loads := d.Frame.Loads
	for i := 0; i < len(loads); {
		on := []string{d.carrier(loads[i])}
		what, where := d.loadText(loads[i])
		n := 1
		for ; i+n < len(loads); n++ {
			nextWhat, nextWhere := d.loadText(loads[i+n])
			next := d.carrier(loads[i+n])
			if nextWhat != what || nextWhere != where || slices.Contains(on, next) {
				break
			}
			on = append(on, next)
		}
		all = append(all, what+" "+notation.List(on)+where)
		i += n
	}
	return all
}

// carrier is where a load acts, without the place along the member: "on BC" is "BC" but for the first word.
func (d *document) carrier(l statics.Load) string {
	switch {
	case l.Joint == statics.None:
		return d.Frame.Members[l.Member].Name
	case l.Member != statics.None:
		return d.Frame.Joints[l.Joint].Name + ", on " + d.Frame.Members[l.Member].Name
	}
	return d.Frame.Joints[l.Joint].Name
}

// loadText is a load up to the name of what carries it, and what follows that name.
func (d *document) loadText(l statics.Load) (what, where string) {
	at := " on"
	if l.Joint != statics.None {
		at = " at"
		if l.Member == statics.None && d.pinAt(l.Joint) {
			where = ", on the pin"
		}
	}
	switch l.Kind {
	case statics.CoupleLoad:
		what = "a couple of " + d.st.WithUnit(l.Size.Abs(), notation.Moment) + " " + turn(l.Size.Sign())
	case statics.SpreadLoad:
		return d.spreadText(l)
	default:
		what = d.st.WithUnit(l.Size.Abs(), notation.Force) + " " + d.loadDirection(l, l.Size.Sign())
	}
	if l.Joint == statics.None {
		where = ", " + d.from(l.Member, l.At)
	}
	return what + at, where
}

// pinAt reports whether the pin at joint j is a body of its own.
func (d *document) pinAt(j int) bool {
	for _, p := range d.Pins {
		if p.Joint == j {
			return true
		}
	}
	return false
}

func turn(sign int) string {
	if sign < 0 {
		return notation.Clockwise.String()
	}
	return notation.CounterClockwise.String()
}

// from is a distance from the start of a member.
func (d *document) from(member int, x exact.Num) string {
	start := d.Frame.Joints[d.Frame.Members[member].From].Name
	if x.IsZero() {
		return "at " + start
	}
	if x.Equal(d.Frame.Length(member)) {
		return "at " + d.Frame.Joints[d.Frame.Members[member].To].Name
	}
	return d.st.WithUnit(x, notation.Length) + " from " + start
}

// loadDirection is the direction of a load, reversed if its size is negative; where it is inclined, how it lies to its
// member or its components.
func (d *document) loadDirection(l statics.Load, sign int) string {
	v := l.Along
	if sign < 0 {
		v = v.Neg()
	}
	if l.Member == statics.None || v.X.IsZero() || v.Y.IsZero() {
		return d.directionText(v)
	}
	span := d.Frame.Span(l.Member)
	switch {
	case span.Dot(v).IsZero():
		return notation.DirectionWord(v) + ", square to the member,"
	case span.Cross(v).IsZero():
		return notation.DirectionWord(v) + ", along the member,"
	}
	return d.directionText(v)
}

// spreadText is a spread load up to the name of its member, and its stretch of it.
func (d *document) spreadText(l statics.Load) (what, where string) {
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
	kind, q := "uniform load", d.st.WithUnit(size(l.First), notation.Intensity)
	if !l.First.Equal(l.Last) {
		kind = "straight-line load"
		q = fmt.Sprintf("%s to %s", d.st.Given(size(l.First), notation.Intensity), d.st.WithUnit(size(l.Last), notation.Intensity))
	}
	per := map[statics.Per]string{statics.PerRun: " of horizontal run", statics.PerRise: " of rise"}[l.Per]
	what = fmt.Sprintf("%s %s%s %s on", kind, q, per, d.loadDirection(l, sign))
	if l.Start.IsZero() && l.End.Equal(d.Frame.Length(l.Member)) {
		if l.First.Equal(l.Last) {
			return what, ""
		}
		return what, ", over its whole length from " + d.Frame.Joints[d.Frame.Members[l.Member].From].Name
	}
	return what, fmt.Sprintf(", from %s to %s", d.st.Given(l.Start, notation.Length), d.from(l.Member, l.End))
}
