package screen

import "unpin/statics/wording"

// The most cells that a screen is drawn in: a terminal may report any size.
const (
	mostWidth  = 500
	mostHeight = 200
)

// The sizes that the layouts rest on, in cells.
const (
	leastWidth       = 40 // below this there is no room for a question
	leastHeight      = 12
	bothFrom         = 100 // from here on figure and sheet stand side by side
	leastSheet       = 44
	leastPanes       = 8 // rows above the question
	leastPanesLow    = 4 // the same on a screen of less than 18 rows
	mostSheet        = 76
	leastDiagramRows = 13 // with its title and the two lines that tell its signs
	leastDiagramCols = 50
	detailsFrom      = 76 // from here on the chooser shows list and details side by side
	leastDetails     = 40
	leastText        = 5  // rows of a text above its figure
	leastLeaf        = 36 // columns of a text beside its figure
)

const tooSmall = "unpin needs 40 x 12 cells: make this window larger."

// A lessonPlaces is where the parts of a lesson stand.
type lessonPlaces struct {
	head          rect // title and progress
	figure, sheet rect // beside each other, or the same place
	both          bool // they stand beside each other
	step          rect // what the question belongs to
	talk          rect // sum, answer and reply
	help          rect
}

// talkRows is how many rows the talk has on a screen of h rows, for an equation of so many: that, the answer, and two or
// more for the sense that counts as positive and the reply. The panes above keep a few rows, so a very long equation may
// not stand whole.
func talkRows(h, equation int) int {
	talk, panes := 4, leastPanes
	switch {
	case h >= 45:
		talk = 8
	case h >= 30:
		talk = 7
	case h >= 22:
		talk = 5
	}
	if h < 18 {
		panes = leastPanesLow
	}
	return min(talk+max(equation-1, 0), max(h-3-panes, 4))
}

// placeLesson divides a screen for a lesson with an equation of so many rows in hand.
func placeLesson(w, h, equation int) lessonPlaces {
	talk := talkRows(h, equation)
	body := h - 3 - talk
	l := lessonPlaces{
		head: rect{0, 0, w, 1},
		step: rect{0, 1 + body, w, 1},
		talk: rect{1, 2 + body, w - 2, talk},
		help: rect{1, h - 1, w - 2, 1},
		both: w >= bothFrom,
	}
	main := rect{0, 1, w, body}
	l.figure, l.sheet = main, rect{1, 1, w - 2, body}
	if l.both {
		n := min(max(w*42/100, leastSheet), mostSheet)
		l.figure.w = w - n - 2
		l.sheet = rect{w - n, 1, n, body}
	}
	return l
}

// A figurePlaces is where the free body and a diagram stand, each with its title above it.
type figurePlaces struct {
	body, diagram rect
	both          bool // they stand beneath or beside each other; else each has the whole place
}

// placeFigures divides the place of a figure where there is room for two.
func placeFigures(in rect) figurePlaces {
	l := figurePlaces{body: in, diagram: in}
	switch {
	case in.h >= 2*leastDiagramRows:
		n := in.h / 2
		l.body.h = in.h - n
		l.diagram = rect{in.x, in.y + in.h - n, in.w, n}
		l.both = true
	case in.w >= 2*leastDiagramCols && in.h >= leastFigure:
		n := in.w / 2
		l.body.w = in.w - n
		l.diagram = rect{in.x + in.w - n, in.y, n, in.h}
		l.both = true
	}
	return l
}

// A chooserPlaces is where the parts of the chooser stand.
type chooserPlaces struct {
	head, find, list, details, note, help rect
	both                                  bool // list and details stand beside each other
}

// placeChooser divides a screen for the chooser.
func placeChooser(w, h int) chooserPlaces {
	note := 1 + (len(wording.Caution)-1)/max(w-2, 1)
	l := chooserPlaces{
		head: rect{1, 0, w - 2, 1},
		find: rect{1, 1, w - 2, 1},
		note: rect{1, h - 1 - note, w - 2, note},
		help: rect{1, h - 1, w - 2, 1},
		both: w >= detailsFrom,
	}
	body := rect{1, 3, w - 2, h - 4 - note}
	l.list, l.details = body, body
	if l.both {
		n := min(max(w*42/100, w-2-2*leastDetails), 62)
		l.list.w = n
		l.details = rect{n + 4, 3, w - n - 5, body.h}
	}
	return l
}

// A readerPlaces is where the parts of a reader stand: a text, and perhaps a figure beside or beneath it.
type readerPlaces struct{ head, body, figure rect }

// placeReader divides a screen for a text or a figure alone.
func placeReader(w, h int) readerPlaces {
	return readerPlaces{head: rect{1, 0, w - 2, 1}, body: rect{1, 1, w - 2, h - 2}}
}

// placeLeaf lists the ways to divide a screen for a text with a figure, the best first; rows tells how many rows the text
// has in a width. Beneath the text the figure has what that leaves, or of a long text a part.
func placeLeaf(w, h int, rows func(w int) int) []readerPlaces {
	beneath, beside := placeReader(w, h), placeReader(w, h)
	text := min(rows(beneath.body.w), max(beneath.body.h-leastFigure-1, leastText))
	beneath.figure = rect{0, 1 + text + 1, w, beneath.body.h - text - 1}
	beneath.body.h = text

	n := min(max(w*42/100, leastLeaf), mostSheet)
	beside.figure = rect{n + 3, 1, w - n - 4, h - 2}
	beside.body.w = n
	switch {
	case w >= bothFrom:
		return []readerPlaces{beside, beneath}
	case w >= detailsFrom:
		return []readerPlaces{beneath, beside}
	}
	return []readerPlaces{beneath}
}
