package screen

import (
	"fmt"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/tutor"
)

// Every exercise is played at every size, by wrong answers, hints, and what tell says: each screen has exactly the size of its terminal,
// and the question stands on it.
func TestDrillsAtEverySize(t *testing.T) {
	t.Parallel()
	for i, name := range librarytest.Names() {
		at := [][2]int{{60, 18}, {80, 24}, {100, 30}, {140, 45}, {40, 12}}[i%5]
		p, _ := problems.Library(name)
		d, err := tutor.FindTheMistake(p, "", uint64(i))
		if err != nil {
			t.Fatal(err)
		}
		playDrill(t, fmt.Sprint(name, at), New(Options{Drill: d, ASCII: i%2 == 0}), at)
		if d, err = tutor.Sketch(p, uint64(i)); err != nil {
			t.Fatal(err)
		}
		playDrill(t, fmt.Sprint(name, at, " sketched"), New(Options{Drill: d, ASCII: i%2 == 0}), at)
	}
}

// playDrill plays an exercise to its end.
func playDrill(t *testing.T, name string, m *Model, at [2]int) {
	t.Helper()
	size(m, at[0], at[1])
	check := func(what string) {
		if fault := checkView(m.View(), at[0], at[1], m.o.ASCII); fault != "" {
			t.Errorf("%s, %s: %s", name, what, fault)
		}
	}
	for n := 0; !m.drill.done() && n < 40; n++ {
		check("asked")
		press(m, "tab", "ctrl+t")
		check("hinted")
		press(m, "tab", "7", "7", "enter")
		check("answered")
		m.drill.answerLine.take()
		press(m, "t", "e", "l", "l", "enter", "?")
		check("help")
		press(m, "esc", "pgdown")
	}
	if !m.drill.done() {
		t.Errorf("%s comes to no end", name)
	}
	check("done")
}
