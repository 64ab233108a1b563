package figure

import (
	"unpin/statics"
)

// A Growth is how much of an internal force is drawn along one member while it is being found.
type Growth struct {
	Stretches []bool            // of the member's Diagram.Stretches: those drawn as a curve; those beyond its length are not
	Places    []statics.Station // where a single stroke perpendicular to the member shows the value
}

// OfDiagramSoFar is the scene of one internal force while it is being found: as Internal, but along each member only the
// stretches and the places that found has for it. What is drawn and zero is marked with a 0, so that it differs from
// what is not found yet.
func OfDiagramSoFar(s *statics.Solution, q InternalForce, found map[int]Growth, o Options) Scene {
	d := bareMembers(s, q, o)
	for _, g := range s.Diagrams {
		if so, begun := found[g.Member]; begun && g.Withheld {
			d.withheld(g.Member)
		} else if begun {
			d.grow(g, so)
		}
	}
	d.names(d.joints())
	d.Legend = d.legend()
	return d.Scene
}

// grow draws so much of a member's curve: neighbouring stretches as one, then the places that none of them reaches.
func (d diagramDraft) grow(g statics.Diagram, so Growth) {
	drawn := func(i int) bool { return i < len(so.Stretches) && so.Stretches[i] }
	for i := 0; i < len(g.Stretches); i++ {
		from := i
		for i < len(g.Stretches) && drawn(i) {
			i++
		}
		if from == i {
			continue
		}
		run := g
		run.Stretches = g.Stretches[from:i]
		if !d.curve(run) {
			d.zero(d.atDistance(g, run.Stretches[0].From).between(d.atDistance(g, run.Stretches[len(run.Stretches)-1].Until)))
		}
	}
	for _, st := range so.Places {
		if !reached(g, st, drawn) {
			d.ordinate(g, st)
		}
	}
}

// reached reports whether a place lies in or at the end of a piece that is drawn.
func reached(g statics.Diagram, st statics.Station, drawn func(int) bool) bool {
	for i, p := range g.Stretches {
		from, until := st.At.Cmp(p.From), st.At.Cmp(p.Until)
		starts, ends := from == 0 && st.Side != statics.Before, until == 0 && st.Side != statics.After
		if drawn(i) && (from > 0 && until < 0 || starts || ends) {
			return true
		}
	}
	return false
}

// ordinate draws the value at one place.
func (d diagramDraft) ordinate(g statics.Diagram, st statics.Station) {
	at, value := d.atDistance(g, st.At), d.q.of(st.InternalForces, d.o)
	if value.IsZero() {
		d.zero(at)
		return
	}
	o := Ordinate{0, value.Float() / d.greatest}
	d.Curves = append(d.Curves, Curve{
		From: at, To: at, Side: d.side(g.Member), Ordinates: []Ordinate{o},
		Values: []CurveValue{{o, d.number(value)}},
		Look:   Look{Role: DiagramMark, Emphasis: emphasis(g.Member, d.o.LitMembers, nil)},
	})
}

// zero marks a place where the quantity is found to be zero.
func (d diagramDraft) zero(at Position) {
	d.Notes = append(d.Notes, Note{at, "0", Look{Role: DiagramMark}})
}
