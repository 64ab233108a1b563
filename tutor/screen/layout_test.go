package screen

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
)

// TestTalkRows holds how many rows the question has on screens of some heights, for equations of one row and of more.
func TestTalkRows(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ h, equation, want int }{
		{12, 0, 4}, {12, 1, 4}, {12, 2, 5}, {12, 5, 5}, // the panes keep four rows
		{18, 1, 4}, {18, 3, 6}, {18, 9, 7}, // and here eight
		{22, 1, 5}, {24, 1, 5}, {24, 3, 7}, {24, 20, 13},
		{30, 1, 7}, {30, 2, 8}, {45, 0, 8}, {45, 4, 11}, {60, 1, 8},
	} {
		if got := talkRows(c.h, c.equation); got != c.want {
			t.Errorf("%d rows, equation of %d: talk has %d, want %d", c.h, c.equation, got, c.want)
		}
	}
}

// picture draws places as a picture, one letter a place, a dot where nothing is.
func pictureOf(w, h int, places map[rune]rect) string {
	rows := make([][]rune, h)
	for y := range rows {
		rows[y] = slices.Repeat([]rune{'.'}, w)
	}
	for name, r := range places {
		for y := r.y; y < r.y+r.h && y < h; y++ {
			for x := r.x; x < r.x+r.w && x < w; x++ {
				rows[y][x] = name
			}
		}
	}
	var b strings.Builder
	for _, row := range rows {
		fmt.Fprintln(&b, strings.TrimRight(string(row), "."))
	}
	return strings.Trim(b.String(), "\n")
}

// TestPlacesOfTheLesson draws where the parts of a lesson stand, on a screen of one place and of two.
func TestPlacesOfTheLesson(t *testing.T) {
	t.Parallel()
	draw := func(w, h, equation int) string {
		l := placeLesson(w, h, equation)
		places := map[rune]rect{'H': l.head, 'F': l.figure, 's': l.step, 'T': l.talk, 'k': l.help}
		if l.both {
			places['S'] = l.sheet
		}
		return pictureOf(w, h, places)
	}
	row := func(letters string) string { return letters }
	rep := strings.Repeat
	want := strings.Join([]string{
		rep("H", 40), rep("F", 40), rep("F", 40), rep("F", 40), rep("F", 40), rep("s", 40),
		"." + rep("T", 38), "." + rep("T", 38), "." + rep("T", 38), "." + rep("T", 38), "." + rep("T", 38), row("." + rep("k", 38)),
	}, "\n")
	if got := draw(40, 12, 3); got != want {
		t.Errorf("40 x 12:\n%s\nwant\n%s", got, want)
	}
	body := rep("F", 54) + ".." + rep("S", 44)
	lines := strings.Split(draw(100, 24, 1), "\n")
	if lines[0] != rep("H", 100) || lines[1] != body || lines[16] != body || lines[17] != rep("s", 100) || lines[18] != "."+rep("T", 98) {
		t.Errorf("100 x 24:\n%s", strings.Join(lines, "\n"))
	}
}

// TestPlacesStayInside holds at every size that places lie on the screen, and that those of one view do not overlap.
func TestPlacesStayInside(t *testing.T) {
	t.Parallel()
	for w := leastWidth; w <= 210; w += 3 {
		for h := leastHeight; h <= 70; h++ {
			for _, equation := range []int{0, 1, 4, 30} {
				l := placeLesson(w, h, equation)
				all := []rect{l.head, l.figure, l.step, l.talk, l.help}
				if l.both {
					all = append(all, l.sheet)
				}
				checkPlaces(t, fmt.Sprintf("lesson at %d x %d", w, h), w, h, all)
				if l.figure.h < leastPanesLow || h >= 18 && l.figure.h < leastPanes {
					t.Errorf("at %d x %d the figure has %d rows", w, h, l.figure.h)
				}
				f := placeFigures(l.figure)
				if f.both {
					checkPlaces(t, "figures", w, h, []rect{f.body, f.diagram})
				}
			}
			c := placeChooser(w, h)
			all := []rect{c.head, c.find, c.list, c.note, c.help}
			if c.both {
				all = append(all, c.details)
			}
			checkPlaces(t, fmt.Sprintf("chooser at %d x %d", w, h), w, h, all)
			for _, rows := range []int{1, 8, 50} {
				for _, l := range placeLeaf(w, h, func(int) int { return rows }) {
					if l.figure.h > 0 {
						checkPlaces(t, fmt.Sprintf("leaf at %d x %d", w, h), w, h, []rect{l.head, l.body, l.figure})
					}
				}
			}
		}
	}
}

// checkPlaces reports places that leave a screen or overlap.
func checkPlaces(t *testing.T, what string, w, h int, all []rect) {
	t.Helper()
	for i, r := range all {
		if r.x < 0 || r.y < 0 || r.w < 1 || r.h < 1 || r.x+r.w > w || r.y+r.h > h {
			t.Errorf("%s: place %d is %+v", what, i, r)
		}
		for k, s := range all[:i] {
			if r.x < s.x+s.w && s.x < r.x+r.w && r.y < s.y+s.h && s.y < r.y+r.h {
				t.Errorf("%s: places %d and %d overlap: %+v, %+v", what, k, i, s, r)
			}
		}
	}
}

// TestReportedSizes holds that any size a terminal may report is drawn, in no more cells than there is a use for.
func TestReportedSizes(t *testing.T) {
	t.Parallel()
	m := atChooser(Options{Entries: fromShelf})
	for _, s := range [][2]int{{65535, 65535}, {-1, 24}, {80, -7}, {1 << 30, 30}} {
		m.Update(tea.WindowSizeMsg{Width: s[0], Height: s[1]})
		if m.w < 0 || m.h < 0 || m.w > mostWidth || m.h > mostHeight {
			t.Errorf("%v is drawn as %d x %d", s, m.w, m.h)
		}
		m.View()
	}
}
