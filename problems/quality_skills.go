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
		for _, t := range s.Terms {
			if t.Why == statics.Counts {
				p.termSkills(s, t, found)
			}
		}
	}
	var all []string
	for _, name := range skillNames() {
		if found[name] {
			all = append(all, name)
		}
	}
	return all
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
