package screen

import (
	"fmt"

	"unpin/statics/figure"
	"unpin/statics/wording"
	"unpin/tutor"
)

// A leaf is a page to read: a text with the figure that belongs to it.
type leaf struct {
	title string
	text  func(w int) []line
	scene figure.Scene
	long  bool // the text is: the figure stands beside it or not at all
}

// fillLeaf puts a leaf in, its figure drawn by a gallery. A figure that has no room beside or beneath the text is shown
// alone when that is asked for.
func (r *reader) fillLeaf(f leaf, w, h int, g *gallery, ascii bool) {
	l := placeReader(w, h)
	r.figure = nil
	if r.alone {
		l.figure, l.body.h = l.body, 0
		r.figure = g.picture(f.scene, l.figure.w, l.figure.h, ascii)
	} else if at, k := f.together(w, h, g, ascii); k != nil {
		l, r.figure = at, k
	}
	r.places = l
	r.fill(f.title, f.text(l.body.w), l.body.h)
	if r.alone {
		r.lines = nil
	}
}

// together is the first way in which the whole figure has room with the text, or else no figure.
func (f leaf) together(w, h int, g *gallery, ascii bool) (readerPlaces, *picture) {
	for _, l := range placeLeaf(w, h, func(w int) int { return len(f.text(w)) }) {
		if l.figure.h < leastFigure || f.long && (w < bothFrom || l.figure.y > 1) {
			continue
		}
		if k := g.picture(f.scene, l.figure.w, l.figure.h, ascii); k.whole() {
			return l, k
		}
	}
	return readerPlaces{}, nil
}

// taskLines are a task as it is read before a problem is begun.
func taskLines(t tutor.Task, w int) []line {
	all := folded(t.Title, w, 0, titleInk)
	if t.Text != "" {
		all = append(all, folded(t.Text, w, 0, plainInk)...)
	}
	if t.Find != "" {
		all = append(all, folded(t.Find, w, 0, strongInk)...)
	}
	return append(all, folded(wording.Sentence(t.Facts), w, 0, noteInk)...)
}

// task is the page that tells the task again.
func (c *current) task() leaf {
	text := func(w int) []line { return taskLines(c.shows().Task(), w) }
	return leaf{title: "The task", text: text, scene: c.figures().Draw(tutor.AsGiven)}
}

// opening is the page that a lesson begins with: the task, what to think of first, and what was done earlier.
func (c *current) opening() leaf {
	text := func(w int) []line {
		all := append(taskLines(c.shows().Task(), w), nil)
		add := func(text string, k ink) { all = append(all, folded(text, w, 0, k)...) }
		first := "at which pins would you cut the frame, and which free body has an equation with one unknown?"
		if c.shows().Bodies() == 1 {
			first = "what can each support exert, and which equation has one unknown?"
		}
		add("Before you begin: "+first, plainInk)
		if c.l.Level() == tutor.Gradual {
			add(tutor.GradualRule, plainInk)
		}
		if n, of := c.l.Earlier(), len(c.l.Asked()); n > 0 && c.l.Open() {
			add("Earlier work: "+wording.Counted(n, "question")+" settled.", strongInk)
		} else if n > 0 {
			add(fmt.Sprintf("Earlier work: %d of %d questions settled.", n, of), strongInk)
		}
		add(wording.Caution, noteInk)
		return all
	}
	return leaf{title: "The task", text: text, scene: c.figures().Draw(tutor.AsGiven)}
}

// closing is the page that a lesson ends with, after what was said to the last answer.
func (c *course) closing() leaf {
	text := func(w int) []line {
		all := talk{course: c}.said(w)
		for _, p := range c.summary.Passages() {
			if len(all) > 0 {
				all = append(all, nil)
			}
			all = append(all, folded(p.Title, w, 0, titleInk)...)
			for _, text := range p.Lines {
				all = append(all, folded(text, w, 2, plainInk)...)
			}
		}
		return all
	}
	return leaf{title: "All done: " + c.shows().Title(), text: text, scene: c.figures().Draw(tutor.WholeBody), long: true}
}

// task is the page that tells the task of a problem to choose.
func (c *chooser) task() leaf {
	e, _ := c.choice()
	text := func(w int) []line {
		if len(e.Portion) > 0 {
			return portionLines(e, w)
		}
		all := append(whyLines(e, w), taskLines(tutor.TaskOf(e.Problem), w)...)
		if done := c.told(e); done != "" && c.sitting == nil {
			all = append(append(all, nil), folded(done, w, 0, plainInk)...)
		}
		return all
	}
	return leaf{title: "The task", text: text, scene: figure.OfFrame(&e.Problem.Frame, figure.Options{Style: e.Problem.Style(c.ascii)})}
}
