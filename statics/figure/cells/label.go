package cells

import (
	"slices"

	"unpin/statics/figure"
)

// A request is a label that wants a place near what it belongs to.
type request struct {
	text string
	near area // what it belongs to
	c, r int  // the cell of that to which it should be nearest
	look figure.Look
	rank int
	side figure.Sides // where it may best stand; 0 is anywhere
	// the arrow it belongs to, counted from 1 in what was drawn; 0 for other things
	arrow int
	// of what is inclined, its slope, which the text tells, and the direction
	slope figure.Slope
	along figure.Direction
	// of a distributed load on what slopes its base, from which members may part a label
	base *figure.Drawn
	// where it stands, counted from 1: among the labels, and in what was drawn; 0 where it has no place
	settled, noted int
}

// on tells on which side of what it belongs to a block lies; at a corner that is above or below.
func (q request) on(at area) figure.Sides {
	switch {
	case at.r1 < q.near.r0:
		return figure.Above
	case at.r0 > q.near.r1:
		return figure.Below
	case at.c1 < q.near.c0:
		return figure.AtLeft
	}
	return figure.AtRight
}

// A lettering holds the labels of a canvas: those that ask for a place, and those that have one.
type lettering struct {
	*canvas
	detail   detail
	requests []request
	placed   []Label
	drawn    []figure.Drawn
}

// note keeps where something was drawn, in cells, and gives its index.
func (l *lettering) note(d figure.Drawn) int {
	l.drawn = append(l.drawn, d)
	return len(l.drawn) - 1
}

func positionOf(c, r int) figure.Position { return figure.Position{X: float64(c), Y: float64(r)} }

// ask takes a request for a label, unless this much detail leaves it out.
func (l *lettering) ask(q request) {
	if q.text != "" {
		l.requests = append(l.requests, q)
	}
}

// wish widens what is used to hold each label on the side of its thing where that takes least, so that margins come
// from the labels themselves.
func (l *lettering) wish() {
	for _, q := range l.requests {
		if !l.shows(q) {
			continue
		}
		n := len([]rune(q.text))
		near := slices.DeleteFunc(q.beside(n), func(b area) bool { return q.side != 0 && q.side&q.on(b) == 0 })
		best, cost := l.cheapest(near)
		if cost >= taken && q.base != nil {
			best, _ = l.cheapest(append(near, q.beyond(n)...))
		}
		l.used = l.used.with(best)
	}
}

// cheapest is the block that takes least more room.
func (l *lettering) cheapest(blocks []area) (best area, least int) {
	best, least = emptyArea, 1<<30
	for _, b := range blocks {
		grown := l.used.with(b)
		if cost := grown.width() - l.used.width() + 3*(grown.height()-l.used.height()) + l.hindrance(b); cost < least {
			best, least = b, cost
		}
	}
	return best, least
}

// taken is what it costs that a block is not free.
const taken = 40

// hindrance is what it costs that a block is not free, or touches something.
func (l *lettering) hindrance(at area) int {
	if !l.free(at) {
		return taken
	}
	if l.crowding(at) > 0 {
		return 8
	}
	return 0
}

// beside lists the blocks of n cells right beside, above and below what a label belongs to.
func (q request) beside(n int) []area {
	mid := q.c - n/2
	if q.rank == figure.RankName {
		return []area{
			{q.c + 1, q.r - 1, q.c + n, q.r - 1}, {q.c - n, q.r - 1, q.c - 1, q.r - 1},
			{q.c + 1, q.r + 1, q.c + n, q.r + 1}, {q.c - n, q.r + 1, q.c - 1, q.r + 1},
		}
	}
	return []area{
		{q.near.c1 + 2, q.r, q.near.c1 + 1 + n, q.r},
		{q.near.c0 - 1 - n, q.r, q.near.c0 - 2, q.r},
		{mid, q.near.r0 - 1, mid + n - 1, q.near.r0 - 1},
		{mid, q.near.r1 + 1, mid + n - 1, q.near.r1 + 1},
	}
}

// beyond lists the blocks of n cells on either side of the middle of a load's base, for where its own side has no room.
func (q request) beyond(n int) []area {
	c, r := spot{(q.base.From.X + q.base.To.X) / 2, (q.base.From.Y + q.base.To.Y) / 2}.cell()
	return []area{{c + 3, r, c + 2 + n, r}, {c - 2 - n, r, c - 3, r}}
}

// shows reports whether this much detail draws a label of that rank in the figure.
func (l *lettering) shows(q request) bool {
	switch q.rank {
	case figure.RankName:
		return l.detail.names
	case figure.RankValue, figure.RankNote:
		return l.detail.values && (l.detail.longest == 0 || len([]rune(q.text)) <= l.detail.longest)
	}
	return true
}
