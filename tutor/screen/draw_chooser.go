package screen

import (
	"fmt"
	"strconv"
	"strings"

	"unpin/statics/figure"
	"unpin/statics/wording"
	"unpin/tutor"
)

// arrange keeps the choice in sight and draws its figure.
func (c *chooser) arrange(w, h int) {
	l := placeChooser(w, h)
	if c.at < c.top {
		c.top = c.at
	}
	c.top = max(c.top, c.at-l.list.h+1, 0)
	e, ok := c.choice()
	if !ok || e.Problem == nil {
		return
	}
	_, place := splitDetails(e, l.details)
	c.figure = c.gallery.picture(figure.OfFrame(&e.Problem.Frame, figure.Options{Style: e.Problem.Style(c.ascii)}), place.w, place.h, c.ascii)
	if c.figure.grid.Clipped { // the task shows it
		c.figure = nil
	}
}

// draw draws the list of problems and the details of the one in hand, with a notice in place of the caution.
func (c *chooser) draw(p *page, notice string) {
	l := placeChooser(p.w, p.h)
	if title, n := c.title(), c.drawLevels(p, l.head); columns(title)+n < l.head.w {
		p.line(l.head, 0, say(title, titleInk))
		c.drawLevels(p, l.head)
	}
	c.drawFind(p, l.find)
	p.fill(rect{0, 2, p.w, 1}, "─", noteInk)
	if !l.both {
		c.drawWhy(p, &l.list)
	}
	c.drawList(p, l.list)
	if l.both {
		p.fill(rect{l.details.x - 2, l.details.y, 1, l.details.h}, "│", noteInk)
		c.drawDetails(p, l.details)
	}
	note, k := wording.Caution, plainInk
	if notice != "" {
		note, k = notice, notYetInk
	}
	p.lines(l.note, folded(note, l.note.w, 0, k))
}

// mostWhy is how many rows the reason for an offer takes at most where there is no room for details.
const mostWhy = 2

// drawWhy draws at the foot of a list why the entry in hand is offered, if it is.
func (c *chooser) drawWhy(p *page, list *rect) {
	e, ok := c.choice()
	if !ok || e.Offer == nil {
		return
	}
	lines := folded(wording.Sentence(e.Offer.Why), list.w, 0, noteInk)
	lines = lines[:min(len(lines), mostWhy)]
	list.h -= len(lines)
	p.lines(rect{list.x, list.y + list.h, list.w, len(lines)}, lines)
}

// drawFind draws what is typed to find a problem, and how many of all it finds, or which of all is in hand.
func (c *chooser) drawFind(p *page, in rect) {
	x := p.put(in.x, in.y, in.w, "find: ", noteInk)
	where := c.where()
	c.filter.draw(p, x, in.y, in.x+in.w-columns(where))
	p.put(in.x+in.w-columns(where), in.y, in.x+in.w, where, noteInk)
}

// where tells how many of all are found, or which of all is in hand.
func (c *chooser) where() string {
	found := c.found()
	first := len(found) - len(c.entries) // behind what is offered for today
	all := problemsIn(c.entries)
	switch {
	case c.sought().Asks():
		return fmt.Sprintf("  %d of %d shown", len(found), all)
	case len(found) == 0 || c.at >= first && (found[c.at].heads() || found[c.at].act != nil):
		return ""
	case c.at < first:
		return fmt.Sprintf("  for today %d of %d", c.at+1, first)
	}
	return fmt.Sprintf("  problem %d of %d", problemsIn(found[first:c.at+1]), all)
}

// problemsIn counts the entries that are neither headings nor something to do.
func problemsIn(entries []Entry) int {
	n := 0
	for _, e := range entries {
		if !e.heads() && e.act == nil {
			n++
		}
	}
	return n
}

// drawLevels draws the levels at the right of the head, the one in hand in brackets, and tells how wide they are.
func (c *chooser) drawLevels(p *page, in rect) int {
	var all line
	n := 0
	add := func(text string, k ink) {
		all = append(all, span{text, k})
		n += columns(text)
	}
	if c.sitting != nil {
		add(c.paperHead(), strongInk)
		p.line(rect{in.x + max(in.w-n, 0), in.y, min(n, in.w), 1}, 0, all)
		return n
	}
	add("level:", noteInk)
	level := c.level
	if e, ok := c.choice(); ok {
		level = c.levelOf(e)
	}
	for i, name := range tutor.Levels() {
		if tutor.Level(i) == level {
			add(" ["+name+"]", strongInk)
		} else {
			add("  "+name+" ", noteInk)
		}
	}
	if c.exam {
		add(" exam", strongInk)
	}
	p.line(rect{in.x + max(in.w-n, 0), in.y, min(n, in.w), 1}, 0, all)
	return n
}

// title is what the list is headed by.
func (c *chooser) title() string {
	if c.sitting != nil {
		return c.sitting.Title
	}
	return "Choose a problem"
}

// paperHead tells the level of a paper and how much time is left.
func (c *chooser) paperHead() string {
	said := "exam, " + c.level.String()
	if left := c.sitting.TimeLeft(); left != "" {
		said += ", " + left
	}
	if c.sitting.Over() {
		said = "handed in"
	}
	return said
}

