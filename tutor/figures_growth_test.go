package tutor

import (
	"slices"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
)

// TestGrowth works every problem of the library through its diagrams: what is asked for is never drawn before it is
// settled, and stands in the figure at once when it is; at the end all of N, V and M is drawn.
func TestGrowth(t *testing.T) {
	t.Parallel()
	for i, name := range librarytest.Names() {
		l := lesson(t, name, []Level{Values, Terms}[i%2])
		for {
			q, asking := l.Now()
			if !asking {
				break
			}
			if q.Member != statics.None && isDrawn(l, q) {
				t.Errorf("%s: %s is drawn before it is asked", name, q.Name)
			}
			l.Type("tell")
			if q.Kind == SectionPart && !isDrawn(l, q) {
				t.Errorf("%s: %s is not drawn once it is found", name, q.Name)
			}
		}
		d := l.Display(false).Figures()
		for _, n := range []statics.Quantity{statics.AxialForce, statics.ShearForce, statics.BendingMoment} {
			for _, along := range l.Solution().Diagrams {
				if g, begun := d.growth(along, n); d.hasDiagrams() && (!begun || slices.Contains(g.Stretches, false)) {
					t.Errorf("%s: at the end %s of member %d is %+v", name, n.Letter(), along.Member, g)
				}
			}
		}
	}
}

// isDrawn reports whether the figure of an internal force tells what a question asks.
func isDrawn(l *Lesson, q Question) bool {
	along := l.Solution().Diagrams[q.Member]
	g, _ := l.Display(false).Figures().growth(along, quantityOf(q))
	for i, drawn := range g.Stretches {
		p := along.Stretches[i]
		from, until := q.Station.At.Cmp(p.From), q.Station.At.Cmp(p.Until)
		within := from > 0 && until < 0 || from == 0 && q.Station.Side != statics.Before || until == 0 && q.Station.Side != statics.After
		if drawn && (q.Shape() && p.From.Equal(q.Stretch.From) || q.Kind == SectionPart && within) {
			return true
		}
	}
	return q.Kind == SectionPart && slices.ContainsFunc(g.Places, func(st statics.Station) bool {
		return st.At.Equal(q.Station.At) && st.Side == q.Station.Side
	})
}
