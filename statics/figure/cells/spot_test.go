package cells

import (
	"testing"

	"pgregory.net/rapid"
)

// cellsOf lists the cells of an area, one by one.
func cellsOf(a area) map[[2]int]bool {
	all := map[[2]int]bool{}
	for c := a.c0; c <= a.c1; c++ {
		for r := a.r0; r <= a.r1; r++ {
			all[[2]int{c, r}] = true
		}
	}
	return all
}

func drawArea(t *rapid.T, name string) area {
	c, r := rapid.IntRange(-5, 5).Draw(t, name+" c"), rapid.IntRange(-5, 5).Draw(t, name+" r")
	return area{c, r, c + rapid.IntRange(0, 5).Draw(t, name+" wide"), r + rapid.IntRange(0, 5).Draw(t, name+" tall")}
}

// TestArea holds what areas say of each other to their cells, counted.
func TestArea(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawArea(t, "a"), drawArea(t, "b")
		inA, inB := cellsOf(a), cellsOf(b)
		inside := true
		for cell := range inB {
			inside = inside && inA[cell]
		}
		if got := a.contains(b); got != inside {
			t.Errorf("%v contains %v: %v", a, b, got)
		}
		if a.width()*a.height() != len(inA) {
			t.Errorf("%v is %d by %d, and has %d cells", a, a.width(), a.height(), len(inA))
		}
		both := a.with(b)
		if !both.contains(a) || !both.contains(b) || both.with(a) != both || emptyArea.with(a) != a {
			t.Errorf("%v with %v is %v", a, b, both)
		}
		if both.c0 != a.c0 && both.c0 != b.c0 || both.c1 != a.c1 && both.c1 != b.c1 ||
			both.r0 != a.r0 && both.r0 != b.r0 || both.r1 != a.r1 && both.r1 != b.r1 {
			t.Errorf("%v with %v is larger than need be: %v", a, b, both)
		}
		columns, rows := a.gap(b)
		if want := both.width() - a.width() - b.width(); columns != want && want >= 0 || columns >= 0 && want < 0 {
			t.Errorf("%v and %v: %d columns between them, want %d", a, b, columns, want)
		}
		if want := both.height() - a.height() - b.height(); rows != want && want >= 0 || rows >= 0 && want < 0 {
			t.Errorf("%v and %v: %d rows between them, want %d", a, b, rows, want)
		}
	})
}
