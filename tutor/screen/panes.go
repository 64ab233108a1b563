package screen

import (
	"slices"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
)

// A pane is one of the things that share a place where there is room for one.
type pane int

// The panes, in the order in which they follow each other.
const (
	figurePane pane = iota
	diagramPane
	sheetPane
	panes
)

// turnPane shows the sheet when a worked step comes to be read, and the figure when something is asked again.
func (c *course) turnPane() {
	q, asking := c.l.Now()
	if reads := asking && q.Kind == tutor.Reading; reads != c.reading {
		c.reading, c.pane = reads, map[bool]pane{true: sheetPane}[reads]
	}
}

// nextPane is the pane that follows the one in sight: itself where all have room beside each other.
func (m *Model) nextPane() pane {
	c, places := m.course, placeLesson(m.w, m.h)
	next := c.inSight(places)
	for range panes {
		next = (next + 1) % panes
		if next == figurePane || next == sheetPane && !places.both || next == diagramPane && c.has(c.diagramInHand()) && !c.placeFigures(places).both {
			return next
		}
	}
	return next
}

// inSight is the pane that is shown: the one in hand, unless that has a place of its own or is not there now.
func (c *course) inSight(places lessonPlaces) pane {
	switch {
	case c.pane == sheetPane && !places.both:
		return sheetPane
	case c.pane == diagramPane && c.has(c.diagramInHand()) && !c.placeFigures(places).both:
		return diagramPane
	}
	return figurePane
}

func (m *Model) hasPanes() bool { return m.nextPane() != m.course.inSight(placeLesson(m.w, m.h)) }

func (m *Model) swapPane() tea.Cmd {
	m.course.pane = m.nextPane()
	return nil
}

// paneWord is what tab leads to.
func (m *Model) paneWord() string { return [...]string{"figure", "diagram", "sheet"}[m.nextPane()] }

// openFigure shows the figure on the whole screen, at first the one that is in sight.
func (m *Model) openFigure() tea.Cmd {
	c := m.course
	c.large = c.shown()
	if c.inSight(placeLesson(m.w, m.h)) == diagramPane {
		c.large = c.diagramInHand()
	}
	return m.open(drawing)
}

// changeScene shows the figure that follows, or the one before.
func (m *Model) changeScene(by int) tea.Cmd {
	list := m.course.available()
	i := slices.Index(list, m.course.large)
	m.course.large = list[(i+by+len(list))%len(list)]
	return nil
}
