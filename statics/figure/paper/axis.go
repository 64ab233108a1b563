package paper

import (
	"unpin/statics/figure"
)

// An axis turns one coordinate of the frame into points from its first station: to scale, but that near stations are held
// apart.
type axis struct {
	figure.Ruler
	length float64
}

// tenths is how many steps of a ruler make a point on paper.
const tenths = 10

func newAxis(stations []figure.Station, scale float64) axis {
	const widestGap = 4
	fine := make([]figure.Station, len(stations))
	for i, s := range stations {
		fine[i] = figure.Station{At: s.At, Gap: s.Gap * heldApart * tenths / widestGap}
	}
	r := figure.NewRuler(fine, scale*tenths, heldApart*tenths)
	return axis{r, float64(r.Length()) / tenths}
}

func (a axis) at(x float64) float64 { return a.Place(x) / tenths }

// stretched reports whether stations were held apart by more than the eye overlooks.
func (a axis) stretched() bool {
	for i, s := range a.Stations {
		if float64(a.Steps[i])-(s.At-a.Stations[0].At)*a.Scale > tenths {
			return true
		}
	}
	return false
}
