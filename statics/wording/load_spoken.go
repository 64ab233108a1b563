package wording

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// spokenLoad tells what a load does and where.
func (w givens) spokenLoad(l statics.Load) string {
	along := l.Along
	switch l.Kind {
	case statics.CoupleLoad:
		return "a couple of " + w.st.WithUnit(l.Size.Abs(), notation.Moment) + " turns " + Turn(l.Size.Sign()) + w.spokenPlace(l)
	case statics.SpreadLoad:
		return w.spokenSpread(l)
	case statics.RopeLoad:
		return w.spokenRope(l)
	}
	if l.Size.Sign() < 0 {
		along = along.Neg()
	}
	return "a force of " + w.st.WithUnit(l.Size.Abs(), notation.Force) + " acts " + w.clause(along) + w.spokenPlace(l)
}

// spokenPlace is the place of a point load or couple.
func (w givens) spokenPlace(l statics.Load) string {
	switch {
	case l.Joint != statics.None && l.Member != statics.None:
		return " at " + w.joint(l.Joint) + " on " + w.member(l.Member)
	case l.Joint != statics.None:
		return " at " + w.joint(l.Joint)
	}
	return " on " + w.member(l.Member) + ", " + w.st.WithUnit(l.At, notation.Length) + " from " + w.joint(w.a.Frame.Members[l.Member].From)
}

// spokenSpread tells what a distributed load does and where.
func (w givens) spokenSpread(l statics.Load) string {
	m := w.a.Frame.Members[l.Member]
	intensity := func(n exact.Num) string { return w.number(w.st.WithUnit(n, notation.Intensity)) }
	text := "a uniform load of " + intensity(l.First)
	if !l.First.Equal(l.Last) {
		text = "a linearly varying load of " + intensity(l.First) + " to " + intensity(l.Last)
	}
	text += map[statics.Per]string{statics.PerRun: " of run", statics.PerRise: " of rise"}[l.Per]
	text += " acts " + w.clause(l.Along) + " on " + m.Name
	switch {
	case !w.wholeMember(l):
		return text + ", between " + w.st.Given(l.Start, notation.Length) + " and " + w.st.WithUnit(l.End, notation.Length) + " from " + w.joint(m.From)
	case l.First.Equal(l.Last):
		return text
	}
	return text + ", from " + w.joint(m.From) + " to " + w.joint(m.To)
}
