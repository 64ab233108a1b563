package problems

import (
	"slices"

	"unpin/statics"
)

// StepSkills lists the skills that a step of the plan asks for, as far as its sums show them, in teaching order.
func (p Solved) StepSkills(step statics.Step) []string {
	if step.Check {
		return []string{"closing-check"}
	}
	found := map[string]bool{"pick-body": p.Bodies() > 1 && step.Why != statics.StayOnBody}
	for _, f := range step.Gives {
		found[p.skillOf(p.Forces[f])] = true
	}
	for _, s := range step.Sums {
		found["moment-centre"] = found["moment-centre"] || s.Moment
		for _, t := range s.Terms() {
			if t.Why == statics.Counts {
				p.termSkills(s, t, found)
			}
		}
	}
	return inTeachingOrder(found)
}

// inTeachingOrder lists the skills that are found.
func inTeachingOrder(found map[string]bool) []string {
	var all []string
	for _, name := range skillNames() {
		if found[name] {
			all = append(all, name)
		}
	}
	return all
}

// MemberSkills lists the skills that N, V and M along a member ask for, in teaching order; none where they are withheld.
func (p Solved) MemberSkills(d statics.Diagram) []string {
	if d.Withheld {
		return nil
	}
	found := map[string]bool{"cut-forces": true, "corner-forces": p.turnsCorner(d.Member), "jumps": len(d.Stretches) > 1}
	for _, stretch := range d.Stretches {
		found["slopes"] = found["slopes"] || stretch.V.Degree() > 0
	}
	for _, st := range d.Stations() {
		found["extreme-moment"] = found["extreme-moment"] || st.Found && st.Extreme
	}
	return inTeachingOrder(found)
}

// turnsCorner reports whether a member meets another one of its part at an angle.
func (p Solved) turnsCorner(member int) bool {
	f, at := p.Problem.Frame, p.Problem.Frame.Members[member]
	for _, part := range p.Parts {
		if !slices.Contains(part.Members, member) {
			continue
		}
		for _, n := range part.Members {
			other := f.Members[n]
			meets := at.From == other.From || at.From == other.To || at.To == other.From || at.To == other.To
			if meets && !f.Span(member).Cross(f.Span(n)).IsZero() {
				return true
			}
		}
	}
	return false
}

// skillOf is what one must know to have a force on a free body.
func (p Solved) skillOf(f statics.Force) string {
	if f.By != statics.None {
		return "pin-pair"
	}
	at := slices.IndexFunc(p.Problem.Frame.Supports, func(s statics.Support) bool { return s.Joint == f.Joint })
	if at < 0 {
		return ""
	}
	return map[statics.SupportKind]string{statics.Pinned: "pin-support", statics.Fixed: "fixed-support", statics.Roller: "roller-support"}[p.Problem.Frame.Supports[at].Kind]
}

// termSkills notes what a term that counts asks for.
func (p Solved) termSkills(s statics.Sum, t statics.Term, found map[string]bool) {
	inclined := t.What == statics.Horizontal || t.What == statics.Vertical || t.Force != statics.None && !t.Size.IsInt()
	switch {
	case t.What == statics.TurnOnly:
		found["couple-in-sum"] = true
	case inclined && s.Moment:
		found["inclined-force-moment"] = true
	case inclined:
		found["components"] = true
	case s.Moment:
		found["axis-force-moment"] = true
	}
	if t.Action == statics.None {
		return
	}
	a := p.Actions[t.Action]
	switch load := p.Problem.Frame.Loads[a.Load]; {
	case load.Kind != statics.SpreadLoad:
		return
	case load.First.Equal(load.Last):
		found["uniform-resultant"] = true
	case load.First.IsZero() || load.Last.IsZero():
		found["triangle-resultant"] = true
	default:
		found["trapezoid-resultant"] = true
	}
	found["line-of-action"] = found["line-of-action"] || s.Moment
}
