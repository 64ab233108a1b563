package cells

import (
	"unpin/statics/figure"
)

// dimensions draws the dimension lines below and beside all that has been drawn.
func (p *painter) dimensions() {
	if p.detail.across {
		row := p.used.r1 + 1
		p.chain(false, func(d figure.Dimension) { p.levelDimension(d, row+d.Level) }, func(list []notch) { p.levelRuler(list, row) })
	}
	wide := 0
	for _, d := range p.scene.Dimensions {
		if d.Vertical {
			wide = max(wide, len([]rune(d.Text)))
		}
	}
	if !p.detail.up || wide == 0 {
		return
	}
	col, step := p.used.c0-1-(wide+1)/2, -wide-1
	if p.used.c1-p.frame.c1 < p.frame.c0-p.used.c0 {
		col, step = p.used.c1+2+wide/2, wide+1
	}
	p.chain(true, func(d figure.Dimension) { p.uprightDimension(d, col+d.Level*step) }, func(list []notch) { p.uprightRuler(list, col) })
}

// chain draws the dimensions along one axis, each by itself or all as one ruler.
func (p *painter) chain(vertical bool, each func(figure.Dimension), all func([]notch)) {
	if list := notches(p.scene, vertical); p.detail.rulers && list != nil {
		all(list)
		return
	}
	for _, d := range p.scene.Dimensions {
		if d.Vertical == vertical {
			each(d)
		}
	}
}

var dimensionLook = figure.Look{Role: figure.DimensionMark}

// levelDimension draws one bay of the chain along x, its number in the line if there is room, else close by.
func (p *painter) levelDimension(d figure.Dimension, row int) {
	c0, _ := p.cellOf(figure.Position{X: d.From, Y: 0})
	c1, _ := p.cellOf(figure.Position{X: d.To, Y: 0})
	p.line(c0, row, c1, row, light, dimensionLook)
	for _, c := range [2]int{c0, c1} {
		p.arm(c, row, north, light, dimensionLook)
		p.arm(c, row, south, light, dimensionLook)
	}
	room := c1 - c0 - 1
	text := d.Text
	if len([]rune(text)) > room {
		text = d.Short
	}
	n := len([]rune(text))
	if n > room {
		p.ask(request{text: text, near: area{c0 + 1, row, max(c0+1, c1-1), row}, c: (c0 + c1) / 2, r: row, look: dimensionLook, rank: figure.RankDimension})
		return
	}
	at := c0 + 1 + (room-n)/2
	if at > c0+2 && at+n < c1-1 {
		p.wipe(at-1, row)
		p.wipe(at+n, row)
	}
	p.write(text, at, row, dimensionLook)
}

// uprightDimension draws one bay of the chain along y.
func (p *painter) uprightDimension(d figure.Dimension, col int) {
	_, r0 := p.cellOf(figure.Position{X: 0, Y: d.To})
	_, r1 := p.cellOf(figure.Position{X: 0, Y: d.From})
	p.line(col, r0, col, r1, light, dimensionLook)
	for _, r := range [2]int{r0, r1} {
		p.arm(col, r, west, light, dimensionLook)
		p.arm(col, r, east, light, dimensionLook)
	}
	n := len([]rune(d.Text))
	p.use(col-n/2, r0)
	p.use(col-n/2+n-1, r0)
	if r1-r0 < 2 {
		p.ask(request{text: d.Text, near: area{col, r0, col, r1}, c: col, r: r0, look: dimensionLook, rank: figure.RankDimension})
		return
	}
	p.write(d.Text, col-n/2, (r0+r1)/2, dimensionLook)
}
