package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A site is the frame about the body of one sum: its joints, its supports, its neighbours, and what gives its terms.
type site struct {
	Assembly *statics.Assembly
	sum      statics.Sum
}

// giver is what a term comes from.
func (s *site) giver(t statics.Term) Giver {
	if t.Action != statics.None {
		return Giver{statics.None, s.Assembly.Actions[t.Action].Load}
	}
	return Giver{t.Force, statics.None}
}

// action is the action of a term that comes from a load.
func (s *site) action(t statics.Term) statics.Action { return s.Assembly.Actions[t.Action] }

// load is the load that a term comes from.
func (s *site) load(t statics.Term) statics.Load { return s.Assembly.Frame.Loads[s.action(t).Load] }

// joints lists the joints of the sum's body.
func (s *site) joints() []int {
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
func (s *site) at(joint int) statics.Point { return s.Assembly.Frame.Joints[joint].At }

// distances lists how far a point is from the joints of the body, perpendicular to a direction.
func (s *site) distances(from statics.Point, along statics.Vector) []exact.Num {
	var all []exact.Num
	for _, j := range s.joints() {
		all = append(all, over(from.To(s.at(j)).Cross(along).Abs(), along.Length()))
	}
	return distinct(all)
}

// support is the support at a joint; false if there is none.
func (s *site) support(joint int) (statics.Support, bool) {
	for _, p := range s.Assembly.Frame.Supports {
		if p.Joint == joint {
			return p, true
		}
	}
	return statics.Support{}, false
}

// pinned reports whether a reaction is a component of a pinned support.
func (s *site) pinned(f statics.Force) bool {
	p, ok := s.support(f.Joint)
	return ok && p.Kind == statics.Pinned
}

// atPin reports whether a load's term is of a load at a joint where parts meet.
func (s *site) atPin(t statics.Term) bool {
	l := s.load(t)
	for _, c := range s.Assembly.Frame.Connections {
		if l.Joint != statics.None && c.Joint == l.Joint {
			return true
		}
	}
	return false
}

// ends lists the joints at which forces act on a part; a two-force part has two.
func (s *site) ends(part int) []int {
	var all []int
	for _, i := range s.Assembly.ForcesOn(statics.FreeBody{part}) {
		j := s.Assembly.Forces[i].Joint
		if len(all) == 0 || all[len(all)-1] != j {
			all = append(all, j)
		}
	}
	return all
}

// neighbours lists the bodies outside the cut that a force joins to it.
func (s *site) neighbours() []int {
	next := map[int]bool{}
	for _, i := range s.Assembly.ForcesOn(s.sum.Body) {
		if f := s.Assembly.Forces[i]; f.By != statics.None {
			next[f.On], next[f.By] = true, true
		}
	}
	var all []int
	for b := range s.Assembly.Bodies() {
		if next[b] && !s.sum.Body.Has(b) {
			all = append(all, b)
		}
	}
	return all
}

// sumOn is the same sum for another body.
func (s *site) sumOn(body int) statics.Sum {
	if s.sum.Moment {
		return s.Assembly.MomentSum(statics.FreeBody{body}, s.sum.About)
	}
	return s.Assembly.ForceSum(statics.FreeBody{body}, s.sum.Along)
}

// foreign lists, for each neighbour, the terms of its loads in this sum, by the load.
func (s *site) foreign(want func(l statics.Load) bool) [][]statics.Term {
	var all [][]statics.Term
	for _, b := range s.neighbours() {
		var loads []int
		for _, t := range counting(s.sumOn(b), isLoad) {
			l := s.action(t).Load
			if !want(s.Assembly.Frame.Loads[l]) {
				continue
			}
			if n := len(loads); n == 0 || loads[n-1] != l {
				loads, all = append(loads, l), append(all, nil)
			}
			all[len(all)-1] = append(all[len(all)-1], t)
		}
	}
	return all
}

// stretchesElsewhere lists, for each load that this body carries a stretch of, the terms of its stretches on other bodies, where
// they are several.
func (s *site) stretchesElsewhere() [][]statics.Term {
	var entries []int
	terms, loads := map[int][]statics.Term{}, map[int]map[int]bool{}
	for b := range s.Assembly.Parts {
		if s.sum.Body.Has(b) {
			continue
		}
		for _, t := range counting(s.sumOn(b), isLoad) {
			l := s.load(t)
			if !s.continued(l) {
				continue
			}
			if loads[l.Entry] == nil {
				entries, loads[l.Entry] = append(entries, l.Entry), map[int]bool{}
			}
			loads[l.Entry][s.action(t).Load] = true
			terms[l.Entry] = append(terms[l.Entry], t)
		}
	}
	var all [][]statics.Term
	for _, e := range entries {
		if len(loads[e]) > 1 {
			all = append(all, terms[e])
		}
	}
	return all
}

// sharedPin reports whether a load of another body acts at a joint that this body has too.
func (s *site) sharedPin(l statics.Load) bool {
	for _, j := range s.joints() {
		if l.Joint == j {
			return true
		}
	}
	return false
}

// continued reports whether a load of another body is a stretch of one that this body carries too.
func (s *site) continued(l statics.Load) bool {
	for _, i := range s.Assembly.ActionsOn(s.sum.Body) {
		if m := s.Assembly.Frame.Loads[s.Assembly.Actions[i].Load]; m.Entry == l.Entry && l.Kind == statics.SpreadLoad {
			return true
		}
	}
	return false
}
