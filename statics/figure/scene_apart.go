package figure

import (
	"cmp"
	"math"
	"slices"
)

// A Box is an upright rectangle in the steps of a medium, x to the right and y downward.
type Box struct{ X0, Y0, X1, Y1 float64 }

// by is the box moved.
func (b Box) by(x, y float64) Box { return Box{b.X0 + x, b.Y0 + y, b.X1 + x, b.Y1 + y} }

// Around is the box around boxes.
func Around(boxes []Box) Box {
	all := boxes[0]
	for _, b := range boxes {
		all = Box{min(all.X0, b.X0), min(all.Y0, b.Y0), max(all.X1, b.X1), max(all.Y1, b.Y1)}
	}
	return all
}

// WaysApart are ways to set boxes apart on a sheet so wide and tall, the best likenesses of the frame first: moved apart
// from where they stand in it, and as the last one in rows.
func WaysApart(boxes []Box, gap, width, height float64) [][]Box {
	var ways [][]Box
	for _, steep := range []float64{width / height, 1, 3 * width / height, width / height / 3} {
		ways = append(ways, SetApart(boxes, gap, steep))
	}
	return append(ways, inRows(boxes, gap, width))
}

// inRows sets boxes in rows no wider than that, from left to right in the order of their middles, each row's feet level.
func inRows(boxes []Box, gap, width float64) []Box {
	moved := slices.Clone(boxes)
	x, y := 0.0, 0.0
	var row []int
	for _, i := range (setting{boxes: boxes}).order(0) {
		b := boxes[i]
		if wide := b.X1 - b.X0; len(row) > 0 && x+wide > width {
			y = level(moved, row, y) + gap
			x, row = 0, nil
		}
		moved[i] = b.by(x-b.X0, -b.Y0)
		x += b.X1 - b.X0 + gap
		row = append(row, i)
	}
	level(moved, row, y)
	return moved
}

// level moves the boxes of a row so that the tallest begins at y and all end with it, and gives where that is.
func level(boxes []Box, row []int, y float64) float64 {
	tall := 0.0
	for _, i := range row {
		tall = max(tall, boxes[i].Y1-boxes[i].Y0)
	}
	for _, i := range row {
		boxes[i] = boxes[i].by(0, y+tall-boxes[i].Y1)
	}
	return y + tall
}

// SetApart moves boxes right and down until none is nearer to another than gap, along x or along y, and keeps them in the
// order of their middles. Steep is how much dearer it is to grow in height than in width. The boxes are where they would
// stand best; what comes back are the moved ones. Whole numbers stay whole.
func SetApart(boxes []Box, gap, steep float64) []Box {
	s := setting{boxes: boxes, gap: gap, after: [2][][2]int{}}
	for {
		moved := s.settled()
		i, j, axis := s.clash(moved, steep)
		if axis < 0 {
			return moved
		}
		s.after[axis] = append(s.after[axis], [2]int{i, j})
	}
}

// A setting is boxes with those pairs of which one must stand after the other along an axis.
type setting struct {
	boxes []Box
	gap   float64
	after [2][][2]int // along x and y: the second box after the first
}

// along is from where to where a box reaches along an axis.
func (b Box) along(axis int) (from, until float64) {
	if axis == 0 {
		return b.X0, b.X1
	}
	return b.Y0, b.Y1
}

// order is the order of the boxes' middles along an axis.
func (s setting) order(axis int) []int {
	list := make([]int, len(s.boxes))
	for i := range list {
		list[i] = i
	}
	slices.SortStableFunc(list, func(i, j int) int {
		a0, a1 := s.boxes[i].along(axis)
		b0, b1 := s.boxes[j].along(axis)
		return cmp.Compare(a0+a1, b0+b1)
	})
	return list
}

// settled moves each box as little as the pairs ask for, in their order.
func (s setting) settled() []Box {
	moved := slices.Clone(s.boxes)
	for axis := range s.after {
		for _, j := range s.order(axis) {
			push := 0.0
			for _, pair := range s.after[axis] {
				if pair[1] == j {
					_, until := moved[pair[0]].along(axis)
					from, _ := s.boxes[j].along(axis)
					push = max(push, until+s.gap-from)
				}
			}
			if axis == 0 {
				moved[j] = moved[j].by(push, 0)
			} else {
				moved[j] = moved[j].by(0, push)
			}
		}
	}
	return moved
}

// clash is the pair of boxes too near to one another that is most easily parted, and the axis along which the second had
// better stand after the first; −1 if there is none.
func (s setting) clash(moved []Box, steep float64) (first, second, axis int) {
	axis, least := -1, 0.0
	for k := range s.after {
		order := s.order(k)
		for n, i := range order {
			for _, j := range order[n+1:] {
				a, b := moved[i], moved[j]
				if !s.near(a, b) || slices.Contains(s.after[k], [2]int{i, j}) {
					continue
				}
				_, until := a.along(k)
				from, _ := b.along(k)
				cost := until + s.gap - from
				if k == 1 {
					cost *= steep
				}
				if axis < 0 || cost < least {
					first, second, axis, least = i, j, k, cost
				}
			}
		}
	}
	return first, second, axis
}

// near reports whether two boxes are nearer to one another than the gap, by more than rounding.
func (s setting) near(a, b Box) bool {
	gap := s.gap - 1e-6*(1+math.Abs(a.X0)+math.Abs(a.Y0))
	return a.X1+gap > b.X0 && b.X1+gap > a.X0 && a.Y1+gap > b.Y0 && b.Y1+gap > a.Y0
}
