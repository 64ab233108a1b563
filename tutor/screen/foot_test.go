package screen

import (
	"strings"
	"testing"
)

// TestFitWords picks keys for widths: in their order, those that the screen tells elsewhere last.
func TestFitWords(t *testing.T) {
	t.Parallel()
	all := []keyWord{{"enter", "answer", true}, {"tab", "sheet", false}, {"ctrl+t", "hint", false}, {"?", "help", false}}
	for _, c := range []struct {
		w    int
		want string
	}{
		{0, ""}, {8, "?"}, {9, "tab"}, {17, "tab ?"}, {22, "tab ctrl+t"}, {30, "tab ctrl+t ?"}, {43, "tab ctrl+t ?"}, {44, "enter tab ctrl+t ?"},
	} {
		var keys []string
		for _, k := range fitWords(all, c.w, 2) {
			keys = append(keys, k.key)
		}
		if got := strings.Join(keys, " "); got != c.want {
			t.Errorf("in %d cells %q, want %q", c.w, got, c.want)
		}
	}
}

// TestFootAtEightyColumns holds that the keys that matter are told at 80 columns, and at 60.
func TestFootAtEightyColumns(t *testing.T) {
	t.Parallel()
	matter := []string{"tab sheet", "ctrl+t hint", "ctrl+x task", "ctrl+f figure", "? help", "esc back"}
	for _, s := range []struct{ w, h, told int }{{80, 24, 6}, {60, 18, 5}} {
		m := inLesson(t, "riding-hall", 1)
		size(m, s.w, s.h)
		press(m, "7", "enter")
		foot := bare(m.View())
		foot = foot[strings.LastIndexByte(foot, '\n')+1:]
		for _, want := range matter[:s.told] {
			if !strings.Contains(foot, want) {
				t.Errorf("at %d columns %q is not told: %s", s.w, want, foot)
			}
		}
	}
}
