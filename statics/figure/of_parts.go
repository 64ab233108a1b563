package figure

import (
	"math"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// OfParts is the scene of all parts and pins apart, each as a free body, so that both faces of every pin force are seen:
// the same name and opposite senses. Known is as in OfBody. Package cells and package paper set the bodies apart and report
// whether they fit; if not, or beyond four parts, they had better be drawn one by one (Parts of the scene).
func OfParts(a *statics.Assembly, known map[int]exact.Num, o Options) Scene {
	all := Scene{Title: "All parts apart"}
	tallest := greatestIntensity(&a.Frame)
	for i := range a.Bodies() {
		all.Parts = append(all.Parts, bodyScene(a, statics.FreeBody{i}, known, o, tallest))
	}
	all.Faces = faces(a)
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
	c.Title = wording.Sentence(wording.Body(a, body))
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

// faces are where bodies were one.
func faces(a *statics.Assembly) []Face {
	var list []Face
	for _, f := range a.Forces {
		if f.By == statics.None {
			continue
		}
		k := Face{point(a.Frame.Joints[f.Joint].At), f.On, f.By}
		if !slices.Contains(list, k) {
			list = append(list, k)
		}
	}
	return list
}
