package tutor

import (
	"sync"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// balances lists what the answer to a question may be held against, with exact values and with the student's own earlier
// ones: the sums of its step, or for N, V and M what they come to, with the scale of the forces on the part.
func (l *Lesson) balances(q Question) []Balance {
	if q.Kind == TermSize || q.Kind == TermArm {
		return []Balance{{Factor: exact.Int(1), Rest: q.truth.Neg(), Largest: q.truth}}
	}
	if q.Kind != ForceValue && q.Kind != SectionPart {
		return nil
	}
	var all []Balance
	for _, values := range [][]exact.Num{l.Solution.Values, l.own()} {
		if q.Kind == SectionPart {
			all = append(all, Balance{Factor: exact.Int(1), Rest: l.section(q, values).Value().Neg(), Largest: l.scale(q)})
			continue
		}
		for _, s := range l.Solution.Plan[q.Step].Sums {
			if b, ok := sumBalance(s, q.Force, values); ok {
				all = append(all, b)
			}
		}
	}
	slips := sync.OnceValue(func() []exact.Num { return slipValues(l.allCandidates(q)) })
	for i := range all {
		all[i].Slips = slips
	}
	return all
}

// scale is what N, V or M at a section is measured by: the largest force on the part, for M times its largest dimension.
func (l *Lesson) scale(q Question) exact.Num {
	part := l.partOf(q.Member)
	if q.Quantity == BendingMoment {
		return l.largestForce(part).Mul(l.extent(part))
	}
	return l.largestForce(part)
}

// slipValues lists the values of candidates.
func slipValues(lists [][]slip.Candidate) []exact.Num {
	var all []exact.Num
	for _, candidates := range lists {
		for _, c := range candidates {
			all = append(all, c.Value)
		}
	}
	return all
}

// sumBalance is a sum seen as an equation for one force; false where that force is not in it.
func sumBalance(s statics.Sum, force int, values []exact.Num) (Balance, bool) {
	b := Balance{Factor: s.Factor(force)}
	for _, t := range s.Terms {
		if t.Force != force {
			x := t.Amount(values)
			b.Rest = b.Rest.Add(x)
			b.Largest = exact.Max(b.Largest, x.Abs())
		}
	}
	return b, !b.Factor.IsZero()
}

// own lists the values of the forces as the student has them: what was typed and accepted, else the exact one.
func (l *Lesson) own() []exact.Num {
	own := append([]exact.Num(nil), l.Solution.Values...)
	for i, q := range l.Questions {
		if a := l.answers[i]; q.Kind == ForceValue && a.accepted {
			own[q.Force] = a.value
		}
	}
	return own
}

// partOf is the part that a member belongs to.
func (l *Lesson) partOf(member int) int {
	for p, part := range l.Solution.Parts {
		for _, m := range part.Members {
			if m == member {
				return p
			}
		}
	}
	return 0
}

// largestForce is the largest force on a part, load or unknown.
func (l *Lesson) largestForce(p int) exact.Num {
	var largest exact.Num
	body := statics.FreeBody{p}
	for _, i := range l.Solution.ForcesOn(body) {
		if !l.Solution.Forces[i].Couple {
			largest = exact.Max(largest, l.Solution.Values[i].Abs())
		}
	}
	for _, i := range l.Solution.ActionsOn(body) {
		if x := l.Solution.Loads[i]; x.Shape != statics.Turning {
			largest = exact.Max(largest, x.Size.Abs())
		}
	}
	return largest
}

// extent is a part's largest dimension: its width or its height.
func (l *Lesson) extent(p int) exact.Num {
	joints := l.Solution.Parts[p].Joints
	low := l.Solution.Frame.Joints[joints[0]].At
	high := low
	for _, j := range joints {
		at := l.Solution.Frame.Joints[j].At
		low = statics.Point{X: exact.Min(low.X, at.X), Y: exact.Min(low.Y, at.Y)}
		high = statics.Point{X: exact.Max(high.X, at.X), Y: exact.Max(high.Y, at.Y)}
	}
	return exact.Max(high.X.Sub(low.X), high.Y.Sub(low.Y))
}
