package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// station adds a critical point to the table of a member.
func (d diagrams) station(t *table, g statics.Diagram, s statics.Station, largest bool) {
	member := d.Frame.Members[g.Member]
	where := map[statics.Side]string{statics.Before: "before", statics.After: "after"}[s.Side]
	switch {
	case s.At.IsZero():
		where = "at " + d.Frame.Joints[member.From].Name
	case s.At.Equal(g.Length):
		where = "at " + d.Frame.Joints[member.To].Name
	}
	t.add(d.say.InFull(s.At)+wording.Mark(s.At), where, d.say.Cell(s.N), d.say.Cell(d.st.Shear.Value(s.V)), d.say.Cell(s.M), d.say.TensionSide(g.Member, s.M), d.remark(s, largest))
}

// remark says what is special about a critical point. Where the values step it stands with those just before.
func (d diagrams) remark(s statics.Station, largest bool) string {
	text := ""
	if largest {
		text = "largest M"
	}
	if s.Extreme && s.Side != statics.After && !largest {
		text = "peak M"
	}
	why := ""
	switch {
	case s.Found:
		why = "V = 0"
	case s.Extreme && s.Side != statics.After:
		why = "V changes sign"
	}
	if why != "" && text != "" {
		why += ": "
	}
	if exactly := d.say.Exactly(s.At, notation.Length); s.Found && s.At.IsRational() && !s.At.Terminates() && s.Exact && exactly != "" && len(exactly) <= shortPlace {
		text += ", x = " + exactly
	}
	return why + text
}

// shortPlace is the longest fraction that stands beside a rounded place: 16/3, 89/60.
const shortPlace = 6

// polynomials writes N, V and M of one piece as functions of x.
func (d diagrams) polynomials(p statics.Stretch) {
	var all []string
	for _, f := range []struct {
		name string
		of   exact.Poly
	}{{"N", p.N}, {"V", d.flipped(p.V)}, {"M", p.M}} {
		all = append(all, f.name+" = "+d.say.Function(f.of))
	}
	label := fmt.Sprintf("  %s ≤ x ≤ %s:  ", d.say.InFull(p.From), d.say.InFull(p.Until))
	d.equate(label, strings.Join(all, ";  "))
}

func (d diagrams) flipped(v exact.Poly) exact.Poly {
	if d.st.Shear == notation.CounterClockwiseShear {
		return v.Scale(exact.Int(-1))
	}
	return v
}
