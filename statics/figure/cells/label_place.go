package cells

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// A Label is a label that stands in a grid.
type Label struct {
	Text     string
	Col, Row int
	figure.Look
}

func (l Label) area() area { return area{l.Col, l.Row, l.Col + len([]rune(l.Text)) - 1, l.Row} }

// How far from its thing a label may stand, in cells, and what that may cost before it goes into the key.
const (
	reachCols = 9
	reachRows = 3
	dear      = 12.0
)

// write sets text into the canvas and keeps a record of it.
func (l *lettering) write(s string, c, r int, look figure.Look) {
	i := 0
	for _, char := range s {
		k := l.at(c+i, r)
		*k = cell{holder: text, char: char, look: look}
		l.use(c+i, r)
		i++
	}
	l.placed = append(l.placed, Label{s, c, r, look})
}

// labels gives every label its place inside the window, in order of rank, and returns those that found none.
func (l *lettering) labels(window area) []request {
	slices.SortStableFunc(l.requests, func(a, b request) int { return a.rank - b.rank })
	var left []request
	for i, q := range l.requests {
		if !l.shows(q) || !l.settle(q, i, window) {
			left = append(left, q)
		}
	}
	return left
}

// settle writes a label at its cheapest free place, if there is one.
func (l *lettering) settle(q request, index int, window area) bool {
	n := len([]rune(q.text))
	best, least := area{}, dear
	rivals := l.rivals(q, index)
	for r := max(window.r0, q.near.r0-reachRows); r <= min(window.r1, q.near.r1+reachRows); r++ {
		for c := max(window.c0, q.near.c0-reachCols-n); c+n-1 <= min(window.c1, q.near.c1+reachCols+n); c++ {
			spot := area{c, r, c + n - 1, r}
			cost := q.distance(spot)
			if cost >= least || !l.free(spot) {
				continue
			}
			cost += l.crowding(spot) + mistaken(q, rivals, spot)
			if parted := l.parted(q, spot); parted > 0 && cost < dear {
				cost = min(cost+parted, dear-0.1) // such a place is better than none
			}
			if cost < least && l.isNearest(q, spot) { // the dearest question last
				best, least = spot, cost
			}
		}
	}
	if least == dear {
		return false
	}
	l.write(q.text, best.c0, best.r0, q.look)
	n = l.note(figure.Drawn{Kind: figure.DrawnLabel, From: positionOf(best.c0, best.r0), To: positionOf(best.c1, best.r1), Owner: q.arrow - 1, Text: q.text})
	if index >= 0 {
		l.requests[index].settled, l.requests[index].noted = len(l.placed), n+1
	}
	return true
}

// What it costs that the label of a distributed load stands beyond its own member, and beyond another.
const (
	beyondOwn   = 1.0
	beyondOther = 6.0
)

// parted is what a place costs for lying beyond members from the distributed load that the label belongs to.
func (l *lettering) parted(q request, at area) float64 {
	if q.base == nil {
		return 0
	}
	way := figure.Drawn{From: positionOf(q.c, q.r), To: positionOf(min(max(q.c, at.c0), at.c1), at.r0)}
	cost := 0.0
	for i := range l.drawn {
		d := &l.drawn[i]
		if d.Kind != figure.DrawnMember || d.Gap(way, 2) > 0 {
			continue
		}
		from, to := figure.Drawn{From: q.base.From, To: q.base.From}, figure.Drawn{From: q.base.To, To: q.base.To}
		if d.Gap(from, 2) < 1.5 && d.Gap(to, 2) < 1.5 {
			cost += beyondOwn
		} else {
			cost += beyondOther
		}
	}
	return cost
}

// isNearest reports whether a label at that place is as near to the arrow that it belongs to as to every other.
func (l *lettering) isNearest(q request, at area) bool {
	if q.rank == figure.RankNote {
		return l.staysAtPoint(q, at)
	}
	return q.arrow == 0 || figure.IsNearest(l.drawn, q.arrow-1, positionOf(at.c0, at.r0), positionOf(at.c1, at.r1), 2)
}

// staysAtPoint reports whether a note at that place is as near to the arrows of its own point as to those of others, for it says
// what they are on the other face; where no arrow is there, it may stand anywhere.
func (l *lettering) staysAtPoint(q request, at area) bool {
	own, other := math.Inf(1), math.Inf(1)
	for i := range l.drawn {
		d := &l.drawn[i]
		if d.Kind != figure.DrawnArrow {
			continue
		}
		far := d.FromBox(positionOf(at.c0, at.r0), positionOf(at.c1, at.r1), 2)
		if distance(d.At, positionOf(q.c, q.r)) < ownMember {
			own = min(own, far)
		} else {
			other = min(other, far)
		}
	}
	return own <= other || math.IsInf(own, 1)
}

// distance is what a place costs for lying away from what the label belongs to.
func (q request) distance(at area) float64 {
	cols, rows := q.near.gap(at)
	mid := float64(at.c0+at.c1)/2 - float64(q.c)
	if mid < 0 {
		mid = -mid
	}
	cost := 0.0
	switch {
	case rows < 0: // beside it
		if cols < 1 {
			return dear
		}
		cost = float64(cols-1) + 0.7*float64(abs(at.r0-q.r))
		if at.c1 < q.near.c0 {
			cost += 0.2
		}
	case cols < 0: // above or below it
		cost = 2.2*float64(rows) + 0.12*mid + 0.3
	default: // off its corner
		cost = 2.2*float64(rows) + float64(cols) + 0.5
		if q.rank == figure.RankName {
			cost -= 0.4
		}
	}
	if at.r0 > q.r {
		cost += 0.15
	}
	if q.side != 0 && q.side&q.on(at) == 0 {
		cost += 1.5
	}
	return cost
}

// rivals are, of all else that has a label, the blocks that may lie as near to some place within reach as what the label
// belongs to.
func (l *lettering) rivals(q request, index int) []area {
	n := len([]rune(q.text))
	cols, rows := reachCols+1+n, reachRows+1
	all := area{q.near.c0 - cols, q.near.r0 - rows, q.near.c1 + cols, q.near.r1 + rows} // no place within reach goes beyond
	most := reachCols + 2 + 2*rows
	var list []area
	for i := range l.requests {
		other := &l.requests[i]
		if i == index || (other.rank == figure.RankName) != (q.rank == figure.RankName) || other.near == q.near {
			continue
		}
		if nearness(other.near, all) <= most {
			list = append(list, other.near)
		}
	}
	return list
}

// mistaken is what a place costs for lying as near to something else that has a label.
func mistaken(q request, rivals []area, at area) float64 {
	own := nearness(q.near, at)
	cost := 0.0
	for _, other := range rivals {
		switch d := nearness(other, at); {
		case d < own:
			cost += 2.5
		case d == own:
			cost += 0.8
		}
	}
	return cost
}

// nearness is the distance between two blocks in cell widths; side by side, a blank between them counts as touching.
func nearness(a, b area) int {
	cols, rows := a.gap(b)
	if rows < 0 {
		cols--
	}
	return max(cols, 0) + 2*max(rows, 0)
}
