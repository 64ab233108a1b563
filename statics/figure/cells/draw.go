package cells

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// Draw draws a scene in exactly w × h terminal cells; zero or less counts as 1. Where room is short it puts long values into a
// key and gives up the dimensions first, then the values beside their arrows, then the names. With ascii it uses no rune beyond ASCII, for
// a scene whose texts were written so.
func Draw(s figure.Scene, w, h int, ascii bool) Grid {
	if s.IsApart() {
		return drawApart(&s, max(w, 1), max(h, 1), ascii)
	}
	if n := len(s.Legend); n > 0 {
		legend := s.Legend
		s.Legend = nil
		if h < legendRows*n || slices.ContainsFunc(legend, func(line string) bool { return len([]rune(line)) > w }) {
			g := Draw(s, w, h, ascii)
			g.Dropped = append(g.Dropped, legend...)
			return g
		}
		g := Draw(s, w, h-n, ascii)
		g.foot(legend, ascii)
		return g
	}
	r := renderer{scene: &s, w: max(w, 1), h: max(h, 1), ascii: ascii}
	r.xs, r.ys = figure.Stations(&s)
	for _, d := range r.details() {
		g, scale, whole := r.try(d)
		if !whole {
			continue
		}
		if d.longest = shortValue; r.isWordy() {
			if short, larger, whole := r.try(d); whole && larger > muchLarger*scale {
				return short
			}
		}
		return g
	}
	if g := r.bare(); r.least == nil || len(g.Dropped) < len(r.least.Dropped) {
		return g
	}
	return *r.least
}

// Long values go into a key where that lets the frame stand so much larger.
const (
	shortValue = 10
	muchLarger = 1.5
)

// isWordy reports whether a value of the scene is long.
func (r *renderer) isWordy() bool {
	return slices.ContainsFunc(textsOf(r.scene), func(text string) bool { return len([]rune(text)) > shortValue })
}

// try draws the scene at that detail, with a key where labels find no place; it gives the scale and whether nothing is missing
// that was to be there.
func (r *renderer) try(d detail) (g Grid, scale float64, whole bool) {
	p, ok := r.fit(d, 0)
	if !ok {
		return g, 0, false
	}
	scale = p.x.Scale
	if g, whole = r.cut(p); whole {
		return g, scale, true
	}
	r.consider(g)
	return r.keyed(d)
}

// consider keeps a grid that is not whole if none leaves out less.
func (r *renderer) consider(g Grid) {
	if r.least == nil || len(g.Dropped) < len(r.least.Dropped) {
		r.least = &g
	}
}

// legendRows is how many rows of a grid there must be for one line of the legend.
const legendRows = 6

// A renderer draws one scene at one size, in as many tries as it takes.
type renderer struct {
	scene  *figure.Scene
	w, h   int
	ascii  bool
	xs, ys []figure.Station
	memory []cell // of the last canvas, used again
	least  *Grid  // of those that are not whole, that which leaves out least
}

// details lists how much to draw, from all to the least.
func (r *renderer) details() []detail {
	arms, curve := min(max(r.h/12, 2), 4), min(float64(r.h)/6, 7)
	if figure.Span(r.ys) == 0 {
		arms, curve = min(max(r.h/7, 2), 4), min(float64(r.h)/3.5, 9)
	}
	all := detail{curve: curve, apart: 4, across: true, up: true, values: true, names: true}
	var list []detail
	for most := arms; arms >= 2; arms-- {
		all.arms, all.curve = arms, curve*float64(arms)/float64(most)
		list = append(list, all)
		all.apart = 3
	}
	small := detail{arms: 2, curve: 2.5, apart: 2, across: true, up: true, values: true, names: true}
	list = append(list, small)
	list = append(list, r.dimensioned(small)...)
	return append(list,
		detail{arms: 2, curve: 2.5, apart: 3, values: true, names: true},
		detail{arms: 2, curve: 2.5, apart: 2, values: true, names: true},
		detail{arms: 2, curve: 2.5, apart: 2, values: true, names: true, longest: 10},
		detail{arms: 1, curve: 1.5, apart: 2, values: true, names: true, longest: 8},
		detail{arms: 1, curve: 1.5, apart: 2, names: true},
		detail{arms: 1, curve: 1.5, apart: 1, names: true})
}

