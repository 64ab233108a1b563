package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
)

// sumScene is the sum in hand on its free body: what has no part in it faded, the centre marked, and the arms as
// dimensions, but none before it was asked for. What is asked is lit.
func (d Display) sumScene(q Question, asking bool, o figure.Options) figure.Scene {
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
func (d Display) armScene(s statics.Sum, o figure.Options) figure.Scene {
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
func (d Display) light(q Question, s statics.Sum, o *figure.Options) {
	switch {
	case q.Kind == ForceValue:
		o.LitForces = []int{q.Force}
	case s.Terms[q.Term].Force != statics.None:
		o.LitForces = []int{s.Terms[q.Term].Force}
	default:
		o.LitLoads = []int{d.assembly().Actions[s.Terms[q.Term].Action].Load}
	}
}

// termScene is the free body with its dimensions, from which arms are found; the centre is marked, and from when the arm of
// the term in hand is asked for, it stands as one more dimension, with a question mark until it is settled. In an exam
// nothing is drawn that would help.
func (d Display) termScene(q Question, s statics.Sum, o figure.Options) figure.Scene {
	if !d.Hiding() {
		fade(d.assembly(), s, &o)
	}
	scene := figure.OfBody(d.assembly(), s.Body, d.known(), o)
	if !s.Moment {
		return scene
	}
	mark(&scene, s)
	t := s.Terms[q.Term]
	switch {
	case q.Kind == ForceValue || d.Hiding():
	case d.settledArm(q):
		addArm(&scene, s, t, "arm "+o.Style.WithUnit(t.Arm, notation.Length))
	case q.Kind == TermArm:
		addArm(&scene, s, t, "arm ?")
	}
	return scene
}

// fade fades what acts on the body of a sum and adds nothing to it.
func fade(a *statics.Assembly, s statics.Sum, o *figure.Options) {
	var forces, loads []int // that count
	for _, t := range s.Terms {
		switch {
		case t.Why != statics.Counts:
		case t.Force != statics.None:
			forces = append(forces, t.Force)
		default:
			loads = append(loads, a.Actions[t.Action].Load)
		}
	}
	for i := range a.Forces {
		if !slices.Contains(forces, i) {
			o.FadedForces = append(o.FadedForces, i)
		}
	}
	for i := range a.Frame.Loads {
		if !slices.Contains(loads, i) {
			o.FadedLoads = append(o.FadedLoads, i)
		}
	}
}

// mark marks the centre of a sum of moments.
func mark(scene *figure.Scene, s statics.Sum) {
	k := figure.Symbol{Kind: figure.CentreSymbol, At: place(s.About), Look: figure.Look{Role: figure.CentreMark}}
	if s.Centre == statics.None {
		k.Text = "centre"
	}
	scene.Symbols = append(scene.Symbols, k)
}

// addArm adds the arm of a term: as the outermost dimension, or for a slanting force as the line from the centre square
// to its line.
func addArm(scene *figure.Scene, s statics.Sum, t statics.Term, text string) {
	switch {
	case t.Toward.X.IsZero():
		addDimension(scene, false, s.About.X, t.At.X, text)
	case t.Toward.Y.IsZero():
		addDimension(scene, true, s.About.Y, t.At.Y, text)
	default:
		look := figure.Look{Role: figure.DimensionMark, Emphasis: figure.Lit}
		centre, foot := place(s.About), place(footOf(s.About, t))
		scene.Guides = append(scene.Guides, figure.Stroke{From: centre, To: foot, Look: look},
			figure.Stroke{From: foot, To: place(t.At), Look: figure.Look{Role: figure.DimensionMark, Emphasis: figure.Faded}})
		scene.Notes = append(scene.Notes, figure.Note{At: figure.Position{X: (centre.X + foot.X) / 2, Y: (centre.Y + foot.Y) / 2}, Text: text, Look: look})
	}
}

// addDimension adds a dimension outside those that are there.
func addDimension(scene *figure.Scene, vertical bool, from, to exact.Num, text string) {
	if from.Cmp(to) > 0 {
		from, to = to, from
	}
	level := 0
	for _, d := range scene.Dimensions {
		if d.Vertical == vertical {
			level = max(level, d.Level+1)
		}
	}
	scene.Dimensions = append(scene.Dimensions, figure.Dimension{
		Vertical: vertical, From: from.Float(), To: to.Float(), Level: level, Text: text, Short: text, Meaning: text,
	})
}

// place is a point as figures have it.
func place(p statics.Point) figure.Position { return figure.Position{X: p.X.Float(), Y: p.Y.Float()} }

// footOf is where the line of a term's force is nearest to a centre.
func footOf(centre statics.Point, t statics.Term) statics.Point {
	out := statics.Vector{X: centre.X.Sub(t.At.X), Y: centre.Y.Sub(t.At.Y)}
	reach, err := out.Dot(t.Toward).Quo(t.Toward.Dot(t.Toward))
	if err != nil {
		return t.At
	}
	return statics.Point{X: t.At.X.Add(t.Toward.X.Mul(reach)), Y: t.At.Y.Add(t.Toward.Y.Mul(reach))}
}

// bodyScene is the free body in hand with its dimensions; for N, V and M the part of the member, with a mark where it is
// cut.
func (d Display) bodyScene(q Question, asking bool, o figure.Options) figure.Scene {
	a := d.assembly()
	if asking && q.Kind == ForceValue && d.looked == statics.None {
		o.LitForces = []int{q.Force}
	}
	scene := figure.OfBody(a, d.bodyInHand(), d.known(), o)
	switch {
	case d.looked != statics.None || !asking:
	case q.Kind == TypeSum && d.chosen().Moment:
		mark(&scene, d.chosen())
	case q.Kind == SectionPart:
		scene.Notes = append(scene.Notes, figure.Note{
			At:   place(a.Frame.Along(q.Member, q.Station.At)),
			Text: "cut " + a.Frame.Members[q.Member].Name + " at " + o.Style.WithUnit(q.Station.At, notation.Length),
			Look: figure.Look{Role: figure.KeyMark, Emphasis: figure.Lit},
		})
	}
	return scene
}
