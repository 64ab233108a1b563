package cells

import (
	"cmp"
	"math"
	"slices"

	"unpin/statics/figure"
)

// A notch is a place on a ruler, with how far it lies from the ruler's zero: superimposed running dimensions, as ISO 129-1
// has them (from memory), for arms that all begin at the centre and have no room one above the other.
type notch struct {
	at   float64 // along the axis
	text string
}

// notches are the marks of the ruler that serves for all dimensions along an axis, in order: if they stand on several lines and
// all begin at one place, else none. The outermost have their unit.
func notches(s *figure.Scene, vertical bool) []notch {
	var list []figure.Dimension
	levels := 0
	for _, d := range s.Dimensions {
		if d.Vertical == vertical {
			list, levels = append(list, d), max(levels, d.Level)
		}
	}
	if levels == 0 {
		return nil
	}
	zero, ok := common(list)
	if !ok {
		return nil
	}
	low, high := zero, zero
	for _, d := range list {
		low, high = min(low, d.From), max(high, d.To)
	}
	marks := []notch{{zero, "0"}}
	for _, d := range list {
		k := notch{d.To, d.Short}
		if d.To == zero {
			k.at = d.From
		}
		if k.at == low || k.at == high {
			k.text = d.Text
		}
		marks = append(marks, k)
	}
	slices.SortFunc(marks, func(a, b notch) int { return cmp.Compare(a.at, b.at) })
	return marks
}

// common is the place at which all dimensions begin or end.
func common(list []figure.Dimension) (at float64, ok bool) {
	for _, at := range [2]float64{list[0].From, list[0].To} {
		if !slices.ContainsFunc(list, func(d figure.Dimension) bool { return min(math.Abs(d.From-at), math.Abs(d.To-at)) > 1e-9 }) {
			return at, true
		}
	}
	return 0, false
}

// levelRuler draws a ruler along x, its numbers in the line at their places.
func (p *painter) levelRuler(list []notch, row int) {
	first, _ := p.cellOf(figure.Position{X: list[0].at})
	last, _ := p.cellOf(figure.Position{X: list[len(list)-1].at})
	p.line(first, row, last, row, light, dimensionLook)
	free := math.MinInt
	for _, k := range list {
		c, _ := p.cellOf(figure.Position{X: k.at})
		n := len([]rune(k.text))
		at := c - (n-1)/2
		if at <= free {
			p.askNotch(k, c, row)
			continue
		}
		p.write(k.text, at, row, dimensionLook)
		free = at + n
	}
}

// uprightRuler draws a ruler along y.
func (p *painter) uprightRuler(list []notch, col int) {
	_, first := p.cellOf(figure.Position{Y: list[0].at})
	_, last := p.cellOf(figure.Position{Y: list[len(list)-1].at})
	p.line(col, first, col, last, light, dimensionLook)
	free := math.MaxInt
	for _, k := range list {
		_, r := p.cellOf(figure.Position{Y: k.at})
		if r >= free {
			p.askNotch(k, col, r)
			continue
		}
		p.write(k.text, col-len([]rune(k.text))/2, r, dimensionLook)
		free = r
	}
}

// askNotch asks for a place for the number of a mark that has none in the line.
func (p *painter) askNotch(k notch, c, r int) {
	p.arm(c, r, north, light, dimensionLook)
	p.ask(request{text: k.text, near: area{c, r, c, r}, c: c, r: r, look: dimensionLook, rank: figure.RankDimension})
}
