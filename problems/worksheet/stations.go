package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// station adds a critical point to the table of a member.
func (d *document) station(t *table, g statics.Diagram, s statics.Station, largest bool) {
	member := d.Frame.Members[g.Member]
	where := map[statics.Side]string{statics.Before: "before", statics.After: "after"}[s.Side]
	switch {
	case s.At.IsZero():
		where = "at " + d.Frame.Joints[member.From].Name
	case s.At.Equal(g.Length):
		where = "at " + d.Frame.Joints[member.To].Name
	}
	t.add(d.inFull(s.At)+mark(s.At), where, d.cell(s.N), d.cell(d.st.Shear.Value(s.V)), d.cell(s.M), tensionSide(d.Frame.Span(g.Member), s.M), d.remark(s, largest))
}

// remark says what is special about a critical point. Where the values step it stands with those just before.
func (d *document) remark(s statics.Station, largest bool) string {
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
	if exactly := d.exactly(s.At, notation.Length); s.Found && s.At.IsRational() && s.Exact && exactly != "" {
		text += ", x = " + exactly
	}
	return why + text
}

// cell is a number of a table, whose unit stands in the head.
func (d *document) cell(n exact.Num) string {
	if text := n.String(); d.p.Units.Letters() && len(text) <= longDecimal {
		return d.surd(text) + mark(n)
	}
	return d.st.ResultNumber(n, notation.Pure) + mark(n)
}

// inFull is a distance or coefficient alone, with more figures than a result.
func (d *document) inFull(n exact.Num) string {
	if text := n.String(); d.p.Units.Letters() && len(text) <= longDecimal {
		return d.surd(text)
	}
	return d.st.Given(n, notation.Pure)
}

// tensionSide is the side of a member that a moment stretches: the right-hand side on the way along it, if M is positive.
func tensionSide(span statics.Vector, m exact.Num) string {
	if m.IsZero() {
		return ""
	}
	side := span.Left()
	if m.Sign() > 0 {
		side = side.Neg()
	}
	across := [...]string{"left", "", "right"}[side.X.Sign()+1]
	height := [...]string{"bottom", "", "top"}[side.Y.Sign()+1]
	switch {
	case across == "":
		return height
	case height == "":
		return across
	}
	return map[string]string{"bottom": "lower ", "top": "upper "}[height] + across
}

// polynomials writes N, V and M of one piece as functions of x.
func (d *document) polynomials(p statics.Piece) {
	var all []string
	for _, f := range []struct {
		name string
		of   exact.Poly
	}{{"N", p.N}, {"V", d.flipped(p.V)}, {"M", p.M}} {
		all = append(all, f.name+" = "+d.polynomial(f.of))
	}
	label := fmt.Sprintf("  %s ≤ x ≤ %s:  ", d.inFull(p.From), d.inFull(p.Until))
	d.equate(label, strings.Join(all, ";  "))
}

func (d *document) flipped(v exact.Poly) exact.Poly {
	if d.st.Shear == notation.CounterClockwiseShear {
		return v.Scale(exact.Int(-1))
	}
	return v
}

// polynomial is a polynomial in x: "72 − 10x + 0.5x²".
func (d *document) polynomial(p exact.Poly) string {
	var b strings.Builder
	rough := ""
	for power, k := range p {
		if k.Inexact() {
			rough = "~"
		}
		if k.IsZero() {
			continue
		}
		d.addTerm(&b, k, d.monomial(k.Abs(), power))
	}
	if b.Len() == 0 {
		return "0"
	}
	return b.String() + rough
}

// monomial is k·x^power.
func (d *document) monomial(k exact.Num, power int) string {
	x := [...]string{"", "x", "x²", "x³"}
	size := d.inFull(k)
	switch {
	case power == 0:
		return size
	case k.Equal(exact.Int(1)):
		size = ""
	case strings.ContainsAny(size, "/ "):
		size = "(" + size + ")"
	}
	if power < len(x) {
		return size + x[power]
	}
	return fmt.Sprintf("%sx^%d", size, power)
}
