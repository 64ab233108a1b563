package figure

import (
	"math"
	"slices"
)

// A Station is a coordinate at which something stands.
type Station struct {
	At  float64 // in the frame's unit of length
	Gap int     // how many steps it should keep from its neighbours, in terminal columns for x and rows for y
}

// A Ruler turns one coordinate of the frame into the steps of a medium, such as cells: true to scale, except that stations
// are whole steps and near ones are held apart. Between two stations it is even.
type Ruler struct {
	Stations []Station // rising, distinct
	Steps    []int     // of each station, from 0, never falling
	Scale    float64   // steps in a unit of length
}

// distinct sorts stations and joins those at one place.
func distinct(stations []Station) []Station {
	slices.SortFunc(stations, func(a, b Station) int {
		switch {
		case a.At < b.At:
			return -1
		case a.At > b.At:
			return 1
		}
		return 0
	})
	var out []Station
	for _, s := range stations {
		if n := len(out); n > 0 && s.At-out[n-1].At < 1e-9*(1+math.Abs(s.At)) {
			out[n-1].Gap = max(out[n-1].Gap, s.Gap)
			continue
		}
		out = append(out, s)
	}
	return out
}

// Stations collects where things stand along both axes.
func Stations(s *Scene) (xs, ys []Station) {
	add := func(at Position, gapX, gapY int) {
		xs = append(xs, Station{at.X, gapX})
		ys = append(ys, Station{at.Y, gapY})
	}
	for _, k := range s.Strokes {
		add(k.From, 4, 2)
		add(k.To, 4, 2)
	}
	for _, k := range s.Guides {
		for _, end := range []Position{k.From, k.To} {
			if !s.onRim(end) { // between the middle and the rim it would let them come together
				add(end, 0, 0)
			}
		}
	}
	for _, k := range s.Symbols {
		add(k.At, 2, 1)
	}
	for _, k := range s.Arrows {
		if !k.Rope { // else its wheel sees to it
			add(k.At, 2, 1)
		}
	}
	for _, k := range s.Wheels {
		for _, out := range []Direction{{1, 0}, {0, 1}, {-1, 0}, {0, -1}} {
			add(k.Rim(out), 2, 1)
		}
	}
	for _, k := range s.Spreads {
		add(k.From, 1, 1)
		add(k.To, 1, 1)
	}
	for _, n := range s.Notes {
		add(n.At, 1, 1)
	}
	return distinct(xs), distinct(ys)
}

// onRim reports whether a rope leaves its wheel at a point.
func (s *Scene) onRim(at Position) bool {
	return slices.ContainsFunc(s.Arrows, func(a Arrow) bool { return a.Rope && a.At == at })
}

// NewRuler sets the stations out at a scale, no two nearer than the lesser of their gaps and most.
func NewRuler(stations []Station, scale float64, most int) Ruler {
	r := Ruler{stations, make([]int, len(stations)), scale}
	for i, s := range stations {
		if i == 0 {
			continue
		}
		apart := min(s.Gap, stations[i-1].Gap, most)
		r.Steps[i] = max(int(math.Round((s.At-stations[0].At)*scale)), r.Steps[i-1]+apart)
	}
	return r
}

// Length is the number of steps from the first station to the last.
func (r Ruler) Length() int {
	if len(r.Steps) == 0 {
		return 0
	}
	return r.Steps[len(r.Steps)-1]
}

// Span is the length from the first station to the last in the frame's units.
func Span(stations []Station) float64 {
	if len(stations) == 0 {
		return 0
	}
	return stations[len(stations)-1].At - stations[0].At
}

// Place is where coordinate x lies, in steps from the first station; beyond the last it goes on to scale.
func (r Ruler) Place(x float64) float64 {
	n := len(r.Stations)
	switch {
	case n == 0:
		return 0
	case x <= r.Stations[0].At:
		return (x - r.Stations[0].At) * r.Scale
	case x >= r.Stations[n-1].At:
		return float64(r.Steps[n-1]) + (x-r.Stations[n-1].At)*r.Scale
	}
	i, _ := slices.BinarySearchFunc(r.Stations, x, func(s Station, x float64) int {
		if s.At < x {
			return -1
		}
		return 1
	})
	a, b := r.Stations[i-1].At, r.Stations[i].At
	return float64(r.Steps[i-1]) + float64(r.Steps[i]-r.Steps[i-1])*(x-a)/(b-a)
}
