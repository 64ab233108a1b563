package screen

import (
	"fmt"

	"unpin/statics"
	"unpin/tutor"
)

// An arrangement is all that the figures on the screen depend on: while it stays, they are not even looked at.
type arrangement struct {
	changes, w, h int
	pane          pane         // in sight in the lesson
	large         tutor.Figure // on the whole screen; tutor.Fitting in the lesson
}

// arrange writes the sheet and draws the figures anew where something changed, and keeps what is scrolled within its
// bounds, for a screen and the view on it.
func (c *panes) arrange(w, h int, v view) {
	places := c.places(w, h)
	width, spacious := places.sheet.w-2, places.sheet.h >= 20
	now := arrangement{c.changes, w, h, c.inSight(places), tutor.Fitting}
	body := placeReader(w, h).body
	if v == reading {
		width, spacious = min(body.w, 100), body.h >= 20
	}
	if c.sheet.width != width || c.sheet.changes != c.changes || c.sheet.spacious != spacious {
		c.sheet = writeSheet(c, width, spacious)
	}
	c.up = max(min(c.up, len(c.sheet.lines)-places.sheet.h), 0)
	if v == drawing {
		now.large = c.large
	}
	if c.arranged == now {
		return
	}
	c.arranged = now
	if v == drawing {
		c.arrangeLarge(body)
		return
	}
	c.arrangePane(places)
}

// arrangePane draws the figure of the lesson, the diagram, or both. Where all parts apart have no room, the frame as given
// stands for them; where a sum has none with its arms, its free body without them.
func (c *panes) arrangePane(l lessonPlaces) {
	at, pane := c.placeFigures(l), c.inSight(l)
	c.figure, c.diagram = nil, nil
	if at.both || pane == diagramPane {
		c.diagram = c.gallery.picture(c.figures().Draw(c.figures().Diagram()), at.diagram.w, at.diagram.h-1, c.ascii)
	}
	if !at.both && pane != figurePane {
		return
	}
	s := c.shown()
	if c.figures().Fit() == tutor.AllApart && c.other == tutor.Fitting {
		s, c.cramped = tutor.AllApart, false
	}
	c.figure = c.gallery.picture(c.figures().Draw(s), at.body.w, at.body.h-1, c.ascii)
	if c.armless = false; s == tutor.ThisSum && c.figure.lacks() == someLabels {
		body := c.gallery.picture(c.figures().Draw(tutor.ThisBody), at.body.w, at.body.h-1, c.ascii)
		if c.armless = body.lacks() != someLabels; c.armless {
			c.figure = body
		}
	}
	if s == tutor.AllApart && !c.figure.whole() {
		c.cramped = true
		c.figure = c.gallery.picture(c.figures().Draw(c.shown()), at.body.w, at.body.h-1, c.ascii)
	}
	c.makeRoom(at.body)
}

// makeRoom shows the first part in place of the frame as given where its supports or arrows have no room: without them it would be
// another frame.
func (c *panes) makeRoom(in rect) {
	if c.other >= tutor.OnePart {
		return
	}
	c.crowded = false
	if c.shown() != tutor.AsGiven || !c.figure.misleads() {
		return
	}
	part := c.gallery.picture(c.figures().Draw(tutor.OnePart), in.w, in.h-1, c.ascii)
	if c.crowded = !part.misleads(); c.crowded {
		c.figure = part
	}
}

// arrangeLarge draws a figure on the whole screen; where all parts apart have no room there, the first by itself.
func (c *panes) arrangeLarge(in rect) {
	c.figure = c.gallery.picture(c.figures().Draw(c.large), in.w, in.h, c.ascii)
	if c.large == tutor.AllApart {
		if c.cramped = !c.figure.whole(); c.cramped {
			c.large = tutor.OnePart
			c.figure = c.gallery.picture(c.figures().Draw(c.large), in.w, in.h, c.ascii)
			c.arranged.large = tutor.OnePart
		}
	}
}

