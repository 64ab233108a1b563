package cells

import (
	"unpin/statics/figure"
)

// warnOffScale says at the head or the foot of the window, where there is room, that a length is drawn far too long, because
// what stands at its ends was held apart.
func (p *painter) warnOffScale(window area) {
	if !isStretched(p.x) && !isStretched(p.y) {
		return
	}
	n := len(figure.OffScale)
	for _, r := range [...]int{window.r1, window.r0, window.r1 - 1, window.r0 + 1} {
		for c := window.c1 - n + 1; c >= window.c0; c-- {
			at := area{c, r, c + n - 1, r}
			if p.free(at) && p.crowding(at) == 0 {
				p.write(figure.OffScale, c, r, figure.Look{Role: figure.KeyMark})
				return
			}
		}
	}
}

// isStretched reports whether neighbouring stations stand at least twice as far apart as they should, by more than rounding
// to whole cells does.
func isStretched(r figure.Ruler) bool {
	for i := 1; i < len(r.Stations); i++ {
		due := (r.Stations[i].At - r.Stations[i-1].At) * r.Scale
		if drawn := float64(r.Steps[i] - r.Steps[i-1]); drawn > 2*due && drawn-due > 1.5 {
			return true
		}
	}
	return false
}
