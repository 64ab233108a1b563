package screen

import (
	"strings"
	"testing"

	"unpin/problems"
)

// TestMatch ranks one problem by what is typed to find it.
func TestMatch(t *testing.T) {
	t.Parallel()
	e := Entry{Name: "mill-bridge", Problem: &problems.Problem{Title: "Mill bridge with a hinge", Text: "A footbridge over a leat.", Grade: 2}}
	for _, c := range []struct {
		typed string
		want  match
	}{
		{"", inTitle}, {"b", inTitle}, {"bri", inTitle}, {"mill-b", inTitle}, {"hin", inTitle},
		{"f", inText}, {"leat", inText}, {"grade", inText}, {"bridge foot", inText}, {"2", inText},
		{"ridge", within}, {"bridge ridge", within}, {"tbri", within},
		{"i", noMatch}, {"dg", noMatch}, {"crane", noMatch}, {"bridge crane", noMatch},
	} {
		if got := matchOf(e, strings.Fields(c.typed)); got != c.want {
			t.Errorf("%q is %d, want %d", c.typed, got, c.want)
		}
	}
	if got := matchOf(Entry{Name: "broken.yaml", Fault: "no"}, []string{"bro"}); got != inTitle {
		t.Errorf("a file that cannot be used is found as %d", got)
	}
}

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
