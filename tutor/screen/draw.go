package screen

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/tutor"
)

// arrange prepares what the view in hand needs for the size of the screen: it writes the sheet and draws the figure
// anew where something changed, and keeps what is scrolled within its bounds.
func (m *Model) arrange() {
	if m.w < leastWidth || m.h < leastHeight {
		return
	}
	if m.view == choosing {
		m.arrangeChooser()
		return
	}
	if c := m.course; c != nil {
		c.arrange(m)
	}
	if m.view == choosing || m.view == working {
		return
	}
	m.scroll = max(min(m.scroll, len(m.readerLines())-m.page()), 0)
}

// An arrangement is all that the figures on the screen depend on: while it stays, they are not even looked at.
type arrangement struct {
	changes, w, h int
	pane          pane  // in sight in the lesson
	large         scene // on the whole screen; fitting in the lesson
}

// arrange prepares a lesson for the place that the view gives it.
func (c *course) arrange(m *Model) {
	places := placeLesson(m.w, m.h)
	width, spacious := places.sheet.w-2, places.sheet.h >= 20
	now := arrangement{c.changes, m.w, m.h, c.inSight(places), fitting}
	if m.view == reading {
		body := placeReader(m.w, m.h).body
		width, spacious = min(body.w, 100), body.h >= 20
	}
	if c.sheet.width != width || c.sheet.changes != c.changes || c.sheet.spacious != spacious {
		c.sheet = writeSheet(c, width, spacious)
	}
	c.up = max(min(c.up, len(c.sheet.lines)-places.sheet.h), 0)
	if m.view == drawing {
		now.large = c.large
	}
	if c.arranged == now {
		return
	}
	c.arranged = now
	if m.view == drawing {
		body := placeReader(m.w, m.h).body
		c.figure = c.gallery.picture(c.draw(c.large), body.w, body.h, c.ascii)
		return
	}
	c.arrangePane(places)
}

// arrangePane draws the figure of the lesson, the diagram, or both. Where all parts apart have no room, the frame as given
// stands for them.
func (c *course) arrangePane(l lessonPlaces) {
	at, pane := c.placeFigures(l), c.inSight(l)
	c.figure, c.diagram = nil, nil
	if at.both || pane == diagramPane {
		c.diagram = c.gallery.picture(c.draw(c.diagramInHand()), at.diagram.w, at.diagram.h-1, c.ascii)
	}
	if !at.both && pane != figurePane {
		return
	}
	c.cramped = false
	c.figure = c.gallery.picture(c.draw(c.shown()), at.body.w, at.body.h-1, c.ascii)
	if c.shown() == allApart && !c.figure.whole() {
		c.cramped = true
		c.figure = c.gallery.picture(c.draw(c.shown()), at.body.w, at.body.h-1, c.ascii)
	}
}

// placeFigures divides the place of the figure, if there is a diagram to stand beside it.
func (c *course) placeFigures(l lessonPlaces) figurePlaces {
	if c.has(c.diagramInHand()) {
		return placeFigures(l.figure)
	}
	return figurePlaces{body: l.figure, diagram: l.figure}
}

// diagramInHand is the internal force that is asked for; when all is done, M.
func (c *course) diagramInHand() scene {
	q, asking := c.l.Now()
	if !asking || q.Member == statics.None {
		return bending
	}
	return ofQuantity(quantityOf(q))
}

// drawLesson draws the lesson.
func (m *Model) drawLesson(p *page) {
	c := m.course
	l := placeLesson(m.w, m.h)
	m.drawHead(p, l.head)
	if l.both || c.inSight(l) != sheetPane {
		c.drawFigures(p, l)
	}
	if l.both {
		p.fill(rect{l.figure.w, l.sheet.y, 1, l.sheet.h}, "│", faintInk)
	}
	if l.both || c.inSight(l) == sheetPane {
		c.drawSheet(p, l.sheet)
	}
	m.drawStep(p, l.step)
	m.drawTalk(p, l.talk)
	p.line(l.help, 0, m.helpLine(l.help.w))
}