// drawList draws the problems found.
func (c *chooser) drawList(p *page, in rect) {
	list := c.found()
	switch {
	case !c.ready:
		p.line(in, 0, say("Reading the problems.", noteInk))
	case len(list) == 0:
		p.lines(in, folded("No problem holds all of that. Esc shows all again.", in.w, 0, plainInk))
	}
	for y := 0; y < in.h && c.top+y < len(list); y++ {
		c.drawEntry(p, rect{in.x, in.y + y, in.w, 1}, list[c.top+y], c.top+y == c.at)
	}
}

// drawEntry draws one row of the list: the grade, the title, how far one is.
func (c *chooser) drawEntry(p *page, in rect, e Entry, chosen bool) {
	mark, k := "  ", plainInk
	if chosen {
		mark, k = "▸ ", strongInk
	}
	if e.heads() {
		p.line(in, 0, line{{mark + short(e.Set.Title, in.w-2), titleInk}})
		return
	}
	if e.act != nil {
		p.line(in, 0, line{{mark + "   " + short(e.Name, in.w-5), k}})
		return
	}
	if e.Problem == nil {
		p.line(in, 0, say(mark+"   "+short(e.Name+" cannot be used", in.w-5), noteInk))
		return
	}
	grade := " "
	if e.Problem.Grade > 0 && len(e.Portion) == 0 {
		grade = strconv.Itoa(e.Problem.Grade)
	}
	done := "today"
	switch {
	case e.task > 0:
		done = c.sitting.Standing(e.task - 1)
	case e.Offer == nil:
		done = shortProgress(c.progress(e))
	}
	room := in.w - 5
	if done != "" {
		room -= columns(done) + 1
	}
	p.line(in, 0, line{{mark + grade + "  " + short(titleOf(e), room), k}})
	p.put(in.x+in.w-columns(done), in.y, in.x+in.w, done, noteInk)
}

// titleOf is what an entry is called in the list.
func titleOf(e Entry) string {
	if len(e.Portion) > 0 {
		return fmt.Sprintf("About %d minutes, in %s", tutor.Minutes(e.Portion), wording.Counted(len(e.Portion), "piece"))
	}
	if e.Problem.Title != "" {
		return e.Problem.Title
	}
	return e.Name
}

// setLines are what there is to know of a set.
func setLines(s *SetEntry, w int) []line {
	all := append(folded(s.Title, w, 0, titleInk), nil)
	for _, text := range s.Says {
		all = append(append(all, folded(text, w, 0, plainInk)...), nil)
	}
	if s.Exam != nil {
		all = append(all, folded(s.Exam.Says, w, 0, strongInk)...)
	}
	return all
}

// drawDetails draws the title, the scenario and the figure of the problem in hand, or why it cannot be used.
func (c *chooser) drawDetails(p *page, in rect) {
	e, ok := c.choice()
	switch {
	case !ok:
	case e.heads():
		p.lines(in, setLines(e.Set, in.w))
	case e.Problem == nil:
		var all []line
		for _, text := range strings.Split(e.Fault, "\n") {
			all = append(all, folded(text, in.w, 0, plainInk)...)
		}
		p.lines(in, all)
	default:
		words, place := splitDetails(e, in)
		p.lines(in, words)
		c.figure.put(p, place)
	}
}

// whyLines say why an entry is offered for today; nothing for one that is not.
func whyLines(e Entry, w int) []line {
	if len(e.Portion) > 0 {
		return portionLines(e, w)
	}
	if e.Offer == nil {
		return nil
	}
	how := "New numbers, at the level " + e.Offer.Level.String() + "."
	if e.Offer.Form != tutor.WholeProblem {
		how = "New numbers, " + e.Offer.Form.String() + "."
	}
	return append(append(folded(wording.Sentence(e.Offer.Why), w, 0, strongInk), folded(how, w, 0, noteInk)...), nil)
}

// portionLines tell what a portion is made of.
func portionLines(e Entry, w int) []line {
	all := append(folded(titleOf(e)+":", w, 0, strongInk), nil)
	for _, text := range tutor.PortionLines(e.Portion) {
		all = append(all, folded(text, w, 3, plainInk)...)
	}
	return append(append(all, nil), folded("New numbers in each. Enter begins the first; each next one follows.", w, 0, noteInk)...)
}

// leastFigure is the fewest rows that a figure of a frame is drawn in.
const leastFigure = 7

// splitDetails divides a place between the task of a problem and its figure. Where the task is cut, a key shows all of it.
func splitDetails(e Entry, in rect) (words []line, place rect) {
	words = append(whyLines(e, in.w), taskLines(tutor.TaskOf(e.Problem), in.w)...)
	most := max(in.h-leastFigure-1, in.h*2/5, 3)
	if len(e.Portion) > 0 {
		words, most = whyLines(e, in.w), in.h
	}
	if in.h < leastFigure+3 {
		most = max(in.h-leastFigure, 1)
	}
	if len(words) > most {
		const more = "  tab: all"
		words = words[:most]
		last, k := &words[most-1], plainInk
		if len(*last) > 0 { // no blank row
			k = (*last)[0].ink
		}
		*last = line{{short(plainText(*last)+" …", in.w-columns(more)), k}, {more, noteInk}}
	}
	n := min(len(words)+1, in.h)
	return words, rect{in.x, in.y + n, in.w, max(in.h-n, 0)}
}
