package cells

import (
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

// ask takes a request for a label, unless this much detail leaves it out.
func (p *painter) ask(q request) {
	if q.text != "" {
		p.requests = append(p.requests, q)
	}
}

// wish widens what is used to hold each label on the side of its thing where that takes least, so that margins come
// from the labels themselves.
func (p *painter) wish() {
	for _, q := range p.requests {
		if !p.shows(q) {
			continue
		}
		n := len([]rune(q.text))
		best, least := emptyArea, 1<<30
		for _, b := range q.beside(n) {
			if q.side != 0 && q.side&q.on(b) == 0 {
				continue
			}
			grown := p.used.with(b)
			if cost := grown.width() - p.used.width() + 3*(grown.height()-p.used.height()) + p.hindrance(b); cost < least {
				best, least = b, cost
			}
		}
		p.used = p.used.with(best)
	}
}

// hindrance is what it costs that a block is not free, or touches something.
func (p *painter) hindrance(at area) int {
	if !p.free(at) {
		return 40
	}
	if p.crowding(at) > 0 {
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

// shows reports whether this much detail draws a label of that rank in the figure.
func (p *painter) shows(q request) bool {
	switch q.rank {
	case figure.RankName:
		return p.detail.names
	case figure.RankValue, figure.RankNote:
		return p.detail.values && (p.detail.longest == 0 || len([]rune(q.text)) <= p.detail.longest)
	}
	return true
}
