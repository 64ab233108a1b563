package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// diagrams is the section with N, V and M of every member at its critical points and as polynomials between them.
type diagrams struct {
	*document
	rows *likeness // of all tables, whose columns are as wide as one another's
}

func (d diagrams) write() {
	d.section("N, V and M")
	slope := "dM/dx = V"
	sense := "up"
	if d.st.Shear == notation.CounterClockwiseShear {
		slope, sense = "dM/dx = −V", "down"
	}
	d.prose("x runs along a member from the joint named first. N is positive in tension. V is positive if, on a member named " +
		"from left to right, the forces to the left of the cut push " + sense + "; M is positive if it stretches the bottom of such a " +
		"member. For other members, rotate the page until the first joint is on the left. So " + strings.ReplaceAll(slope, " ", string(bound)) + ".")
	d.symbolic("xNVM")
	drawing{d.document}.internal()
	for _, g := range d.Diagrams {
		d.blank()
		d.diagram(g)
	}
	d.largest()
}

func (d diagrams) diagram(g statics.Diagram) {
	m := d.Frame.Members[g.Member]
	title := fmt.Sprintf("Member %s, from %s to %s, length %s", m.Name, d.Frame.Joints[m.From].Name, d.Frame.Joints[m.To].Name, d.st.WithUnit(g.Length, notation.Length))
	if g.Withheld {
		d.prose(title + ": withheld, since " + withheld(d.Solution, g.Member) + ".")
		return
	}
	if idle(g) {
		d.prose(title + ": N = V = M = 0 all along.")
		return
	}
	d.subhead(title)
	t := table{align: "rlrrrlm", alike: d.rows, heard: []string{"", "place", "", "", "", "", "remark"}, head: []string{"x [" + d.st.UnitOf(notation.Length) + "]", "",
		"N [" + d.st.UnitOf(notation.Force) + "]", "V [" + d.st.UnitOf(notation.Force) + "]", "M [" + d.st.UnitOf(notation.Moment) + "]", "tension", ""}}
	stations := d.stations[g.Member]
	largest := largestMoment(stations)
	for i := range stations {
		d.station(&t, g, stations[i], largest == &stations[i])
	}
	d.tabulate(2, t)
	for _, p := range g.Stretches {
		d.polynomials(p)
	}
	d.byParts(g)
}

// idle reports whether a member carries nothing at all.
func idle(g statics.Diagram) bool {
	for _, p := range g.Stretches {
		for _, f := range []exact.Poly{p.N, p.V, p.M} {
			for _, k := range f {
				if !k.IsZero() {
					return false
				}
			}
		}
	}
	return true
}

// largest names the largest bending moment of the frame.
func (d diagrams) largest() {
	var best *statics.Station
	at := 0
	for i, g := range d.Diagrams {
		if s := largestMoment(d.stations[g.Member]); s != nil && (best == nil || s.M.Abs().Cmp(best.M.Abs()) > 0) {
			best, at = s, i
		}
	}
	if best == nil || len(d.Diagrams) == 1 {
		return
	}
	d.blank()
	d.prose(fmt.Sprintf("Largest bending moment: %s in %s, %s (tension %s).", d.say.Value(best.M.Abs(), notation.Moment),
		d.Frame.Members[d.Diagrams[at].Member].Name, d.say.Along(d.Diagrams[at].Member, best.At), d.say.TensionSide(d.Diagrams[at].Member, best.M)))
}

// largestMoment is the station with the largest bending moment of a diagram, or nil if it is zero all along.
func largestMoment(stations []statics.Station) *statics.Station {
	var best *statics.Station
	for i, s := range stations {
		if !s.M.IsZero() && (best == nil || s.M.Abs().Cmp(best.M.Abs()) > 0) {
			best = &stations[i]
		}
	}
	return best
}
