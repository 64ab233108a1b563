package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// full is an inclined force that a term is a component of, as a direction.
func (s *site) full(t statics.Term) statics.Vector {
	if isLoad(t) {
		return s.action(t).Along
	}
	return s.Assembly.Forces[t.Force].Along
}

// lies is a direction's share of its own length along the sum, or along the component: its cosine, and its sine.
func (s *site) lies(t statics.Term) (cos, sin exact.Num) {
	v := s.full(t)
	base := s.sum.Along
	if s.sum.Moment {
		base = t.Toward
	}
	length := v.Length().Mul(base.Length())
	return over(v.Dot(base).Abs(), length), over(v.Cross(base).Abs(), length)
}

// along is the point at a distance from the start of an action's member.
func (s *site) along(x statics.Action, d exact.Num) statics.Point {
	return s.Assembly.Frame.Along(s.Assembly.Frame.Loads[x.Load].Member, d)
}

// endsOf are an action's ends, that which is nearer to the centre first, as the arm of t goes.
func (s *site) endsOf(t statics.Term, x statics.Action) (near, far exact.Num) {
	a := movedTo(t, s.sum.About, s.along(x, x.Start)).Arm
	b := movedTo(t, s.sum.About, s.along(x, x.End)).Arm
	if a.Cmp(b) > 0 {
		return x.End, x.Start
	}
	return x.Start, x.End
}

// middle is the middle of an action's stretch.
func middle(x statics.Action) exact.Num { return x.Start.Add(x.End).Mul(half) }

// mixed reports whether a load's term is one shape of two.
func (s *site) mixed(t statics.Term) bool {
	n := 0
	for _, x := range s.Assembly.Actions {
		if x.Load == s.action(t).Load {
			n++
		}
	}
	return n > 1
}

func (s *site) pure(t statics.Term) bool { return !s.mixed(t) }

// wholeAslant reports whether a term is an inclined load to the axes that does not come in components.
func (s *site) wholeAslant(t statics.Term) bool {
	return isLoad(t) && t.What == statics.WholeForce && slanting(s.action(t).Along) && (s.sum.Moment || slanting(s.sum.Along))
}
