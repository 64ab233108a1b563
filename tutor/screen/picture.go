package screen

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/tutor"
)

// A picture is a figure drawn for one place, kept as long as nothing changes.
type picture struct {
	grid    figure.Grid
	subject any // what it shows
	w, h    int
}

// draw draws the scene unless the picture shows that subject in that size already.
func (p *picture) draw(subject any, w, h int, ascii bool, scene func() figure.Scene) {
	if p.subject == subject && p.w == w && p.h == h {
		return
	}
	*p = picture{subject: subject, w: w, h: h}
	if w > 0 && h > 0 {
		p.grid = figure.Cells(scene(), w, h, ascii)
	}
}

// put copies the figure into a place.
func (p *picture) put(onto *page, in rect) {
	g := p.grid
	for y := 0; y < min(in.h, g.Height); y++ {
		for x, c := range g.Row(y)[:min(in.w, g.Width)] {
			r := c.Rune
			if r == 0 {
				r = ' '
			}
			if at := (in.y+y)*onto.w + in.x + x; in.y+y < onto.h && in.x+x < onto.w {
				onto.cells[at] = cell{r, inkOf(c.Look)}
			}
		}
	}
}

// scene is the figure of what is in hand: the frame as given, the free body of the step that is worked on or looked at,
// the part to which a member belongs, or at the end the whole with all its forces.
func (c *course) scene() figure.Scene {
	a, st := c.l.Solution.Assembly, style(c.l, c.ascii)
	o := figure.Options{Style: st}
	q, asking := c.l.Now()
	plan := c.l.Solution.Plan
	switch {
	case c.given:
		return figure.Given(&a.Frame, o)
	case c.looked != statics.None:
		return figure.FreeBody(a, plan[c.looked].Sums[0].Body, c.known(), o)
	case !asking:
		return figure.FreeBody(a, a.Whole(), c.known(), o)
	case q.Kind == tutor.ChooseSum:
		return figure.Given(&a.Frame, o)
	case q.Kind == tutor.TypeSum:
		return figure.FreeBody(a, c.l.Chosen().Body, c.known(), o)
	case q.Step == statics.None:
		return c.sectionScene(q, o)
	}
	s := c.sum(q)
	if q.Kind != tutor.Reading {
		c.setOff(q, s, &o)
	}
	return figure.FreeBody(a, s.Body, c.known(), o)
}

// known are the forces on the sheet.
func (c *course) known() map[int]exact.Num {
	known := map[int]exact.Num{}
	for i := range c.l.Solution.Forces {
		if v, ok := c.l.Known(i); ok {
			known[i] = v
		}
	}
	if q, asking := c.l.Now(); asking && q.Kind == tutor.Reading && q.Step != statics.None {
		for _, i := range c.l.Solution.Plan[q.Step].Gives {
			known[i] = c.l.Solution.Values[i]
		}
	}
	return known
}

// setOff lights what is asked and fades what has no part in the sum.
func (c *course) setOff(q tutor.Question, s statics.Sum, o *figure.Options) {
	a := c.l.Solution.Assembly
	var counts []int // loads
	for _, t := range s.Terms {
		switch {
		case t.Force != statics.None && t.Why != statics.Counts:
			o.FadedForces = append(o.FadedForces, t.Force)
		case t.Force == statics.None && t.Why == statics.Counts:
			counts = append(counts, a.Loads[t.Action].Load)
		}
	}
	for i := range a.Frame.Loads {
		if !slices.Contains(counts, i) {
			o.FadedLoads = append(o.FadedLoads, i)
		}
	}
	switch {
	case q.Kind == tutor.ForceValue:
		o.LitForces = []int{q.Force}
	case s.Terms[q.Term].Force != statics.None:
		o.LitForces = []int{s.Terms[q.Term].Force}
	default:
		o.LitLoads = []int{a.Loads[s.Terms[q.Term].Action].Load}
	}
}

// sectionScene is the part of a member, with a mark where it is cut.
func (c *course) sectionScene(q tutor.Question, o figure.Options) figure.Scene {
	a := c.l.Solution.Assembly
	part := slices.IndexFunc(a.Parts, func(p statics.Part) bool { return slices.Contains(p.Members, q.Member) })
	s := figure.FreeBody(a, statics.FreeBody{max(part, 0)}, c.known(), o)
	if q.Kind == tutor.SectionPart {
		at := a.Frame.Along(q.Member, q.Station.At)
		s.Notes = append(s.Notes, figure.Note{
			At:   figure.Point{X: at.X.Float(), Y: at.Y.Float()},
			Text: "cut " + a.Frame.Members[q.Member].Name + " at " + o.Style.WithUnit(q.Station.At, notation.Length),
			Look: figure.Look{Role: figure.KeyMark, Emphasis: figure.Lit},
		})
	}
	return s
}

// figureTitle is what stands above the figure.
func (c *course) figureTitle() string {
	a := c.l.Solution.Assembly
	q, asking := c.l.Now()
	body := func(i int) string { return notation.BodyText(a, c.l.Solution.Plan[i].Sums[0].Body) }
	switch {
	case c.given:
		return "The frame as given"
	case c.looked != statics.None:
		return notation.Sentence("looking back at step " + notation.Count(c.looked+1) + ": " + body(c.looked))
	case !asking:
		return "The whole frame with all its forces"
	case q.Kind == tutor.ChooseSum:
		return "The frame, to be cut free"
	case q.Kind == tutor.TypeSum:
		return "Free body: " + notation.BodyText(a, c.l.Chosen().Body)
	case q.Step == statics.None:
		return "Member " + a.Frame.Members[q.Member].Name
	}
	return "Free body: " + notation.BodyText(a, c.sum(q).Body)
}
