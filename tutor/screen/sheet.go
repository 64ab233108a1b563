package screen

import (
	"fmt"

	"unpin/tutor"
)

// A sheet is what has been worked so far, as lines of one width.
type sheet struct {
	lines    []line
	starts   []int // the line at which each step begins
	width    int
	changes  int  // of the course when it was written
	spacious bool // values stand in boxes of three lines
}

// A writer writes a sheet.
type writer struct {
	*sheet
	c     *panes
	shows tutor.Display
}

func (w writer) add(lines ...line) { w.lines = append(w.lines, lines...) }

// put adds a text set in by some cells.
func (w writer) put(in int, text string, k ink) {
	in = min(in, w.width/3)
	for _, l := range folded(text, w.width-in, 2, k) {
		w.add(append(line{{fmt.Sprintf("%*s", in, ""), plainInk}}, l...))
	}
}

// kept writes the sums that the student has and cannot use yet.
func (w writer) kept() {
	for _, s := range w.shows.Kept() {
		w.add(nil)
		w.put(0, "Kept: "+s.Title, titleInk)
		w.put(3, s.Numbers, plainInk)
	}
}

// step writes one step: free body and sum, the reason, the terms, and what came of it.
func (w writer) step(i int) {
	step := w.shows.Step(i)
	w.put(0, step.Title, titleInk)
	if step.Because != "" {
		w.put(3, step.Because, noteInk)
	}
	for _, s := range step.Sums {
		w.sum(s)
	}
	for _, f := range step.Forces {
		if text, remark := w.shows.Found(f); text != "" {
			w.box(text, remark)
		}
	}
}

// sum writes one sum: its terms while they are asked for, with a mark before the one in hand, then in symbols, then with
// values put in.
func (w writer) sum(s tutor.ShownSum) {
	if s.Title != "" {
		w.put(3, s.Title, plainInk)
	}
	for _, t := range s.Terms {
		from := len(w.lines)
		w.put(3, t.Text(), map[bool]ink{true: askedInk, false: plainInk}[t.InHand])
		if t.InHand {
			w.lines[from][0].text = " ▸ "
		}
	}
	if s.Symbols != "" {
		from := len(w.lines)
		w.put(3, s.Symbols, plainInk)
		if s.Asked != "" {
			for k := range w.lines[from:] {
				w.lines[from+k] = lit(w.lines[from+k], s.Asked)
			}
		}
	}
	if s.Numbers != "" {
		w.put(3, s.Numbers, plainInk)
	}
	if s.Holds {
		w.put(3, "The sum comes to 0: the check holds.", rightInk)
	}
}

// box writes a value in a box, with a remark beside it.
func (w writer) box(text, remark string) {
	rows := fold(text, max(w.width-8, 8), 2)
	n := 0
	for _, r := range rows {
		n = max(n, columns(r))
	}
	edge := func(left, right string) line {
		bar := ""
		for range n + 2 {
			bar += "─"
		}
		return line{{"   ", plainInk}, {left + bar + right, valueInk}}
	}
	if w.spacious {
		w.add(edge("┌", "┐"))
	}
	for _, r := range rows {
		l := line{{"   ", plainInk}, {fmt.Sprintf("│ %s%*s │", r, n-columns(r), ""), valueInk}}
		if remark != "" && columns(remark)+n+9 <= w.width {
			l = append(l, span{"  " + remark, noteInk})
			remark = ""
		}
		w.add(l)
	}
	if w.spacious {
		w.add(edge("└", "┘"))
	}
	if remark != "" {
		w.put(3, remark, noteInk)
	}
}

// member writes what is known of N, V and M along a member.
func (w writer) member(m int) {
	w.add(nil)
	w.put(0, w.shows.MemberTitle(m), titleInk)
	w.put(3, w.shows.SenseOfSections(m), noteInk)
	at, _ := w.c.l.Position()
	for n, q := range w.c.l.Asked() {
		switch {
		case q.Member != m || n > at:
		case q.Kind == tutor.Reading:
			for _, text := range w.shows.Stations(m) {
				w.put(3, text, plainInk)
			}
		default:
			if text := w.shows.Section(n); text != "" {
				w.put(3, text, plainInk)
			}
		}
	}
}
