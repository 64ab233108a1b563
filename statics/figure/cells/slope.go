package cells

import (
	"math"
	"strings"

	"unpin/statics/figure"
)

// Slope triangles in characters: how far one may stand from what slopes, in cell widths, and by how much its long side may be off
// the true slope, as other lengths are.
const (
	slopeReach = 4.0
	slopeOff   = 0.12
)

// slopeSizes are the rows of a triangle's upright leg, as they are tried, with the least and most columns of the level one.
var slopeSizes = [...]struct{ rows, least, most int }{{2, 2, 6}, {1, 3, 5}, {3, 2, 6}}

// A slopeTriangle is a small right triangle with the two numbers at its legs, by its upper left cell.
type slopeTriangle struct {
	figure.Slope
	rises      bool // from left to right, and so its right angle is on the right
	cols, rows int  // of its legs, without the corner
}

// newTriangle is the triangle of a slope along a direction; false where none so small has that slope.
func newTriangle(s figure.Slope, along figure.Direction) (slopeTriangle, bool) {
	if s.IsZero() || along.Y == 0 {
		return slopeTriangle{}, false
	}
	for _, k := range slopeSizes {
		want := 2 * float64(k.rows) * math.Abs(along.X/along.Y)
		cols := int(math.Round(want))
		if cols >= k.least && cols <= k.most && math.Abs(float64(cols)/want-1) <= slopeOff {
			return slopeTriangle{s, along.X*along.Y > 0, cols, k.rows}, true
		}
	}
	return slopeTriangle{}, false
}

// block is what a triangle with its numbers takes up from a cell on.
func (t slopeTriangle) block(c, r int) area {
	return area{c, r, c + t.cols + len(t.Up), r + t.rows + 1}
}

// slopes draws a small triangle beside each inclined arrow and support, where there is room when all labels have their places, and
// takes the slope out of its label.
func (l *lettering) slopes(window area) {
	for i := range l.requests {
		q := &l.requests[i]
		t, ok := newTriangle(q.slope, q.along)
		if !ok || q.settled == 0 {
			continue
		}
		label, ok := l.shortened(q)
		if !ok {
			continue
		}
		if at, ok := l.roomFor(t, q, window); ok {
			if label.Text != q.text {
				l.shorten(q, label)
			}
			l.triangle(t, q, at.c0, at.r0)
		}
	}
}

// shortened is a label without its slope, at that end of its place which is nearer to what it belongs to.
func (l *lettering) shortened(q *request) (Label, bool) {
	k := l.placed[q.settled-1]
	old := k.area()
	k.Text = strings.Replace(k.Text, " "+q.slope.String(), "", 1)
	less := old.width() - k.area().width()
	if less == 0 {
		return k, true
	}
	if right := k; nearness(q.near, area{old.c0 + less, old.r0, old.c1, old.r1}) < nearness(q.near, k.area()) {
		right.Col += less
		k = right
	}
	return k, l.isNearest(*q, k.area())
}

// shorten writes a label that is shorter in place of the one that stands there.
func (l *lettering) shorten(q *request, k Label) {
	old := l.placed[q.settled-1].area()
	for c := old.c0; c <= old.c1; c++ {
		l.wipe(c, old.r0)
	}
	l.write(k.Text, k.Col, k.Row, k.Look)
	l.placed[q.settled-1] = k
	l.placed = l.placed[:len(l.placed)-1]
	at := k.area()
	d := &l.drawn[q.noted-1]
	d.From, d.To, d.Text = positionOf(at.c0, at.r0), positionOf(at.c1, at.r1), k.Text
}

// roomFor is the nearest place for a triangle beside what slopes, with blanks all around it, and no nearer to another arrow.
func (l *lettering) roomFor(t slopeTriangle, q *request, window area) (best area, ok bool) {
	near := figure.Drawn{From: positionOf(q.near.c0, q.near.r0), To: positionOf(q.near.c1, q.near.r1)}
	if q.arrow > 0 {
		near = l.drawn[q.arrow-1]
	}
	middle := figure.Position{X: (near.From.X + near.To.X) / 2, Y: (near.From.Y + near.To.Y) / 2}
	least := math.Inf(1)
	size := t.block(0, 0)
	for r := max(window.r0, int(middle.Y)-8); r+size.r1 <= min(window.r1, int(middle.Y)+8); r++ {
		for c := max(window.c0, int(middle.X)-16); c+size.c1 <= min(window.c1, int(middle.X)+16); c++ {
			at := t.block(c, r)
			from, to := positionOf(at.c0, at.r0), positionOf(at.c1, at.r1)
			far := near.FromBox(from, to, 2)
			cost := far + 0.2*math.Hypot(float64(at.c0+at.c1)/2-middle.X, float64(at.r0+at.r1)-2*middle.Y)
			if far <= slopeReach && cost < least && l.blank(at) && l.nearestOf(from, to, far) {
				best, least = at, cost
			}
		}
	}
	return best, !math.IsInf(least, 1)
}

// blank reports whether nothing stands in a block, nor right beside it.
func (l *lettering) blank(at area) bool {
	for r := at.r0 - 1; r <= at.r1+1; r++ {
		for c := at.c0 - 1; c <= at.c1+1; c++ {
			if !l.open(c, r) {
				return false
			}
		}
	}
	return true
}

// nearestOf reports whether no arrow is nearer to a block than that.
func (l *lettering) nearestOf(from, to figure.Position, far float64) bool {
	for i := range l.drawn {
		if d := &l.drawn[i]; d.Kind == figure.DrawnArrow && d.FromBox(from, to, 2) < far {
			return false
		}
	}
	return true
}

// triangle draws a triangle with its numbers.
func (l *lettering) triangle(t slopeTriangle, q *request, c, r int) {
	look := figure.Look{Role: figure.DimensionMark, Emphasis: q.look.Emphasis}
	first, leg, corner, number := c, c+t.cols, west, c+t.cols+1
	if !t.rises {
		first, leg, corner, number = c+len(t.Up)+1, c+len(t.Up), east, c
	}
	foot := r + t.rows
	for k := r; k < foot; k++ {
		l.arm(leg, k, north, light, look)
		l.arm(leg, k, south, light, look)
	}
	l.arm(leg, foot, north, light, look)
	l.arm(leg, foot, corner, light, look)
	for k := first; k < first+t.cols; k++ {
		l.arm(k, foot, east, light, look)
		l.arm(k, foot, west, light, look)
	}
	const inside = 0.4 // of a cell from its middle
	a := spot{float64(first) - inside, float64(foot-1) + inside}
	b := spot{float64(first+t.cols-1) + inside, float64(r) - inside}
	if !t.rises {
		a.r, b.r = b.r, a.r
	}
	l.slope(a, b, 1, false, look)
	l.write(t.Up, number, r+t.rows/2, look)
	l.write(t.Across, first+(t.cols-len(t.Across))/2, foot+1, look)
	at := t.block(c, r)
	l.note(figure.Drawn{Kind: figure.DrawnLabel, From: positionOf(at.c0, at.r0), To: positionOf(at.c1, at.r1), Owner: q.arrow - 1, Text: "slope " + t.String()})
}
