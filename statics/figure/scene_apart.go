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
	for _, i := range byMiddles(boxes, 0) {
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
	s := newSetting(boxes, gap)
	for {
		moved := s.settled()
		c := s.clash(moved, steep)
		if c == nil {
			return moved
		}
		s.before[c.axis][c.second] = append(s.before[c.axis][c.second], c.first)
	}
}

// A setting is boxes with those that must stand before each along an axis.
type setting struct {
	boxes  []Box
	gap    float64
	order  [2][]int   // along x and y: the boxes in the order of their middles
	rank   [2][]int   // of each box, its place in that order
	before [2][][]int // of each box, those after which it must stand
	sweep  []int      // the boxes by where they begin along x, as they were moved last
}

func newSetting(boxes []Box, gap float64) *setting {
	s := &setting{boxes: boxes, gap: gap}
	for axis := range s.order {
		s.order[axis] = byMiddles(boxes, axis)
		s.rank[axis] = make([]int, len(boxes))
		for n, i := range s.order[axis] {
			s.rank[axis][i] = n
		}
		s.before[axis] = make([][]int, len(boxes))
	}
	s.sweep = slices.Clone(s.order[0])
	return s
}

// along is from where to where a box reaches along an axis.
func (b Box) along(axis int) (from, until float64) {
	if axis == 0 {
		return b.X0, b.X1
	}
	return b.Y0, b.Y1
}

// byMiddles is the order of the boxes' middles along an axis.
func byMiddles(boxes []Box, axis int) []int {
	list := make([]int, len(boxes))
	for i := range list {
		list[i] = i
	}
	slices.SortStableFunc(list, func(i, j int) int {
		a0, a1 := boxes[i].along(axis)
		b0, b1 := boxes[j].along(axis)
		return cmp.Compare(a0+a1, b0+b1)
	})
	return list
}

// settled moves each box as little as those before it ask for, in their order.
func (s *setting) settled() []Box {
	moved := slices.Clone(s.boxes)
	for axis := range s.order {
		for _, j := range s.order[axis] {
			push := 0.0
			from, _ := s.boxes[j].along(axis)
			for _, i := range s.before[axis][j] {
				_, until := moved[i].along(axis)
				push = max(push, until+s.gap-from)
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

// A clash is two boxes too near to one another, and an axis along which the second may stand after the first.
type clash struct {
	first, second, axis int
	cost                float64
}

// clash is the one that costs least to part, nil if no boxes are too near. Boxes are gone through by where they begin along x,
// so that each meets only those that begin before it ends.
func (s *setting) clash(moved []Box, steep float64) *clash {
	slices.SortFunc(s.sweep, func(i, j int) int { return cmp.Compare(moved[i].X0, moved[j].X0) })
	var least *clash
	for n, i := range s.sweep {
		for _, j := range s.sweep[n+1:] {
			if moved[j].X0 > moved[i].X1+s.gap {
				break
			}
			for axis := range s.order {
				if c := s.parting(moved, i, j, axis, steep); c != nil && (least == nil || s.sooner(c, least)) {
					least = c
				}
			}
		}
	}
	return least
}

// parting is two boxes with what it costs to part them along an axis; nil where they are not too near, or the pair is parted
// along it.
func (s *setting) parting(moved []Box, i, j, axis int, steep float64) *clash {
	if s.rank[axis][i] > s.rank[axis][j] {
		i, j = j, i
	}
	if !s.near(moved[i], moved[j]) || slices.Contains(s.before[axis][j], i) {
		return nil
	}
	_, until := moved[i].along(axis)
	from, _ := moved[j].along(axis)
	cost := until + s.gap - from
	if axis == 1 {
		cost *= steep
	}
	return &clash{i, j, axis, cost}
}

// sooner reports whether a clash is parted before another: the cheaper one, of equal ones that along x, then that whose boxes
// come first.
func (s *setting) sooner(a, b *clash) bool {
	return cmp.Or(cmp.Compare(a.cost, b.cost), cmp.Compare(a.axis, b.axis),
		cmp.Compare(s.rank[a.axis][a.first], s.rank[a.axis][b.first]), cmp.Compare(s.rank[a.axis][a.second], s.rank[a.axis][b.second])) < 0
}

// near reports whether two boxes are nearer to one another than the gap, by more than rounding.
func (s *setting) near(a, b Box) bool {
	gap := s.gap - 1e-6*(1+math.Abs(a.X0)+math.Abs(a.Y0))
	return a.X1+gap > b.X0 && b.X1+gap > a.X0 && a.Y1+gap > b.Y0 && b.Y1+gap > a.Y0
}
