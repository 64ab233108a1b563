package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// A load perpendicular to an inclined member is one term of a sum of moments, with its arm along the member; a student
// may as well take its horizontal and its vertical component, each with an arm of its own.

// acrossAndUp are the horizontal and the vertical component of a term, each with its own arm and sign.
func (s *site) acrossAndUp(t statics.Term) [2]statics.Term {
	var both [2]statics.Term
	for i, axis := range []statics.Vector{{X: one}, {Y: one}} {
		c, share := t, t.Toward.Dot(axis)
		if share.Sign() < 0 {
			axis = axis.Neg()
		}
		c.Toward, c.Size = axis, over(t.Size.Mul(share.Abs()), t.Toward.Length())
		both[i] = movedTo(c, s.sum.About, t.At)
	}
	return both
}

// componentwise alters one component of each of the terms that is an inclined load in one term of a moment sum at a section or where
// the sum stands.
func (ts terms) componentwise(ways func(t statics.Term) []statics.Term) []change {
	if ts.in.cut == nil && !ts.in.question.Stands || !ts.in.sum.Moment {
		return nil
	}
	var all []change
	for _, i := range ts.at {
		t := ts.in.sum.Terms()[i]
		if !isLoad(t) || t.What != statics.WholeForce || !slanting(t.Toward) {
			continue
		}
		both := ts.in.acrossAndUp(t)
		for n, c := range both {
			if c.Arm.IsZero() {
				continue
			}
			for _, w := range ways(c) {
				if !w.Value().Equal(c.Value()) {
					stray := []statics.Term{w, both[1-n]}
					all = append(all, change{giver: ts.in.giver(t), terms: map[int]statics.Term{i: without(t)}, stray: stray})
				}
			}
		}
	}
	return all
}

// armsOfComponents gives one component of each inclined load each of some distances for its arm.
func (ts terms) armsOfComponents(distances func(t statics.Term) []exact.Num) []change {
	return ts.componentwise(func(t statics.Term) []statics.Term { return armedEach(t, distances(t)) })
}

// coupleDistances lists how far a couple is from the section, and on a member from its ends: straight, across and up.
func (s *site) coupleDistances(t statics.Term) []exact.Num {
	from := []statics.Point{s.sum.About}
	if isLoad(t) && s.load(t).Joint == statics.None {
		m := s.Assembly.Frame.Members[s.load(t).Member]
		from = append(from, s.at(m.From), s.at(m.To))
	}
	var all []exact.Num
	for _, p := range from {
		v := p.To(t.At)
		all = append(all, v.Length(), v.X.Abs(), v.Y.Abs())
	}
	return all
}
