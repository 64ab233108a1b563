package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

var (
	one, two = exact.Int(1), exact.Int(2)
	half     = over(one, two)
)

// without is a term that is left out.
func without(t statics.Term) statics.Term {
	t.Sign = 0
	return t
}

// turned is a term with its sign turned round.
func turned(t statics.Term) statics.Term {
	t.Sign = -t.Sign
	return t
}

// sized is a term with its size multiplied by r, which is not negative.
func sized(t statics.Term, r exact.Num) statics.Term {
	t.Size = t.Size.Mul(r)
	return t
}

// armed is a term with another arm.
func armed(t statics.Term, arm exact.Num) statics.Term {
	t.Arm = arm
	return t
}

// movedTo is a term of a moment sum with its arm and sign as if the force acted at p, or the centre were elsewhere.
func movedTo(t statics.Term, about, p statics.Point) statics.Term {
	turn := about.To(p).Cross(t.Toward)
	t.Arm, t.Sign, t.At = over(turn.Abs(), t.Toward.Length()), turn.Sign(), p
	return t
}

// pointing is a force of some size along a direction as one term of the sum.
func (s *scene) pointing(t statics.Term, size exact.Num, along statics.Vector) statics.Term {
	t.What, t.Why, t.Toward, t.Arm = statics.WholeForce, statics.Counts, along, one
	if s.sum.Moment {
		t.Size = size
		return movedTo(t, s.sum.About, t.At)
	}
	share := along.Dot(s.sum.Along)
	t.Size = over(size.Mul(share.Abs()), along.Length().Mul(s.sum.Along.Length()))
	t.Sign = share.Sign()
	return t
}

// each makes a change of every way in which each of the terms may be altered. A way that leaves the term as it is,
// makes none.
func (s *scene) each(terms []int, ways func(t statics.Term) []statics.Term) []change {
	var all []change
	for _, i := range terms {
		t := s.sum.Terms[i]
		for _, w := range ways(t) {
			if !w.Value().Equal(t.Value()) {
				all = append(all, change{giver: s.giver(t), terms: map[int]statics.Term{i: w}})
			}
		}
	}
	return all
}

// together makes one change of altering all of the terms in one way.
func (s *scene) together(terms []int, way func(t statics.Term) statics.Term) []change {
	c := change{giver: nobody, terms: map[int]statics.Term{}}
	for _, i := range terms {
		c.terms[i] = way(s.sum.Terms[i])
	}
	if len(terms) == 0 {
		return nil
	}
	c.giver = s.giver(s.sum.Terms[terms[0]])
	for _, i := range terms {
		if s.giver(s.sum.Terms[i]) != c.giver {
			c.giver = nobody
		}
	}
	return []change{c}
}

// only is a list of one way.
func only(way func(statics.Term) statics.Term) func(statics.Term) []statics.Term {
	return func(t statics.Term) []statics.Term { return []statics.Term{way(t)} }
}

// grouped gathers terms that have the same key, in order of their first.
func (s *scene) grouped(terms []int, key func(statics.Term) [2]int) [][]int {
	var groups [][]int
	at := map[[2]int]int{}
	for _, i := range terms {
		k := key(s.sum.Terms[i])
		g, seen := at[k]
		if !seen {
			g = len(groups)
			at[k], groups = g, append(groups, nil)
		}
		groups[g] = append(groups[g], i)
	}
	return groups
}

// byGiver is a key: the components of one force, or the shapes of one load.
func (s *scene) byGiver(t statics.Term) [2]int {
	g := s.giver(t)
	return [2]int{g.Force, g.Load}
}

// byAction is a key: the components of one force, or of one shape of a load.
func byAction(t statics.Term) [2]int { return [2]int{t.Force, t.Action} }

// byJoint is a key: all forces that pass at one joint.
func (s *scene) byJoint(t statics.Term) [2]int {
	return [2]int{s.Assembly.Forces[t.Force].Joint, statics.None}
}

// distinct is a list without noughts and repeated numbers.
func distinct(list []exact.Num) []exact.Num {
	var all []exact.Num
	for _, x := range list {
		if !x.IsZero() && !slices.ContainsFunc(all, x.Equal) {
			all = append(all, x)
		}
	}
	return all
}

// joints lists the joints of the sum's body.
func (s *scene) joints() []int {
	var all []int
	for _, b := range s.sum.Body {
		if s.Assembly.IsPin(b) {
			all = append(all, s.Assembly.Pins[b-len(s.Assembly.Parts)].Joint)
		} else {
			all = append(all, s.Assembly.Parts[b].Joints...)
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// at is where a joint is.
func (s *scene) at(joint int) statics.Point { return s.Assembly.Frame.Joints[joint].At }

// distances lists how far a point is from the joints of the body, square to a direction.
func (s *scene) distances(from statics.Point, along statics.Vector) []exact.Num {
	var all []exact.Num
	for _, j := range s.joints() {
		all = append(all, over(from.To(s.at(j)).Cross(along).Abs(), along.Length()))
	}
	return distinct(all)
}

// slanting reports whether a direction lies along neither axis.
func slanting(v statics.Vector) bool { return !v.X.IsZero() && !v.Y.IsZero() }