// placeFigures divides the place of the figure, if there is a diagram to stand beside it.
func (c *panes) placeFigures(l lessonPlaces) figurePlaces {
	if c.figures().Has(c.figures().Diagram()) {
		return placeFigures(l.figure)
	}
	return figurePlaces{body: l.figure, diagram: l.figure}
}

// put draws the panes that are in sight.
func (c *panes) put(p *page, l lessonPlaces) {
	if l.both || c.inSight(l) != sheetPane {
		c.drawFigures(p, l)
	}
	if l.both {
		p.fill(rect{l.figure.w, l.sheet.y, 1, l.sheet.h}, "│", noteInk)
	}
	if l.both || c.inSight(l) == sheetPane {
		c.drawSheet(p, l.sheet)
	}
}

// drawFigures draws the figure, and the diagram beside it or in its place.
func (c *panes) drawFigures(p *page, l lessonPlaces) {
	at := c.placeFigures(l)
	if c.diagram != nil {
		drawFigure(p, at.diagram, c.figures().Title(c.figures().Diagram(), false), c.diagram, "")
	}
	if c.figure != nil {
		note := ""
		if c.crowded || c.other >= tutor.OnePart || c.cramped && c.figures().Fit() == tutor.AllApart {
			note = "part by part: ctrl+g"
		}
		if c.armless {
			note = "arms: ctrl+f"
		}
		drawFigure(p, at.body, c.figures().Title(c.shown(), false), c.figure, note)
	}
}

// drawFigure draws a figure beneath its title and a note, or what is left out of it.
func drawFigure(p *page, in rect, title string, k *picture, note string) {
	if key := k.key(); key != "" && columns(key) < in.w {
		title = key
	}
	room := in.w - 1
	if lacks := k.lacks(); note == "" && lacks != "" {
		note = lacks + ": ctrl+f"
	}
	if note != "" {
		room -= columns(note) + 2
		p.put(in.x+in.w-columns(note), in.y, in.x+in.w, note, noteInk)
	}
	p.put(in.x+1, in.y, in.x+1+room, short(title, room), titleInk)
	k.put(p, rect{in.x, in.y + 1, in.w, in.h - 1})
}

// drawHead tells the problem and how far one is, and of a portion which piece it is.
func (c *current) drawHead(p *page, in rect, piece string) {
	l := c.l
	at, of := l.Position()
	how := l.Level().String()
	if l.Exam() {
		how = "exam"
		if left := tutor.TimeLeft(l); left != "" {
			how += ", " + left
		}
	}
	right := fmt.Sprintf("%s   question %d of %d", how, min(at+1, of), of)
	if l.Open() {
		right = fmt.Sprintf("%s   question %d", how, at+1)
	}
	if at == of {
		right = how + "   all done"
	}
	if piece != "" {
		right = piece + "   " + right
	}
	n := columns(right)
	p.put(1, in.y, in.w-n-2, short(l.Display(false).Title(), in.w-n-4), titleInk)
	p.put(in.w-n-1, in.y, in.w, right, noteInk)
}

// drawSheet draws the end of the sheet, or the step that is looked at, or as far up as it is scrolled.
func (c *panes) drawSheet(p *page, in rect) {
	lines := c.sheet.lines
	from := max(len(lines)-in.h-c.up, 0)
	if c.looked != statics.None && c.looked < len(c.sheet.starts) && c.up == 0 {
		from = min(c.sheet.starts[c.looked], max(len(lines)-in.h, 0))
	}
	lines = lines[from:]
	p.lines(in, lines[:min(len(lines), in.h)])
	if from > 0 {
		p.put(in.x+in.w-1, in.y, in.x+in.w, "↑", noteInk)
	}
	if len(lines) > in.h {
		p.put(in.x+in.w-1, in.y+in.h-1, in.x+in.w, "↓", noteInk)
	}
}

// drawStep draws the rule above the question with the step or member that it belongs to.
func (c *current) drawStep(p *page, in rect) {
	p.fill(in, "─", noteInk)
	p.put(in.x+2, in.y, in.x+in.w-2, " "+short(c.shows().Heading(), in.w-6)+" ", titleInk)
}