// drawFigures draws the figure, and the diagram beside it or in its place.
func (c *course) drawFigures(p *page, l lessonPlaces) {
	at := c.placeFigures(l)
	if c.diagram != nil {
		drawFigure(p, at.diagram, c.title(c.diagramInHand(), false), c.diagram)
	}
	if c.figure != nil {
		drawFigure(p, at.body, c.title(c.shown(), false), c.figure)
	}
}

// drawFigure draws a figure beneath its title.
func drawFigure(p *page, in rect, title string, k *picture) {
	p.put(in.x+1, in.y, in.x+in.w, short(title, in.w-1), titleInk)
	k.put(p, rect{in.x, in.y + 1, in.w, in.h - 1})
}

// drawHead tells the problem and how far one is.
func (m *Model) drawHead(p *page, in rect) {
	l := m.course.l
	at, of := l.Position()
	how := l.Rung.String()
	if l.Exam {
		how = "exam"
	}
	right := fmt.Sprintf("%s   question %d of %d", how, min(at+1, of), of)
	if l.Open() {
		right = fmt.Sprintf("%s   question %d", how, at+1)
	}
	if at == of {
		right = how + "   all done"
	}
	n := columns(right)
	p.put(1, in.y, in.w-n-2, short(l.Problem.Title, in.w-n-4), titleInk)
	p.put(in.w-n-1, in.y, in.w, right, faintInk)
}

// drawSheet draws the end of the sheet, or the step that is looked at, or as far up as it is scrolled.
func (c *course) drawSheet(p *page, in rect) {
	lines := c.sheet.lines
	from := max(len(lines)-in.h-c.up, 0)
	if c.looked != statics.None && c.looked < len(c.sheet.starts) && c.up == 0 {
		from = min(c.sheet.starts[c.looked], max(len(lines)-in.h, 0))
	}
	lines = lines[from:]
	p.lines(in, lines[:min(len(lines), in.h)])
	if from > 0 {
		p.put(in.x+in.w-1, in.y, in.x+in.w, "↑", faintInk)
	}
	if len(lines) > in.h {
		p.put(in.x+in.w-1, in.y+in.h-1, in.x+in.w, "↓", faintInk)
	}
}

// drawStep draws the rule above the question with the step or member that it belongs to.
func (m *Model) drawStep(p *page, in rect) {
	c := m.course
	p.fill(in, "─", faintInk)
	q, asking := c.l.Now()
	text := "All done"
	switch {
	case asking && q.Step != statics.None:
		text = stepTitle(c.l, q.Step, style(c.l, c.ascii))
		if step := c.l.Solution.Plan[q.Step]; len(step.Sums) > 1 && q.Kind != tutor.ForceValue && q.Kind != tutor.Reading {
			text = fmt.Sprintf("%d. %s", q.Step+1, capital(bodyAndSum(c.l, step.Sums[q.Sum], style(c.l, c.ascii))))
		}
	case asking && q.Kind == tutor.ChooseSum:
		text = "Choose a free body and a sum of it"
	case asking && q.Kind == tutor.TypeSum:
		text = capital(bodyAndSum(c.l, c.l.Chosen(), style(c.l, c.ascii)))
	case asking:
		mem := c.l.Solution.Frame.Members[q.Member]
		text = "Member " + mem.Name + ", distances from " + c.l.Solution.Frame.Joints[mem.From].Name
	}
	p.put(in.x+2, in.y, in.x+in.w-2, " "+short(text, in.w-6)+" ", titleInk)
}

