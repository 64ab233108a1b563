package paper

import "math"

// A near finds, of many rects, those near a place: each stands in the cells of a grid that it covers, so that a label is
// held against its neighbours and not against the whole figure.
type near struct {
	cells map[uint64][]int
	far   []int // rects over more cells than are worth it
	asked []int // for each rect, the question at which it came last
	now   int   // the number of the question in hand
}

// The grid, in points and cells.
const (
	cellSide  = 24.0
	mostCells = 4096
)

// span are the first and last cells that a rect covers; false where these are too many.
func span(b rect) (x0, y0, x1, y1 int, ok bool) {
	if !((b.width()/cellSide+1)*(b.height()/cellSide+1) < mostCells) { // nor where it has no size
		return 0, 0, 0, 0, false
	}
	cell := func(v float64) int { return int(math.Floor(v / cellSide)) }
	return cell(b.x0), cell(b.y0), cell(b.x1), cell(b.y1), true
}

// cellAt is the key of a cell: in one word, which is found sooner than two.
func cellAt(x, y int) uint64 { return uint64(uint32(x))<<32 | uint64(uint32(y)) }

// add takes the next rect.
func (n *near) add(b rect) {
	i := len(n.asked)
	n.asked = append(n.asked, 0)
	x0, y0, x1, y1, ok := span(b)
	if !ok {
		n.far = append(n.far, i)
		return
	}
	if n.cells == nil {
		n.cells = map[uint64][]int{}
	}
	for x := x0; x <= x1; x++ {
		for y := y0; y <= y1; y++ {
			k := cellAt(x, y)
			n.cells[k] = append(n.cells[k], i)
		}
	}
}

// any reports whether one of the rects that may meet b passes a test. No rect is tried twice, and every one that meets b is
// tried, unless another has passed before.
func (n *near) any(b rect, test func(i int) bool) bool {
	n.now++
	try := func(list []int) bool {
		for _, i := range list {
			if n.asked[i] != n.now {
				n.asked[i] = n.now
				if test(i) {
					return true
				}
			}
		}
		return false
	}
	x0, y0, x1, y1, ok := span(b)
	if !ok {
		for i := range n.asked {
			if test(i) {
				return true
			}
		}
		return false
	}
	for x := x0; x <= x1; x++ {
		for y := y0; y <= y1; y++ {
			if try(n.cells[cellAt(x, y)]) {
				return true
			}
		}
	}
	return try(n.far)
}
