package figure

import (
	"cmp"
	"math"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// Exploded is the scene of all parts and pins apart, each as a free body, so that both faces of every pin force are seen:
// the same name and opposite senses. Known is as in FreeBody.
func Exploded(a *statics.Assembly, known map[int]exact.Num, o Options) Scene {
	all := Scene{Title: "All parts apart", Names: map[string]Symbolic{}}
	tallest := greatestIntensity(&a.Frame)
	for i, by := range apart(a) {
		all.add(bodyScene(a, statics.FreeBody{i}, known, o, tallest).moved(by))
	}
	all.Links = links(a)
	return all
}

// bodyScene is the scene of one body among others: without dimensions and without what the others receive.
func bodyScene(a *statics.Assembly, body statics.FreeBody, known map[int]exact.Num, o Options, tallest float64) Scene {
	c := newCutBody(a, body, known, o)
	c.tallest = tallest
	c.acting()
	c.finish()
	c.names(c.joints())
	c.Names = symbols(a, body)
	return c.Scene
}

// greatestIntensity is that of all spread loads.
func greatestIntensity(f *statics.Frame) float64 {
	greatest := 0.0
	for _, l := range f.Loads {
		if l.Kind == statics.SpreadLoad {
			greatest = max(greatest, math.Abs(l.First.Float()), math.Abs(l.Last.Float()))
		}
	}
	return greatest
}

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
func spreading(a *statics.Assembly, middles []Point, gap float64, axes offset) float64 {
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
func movedOut(middles []Point, centre Point, factor offset) []offset {
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
func middlesOf(a *statics.Assembly) (middles []Point, all bounds) {
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
func inRow(a *statics.Assembly, middles []Point, gap float64) []offset {
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

// links are the lines between the faces of each pin.
func links(a *statics.Assembly) []Link {
	moves := apart(a)
	var list []Link
	for _, f := range a.Forces {
		if f.By == statics.None {
			continue
		}
		at := point(a.Frame.Joints[f.Joint].At)
		k := Link{at.moved(moves[f.On]), at.moved(moves[f.By])}
		if !slices.Contains(list, k) {
			list = append(list, k)
		}
	}
	return list
}

func (p Point) moved(by offset) Point { return Point{p.X + by.X, p.Y + by.Y} }

// moved is the scene at another place.
func (s Scene) moved(by offset) Scene {
	for i := range s.Strokes {
		s.Strokes[i].From, s.Strokes[i].To = s.Strokes[i].From.moved(by), s.Strokes[i].To.moved(by)
	}
	for i := range s.Symbols {
		s.Symbols[i].At = s.Symbols[i].At.moved(by)
	}
	for i := range s.Spreads {
		s.Spreads[i].From, s.Spreads[i].To = s.Spreads[i].From.moved(by), s.Spreads[i].To.moved(by)
	}
	for i := range s.Arrows {
		s.Arrows[i].At = s.Arrows[i].At.moved(by)
	}
	for i := range s.Notes {
		s.Notes[i].At = s.Notes[i].At.moved(by)
	}
	return s
}

// add puts another scene into this one.
func (s *Scene) add(o Scene) {
	for i := range o.Spreads {
		for k := range o.Spreads[i].On {
			o.Spreads[i].On[k] += len(s.Spreads)
		}
	}
	s.Strokes = append(s.Strokes, o.Strokes...)
	s.Symbols = append(s.Symbols, o.Symbols...)
	s.Spreads = append(s.Spreads, o.Spreads...)
	s.Arrows = append(s.Arrows, o.Arrows...)
	s.Notes = append(s.Notes, o.Notes...)
	for name, k := range o.Names {
		s.Names[name] = k
	}
}
