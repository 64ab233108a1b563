package problems

import (
	"slices"

	"unpin/statics"
)

// anyLoad reports whether a load of the frame is as asked.
func anyLoad(p Solved, is func(statics.Load) bool) bool {
	return slices.ContainsFunc(p.Problem.Frame.Loads, is)
}

// anyLoadOf is anyLoad as a feature.
func anyLoadOf(is func(statics.Load) bool) func(Solved) bool {
	return func(p Solved) bool { return anyLoad(p, is) }
}

func triangle(p Solved) bool {
	return anyLoad(p, func(l statics.Load) bool {
		return l.Kind == statics.SpreadLoad && l.First.IsZero() != l.Last.IsZero()
	})
}

func trapezoid(p Solved) bool {
	return anyLoad(p, func(l statics.Load) bool {
		return l.Kind == statics.SpreadLoad && !l.First.IsZero() && !l.Last.IsZero() && !l.First.Equal(l.Last)
	})
}

// normalLoad reports whether a load is square to a member that is neither level nor upright.
func normalLoad(p Solved) bool {
	return anyLoad(p, func(l statics.Load) bool {
		return p.Entries[l.Entry].To == "normal" && l.Member != statics.None && sloping(p.Problem.Frame.Span(l.Member))
	})
}

func loadOnPin(p Solved) bool {
	return anyLoad(p, func(l statics.Load) bool {
		return l.Joint != statics.None && l.Member == statics.None && hinged(p, l.Joint)
	})
}

func loadBesidePin(p Solved) bool {
	return anyLoad(p, func(l statics.Load) bool {
		return l.Joint != statics.None && l.Member != statics.None && hinged(p, l.Joint)
	})
}

// hinged reports whether a joint is a pin, slot or sleeve.
func hinged(p Solved, joint int) bool {
	return slices.ContainsFunc(p.Problem.Frame.Connections, func(c statics.Connection) bool { return c.Joint == joint })
}

// loadAcrossPin reports whether one spread load of the file acts on several parts.
func loadAcrossPin(p Solved) bool {
	bodies := map[int]int{}
	for _, a := range p.Assembly.Actions {
		load := p.Problem.Frame.Loads[a.Load]
		if load.Kind != statics.SpreadLoad {
			continue
		}
		if first, ok := bodies[load.Entry]; ok && first != a.Body {
			return true
		}
		bodies[load.Entry] = a.Body
	}
	return false
}

// slopingForce reports whether a load, a reaction or the pull of a two-force member is neither level nor upright.
func slopingForce(p Solved) bool {
	return anyLoad(p, func(l statics.Load) bool { return l.Kind != statics.CoupleLoad && sloping(l.Along) }) ||
		roller(true)(p) || twoForceSloping(p)
}

func slopingMember(p Solved) bool {
	f := p.Problem.Frame
	return slices.ContainsFunc(f.Members, func(m statics.Member) bool { return sloping(f.Joints[m.From].At.To(f.Joints[m.To].At)) })
}

func sloping(v statics.Vector) bool { return !v.X.IsZero() && !v.Y.IsZero() }

// twoForce reports whether a part, bent or straight, is loaded only at two pins.
func twoForce(bent bool) func(Solved) bool {
	return func(p Solved) bool {
		return slices.ContainsFunc(twoForceParts(p), func(i int) bool { return bent == (len(p.Parts[i].Members) > 1) })
	}
}

func twoForceSloping(p Solved) bool {
	return slices.ContainsFunc(twoForceParts(p), func(i int) bool {
		joints := p.Parts[i].Joints
		f := p.Problem.Frame
		return sloping(f.Joints[joints[0]].At.To(f.Joints[joints[len(joints)-1]].At))
	})
}

// twoForceParts lists the parts with no load and with four unknowns, two at each of two joints.
func twoForceParts(p Solved) (parts []int) {
	for i := range p.Parts {
		body := statics.FreeBody{i}
		joints := map[int]int{}
		couple := false
		for _, f := range p.ForcesOn(body) {
			joints[p.Forces[f].Joint]++
			couple = couple || p.Forces[f].Couple
		}
		if len(p.ActionsOn(body)) == 0 && len(p.ForcesOn(body)) == 4 && len(joints) == 2 && !couple {
			parts = append(parts, i)
		}
	}
	return parts
}

// suspendedSpan reports whether a part hangs between pins only, with a load on it.
func suspendedSpan(p Solved) bool {
	for i := range p.Parts {
		body := statics.FreeBody{i}
		grounded := func(f int) bool { return p.Forces[f].Kind == statics.Reaction }
		if compoundBeam(p) && len(p.ActionsOn(body)) > 0 && !slices.ContainsFunc(p.ForcesOn(body), grounded) {
			return true
		}
	}
	return false
}

// compoundBeam reports whether all joints lie at one level, two pins among them.
func compoundBeam(p Solved) bool {
	f := p.Problem.Frame
	uneven := func(j statics.Joint) bool { return !j.At.Y.Equal(f.Joints[0].At.Y) }
	return len(f.Connections) > 1 && !slices.ContainsFunc(f.Joints, uneven)
}

// corner reports whether two members that are rigidly joined turn a corner.
func corner(p Solved) bool {
	f := p.Problem.Frame
	for _, part := range p.Parts {
		for _, m := range part.Members {
			for _, n := range part.Members {
				if !f.Span(m).Cross(f.Span(n)).IsZero() {
					return true
				}
			}
		}
	}
	return false
}
