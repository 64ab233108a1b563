package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A setting is one sum of a question with all that a slip in it depends on.
type setting struct {
	site
	question Question
	n        int       // which of its sums
	right    exact.Num // the answer without a slip
	cut      *cut      // where the question is for N, V or M at a section
}

// oneByOne reports whether the terms are written, each by itself, so that a slip may be made in a single one of several that
// belong together.
func (s *setting) oneByOne() bool { return s.question.Stands || s.question.Written }

// amount is what a term adds up to with the values of the question.
func (s *setting) amount(t statics.Term) exact.Num { return t.Amount(s.question.Values) }

// unknown reports whether a term is one of the unknowns' own.
func (s *setting) unknown(t statics.Term) bool {
	return t.Force != statics.None && !s.question.Known(t.Force)
}

// hasValue reports whether a term that does not count could be put in with a value.
func (s *setting) hasValue(t statics.Term) bool { return isLoad(t) || s.question.Known(t.Force) }

// known lists the terms that count and have a known amount other than 0.
func (s *setting) known() terms {
	return s.where(func(t statics.Term) bool {
		return t.Why == statics.Counts && !s.unknown(t) && !s.amount(t).IsZero()
	})
}

// own lists the terms of the force that is asked for.
func (s *setting) own() terms {
	return s.where(func(t statics.Term) bool { return t.Why == statics.Counts && t.Force == s.question.Force })
}

// where lists the terms that a test holds for.
func (s *setting) where(test func(statics.Term) bool) terms {
	all := terms{in: s}
	for i, t := range s.sum.Terms() {
		if test(t) {
			all.at = append(all.at, i)
		}
	}
	return all
}

// onMember reports whether a term comes from a load on the cut member, between or at its ends, where that is worked along
// from its start.
func (s *setting) onMember(t statics.Term) bool {
	return s.cut != nil && s.cut.Side != statics.ToEnd && s.onCutMember(t)
}

func (s *setting) onCutMember(t statics.Term) bool {
	return s.cut != nil && isLoad(t) && s.load(t).Joint == statics.None && s.load(t).Member == s.cut.Member
}

// forcesOfLoads lists the terms of loads that are forces, and pass a test.
func (s *setting) forcesOfLoads(test func(statics.Term) bool) terms {
	return s.known().filter(func(t statics.Term) bool { return isLoad(t) && !isCouple(t) && test(t) })
}

// shaped lists the terms of distributed loads of some shapes.
func (s *setting) shaped(shapes ...statics.ActionShape) terms {
	return s.forcesOfLoads(func(t statics.Term) bool {
		return slices.Contains(shapes, s.action(t).Shape)
	})
}

// spreads lists the terms of all distributed loads.
func (s *setting) spreads() terms {
	return s.shaped(statics.Uniform, statics.RisingRamp, statics.FallingRamp)
}

// couples lists the terms of couples that are loads.
func (s *setting) couples() terms {
	return s.known().filter(func(t statics.Term) bool { return isLoad(t) && isCouple(t) })
}

// withArms lists the known terms that have an arm.
func (s *setting) withArms() terms {
	if !s.sum.Moment {
		return terms{in: s}
	}
	return s.known().filter(func(t statics.Term) bool { return !isCouple(t) })
}

// reactions lists the terms of known reactions that pass a test.
func (s *setting) reactions(test func(statics.Force) bool) terms {
	return s.known().filter(func(t statics.Term) bool {
		return t.Force != statics.None && s.Assembly.Forces[t.Force].Kind == statics.Reaction && test(s.Assembly.Forces[t.Force])
	})
}

// pinForces lists the terms of known forces that pass between bodies, if the body is not a pin all of them count for.
func (s *setting) pinForces() terms {
	return s.known().filter(func(t statics.Term) bool {
		return t.Force != statics.None && s.Assembly.Forces[t.Force].Kind != statics.Reaction
	})
}

// isLoad reports whether a term comes from a load.
func isLoad(t statics.Term) bool { return t.Action != statics.None }

// isCouple reports whether a term is a couple.
func isCouple(t statics.Term) bool { return t.What == statics.TurnOnly }
