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

// newAxis is an axis to a scale, on which near joints are held so many points apart.
func newAxis(stations []figure.Station, scale, apart float64) axis {
	const widestGap = 4
	fine := make([]figure.Station, len(stations))
	for i, s := range stations {
		fine[i] = figure.Station{At: s.At, Gap: int(float64(s.Gap) * apart * tenths / widestGap)}
	}
	r := figure.NewRuler(fine, scale*tenths, int(apart*tenths))
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
