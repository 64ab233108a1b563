package statics

import (
	"unpin/statics/exact"
)

// diagrams finds N, V and M of every member from the forces on its part to one side of each cut.
func (a *Assembly) diagrams(values []exact.Num) []Diagram {
	d := make([]Diagram, len(a.Frame.Members))
	loads := a.Frame.loadsByMember()
	g := gathering{a, values, make([]wrench, len(a.Frame.Joints)), make([]wrench, len(a.Frame.Members))}
	room := newDiagramRoom(&a.Frame)
	for p := range a.Parts {
		g.part(p, &a.trees[p])
		for _, m := range a.Parts[p].Members {
			d[m] = Diagram{Member: m, Length: a.axes[m].length, Withheld: contains(a.Parts[p].Ring, m)}
			if !d[m].Withheld {
				start := g.before(m)
				d[m].Stretches = a.axes[m].stretches(&start, loads[m], &room)
			}
		}
	}
	return d
}

// A Diagram is the internal forces along one member, by the distance x from its start.
type Diagram struct {
	Member    int
	Length    exact.Num
	Stretches []Stretch
	Withheld  bool // the member lies on a ring of its part: equilibrium alone does not give N, V, M
}

// A Stretch is a stretch of a member over which N, V and M are single polynomials in x (lowest power first). N is
// positive in tension, dM/dx = V.
type Stretch struct {
	From, Until exact.Num
	N, V, M     exact.Poly
}
