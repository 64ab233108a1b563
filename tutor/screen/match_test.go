package screen

import (
	"fmt"
	"strings"
	"testing"

	"unpin/problems"
)

// TestFoundInOrder holds that titles come before texts, each in the order of the list.
func TestFoundInOrder(t *testing.T) {
	t.Parallel()
	m := atChooser(Options{Entries: fromShelf})
	m.chooser.filter.insert([]rune("h"))
	var names []string
	for _, e := range m.chooser.found() {
		names = append(names, e.Name)
	}
	got := strings.Join(names, " ")
	if !strings.HasPrefix(got, "mill-bridge riding-hall hillside-garage stable-hoist ") || strings.Count(got, "hall") != 1 {
		t.Errorf("h finds %s", got)
	}
}

// TestShownOf: what is typed narrows the list by words, grade and skill, and one line says how many of all are shown; esc shows
// all again.
func TestShownOf(t *testing.T) {
	t.Parallel()
	for _, wide := range [][2]int{{80, 24}, {60, 18}} {
		m := atChooser(Options{Entries: fromShelf})
		size(m, wide[0], wide[1])
		all := len(m.chooser.entries)
		for typed, want := range map[string]int{
			"":              all,
			"grade 3":       byHand(m, func(p *problems.Problem) bool { return p.Grade == 3 }),
			"skill couple":  byHand(m, func(p *problems.Problem) bool { return strings.Contains(strings.Join(p.Skills, " "), "couple") }),
			"bridge":        byHand(m, func(p *problems.Problem) bool { return strings.Contains(strings.ToLower(p.Title+p.Text), "bridge") }),
			"no such thing": 0,
		} {
			m.chooser.filter.take()
			m.chooser.filter.insert([]rune(typed))
			m.chooser.retyped()
			says := fmt.Sprintf("%d of %d shown", want, all)
			if typed == "" {
				says = fmt.Sprintf("problem 1 of %d", all)
			}
			if view := m.View(); !strings.Contains(view, says) {
				t.Errorf("%q at %v: %q is missing in\n%s", typed, wide, says, view)
			}
		}
		m.chooser.clear()
		if n := len(m.chooser.found()); n != all {
			t.Errorf("after esc %d of %d are shown", n, all)
		}
	}
}

func byHand(m *Model, has func(*problems.Problem) bool) (n int) {
	for _, e := range m.chooser.entries {
		if e.Problem != nil && has(e.Problem) {
			n++
		}
	}
	return n
}
