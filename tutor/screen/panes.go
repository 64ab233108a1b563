package screen

import (
	"slices"

	"unpin/statics"
	"unpin/tutor"
)

// A pane is one of the things that share a place where there is room for one.
type pane int

// The panes, in the order in which they follow each other.
const (
	figurePane pane = iota
	diagramPane
	sheetPane
	paneCount
)

// The panes are what is shown above the question: which figure, which end of the sheet, and these as last arranged.
type panes struct {
	current
	pane    pane         // what is shown where there is room for one
	reading bool         // a worked step is read, for which the sheet is shown
	other   tutor.Figure // the figure that is looked at in place of the one that fits, or tutor.Fitting
	cramped bool         // there is no room for all parts apart: they come one by one
	armless bool         // there is no room for the arms of a sum: its free body stands for it
	crowded bool         // there is no room for the supports of the frame as given: its parts come one by one in its place
	large   tutor.Figure // the figure on the whole screen
	up      int          // lines that the sheet is scrolled up from its end
	changes int          // counts what may change the figure or the sheet

	sheet           sheet
	binder          binder
	gallery         gallery
	figure, diagram *picture
	arranged        arrangement // for which figure and diagram were drawn
}

// turn shows the sheet when a worked step comes to be read, and the figure when something is asked again.
func (c *panes) turn() {
	q, asking := c.l.Now()
	if reads := asking && q.Kind == tutor.Reading; reads != c.reading {
		c.reading, c.pane = reads, map[bool]pane{true: sheetPane}[reads]
	}
}

// nextPane is the pane that follows the one in sight: itself where all have room beside each other.
func (c *panes) nextPane(places lessonPlaces) pane {
	next := c.inSight(places)
	for range paneCount {
		next = (next + 1) % paneCount
		if next == figurePane || next == sheetPane && !places.both || next == diagramPane && c.figures().Has(c.figures().Diagram()) && !c.placeFigures(places).both {
			return next
		}
	}
	return next
}

// inSight is the pane that is shown: the one in hand, unless that has a place of its own or is not there now.
func (c *panes) inSight(places lessonPlaces) pane {
	switch {
	case c.pane == sheetPane && !places.both:
		return sheetPane
	case c.pane == diagramPane && c.figures().Has(c.figures().Diagram()) && !c.placeFigures(places).both:
		return diagramPane
	}
	return figurePane
}

// several reports whether there is another pane to show.
func (c *panes) several(places lessonPlaces) bool { return c.nextPane(places) != c.inSight(places) }

// swap shows the pane that follows.
func (c *panes) swap(places lessonPlaces) { c.pane = c.nextPane(places) }

// paneWord is what tab leads to.
func (c *panes) paneWord(places lessonPlaces) string {
	return [...]string{"figure", "N V M", "sheet"}[c.nextPane(places)]
}

// shown is the scene in the lesson's pane.
func (c *panes) shown() tutor.Figure {
	s := c.figures().Fit()
	switch {
	case c.other != tutor.Fitting:
		s = c.other
	case s == tutor.AllApart && c.cramped:
		s = tutor.AsGiven
	}
	if s == tutor.AsGiven && c.crowded {
		return tutor.OnePart
	}
	return s
}

// enlarge takes the figure that is in sight for the whole screen.
func (c *panes) enlarge(places lessonPlaces) {
	c.cramped = false // there may be more room
	c.large = c.shown()
	if c.inSight(places) == diagramPane {
		c.large = c.figures().Diagram()
	}
}

// largeTitle is what stands above the figure on the whole screen, with what has no room even there.
func (c *panes) largeTitle() string {
	title := c.figures().Title(c.large, true)
	if c.figure != nil && c.figure.lacks() != "" {
		title += " (a larger window shows " + c.figure.lacks() + ")"
	}
	return title
}

// changeScene takes the figure that follows for the whole screen, or the one before.
func (c *panes) changeScene(by int) {
	list := c.figures().All(c.cramped)
	i := slices.Index(list, c.large)
	c.large = list[(i+by+len(list))%len(list)]
}

// turnFigure goes on from the figure that fits the question to the frame as given, and where all parts apart would fit but
// have no room, to each part by itself.
func (c *panes) turnFigure() {
	list := []tutor.Figure{tutor.Fitting, tutor.AsGiven}
	switch {
	case c.crowded:
		list = append([]tutor.Figure{tutor.Fitting}, c.figures().OneByOne()[1:]...)
	case c.figures().Fit() == tutor.AllApart && c.cramped:
		list = append([]tutor.Figure{tutor.Fitting}, c.figures().OneByOne()...)
	}
	c.other = list[(slices.Index(list, c.other)+1)%len(list)]
	c.changes++
}

// look looks at the step before or after the one looked at; past the last worked it is the question in hand again.
func (c *panes) look(by int) {
	last := min(c.shows().StepInHand(), c.shows().Steps()-1)
	at := c.looked
	if at == statics.None {
		at = c.shows().StepInHand()
	}
	c.looked = max(at+by, 0)
	if c.looked > last || c.looked == c.shows().StepInHand() {
		c.looked = statics.None
	}
	c.other, c.up = tutor.Fitting, 0
	c.changes++
}

// scrollSheet scrolls the sheet beside the figure.
func (c *panes) scrollSheet(by int) { c.up = max(c.up+3*by, 0) }
