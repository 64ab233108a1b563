package figure

import (
	"cmp"
	"math"
	"slices"

	"unpin/statics"
)

// faceGap is how far apart the faces of a pin are drawn, as a share of the frame's longer side. Farthest is the factor by
// which parts may move away from the middle for that, and sideways the one by which they may along one axis alone.
const (
	faceGap  = 0.28
	farthest = 1.6
	sideways = 4.0
)

// apart is how far each body is moved: away from the middle of the frame, in proportion, until the faces of every pin stand
// apart. Where that would take too much, since parts have nearly one middle, they move along one axis only, as the columns
// and beams of storeys can, or else stand in a row.
func apart(a *statics.Assembly) []offset {
	middles, all := middlesOf(a)
	gap := faceGap * all.longer()
	if factor := spreading(a, middles, gap, offset{1, 1}); factor <= farthest {
		return movedOut(middles, all.middle(), offset{factor, factor})
	}
	for _, axis := range []offset{{1, 0}, {0, 1}} {
		factor := spreading(a, middles, gap, axis)
		if factor > sideways || axis.X > 0 && all.height() == 0 {
			continue
		}
		moves := movedOut(middles, all.middle(), offset{axis.X * factor, axis.Y * factor})
		if areFree(a, moves, gap/4) {
			return moves
		}
	}
	return inRow(a, middles, gap)
}

// spreading is the factor by which the middles of bodies must move apart, along the axes that count, for the faces of every
// pin to stand as far apart as the gap.
func spreading(a *statics.Assembly, middles []Position, gap float64, axes offset) float64 {
	factor := 0.0
	for _, f := range a.Forces {
		if f.By != statics.None {
			m, n := middles[f.On], middles[f.By]
			factor = max(factor, gap/math.Hypot((m.X-n.X)*axes.X, (m.Y-n.Y)*axes.Y))
		}
	}
	return factor
}

// movedOut moves each body away from the centre, by so much of its distance along x and along y.
func movedOut(middles []Position, centre Position, factor offset) []offset {
	moves := make([]offset, len(middles))
	for i, m := range middles {
		moves[i] = offset{(m.X - centre.X) * factor.X, (m.Y - centre.Y) * factor.Y}
	}
	return moves
}

// areFree reports whether bodies that have moved keep so far apart from one another.
func areFree(a *statics.Assembly, moves []offset, gap float64) bool {
	var boxes []bounds
	for i, v := range moves {
		b := boundsOf(a, i)
		b = bounds{b.low.moved(v), b.high.moved(v)}
		for _, other := range boxes {
			if b.grown(gap / 2).meets(other.grown(gap / 2)) {
				return false
			}
		}
		boxes = append(boxes, b)
	}
	return true
}

// middlesOf are the middles of the bodies, and the rectangle around the frame.
func middlesOf(a *statics.Assembly) (middles []Position, all bounds) {
	all = noBounds
	for i := range a.Bodies() {
		r := boundsOf(a, i)
		all = all.with(r)
		middles = append(middles, r.middle())
	}
	return middles, all
}

// boundsOf is the rectangle around a body, in the frame.
func boundsOf(a *statics.Assembly, body int) bounds {
	r := noBounds
	for _, j := range jointsOf(a, body) {
		at := point(a.Frame.Joints[j].At)
		r = r.with(bounds{at, at})
	}
	return r
}

// jointsOf are the joints of a body.
func jointsOf(a *statics.Assembly, body int) []int {
	if a.IsPin(body) {
		return []int{a.Pins[body-len(a.Parts)].Joint}
	}
	return a.Parts[body].Joints
}

// inRow is how far each body is moved to stand in a row, in the order of their middles.
func inRow(a *statics.Assembly, middles []Position, gap float64) []offset {
	order := make([]int, len(middles))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return cmp.Compare(middles[i].X, middles[j].X) })
	moves, end := make([]offset, len(middles)), 0.0
	for _, i := range order {
		r := boundsOf(a, i)
		moves[i].X = end - r.low.X
		end += r.width() + gap
	}
	return moves
}
