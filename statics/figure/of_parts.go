package figure

import (
	"math"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// OfParts is the scene of all parts and pins apart, each as a free body, so that both faces of every pin force are seen:
// the same name and opposite senses. Known is as in FreeBody.
func OfParts(a *statics.Assembly, known map[int]exact.Num, o Options) Scene {
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
