package figure

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
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
	for _, v := range []Vector{{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {0.7, 0.7}, {-0.7, 0.7}, {0.7, -0.7}, {-0.7, -0.7}} {
		for _, open := range []bool{false, true} {
			if r := head(v, open); toASCII(r) == '?' {
				t.Errorf("the head %q has no twin", r)
			}
		}
	}
}

// TestStrokesJoin draws a knee, a tee and a crossing, and finds their glyphs formed by themselves.
func TestStrokesJoin(t *testing.T) {
	v := newCanvas(9, 5, nil)
	look := Look{Role: MemberLine}
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
	v.line(0, 2, 4, 2, heavy, Look{Role: MemberLine})
	v.line(2, 0, 2, 4, light, Look{Role: LoadMark})
	v.put(1, 2, '▼', Look{Role: LoadMark})
	for c := range 5 {
		if k := v.at(c, 2); k.look.Role != MemberLine {
			t.Errorf("cell %d holds role %d", c, k.look.Role)
		}
	}
}

// TestRulerIsTrue: whole cells for stations, in order, apart, and within half a cell of true to scale where nothing is
// held apart.
func TestRulerIsTrue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var list []station
		for range rapid.IntRange(1, 9).Draw(t, "n") {
			list = append(list, station{float64(rapid.IntRange(0, 400).Draw(t, "at")) / 8, 3})
		}
		list = distinct(list)
		scale := rapid.Float64Range(0.1, 9).Draw(t, "scale")
		r := newRuler(list, scale, 3)
		for i, s := range list {
			if got := r.place(s.at); got != float64(r.cells[i]) {
				t.Fatalf("station %v lies at %v, not %v", s.at, got, r.cells[i])
			}
			if i > 0 && r.cells[i]-r.cells[i-1] < 3 {
				t.Fatalf("stations %v and %v fall together", list[i-1].at, s.at)
			}
		}
		loose := newRuler(list, scale, 0)
		for i, s := range list {
			if off := math.Abs(float64(loose.cells[i]) - (s.at-list[0].at)*scale); off > 0.5+1e-9 {
				t.Fatalf("station %v is %v cells off", s.at, off)
			}
		}
	})
}

// TestSnap: equal bays come out equal where 12 % of the scale can buy it, and the scale never changes by more.
func TestSnap(t *testing.T) {
	bays := func(widths ...float64) []station {
		list, x := []station{{0, 4}}, 0.0
		for _, w := range widths {
			x += w
			list = append(list, station{x, 4})
		}
		return list
	}
	for _, c := range []struct {
		name  string
		list  []station
		scale float64
	}{
		{"two equal", bays(4, 4), 8.88},
		{"three equal", bays(5, 5, 5), 4.7},
		{"mirrored", bays(2, 3, 3, 2), 7.3},
		{"six equal", bays(6, 6, 6, 6, 6, 6), 1.62},
		{"one", bays(7), 9.99},
	} {
		r := snap(c.list, c.scale, 4)
		if uneven(r) != 0 {
			t.Errorf("%s: bays come out at %v", c.name, r.cells)
		}
		if r.scale > c.scale || r.scale < c.scale*(1-maxShrink) {
			t.Errorf("%s: the scale went from %v to %v", c.name, c.scale, r.scale)
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
		v.slope(a, b, 2, false, Look{Role: MemberLine})
		for _, end := range []spot{a, b} {
			if c, r := end.cell(); v.at(c, r).dots == 0 {
				t.Fatalf("from %v to %v: no dot at %v", a, b, end)
			}
		}
	})
}
