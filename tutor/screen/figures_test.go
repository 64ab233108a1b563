package screen

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"unpin/problems"
	"unpin/tutor"
)

// everyProblem is the library and the published cases.
func everyProblem(t *testing.T) []*problems.Problem {
	var all []*problems.Problem
	for _, e := range Library() {
		all = append(all, e.Problem)
	}
	data, err := os.ReadFile(filepath.Join("..", "..", "testdata", "cases", "published.json"))
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(err)
	}
	for _, c := range cases {
		p, err := problems.Read(c.ID, c.Problem)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, p)
	}
	return all
}

// TestFigures tells every answer of every problem of the library and of every published case, and looks at the figure of
// each question: no label may be cut off or run into another, in the place that it has in the lesson and on the whole
// screen, and none may be lost on the whole screen. The two take turns, and so do the figures that can be gone through.
func TestFigures(t *testing.T) {
	t.Parallel()
	sizes := [][2]int{{80, 24}, {100, 30}, {120, 40}}
	all := everyProblem(t)
	if testing.Short() {
		all = all[:len(Library())]
	}
	for i, p := range all {
		l, err := tutor.New(p, []tutor.Level{tutor.Values, tutor.Terms, tutor.Plan}[i%3], false)
		if err != nil {
			t.Fatal(err)
		}
		m := New(Options{Lesson: l})
		for n := 0; ; n++ {
			q, asking := l.Now()
			s := sizes[(i+n/8)%len(sizes)] // kept for a while, as on a screen
			size(m, s[0], s[1])
			if n%2 == 0 {
				checkPane(t, m, p.Name, q.Name)
			} else {
				checkLarge(t, m, p.Name, q.Name, n/2)
			}
			if !asking {
				break
			}
			press(m, "tell", "enter")
		}
	}
}

// checkPane looks at the figure in its place, and at the diagram beside it or in its stead.
func checkPane(t *testing.T, m *Model, problem, question string) {
	t.Helper()
	for range paneCount {
		for _, k := range []*picture{m.course.figure, m.course.diagram} {
			if k != nil {
				checkFigure(t, m, problem, question, k, false)
			}
		}
		press(m, "tab")
	}
	m.course.pane = figurePane
}

// checkLarge looks at one of the figures on the whole screen.
func checkLarge(t *testing.T, m *Model, problem, question string, n int) {
	t.Helper()
	press(m, "ctrl+f")
	list := m.course.figures().All(m.course.cramped)
	m.course.large = list[n%len(list)]
	m.arrange()
	checkFigure(t, m, problem, question, m.course.figure, true)
	press(m, "esc")
}

// checkFigure looks at a figure, of which all must be there if it is whole.
func checkFigure(t *testing.T, m *Model, problem, question string, k *picture, whole bool) {
	t.Helper()
	where := fmt.Sprintf("%s, %s, [%s] at %d × %d", problem, question, m.course.figures().Word(m.course.large), m.w, m.h)
	if err := k.grid.Check(); err != nil {
		t.Errorf("%s: %v\n%s", where, err, k.grid.Text())
	}
	if whole && !k.whole() {
		t.Errorf("%s: clipped %v, left out %v\n%s", where, k.grid.Clipped, k.grid.Dropped, k.grid.Text())
	}
}

// TestRepliesFit makes sure that what is said to an answer can be read at 80 × 24 without another key, over the library.
func TestRepliesFit(t *testing.T) {
	t.Parallel()
	for _, e := range Library() {
		m := inLesson(t, e.Name, tutor.Values)
		size(m, 80, 24)
		for {
			if _, asking := m.course.l.Now(); !asking {
				break
			}
			press(m, "7777", "enter")
			said := m.talk().said(78)
			l := m.course.places(80, 24)
			equation, sense := m.talk().question(l.talk)
			if room := l.talk.h - 1 - len(equation) - len(sense); len(said) > room {
				t.Errorf("%s: no room for %v", e.Name, said)
			}
			work(t, m, 1)
		}
	}
}
