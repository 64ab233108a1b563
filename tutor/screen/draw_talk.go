package screen

import (
	"fmt"
	"slices"
	"strings"

	"unpin/tutor"
)

// A talk is what a lesson and its student say to each other: what the question rests on, the line for the answer, and what
// was said last.
type talk struct {
	*course
	notice string // said before the reply
}

// draw draws what the question rests on, which always stands, the line for the answer, and what was said last.
func (c talk) draw(p *page, in rect) {
	equation, sense := c.question(in)
	p.lines(in, equation)
	y := len(equation)
	p.lines(rect{in.x, in.y + y, in.w, in.h - y}, sense)
	y += len(sense)
	c.drawAnswer(p, rect{in.x, in.y + y, in.w, 1}, len(sense) > 0)
	said := c.said(in.w)
	room := in.h - y - 1
	if len(said) > room && room > 0 {
		said = slices.Clone(said[:room])
		last := said[room-1]
		said[room-1] = line{{short(plainText(last), in.w-16), last[0].ink}, {"  ctrl+o: all", noteInk}}
	}
	p.lines(rect{in.x, in.y + y + 1, in.w, room}, said)
	q, asking := c.l.Now()
	if also := folded(c.shows().AlsoTyped(q), in.w, 0, noteInk); asking && len(said)+len(also) <= room {
		p.lines(rect{in.x, in.y + in.h - len(also), in.w, len(also)}, also)
	}
}

// question is the equation in hand, of which as much stands as leaves a line for the reply, and the sense that counts as
// positive where that leaves room for all of the reply.
func (c talk) question(in rect) (equation, sense []line) {
	q, asking := c.l.Now()
	if !asking {
		return c.scoreLines(in.w), nil
	}
	equation = c.equation(in.w)
	if room := max(in.h-2, 1); len(equation) > room { // the rest stands on the sheet
		equation = equation[:room]
		equation[room-1] = say(short(plainText(equation[room-1])+" …", in.w), plainInk)
	}
	if _, open := tutor.AsideOf(c.l); open {
		return equation, nil
	}
	note := c.shows().SenseOfAsked(q)
	sense = folded(note, in.w, 0, noteInk)
	if note == "" || len(equation)+len(sense)+1+max(len(c.said(in.w)), 2) > in.h {
		sense = nil
	}
	return equation, sense
}

// scoreLines tell how it went, where anything was asked.
func (c talk) scoreLines(w int) []line {
	first, of := c.l.Score()
	text := fmt.Sprintf("First try and without help: %d of %d.", first, of)
	if c.l.Exam() {
		text = fmt.Sprintf("Right: %d of %d. Each answer has its mark on the sheet.", c.right(), of)
	}
	if of == 0 {
		return nil
	}
	return folded(text, w, 0, titleInk)
}

// plainText is a line without its inks.
func plainText(l line) string {
	var b strings.Builder
	for _, s := range l {
		b.WriteString(s.text)
	}
	return b.String()
}

// drawAnswer draws the line that is typed into.
func (c talk) drawAnswer(p *page, in rect, noted bool) {
	q, asking := c.l.Now()
	st := c.shows().Style()
	end := in.x + in.w
	x := in.x
	why, aside := tutor.AsideOf(c.l)
	switch {
	case aside:
		x = p.put(x, in.y, end, "reason ["+why.Unit+"] = ", askedInk)
	case !asking && len(c.next()) > 0:
		x = p.put(x, in.y, end, "enter brings a step that was told once more  ", noteInk)
	case !asking && c.onward:
		x = p.put(x, in.y, end, "enter brings the next piece  ", noteInk)
	case !asking:
		x = p.put(x, in.y, end, "enter leads to the problems  ", noteInk)
	case q.Kind == tutor.Reading:
		x = p.put(x, in.y, end, "Read the step on the sheet, then press enter.  ", askedInk)
	default:
		sense := ""
		if !noted {
			sense = c.shows().SenseWord(q)
		}
		text := prompt(q, sense, st)
		if columns(text) > in.w-8 {
			text = prompt(q, "", st)
		}
		x = p.put(x, in.y, end-8, text, askedInk)
	}
	if c.mendable() {
		c.drawLast(p, x+2, in.y, end)
	}
	c.answerLine.draw(p, x, in.y, end)
}

// worthMending is how many columns a line has that is rather mended than typed again.
const worthMending = 12

// drawLast draws the line that was not right, at the end of the columns from x on, as far as there is room, and how it is brought back.
func (c talk) drawLast(p *page, x, y, end int) {
	const before, mend = "you typed ", "  ctrl+l: mend it"
	all := []string{before + short(c.last, 20), short(c.last, 20)}
	if columns(c.last) >= worthMending {
		room := end - x - columns(before+mend)
		all = append([]string{before + short(c.last, max(room, 20)) + mend}, all...)
	}
	for _, text := range all {
		if at := end - columns(text); at >= x {
			p.put(at, y, end, text, noteInk)
			return
		}
	}
}

// said are what was said last: a warning, or the reply.
func (c talk) said(w int) []line {
	r := c.reply
	var all []line
	if c.notice != "" {
		all = folded(c.notice, w, 0, notYetInk)
	}
	for i, text := range r.Lines {
		if strings.HasPrefix(text, "  ") { // the place of a fault in what was typed
			all = append(all, say(short(text, w), plainInk))
			continue
		}
		k := plainInk
		if i == 0 {
			k = inkOfReply(r)
		}
		all = append(all, folded(text, w, 0, k)...)
	}
	return all
}

// inkOfReply is the ink of a reply's first line.
func inkOfReply(r tutor.Reply) ink {
	switch {
	case r.Kind == tutor.Judged && r.Verdict.Right():
		return rightInk
	case r.Kind == tutor.Judged || r.Kind == tutor.Unread:
		return notYetInk
	case r.Kind == tutor.Hinted:
		return hintInk
	}
	return plainInk
}
