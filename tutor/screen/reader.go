package screen

import (
	"fmt"

	"unpin/tutor"
)

// A reader is a text or a figure on the whole screen, opened over another view.
type reader struct {
	under  view // that it was opened over
	scroll int  // in lines from the top
	rows   int  // of text in sight
	title  string
	lines  []line
	places readerPlaces
	figure *picture // beside or beneath the text, or nil
	alone  bool     // of a text and a figure, the figure alone is shown
}

// fill puts a text in, of which so many rows are in sight, and keeps what is scrolled within its bounds.
func (r *reader) fill(title string, lines []line, rows int) {
	r.title, r.lines, r.rows = title, lines, rows
	r.scroll = max(min(r.scroll, len(lines)-rows), 0)
}

// scrolls reports whether there is more than is in sight.
func (r *reader) scrolls() bool { return len(r.lines) > r.rows }

// scrollBy moves by lines; fill brings it back into bounds.
func (r *reader) scrollBy(by int) { r.scroll = max(r.scroll, 0) + by }

// parted reports whether text and figure have no room together.
func (r *reader) parted() bool { return r.alone || r.figure == nil }

// swap changes between text and figure.
func (r *reader) swap() { r.alone = !r.alone }

// pages moves by whole screens.
func (r *reader) pages(by int) { r.scrollBy(by * r.rows) }

// put draws the title and the lines in sight, and tells which these are.
func (r *reader) put(p *page) {
	l := r.places
	r.figure.put(p, l.figure)
	p.line(l.head, 0, say(short(r.title, l.head.w), titleInk))
	from := min(r.scroll, len(r.lines))
	until := min(from+l.body.h, len(r.lines))
	p.lines(l.body, r.lines[from:until])
	if len(r.lines) > l.body.h {
		where := fmt.Sprintf(" lines %d to %d of %d", from+1, until, len(r.lines))
		p.put(p.w-columns(where)-1, 0, p.w, where, noteInk)
	}
}

// drawScenes draws the figures that there are at the right of the head, the one in sight in brackets, if there is room.
func (c *panes) drawScenes(p *page, in rect) {
	var all line
	n := 0
	for _, s := range c.figures().All(c.large >= tutor.OnePart || c.cramped) {
		text, k := "  "+c.figures().Word(s)+" ", noteInk
		if s == c.large {
			text, k = " ["+c.figures().Word(s)+"]", strongInk
		}
		all = append(all, span{text, k})
		n += columns(text)
	}
	if columns(c.largeTitle())+2+n <= in.w {
		p.line(rect{in.x + in.w - n, in.y, n, 1}, 0, all)
	}
}
