package figure

import (
	"math"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A diagramDraft is the draft of the diagram of one internal force.
type diagramDraft struct {
	*draft
	q        InternalForce
	greatest float64 // its greatest size in the frame, to which curves are drawn
}

// withheld notes that a member's internal forces are not known.
func (d diagramDraft) withheld(member int) {
	a, b := d.ends(member)
	d.Notes = append(d.Notes, Note{Position{(a.X + b.X) / 2, (a.Y + b.Y) / 2}, "withheld", Look{Role: DiagramMark}})
}

// greatestOf is the greatest size of a quantity in the frame, or 1 if it is zero throughout.
func greatestOf(s *statics.Solution, q InternalForce) float64 {
	greatest := 0.0
	for _, g := range s.Diagrams {
		for _, st := range g.Stations() {
			greatest = max(greatest, math.Abs(q.of(st.InternalForces, Options{}).Float()))
		}
	}
	if greatest == 0 {
		return 1
	}
	return greatest
}

// side is the side of a member on which positive values of a quantity stand.
func (d diagramDraft) side(member int) Direction {
	a, b := d.ends(member)
	left := a.To(b).Left()
	if d.q == BendingMoment {
		if d.o.Style.Side == notation.CompressionSide {
			return left
		}
		return left.Opposite()
	}
	if left.Y < 0 || left.Y == 0 && left.X > 0 {
		return left.Opposite()
	}
	return left
}

// curve adds the curve of a quantity along one member, or along the neighbouring pieces of it that g holds, and reports
// whether it is more than zero all along.
func (d diagramDraft) curve(g statics.Diagram) bool {
	c := Curve{Side: d.side(g.Member), Look: Look{Role: DiagramMark, Emphasis: emphasis(g.Member, d.o.LitMembers, nil)}}
	from, until := g.Stretches[0].From, g.Stretches[len(g.Stretches)-1].Until
	c.From, c.To = d.atDistance(g, from), d.atDistance(g, until)
	share := func(x exact.Num) float64 { return x.Sub(from).Float() / until.Sub(from).Float() }
	flat := true
	for _, p := range g.Stretches {
		for _, x := range samples(p, d.q) {
			value := d.q.of(p.At(x), d.o)
			flat = flat && value.IsZero()
			c.Ordinates = append(c.Ordinates, Ordinate{share(x), value.Float() / d.greatest})
		}
	}
	if flat {
		return false
	}
	for _, r := range readings(g, d.q, d.o) {
		v := CurveValue{
			Ordinate: Ordinate{share(r.at), r.value.Float() / d.greatest}, Text: d.number(r.value),
		}
		if !d.isWritten(c, v) {
			c.Values = append(c.Values, v)
		}
	}
	d.Curves = append(d.Curves, c)
	return true
}

// number is a value of the quantity as it is written beside a curve.
func (d diagramDraft) number(value exact.Num) string {
	text := d.o.Style.ResultNumber(value, d.q.dimension())
	if d.o.Style.ASCII {
		return text
	}
	return notation.Roots(text)
}

// atDistance is a place on a member; at its ends, that of the joint.
func (d *draft) atDistance(g statics.Diagram, x exact.Num) Position {
	a, b := d.ends(g.Member)
	switch {
	case x.IsZero():
		return a
	case x.Equal(g.Length):
		return b
	}
	return point(d.f.Along(g.Member, x))
}

// isWritten reports whether the same value stands already at the same place, at the end of a member that goes on straight.
func (d diagramDraft) isWritten(c Curve, v CurveValue) bool {
	for _, other := range d.Curves {
		for _, w := range other.Values {
			if w.Text == v.Text && other.Side == c.Side && other.at(w.Along) == c.at(v.Along) {
				return true
			}
		}
	}
	return false
}

// at is the point of a curve's member at a share of it.
func (c Curve) at(t float64) Position {
	switch t {
	case 0:
		return c.From
	case 1:
		return c.To
	}
	return Position{c.From.X + (c.To.X-c.From.X)*t, c.From.Y + (c.To.Y-c.From.Y)*t}
}

// bend is the share of a curved piece that is drawn straight.
var bend = exact.MustParse("0.0625")

// samples are the places of a piece between which the quantity is drawn straight.
func samples(p statics.Stretch, q InternalForce) []exact.Num {
	list := []exact.Num{p.From}
	if [...]exact.Poly{p.N, p.V, p.M}[q].Degree() > 1 {
		step := p.Until.Sub(p.From).Mul(bend)
		for x := p.From.Add(step); x.Cmp(p.Until) < 0; x = x.Add(step) {
			list = append(list, x)
		}
	}
	return append(list, p.Until)
}

// A reading is a value of a quantity that is written beside its curve.
type reading struct{ at, value exact.Num }

// readings are the values at the ends, steps and peaks of a quantity along a member that are not zero; where it stays
// the same, one in the middle.
func readings(g statics.Diagram, q InternalForce, o Options) []reading {
	var list []reading
	stations := g.Stations()
	for i := 0; i < len(stations); {
		value := q.of(stations[i].InternalForces, o)
		n := i + 1
		for n < len(stations) && q.of(stations[n].InternalForces, o).Equal(value) && q.isLevel(g, stations[n-1], stations[n], o) {
			n++
		}
		if at := stations[i].At.Add(stations[n-1].At).Mul(half); !value.IsZero() {
			list = append(list, reading{at, value})
		}
		i = n
	}
	return list
}

var half = exact.MustParse("0.5")

// isLevel reports whether a quantity stays the same between two neighbouring stations at which it has the same value:
// halfway it has that value too, and it cannot pass it there, for a peak would be a station.
func (q InternalForce) isLevel(g statics.Diagram, a, b statics.Station, o Options) bool {
	middle, ok := g.Section(a.At.Add(b.At).Mul(half), statics.Both)
	return ok && q.of(middle, o).Equal(q.of(a.InternalForces, o))
}
