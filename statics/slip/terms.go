package slip

import "unpin/statics"

// terms are some terms of the sum that a setting is about.
type terms struct {
	in *setting
	at []int // their indices in the sum, rising
}

// groups are terms that belong together, group by group.
type groups []terms

// list is the terms themselves.
func (ts terms) list() []statics.Term {
	var all []statics.Term
	for _, i := range ts.at {
		all = append(all, ts.in.sum.Terms()[i])
	}
	return all
}

// first is the first of the terms, of which there must be one.
func (ts terms) first() statics.Term { return ts.in.sum.Terms()[ts.at[0]] }

// filter keeps those of the terms that pass a test.
func (ts terms) filter(test func(statics.Term) bool) terms {
	kept := terms{in: ts.in}
	for _, i := range ts.at {
		if test(ts.in.sum.Terms()[i]) {
			kept.at = append(kept.at, i)
		}
	}
	return kept
}

// offMember keeps the terms that do not come from the member in which a quantity is asked for: on it, leaving a load out
// or turning it is a slip of its own.
func (ts terms) offMember() terms {
	return ts.filter(func(t statics.Term) bool { return !ts.in.onMember(t) })
}

// grouped gathers the terms that have the same key, in order of their first.
func (ts terms) grouped(key func(statics.Term) [2]int) groups {
	var all groups
	place := map[[2]int]int{}
	for _, i := range ts.at {
		k := key(ts.in.sum.Terms()[i])
		g, seen := place[k]
		if !seen {
			g = len(all)
			place[k], all = g, append(all, terms{in: ts.in})
		}
		all[g].at = append(all[g].at, i)
	}
	return all
}

// byGiver is a key: the components of one force, or the shapes of one load.
func (s *site) byGiver(t statics.Term) [2]int {
	g := s.giver(t)
	return [2]int{g.Force, g.Load}
}

// byAction is a key: the components of one force, or of one shape of a load.
func byAction(t statics.Term) [2]int { return [2]int{t.Force, t.Action} }

// byEntry is a key of terms of loads: the stretches of one load on several members.
func (s *site) byEntry(t statics.Term) [2]int { return [2]int{s.load(t).Entry, statics.None} }

// byJoint is a key: all forces that pass at one joint.
func (s *site) byJoint(t statics.Term) [2]int {
	return [2]int{s.Assembly.Forces[t.Force].Joint, statics.None}
}
