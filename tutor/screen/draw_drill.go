package screen

import (
	"fmt"
	"slices"

	"unpin/statics/wording"
	"unpin/tutor"
)

// A drillPlaces is where the parts of a drill stand: figure and text beside each other, or in the same place.
type drillPlaces struct {
	head, figure, text, rule, talk rect
	both                           bool
}

// places divides a screen for a drill: the question and its answers stand whole where that leaves rows for what it is about.
func (c *drill) places(w, h int) drillPlaces {
	talk := min(max(c.asksRows(w-2, h)+1+max(len(c.said(w-2)), 2), 4), max(h-3-leastPanesLow, 4))
	body := max(h-3-talk, 0)
	l := drillPlaces{
		head: rect{0, 0, w, 1},
		rule: rect{0, 1 + body, w, 1},
		talk: rect{1, 2 + body, w - 2, talk},
		both: w >= bothFrom && (len(c.d.Page()) > 0 || c.done()),
	}
	l.figure, l.text = rect{0, 1, w, body}, rect{1, 1, w - 2, body}
	if l.both {
		n := min(max(w*48/100, leastSheet), mostSheet)
		l.figure.w, l.text = w-n-2, rect{w - n, 1, n - 1, body}
	}
	return l
}

// steadyFrom is how many rows a screen has on which a figure is kept as it is.
const steadyFrom = 24

// asksRows is how many rows the question takes. Where the figure is all that there is besides, each question takes as many as the longest, so that
// the figure stays as it is; not on a low screen, which has no row to spare.
func (c *drill) asksRows(w, h int) int {
	rows := len(c.question(w))
	if h < steadyFrom || c.done() || c.d.Form() != tutor.SketchFirst {
		return rows
	}
	for _, says := range c.d.Asks() {
		rows = max(rows, len(choiceLines(says, w)))
	}
	return rows
}

// text is what there is to read: what is to be done, and the page; at the end, what came of it stands first.
func (c *drill) text(w int) []line {
	var all []line
	for i, text := range c.d.Ending() {
		all = append(all, folded(text, w, 2, map[bool]ink{true: strongInk, false: plainInk}[i == 0])...)
	}
	if c.done() {
		all = append(all, nil)
	} else {
		all = append(folded(c.d.Task(), w, 0, noteInk), nil)
	}
	for _, l := range c.d.Page() {
		switch {
		case l.Number == 0:
			all = append(all, folded(l.Text, w, 3, noteInk)...)
		case l.Lit:
			all = append(all, numbered(l, w, notYetInk)...)
		default:
			all = append(all, numbered(l, w, plainInk)...)
		}
	}
	return all
}

// numbered is a line of the page with its number in the margin.
func numbered(l tutor.PageLine, w int, k ink) []line {
	mark := map[bool]string{true: "▸", false: " "}[l.Lit]
	rows := fold(l.Text, max(w-6, 1), 2)
	for i := range rows {
		head := "      "
		if i == 0 {
			head = fmt.Sprintf("%s%3d  ", mark, l.Number)
		}
		rows[i] = head + rows[i]
	}
	var all []line
	for _, r := range rows {
		all = append(all, say(r, k))
	}
	return all
}

// question is what is asked and the answers to choose from.
func (c *drill) question(w int) []line {
	says, _, _, asking := c.d.Now()
	if !asking {
		return nil
	}
	return choiceLines(says, w)
}

// choiceLines are a question and the answers to choose from.
func choiceLines(says []string, w int) []line {
	var all []line
	for i, text := range says {
		k, in := askedInk, 0
		if i > 0 {
			k, in = plainInk, 5
		}
		for n, row := range folded(text, w-2, in, k) {
			if i > 0 && n == 0 {
				row = line{{"  " + plainText(row), k}}
			}
			all = append(all, row)
		}
	}
	return all
}

// said is what was said last.
func (c *drill) said(w int) []line {
	var all []line
	for i, text := range c.reply.Lines {
		k := plainInk
		if i == 0 {
			k = inkOfReply(c.reply)
		}
		all = append(all, folded(text, w, 0, k)...)
	}
	return all
}

// drawDrill draws a drill.
func (m *Model) drawDrill(p *page) {
	c, l := m.drill, m.drill.places(m.w, m.h)
	at, of := c.d.Position()
	right := fmt.Sprintf("%s   question %d of %d", c.d.Form(), min(at+1, of), of)
	if c.done() {
		right = c.d.Form().String() + "   done"
	}
	if m.piece != "" {
		right = m.piece + "   " + right
	}
	p.put(1, 0, m.w-columns(right)-3, short(c.d.Title(), m.w-columns(right)-4), titleInk)
	p.put(m.w-columns(right)-1, 0, m.w, right, noteInk)
	if l.both || c.onFigure {
		c.figure.put(p, l.figure)
	}
	if l.both {
		p.fill(rect{l.figure.w, l.text.y, 1, l.text.h}, "│", noteInk)
	}
	if l.both || !c.onFigure {
		c.drawText(p, l.text)
	}
	p.fill(l.rule, "─", noteInk)
	m.drawDrillTalk(p, l.talk)
}

// drawText draws as much of the text as there is room for.
func (c *drill) drawText(p *page, in rect) {
	until := min(c.scroll+in.h, len(c.lines))
	p.lines(in, c.lines[min(c.scroll, until):until])
	if c.scroll > 0 {
		p.put(in.x+in.w-1, in.y, in.x+in.w, "↑", noteInk)
	}
	if until < len(c.lines) {
		p.put(in.x+in.w-1, in.y+in.h-1, in.x+in.w, "↓", noteInk)
	}
}

// drawDrillTalk draws the question, the line for the answer, and what was said last.
func (m *Model) drawDrillTalk(p *page, in rect) {
	c := m.drill
	asks := c.question(in.w)
	if most := max(in.h-2, 1); len(asks) > most {
		asks = append(slices.Clone(asks[:most-1]), say("  … larger windows show all", noteInk))
	}
	p.lines(in, asks)
	y := len(asks)
	if _, name, unit, asking := c.d.Now(); asking {
		x := p.put(in.x, in.y+y, in.x+in.w-8, fmt.Sprintf("%s [%s] = ", name, unit), askedInk)
		c.answerLine.draw(p, x, in.y+y, in.x+in.w)
		y++
	}
	said := c.said(in.w)
	if m.notice != "" {
		said = append(folded(m.notice, in.w, 0, notYetInk), said...)
	}
	if c.done() {
		said = append(said, folded(wording.Caution, in.w, 0, noteInk)...)
	}
	p.lines(rect{in.x, in.y + y, in.w, max(in.h-y, 0)}, said)
}