// drawTalk draws what the question rests on, the line for the answer, and what was said last.
func (m *Model) drawTalk(p *page, in rect) {
	above, noted := m.questionLines(in)
	if m.course.greeting && len(above)+1+len(m.saidLines(in.w)) > in.h {
		above, noted = nil, false // it stands on the sheet too
	}
	p.lines(in, above)
	y := len(above)
	m.drawAnswer(p, rect{in.x, in.y + y, in.w, 1}, noted)
	said := m.saidLines(in.w)
	room := in.h - y - 1
	if len(said) > room && room > 0 {
		said = slices.Clone(said[:room])
		last := said[room-1]
		said[room-1] = line{{short(plainText(last), in.w-16), last[0].ink}, {"  ctrl+o: all", faintInk}}
	}
	p.lines(rect{in.x, in.y + y + 1, in.w, room}, said)
}

// questionLines are the sum in symbols and the positive sense, as many as leave two lines for the reply. Noted tells
// whether the sense is among them.
func (m *Model) questionLines(in rect) (all []line, noted bool) {
	c := m.course
	q, asking := c.l.Now()
	st := style(c.l, c.ascii)
	room := in.h - 3
	if !asking {
		return c.scoreLines(in.w), false
	}
	if q.Step != statics.None && q.Kind == tutor.ForceValue && !c.hidesTerms(q.Step) {
		sums := c.l.Solution.Plan[q.Step].Sums
		for n, s := range sums {
			symbols := notation.SumSymbols(c.l.Solution.Assembly, s, st)
			if len(sums) > 1 {
				symbols = fmt.Sprintf("(%d) %s", n+1, symbols)
			}
			for _, text := range fold(symbols, in.w, 4) {
				all = append(all, lit(say(text, plainInk), q.Name))
			}
		}
	}
	note := folded(senseOfAsked(c.l, q, st), in.w, 0, faintInk)
	if len(all)+len(note) > room {
		note = nil
	}
	if len(all) > room { // the rest stands on the sheet
		all = all[:max(room, 1)]
		all[len(all)-1] = say(short(plainText(all[len(all)-1])+" …", in.w), plainInk)
	}
	if q.Kind == tutor.Reading {
		return nil, false
	}
	return append(all, note...), len(note) > 0
}

// scoreLines tell how it went, where anything was asked.
func (c *course) scoreLines(w int) []line {
	first, of := c.l.Score()
	text := fmt.Sprintf("First try and without help: %d of %d.", first, of)
	if c.l.Exam {
		text = fmt.Sprintf("Right: %d of %d. Each answer has its mark on the sheet.", c.right(), of)
	}
	if of == 0 {
		return nil
	}
	return folded(text, w, 0, titleInk)
}

// right is how many answers are right.
func (c *course) right() int {
	n := 0
	for i := range c.l.Questions {
		if typed, settled, told, v := c.l.Standing(i); settled && !told && typed != "" && v.Right() {
			n++
		}
	}
	return n
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
func (m *Model) drawAnswer(p *page, in rect, noted bool) {
	c := m.course
	q, asking := c.l.Now()
	st := style(c.l, c.ascii)
	end := in.x + in.w
	x := in.x
	switch {
	case !asking && len(c.next()) > 0:
		x = p.put(x, in.y, end, "enter brings a step that was told once more  ", faintInk)
	case !asking:
		x = p.put(x, in.y, end, "enter leads to the problems  ", faintInk)
	case q.Kind == tutor.Reading:
		x = p.put(x, in.y, end, "Read the step on the sheet, then press enter.  ", askedInk)
	default:
		sense := ""
		if !noted {
			sense = senseWord(c.l, q)
		}
		text := prompt(q, sense, st)
		if columns(text) > in.w-8 {
			text = prompt(q, "", st)
		}
		x = p.put(x, in.y, end-8, text, askedInk)
	}
	if c.last != "" && len(c.answerLine.text) == 0 {
		text := "you typed " + short(c.last, 20)
		p.put(max(end-columns(text), x+2), in.y, end, text, faintInk)
	}
	c.answerLine.draw(p, x, in.y, end)
}

// saidLines are what was said last: a warning, or the reply.
func (m *Model) saidLines(w int) []line {
	r := m.course.reply
	var all []line
	if m.notice != "" {
		all = folded(m.notice, w, 0, notYetInk)
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
