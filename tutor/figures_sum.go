package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/notation"
)

// sumScene is the sum in hand on its free body: what has no part in it faded, the centre marked, and the arms as
// dimensions, but none before it was asked for. What is asked is lit.
func (d Figures) sumScene(q Question, asking bool, o figure.Options) figure.Scene {
	s, _ := d.sumInHand()
	back := d.looked != statics.None || !asking || q.Kind == Reading
	if !back {
		d.light(q, s, &o)
	}
	switch {
	case !back && (q.Kind != ForceValue || d.HidesTerms(q.Step)):
		return d.termScene(q, s, o)
	case s.Moment:
		return d.armScene(s, o)
	}
	fade(d.assembly(), s, &o)
	return figure.OfBody(d.assembly(), s.Body, d.known(), o)
}

// armScene is a sum of moments with all its arms, and as on every free body what the other parts receive.
func (d Figures) armScene(s statics.Sum, o figure.Options) figure.Scene {
	a := d.assembly()
	scene := figure.OfSum(a, s, d.known(), o)
	scene.Legend = nil // the sum is named beneath
	for _, n := range figure.OfBody(a, s.Body, d.known(), o).Notes {
		if n.Role == figure.ReversedForce {
			scene.Notes = append(scene.Notes, n)
		}
	}
	return scene
}

// light lights what is asked.
func (d Figures) light(q Question, s statics.Sum, o *figure.Options) {
	switch {
	case q.Kind == ForceValue:
		o.LitForces = []int{q.Force}
	case s.Terms()[q.Term].Force != statics.None:
		o.LitForces = []int{s.Terms()[q.Term].Force}
	case d.assembly().PullOf(s.Terms()[q.Term].Action) != statics.None:
		o.LitPulls = figure.Pulls(nil, d.assembly(), s.Terms()[q.Term].Action)
	default:
		o.LitLoads = d.assembly().Actions[s.Terms()[q.Term].Action].AllLoads()
	}
}

// termScene is the free body with its dimensions, from which arms are found; the centre is marked, and from when the arm of
// the term in hand is asked for, it stands as one more dimension, with a question mark until it is settled. In an exam
// nothing is drawn that would help.
func (d Figures) termScene(q Question, s statics.Sum, o figure.Options) figure.Scene {
	if !d.Hiding() {
		fade(d.assembly(), s, &o)
	}
	scene := figure.OfBody(d.assembly(), s.Body, d.known(), o)
	if !s.Moment {
		return scene
	}
	scene.MarkCentre(s)
	t := s.Terms()[q.Term]
	switch {
	case q.Kind == ForceValue || d.Hiding():
	case d.settledArm(q):
		scene.AddArm(s, t, "arm "+o.Style.WithUnit(t.Arm, notation.Length))
	case q.Kind == TermArm:
		scene.AddArm(s, t, "arm ?")
	}
	return scene
}

// fade fades what acts on the body of a sum and adds nothing to it.
func fade(a *statics.Assembly, s statics.Sum, o *figure.Options) {
	var forces, loads []int // that count
	for _, t := range s.Terms() {
		switch {
		case t.Why != statics.Counts:
		case t.Force != statics.None:
			forces = append(forces, t.Force)
		default:
			loads = append(loads, a.Actions[t.Action].AllLoads()...)
		}
	}
	for i := range a.Forces {
		if !slices.Contains(forces, i) {
			o.FadedForces = append(o.FadedForces, i)
		}
	}
	o.FadedPulls = figure.IdlePulls(a, s)
	for i := range a.Frame.Loads {
		if !slices.Contains(loads, i) {
			o.FadedLoads = append(o.FadedLoads, i)
		}
	}
}

// bodyScene is the free body in hand with its dimensions; for N, V and M the part of the member, with a mark where it is
// cut.
func (d Figures) bodyScene(q Question, asking bool, o figure.Options) figure.Scene {
	a := d.assembly()
	if asking && q.Kind == ForceValue && d.looked == statics.None {
		o.LitForces = []int{q.Force}
	}
	scene := figure.OfBody(a, d.bodyInHand(), d.known(), o)
	switch {
	case d.looked != statics.None || !asking:
	case q.Kind == TypeSum && d.chosen().Moment:
		scene.MarkCentre(d.chosen())
	case q.Kind == SectionPart:
		scene.Notes = append(scene.Notes, figure.Note{
			At:   figure.PlaceOf(a.Frame.Along(q.Member, q.Station.At)),
			Text: "cut " + a.Frame.Members[q.Member].Name + " at " + o.Style.WithUnit(q.Station.At, notation.Length),
			Look: figure.Look{Role: figure.KeyMark, Emphasis: figure.Lit},
		})
	}
	return scene
}