// dimensioned lists what is tried before all dimensions are given up: rulers, long values in the key, smaller arrows, and
// last the dimensions of one axis.
func (r *renderer) dimensioned(small detail) []detail {
	if len(r.scene.Dimensions) == 0 {
		return nil
	}
	var list []detail
	add := func(change func(*detail)) {
		d := small
		change(&d)
		list = append(list, d)
	}
	ruled := notches(r.scene, false) != nil || notches(r.scene, true) != nil
	for _, longest := range []int{0, shortValue} {
		small.longest = longest
		if longest > 0 && !r.isWordy() {
			continue
		}
		if longest > 0 {
			add(func(*detail) {})
		}
		if ruled {
			add(func(d *detail) { d.rulers = true })
		}
	}
	small.longest, small.rulers, small.arms, small.curve = 8, ruled, 1, 1.5
	add(func(*detail) {})
	small.arms, small.curve = 2, 2.5
	add(func(d *detail) { d.across = false })
	add(func(d *detail) { d.up = false })
	return list
}

// fit finds the largest scale at which the scene at that detail fills no more than the grid, less a key's rows, and
// paints it there. Margins come from what sticks out: each try keeps room for what the last one found.
func (r *renderer) fit(d detail, key int) (*painter, bool) {
	w, h := r.w, r.h-key
	marginX, marginY := 2, 1
	for range 5 {
		if h < 1 || w-1 < marginX || h-1 < marginY {
			return nil, false
		}
		scale := min(largest(figure.Span(r.xs), figure.Span(r.ys), w-1-marginX, h-1-marginY), r.scene.MostScale(pinWheel))
		x, y := snap(r.xs, scale, d.apart), snap(r.ys, scale/2, d.apart/2)
		if !r.scene.IsPin() && figure.Span(r.xs) > 0 && figure.Span(r.ys) > 0 && max(x.Length(), 2*y.Length()) < leastFrame {
			return nil, false
		}
		p := r.painter(d, x, y)
		p.paint()
		p.wish()
		p.dimensions()
		if p.used.width() <= w && p.used.height() <= h {
			window := p.window(w, h)
			window.r1 += key
			return p, area{0, 0, p.cols - 1, p.rows - 1}.contains(window)
		}
		marginX = grown(marginX, p.used.width(), p.x.Length(), w)
		marginY = grown(marginY, p.used.height(), p.y.Length(), h)
	}
	return nil, false
}

// leastFrame is how large the longer side of a frame must be, in columns: of a smaller one too little is left to tell its shape.
const leastFrame = 5

// grown is the margin for the next try along one axis, after a try in which so many cells were used, with the frame so
// long, of those there are.
func grown(margin, used, frame, cells int) int {
	margin = max(margin, used-frame-1)
	if frame > cells-1-margin {
		margin++
	}
	return margin
}

// largest is the scale, in columns a unit, that fills so many columns or twice so many rows, whichever is less.
func largest(spanX, spanY float64, cols, rows int) float64 {
	scale := math.Inf(1)
	if spanX > 0 {
		scale = float64(cols) / spanX
	}
	if spanY > 0 {
		scale = min(scale, 2*float64(rows)/spanY)
	}
	if math.IsInf(scale, 1) {
		return 1
	}
	return scale
}

// painter prepares a canvas with the frame in its middle and room around.
func (r *renderer) painter(d detail, x, y figure.Ruler) *painter {
	cols, rows := max(r.w, x.Length()+1)+2*min(r.w, 40), max(r.h, y.Length()+1)+2*min(r.h, 16)
	v := newCanvas(cols, rows, r.memory)
	r.memory = v.cells
	return &painter{
		lettering: &lettering{canvas: v, detail: d}, scene: r.scene, x: x, y: y,
		left: (cols - x.Length()) / 2, foot: (rows + y.Length()) / 2, ascii: r.ascii,
	}
}
