package figure

import (
	"math"
	"slices"
)

// A station is a coordinate at which something stands, and how many cells it should keep from its neighbours.
type station struct {
	at  float64
	gap int
}

// A ruler turns one coordinate of the frame into cells: true to scale, except that stations are whole cells and near
// ones are held apart.
type ruler struct {
	stations []station // rising, distinct
	cells    []int     // of each station, from 0
	scale    float64   // cells in a unit of length
}

// distinct sorts stations and joins those at one place.
func distinct(stations []station) []station {
	slices.SortFunc(stations, func(a, b station) int {
		switch {
		case a.at < b.at:
			return -1
		case a.at > b.at:
			return 1
		}
		return 0
	})
	var out []station
	for _, s := range stations {
		if n := len(out); n > 0 && s.at-out[n-1].at < 1e-9*(1+math.Abs(s.at)) {
			out[n-1].gap = max(out[n-1].gap, s.gap)
			continue
		}
		out = append(out, s)
	}
	return out
}

// newRuler sets the stations out at a scale, no two nearer than the lesser of their gaps and most.
func newRuler(stations []station, scale float64, most int) ruler {
	r := ruler{stations, make([]int, len(stations)), scale}
	for i, s := range stations {
		if i == 0 {
			continue
		}
		apart := min(s.gap, stations[i-1].gap, most)
		r.cells[i] = max(int(math.Round((s.at-stations[0].at)*scale)), r.cells[i-1]+apart)
	}
	return r
}

// length is the number of cells from the first station to the last.
func (r ruler) length() int {
	if len(r.cells) == 0 {
		return 0
	}
	return r.cells[len(r.cells)-1]
}

// span is the length from the first station to the last in the frame's units.
func span(stations []station) float64 {
	if len(stations) == 0 {
		return 0
	}
	return stations[len(stations)-1].at - stations[0].at
}

// place is where coordinate x lies, in cells.
func (r ruler) place(x float64) float64 {
	n := len(r.stations)
	switch {
	case n == 0:
		return 0
	case x <= r.stations[0].at:
		return (x - r.stations[0].at) * r.scale
	case x >= r.stations[n-1].at:
		return float64(r.cells[n-1]) + (x-r.stations[n-1].at)*r.scale
	}
	i, _ := slices.BinarySearchFunc(r.stations, x, func(s station, x float64) int {
		if s.at < x {
			return -1
		}
		return 1
	})
	a, b := r.stations[i-1].at, r.stations[i].at
	return float64(r.cells[i-1]) + float64(r.cells[i]-r.cells[i-1])*(x-a)/(b-a)
}

// uneven counts pairs of equal bays that do not come out equal, and wider bays that come out narrower.
func uneven(r ruler) int {
	bad := 0
	for i := 1; i < len(r.stations); i++ {
		for j := 1; j < i; j++ {
			a := r.stations[i].at - r.stations[i-1].at
			b := r.stations[j].at - r.stations[j-1].at
			ca, cb := r.cells[i]-r.cells[i-1], r.cells[j]-r.cells[j-1]
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
func snap(stations []station, scale float64, most int) ruler {
	best := newRuler(stations, scale, most)
	length := span(stations)
	if len(stations) < 3 || length == 0 || len(stations) > 60 {
		return best
	}
	bad := uneven(best)
	full := scale * length
	for cells := math.Floor(full); bad > 0 && cells >= full*(1-maxShrink) && cells > 0; cells-- {
		r := newRuler(stations, cells/length, most)
		if u := uneven(r); u < bad && r.length() <= best.length() {
			best, bad = r, u
		}
	}
	return best
}
