package screen

import (
	"encoding/json"
	"flag"
	"fmt"
	"hash/fnv"
	"strings"
	"testing"
	"time"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
	"unpin/tutor"
)

var allFigures = flag.Bool("figures", false, "hold all figures of all lessons to the rules, not one in so many; some minutes")

// TestEveryFigure works every problem of the library to its end and holds each figure that the screen can show on the way, at
// four sizes, to the rules of figuretest: none is false, no head is overwritten, no label cut off, and where something is left
// out the screen says so. In a plain run each problem has one level, and of the questions some, both chosen by a hash; with
// -figures all are looked at, at every level.
func TestEveryFigure(t *testing.T) {
	t.Parallel()
	looked := map[string]int{}
	levels := []tutor.Level{tutor.Read, tutor.Values, tutor.Terms, tutor.Plan, tutor.Blank}
	for _, e := range Library() {
		chosen := levels
		if !*allFigures {
			chosen = levels[hashOf(e.Name)%5:][:1]
		}
		for _, level := range chosen {
			s := &sweep{T: t, seen: map[string]bool{}, looked: looked, name: e.Name + ", " + level.String()}
			s.lesson(inLesson(t, e.Name, level).course)
		}
	}
	t.Log("figures looked at, and of those where something has no room:", looked)
}

// A sweep looks at the figures of one lesson, at each once.
type sweep struct {
	*testing.T
	name   string
	seen   map[string]bool
	looked map[string]int // by size, and those that leave something out
}

// lesson works a lesson to its end and looks at the figures of each question that is chosen.
func (s *sweep) lesson(c *course) {
	one := 3
	if testing.Short() {
		one = 12
	}
	for n := 0; ; n++ {
		q, asking := c.l.Now()
		for _, size := range [][2]int{{60, 18}, {80, 24}, {100, 30}, {140, 45}} {
			if where := fmt.Sprintf("%s, %d [%s] at %d × %d", s.name, n, q.Name, size[0], size[1]); *allFigures || hashOf(where)%one == 0 {
				s.question(c, where, size[0], size[1])
			}
		}
		if !asking {
			return
		}
		if r := c.give(right(c.l), time.Time{}); r.Kind == tutor.Unread || r.Kind == tutor.Judged && !r.Verdict.Right() {
			s.Fatalf("%s, [%s]: %q is not right: %v", s.name, q.Name, right(c.l), r.Lines)
		}
	}
}

// question looks at the figures of a question: in the lesson that which fits, the frame as given and the step before; on the
// whole screen each.
func (s *sweep) question(c *course, where string, w, h int) {
	inPane := func(k tutor.Figure) {
		at := c.placeFigures(c.places(w, h))
		place := at.body
		if k == c.figures().Diagram() {
			place = at.diagram
		}
		s.figure(where+", "+c.figures().Word(k), c.figures().Draw(k), place.w, place.h-1)
	}
	inPane(c.figures().Fit())
	inPane(tutor.AsGiven)
	if c.figures().Has(tutor.ThisBody) { // stands for the sum where that has no room
		inPane(tutor.ThisBody)
	}
	if c.figures().Has(c.figures().Diagram()) {
		inPane(c.figures().Diagram())
	}
	if step := c.shows().StepInHand(); step > 0 {
		c.looked = step - 1
		inPane(tutor.ThisSum)
		c.looked = statics.None
	}
	body := placeReader(w, h).body
	for _, k := range append(c.figures().All(false), c.figures().OneByOne()...) {
		s.figure(where+", large, "+c.figures().Word(k), c.figures().Draw(k), body.w, body.h)
	}
}

// figure holds a figure to the rules, unless it was looked at before.
func (s *sweep) figure(where string, scene figure.Scene, w, h int) {
	data, err := json.Marshal(scene)
	if err != nil {
		s.Fatal(where, err)
	}
	key := fmt.Sprintf("%d %d %s", w, h, data)
	if s.seen[key] {
		return
	}
	s.seen[key] = true
	p := new(gallery).picture(scene, w, h, false)
	_, size, _ := strings.Cut(where, "] at ")
	size, _, _ = strings.Cut(size, ",")
	if s.looked[size]++; !p.whole() {
		s.looked[size+", not whole"]++
	}
	if fault := faultOf(p); fault != "" {
		s.Errorf("%s: %s\n%s", where, fault, p.grid.Text())
	}
}

// faultOf is what is wrong with a picture, or nothing. Where parts drawn apart have no room, nothing is drawn: they come one
// by one.
func faultOf(p *picture) string {
	g := p.grid
	if err := g.Check(); err != nil {
		return err.Error()
	}
	faults := append(figuretest.Cells.Violations(g.Drawn), figuretest.LostHeads(g.Drawn, func(col, row int) rune {
		if col < 0 || row < 0 || col >= g.Width || row >= g.Height {
			return ' '
		}
		return g.Row(row)[col].Rune
	})...)
	switch {
	case len(faults) > 0:
		return strings.Join(faults, "; ")
	case p.whole() || p.lacks() != "" || p.keyed():
		return ""
	}
	return fmt.Sprintf("clipped %v, left out %q, and it is not said", g.Clipped, g.Dropped)
}

// hashOf is a number that stays the same for a text.
func hashOf(text string) int {
	h := fnv.New32a()
	h.Write([]byte(text))
	return int(h.Sum32() >> 4)
}

// TestLeftOutIsSaid holds that the title of a figure says what has no room in it and which key shows it, and that a diagram
// whose signs have no room beneath has them above.
func TestLeftOutIsSaid(t *testing.T) {
	t.Parallel()
	m := inLesson(t, "riding-hall", tutor.Terms)
	size(m, 60, 18)
	press(m, "enter")
	if m.course.figure.whole() || !strings.Contains(bare(m.View()), "dimensions: ctrl+f") {
		t.Errorf("the figure is whole, or it is not said:\n%s", bare(m.View()))
	}
	m = inLesson(t, "jetty-deck", tutor.Values)
	size(m, 60, 18)
	press(m, "enter")
	toDiagrams(t, m, 0)
	if press(m, "tab"); !strings.Contains(bare(m.View()), "N in kN, + in tension") {
		t.Errorf("the signs of N are not told:\n%s", bare(m.View()))
	}
}
