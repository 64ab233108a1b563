package cells

import (
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/figure"
)

// TestCheapestPlace: a label goes to the right of a thing, then to its left, then above, then below, as these are taken; its
// own side comes before all; with no place near, it is not settled.
func TestCheapestPlace(t *testing.T) {
	t.Parallel()
	look := figure.Look{Role: figure.LoadMark}
	for _, c := range []struct {
		name  string
		taken []area // what stands around the thing, which is the cell 20, 10
		side  figure.Sides
		want  area // of the label, three cells
		none  bool
	}{
		{name: "free", want: area{22, 10, 24, 10}},
		{name: "right taken", taken: []area{{22, 9, 30, 11}}, want: area{16, 10, 18, 10}},
		{name: "a blank before a label", taken: []area{{25, 10, 27, 10}}, want: area{16, 10, 18, 10}},
		{name: "level taken", taken: []area{{21, 10, 40, 10}, {0, 10, 19, 10}}, want: area{19, 9, 21, 9}},
		{name: "above as well", taken: []area{{21, 10, 40, 10}, {0, 10, 19, 10}, {0, 6, 40, 9}}, want: area{19, 11, 21, 11}},
		{name: "best above", side: figure.Above, want: area{19, 9, 21, 9}},
		{name: "best at left", side: figure.AtLeft, want: area{16, 10, 18, 10}},
		{name: "all taken", taken: []area{{0, 0, 40, 20}}, none: true},
	} {
		v := newCanvas(41, 21, nil)
		l := &lettering{canvas: v, detail: detail{values: true, names: true}}
		for _, k := range c.taken {
			for r := k.r0; r <= k.r1; r++ {
				for col := k.c0; col <= k.c1; col++ {
					v.at(col, r).holder = text
				}
			}
		}
		v.at(20, 10).holder = mark
		l.ask(request{text: "abc", near: area{20, 10, 20, 10}, c: 20, r: 10, look: look, rank: figure.RankValue, side: c.side})
		left := l.labels(area{0, 0, 40, 20})
		if c.none {
			if len(left) != 1 || len(l.placed) > 0 {
				t.Errorf("%s: placed %v", c.name, l.placed)
			}
			continue
		}
		if len(l.placed) != 1 || l.placed[0].area() != c.want {
			t.Errorf("%s: placed %v, not at %v", c.name, l.placed, c.want)
		}
	}
}

// TestLabelsKeepApart: labels of things that stand as near as may be never collide, cover nothing, and stay in the window;
// those that find no place are given back.
func TestLabelsKeepApart(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		const w, h = 30, 12
		v := newCanvas(w, h, nil)
		l := &lettering{canvas: v, detail: detail{values: true, names: true}}
		n := rapid.IntRange(1, 12).Draw(t, "things")
		for i := range n {
			c, r := rapid.IntRange(0, w-1).Draw(t, "column"), rapid.IntRange(0, h-1).Draw(t, "row")
			v.at(c, r).holder, v.at(c, r).char = mark, '*'
			l.ask(request{text: "label"[:1+i%5], near: area{c, r, c, r}, c: c, r: r, rank: figure.RankValue + i%3})
		}
		left := l.labels(area{0, 0, w - 1, h - 1})
		if len(left)+len(l.placed) != n {
			t.Fatalf("%d placed and %d left of %d", len(l.placed), len(left), n)
		}
		for i, a := range l.placed {
			if !(area{0, 0, w - 1, h - 1}).contains(a.area()) {
				t.Fatalf("%v lies outside", a)
			}
			for j, char := range a.Text {
				if v.at(a.Col+j, a.Row).char != char {
					t.Fatalf("%v is overwritten", a)
				}
			}
			for _, b := range l.placed[:i] {
				if cols, rows := a.area().gap(b.area()); cols < 1 && rows < 0 {
					t.Fatalf("%v and %v collide", a, b)
				}
			}
		}
	})
}
