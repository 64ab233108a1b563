package worksheet

import (
	"fmt"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// byParts tells M of a member under one uniform load as handbooks put it together: the straight line between the moments at its
// ends, and on that the parabola of a simple beam, w·L²/8 at mid-span. It is said where the member is held by a moment, but not of
// a cantilever, whose free end has neither M nor V.
func (d diagrams) byParts(g statics.Diagram) {
	if len(g.Stretches) != 1 || g.Stretches[0].M.Degree() != 2 {
		return
	}
	p := g.Stretches[0]
	ends := [2]exact.Num{p.M.At(exact.Num{}), p.M.At(g.Length)}
	free := ends[0].IsZero() && p.V.At(exact.Num{}).IsZero() || ends[1].IsZero() && p.V.At(g.Length).IsZero()
	if free || ends[0].IsZero() && ends[1].IsZero() {
		return
	}
	w := p.M[2].Mul(exact.Int(-2)) // per length of the member, perpendicular to it
	most := d.say.Value(w.Mul(g.Length).Mul(g.Length).Mul(eighth), notation.Moment)
	if !d.p.Units.Letters() {
		most = fmt.Sprintf("%s·%s²/8 = %s", d.st.Given(w, notation.Intensity), d.st.Given(g.Length, notation.Length), most)
	}
	if d.ascii {
		most = notation.ASCII(most)
	}
	m := d.Frame.Members[g.Member]
	d.prose(fmt.Sprintf("M has two parts: the straight line from %s at %s to %s at %s, and the parabola of a simple beam, %s at mid-span.",
		d.say.Value(ends[0], notation.Moment), d.Frame.Joints[m.From].Name, d.say.Value(ends[1], notation.Moment), d.Frame.Joints[m.To].Name, most))
	d.symbolic("M")
}

// eighth is 1/8.
var eighth = exact.MustParse("0.125")
