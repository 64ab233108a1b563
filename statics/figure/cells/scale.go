package cells

import (
	"math"

	"unpin/statics/figure"
)

// uneven counts pairs of equal bays that do not come out equal, and wider bays that come out narrower.
func uneven(r figure.Ruler) int {
	bad := 0
	for i := 1; i < len(r.Stations); i++ {
		for j := 1; j < i; j++ {
			a := r.Stations[i].At - r.Stations[i-1].At
			b := r.Stations[j].At - r.Stations[j-1].At
			ca, cb := r.Steps[i]-r.Steps[i-1], r.Steps[j]-r.Steps[j-1]
			switch {
			case math.Abs(a-b) < 1e-9*(a+b):
				if ca != cb {
					bad++
				}
			case (a-b)*float64(ca-cb) < 0:
				bad++
			}
		}
	}
	return bad
}

// maxShrink is how much of its scale a ruler may give up to make equal bays equal.
const maxShrink = 0.12

// snap is the ruler at the given scale or up to maxShrink less, on which the fewest equal bays come out unequal; of
// those the largest.
func snap(stations []figure.Station, scale float64, most int) figure.Ruler {
	best := figure.NewRuler(stations, scale, most)
	length := figure.Span(stations)
	if len(stations) < 3 || length == 0 || len(stations) > 60 {
		return best
	}
	bad := uneven(best)
	full := scale * length
	for cells := math.Floor(full); bad > 0 && cells >= full*(1-maxShrink) && cells > 0; cells-- {
		r := figure.NewRuler(stations, cells/length, most)
		if u := uneven(r); u < bad && r.Length() <= best.Length() {
			best, bad = r, u
		}
	}
	return best
}

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
