package cells

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/figure"
)

// TestBoxGlyphs names some glyphs by their arms, as the Unicode charts name them: U+2533 heavy down and horizontal,
// U+2542 vertical heavy and horizontal light, U+2518 light up and left. Turning the arms a quarter turns the glyph.
func TestBoxGlyphs(t *testing.T) {
	for _, c := range []struct {
		arms [4]weight // north, east, south, west
		want rune
	}{
		{[4]weight{}, ' '},
		{[4]weight{0, 2, 2, 2}, '┳'},
		{[4]weight{2, 1, 2, 1}, '╂'},
		{[4]weight{1, 0, 0, 1}, '┘'},
		{[4]weight{0, 1, 0, 1}, '─'},
		{[4]weight{2, 0, 2, 0}, '┃'},
		{[4]weight{0, 2, 2, 0}, '┏'},
	} {
		if got := boxGlyph(c.arms); got != c.want {
			t.Errorf("arms %v give %q, not %q", c.arms, got, c.want)
		}
	}
	seen := slices.Clone(box)
	slices.Sort(seen)
	if n := len(slices.Compact(seen)); n != 81 {
		t.Errorf("%d different glyphs, not 81", n)
	}
}

// TestTwins: every mark has a stand-in in ASCII.
func TestTwins(t *testing.T) {
	for r, twin := range asciiTwin {
		if twin >= 0x7f || twin < 0x20 {
			t.Errorf("%q stands for %q", twin, r)
		}
	}
	for _, v := range []figure.Direction{{X: 1, Y: 0}, {X: -1, Y: 0}, {X: 0, Y: 1}, {X: 0, Y: -1}, {X: 0.7, Y: 0.7}, {X: -0.7, Y: 0.7}, {X: 0.7, Y: -0.7}, {X: -0.7, Y: -0.7}} {
		for _, open := range []bool{false, true} {
			if r := figure.Head(v, open); toASCII(r) == '?' {
				t.Errorf("the head %q has no twin", r)
			}
		}
	}
}

// TestStrokesJoin draws a knee, a tee and a crossing, and finds their glyphs formed by themselves.
func TestStrokesJoin(t *testing.T) {
	v := newCanvas(9, 5, nil)
	look := figure.Look{Role: figure.MemberLine}
	v.line(1, 1, 7, 1, heavy, look)
	v.line(1, 1, 1, 3, heavy, look)
	v.line(4, 0, 4, 3, heavy, look)
	v.line(7, 1, 7, 3, heavy, look)
	for _, c := range []struct {
		c, r int
		want rune
	}{{1, 1, '┏'}, {4, 1, '╋'}, {7, 1, '┓'}, {2, 1, '━'}, {1, 2, '┃'}, {1, 3, '┃'}} {
		if got := v.at(c.c, c.r).glyph(false); got != c.want {
			t.Errorf("%q at %d, %d, not %q", got, c.c, c.r, c.want)
		}
	}
}

// TestLoadsSpareMembers: a load never covers a member.
func TestLoadsSpareMembers(t *testing.T) {
	v := newCanvas(5, 5, nil)
	v.line(0, 2, 4, 2, heavy, figure.Look{Role: figure.MemberLine})
	v.line(2, 0, 2, 4, light, figure.Look{Role: figure.LoadMark})
	v.put(1, 2, '▼', figure.Look{Role: figure.LoadMark})
	for c := range 5 {
		if k := v.at(c, 2); k.look.Role != figure.MemberLine {
			t.Errorf("cell %d holds role %d", c, k.look.Role)
		}
	}
}

// TestSlopeEnds: a sloping stroke reaches the cells of both its ends, whichever way it runs.
func TestSlopeEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := func(label string) spot {
			return spot{float64(rapid.IntRange(1, 30).Draw(t, label)), float64(rapid.IntRange(1, 20).Draw(t, label))}
		}
		a, b := at("a"), at("b")
		if a == b {
			return
		}
		v := newCanvas(32, 22, nil)
		v.slope(a, b, 2, false, figure.Look{Role: figure.MemberLine})
		for _, end := range []spot{a, b} {
			if c, r := end.cell(); v.at(c, r).dots == 0 {
				t.Fatalf("from %v to %v: no dot at %v", a, b, end)
			}
		}
	})
}
