package screen

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
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
	c  *panes
	st notation.Style
}

// style is how a lesson's problem wants its sums and numbers written.
func style(l *tutor.Lesson, ascii bool) notation.Style {
	return l.View().Style(ascii)
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
	l := w.c.l
	for _, s := range l.View().Kept() {
		w.add(nil)
		w.put(0, "Kept: "+bodyAndSum(l, s, w.st), titleInk)
		w.put(3, l.View().Words(w.st).Numbers(s, l.Known), plainInk)
	}
}

// step writes one step: free body and sum, the reason, the terms, and what came of it.
func (w writer) step(i int) {
	l := w.c.l
	step := l.View().Step(i)
	before := l.View().KnownBefore(i)
	isKnown := func(f int) bool { _, ok := before(f); return ok }
	w.put(0, stepTitle(l, i, w.st), titleInk)
	if !l.View().Own(i) {
		w.put(3, l.View().Words(w.st).Because(step, isKnown), noteInk)
	}
	for n, s := range step.Sums {
		if len(step.Sums) > 1 {
			w.put(3, fmt.Sprintf("(%d) %s", n+1, wording.Capital(bodyAndSum(l, s, w.st))), plainInk)
		}
		w.sum(i, n, before)
	}
	for _, f := range step.Gives {
		w.found(f)
	}
}

// sum writes one sum: its terms while they are asked for, then in symbols, then with values put in.
func (w writer) sum(i, n int, before func(int) (exact.Num, bool)) {
	l := w.c.l
	step := l.View().Step(i)
	s := step.Sums[n]
	if !w.terms(i, n) {
		return
	}
	a := l.View().Assembly()
	symbols, numbers := wording.New(a, w.st).Symbols(s), wording.New(a, w.st).Numbers(s, before)
	from := len(w.lines)
	w.put(3, symbols, plainInk)
	if q, asking := l.Now(); asking && q.Kind == tutor.ForceValue && q.Step == i {
		for k := range w.lines[from:] {
			w.lines[from+k] = lit(w.lines[from+k], q.Name)
		}
	}
	if numbers != symbols && !w.c.hiding() && (i < w.c.step() || l.View().LevelOf(i) == tutor.Read) {
		w.put(3, numbers, plainInk)
	}
	if step.Check && !w.c.hiding() {
		w.put(3, "The sum comes to 0: the check holds.", rightInk)
	}
}

// terms writes the terms of a sum that is built up term by term, with question marks for what is still asked and a mark
// before the one in hand, and reports whether the sum may be shown: all of it is settled, and no exam keeps it back.
func (w writer) terms(i, n int) bool {
	l := w.c.l
	whole := true
	for _, t := range termsAsked(l, i, n) {
		from := len(w.lines)
		w.put(3, t.text(w.st), map[bool]ink{true: askedInk, false: plainInk}[t.inHand])
		if t.inHand {
			w.lines[from][0].text = " ▸ "
		}
		whole = whole && t.whole
	}
	return whole && !w.c.hidesTerms(i)
}

// found writes a force that came out, in a box, or nothing while it is asked for.
func (w writer) found(f int) {
	l := w.c.l
	force := l.View().Assembly().Forces[f]
	n := questionOf(l, f)
	typed := ""
	if n >= 0 {
		typed, _, _, _ = l.Standing(n)
	}
	_, known := l.Known(f)
	switch {
	case known || n < 0 || l.Exam() && !w.c.hiding(): // n < 0: a worked step
		w.box(valueText(l, f, l.View().Value(f), w.st), w.remark(n, typed))
	case l.Exam() && typed != "":
		w.box(force.Name+": you typed "+typed, "")
	}
}

// remark is what is said beside a value: that it was told, or what was typed where that reads otherwise; after an exam,
// how it was judged.
func (w writer) remark(n int, typed string) string {
	if n < 0 {
		return ""
	}
	_, _, told, v := w.c.l.Standing(n)
	switch {
	case w.c.l.Exam() && typed == "":
		return "left open"
	case w.c.l.Exam() && v.Right():
		return v.String() + ": you typed " + typed
	case w.c.l.Exam():
		return "not right: you typed " + typed
	case told:
		return "told"
	case v != judging.Exact && typed != "":
		return "you typed " + typed
	}
	return ""
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
	l := w.c.l
	w.add(nil)
	w.memberTitle(m)
	at, _ := l.Position()
	for n, q := range l.Asked() {
		switch {
		case q.Member != m || n > at:
		case q.Kind == tutor.Reading:
			w.diagram(m)
		default:
			w.section(n, q)
		}
	}
}

func (w writer) memberTitle(m int) {
	l := w.c.l
	d, f := l.View().Diagrams()[m], &l.View().Assembly().Frame
	mem := f.Members[m]
	w.put(0, fmt.Sprintf("Member %s, distances from %s, length %s", mem.Name, f.Joints[mem.From].Name,
		w.st.WithUnit(d.Length, notation.Length)), titleInk)
	w.put(3, senseOfSections(l, m), noteInk)
}

// section writes one settled N, V or M.
func (w writer) section(n int, q tutor.Question) {
	l := w.c.l
	typed, settled, _, _ := l.Standing(n)
	switch {
	case !settled && !(l.Exam() && !w.c.hiding()):
	case w.c.hiding():
		w.put(3, q.Name+": you typed "+typed, plainInk)
	default:
		text := q.Name + " = " + w.st.Result(l.View().Shown(q), q.Dim)
		if q.Shape() {
			text = l.View().Answer(q)
		}
		if r := w.remark(n, typed); r != "" && !(r == "you typed "+typed && strings.Contains(text, " "+typed+" ")) {
			text += "  (" + r + ")"
		}
		w.put(3, text, plainInk)
	}
}

// diagram writes N, V and M at all critical points of a member.
func (w writer) diagram(m int) {
	d := w.c.l.View().Diagrams()[m]
	if d.Withheld {
		w.put(3, "This member lies on a closed ring, so equilibrium alone does not give its N, V and M.", plainInk)
		return
	}
	for _, s := range d.Stations() {
		side := [...]string{"", " before", " after"}[s.Side]
		w.put(3, fmt.Sprintf("at %s%s: N %s, V %s, M %s", w.st.WithUnit(s.At, notation.Length), side, w.st.Result(s.N, notation.Force),
			w.st.Result(w.st.Shear.Value(s.V), notation.Force), w.st.Result(s.M, notation.Moment)), plainInk)
	}
}
