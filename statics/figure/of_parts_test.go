package figure_test

import (
	"fmt"
	"path/filepath"
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// TestApart: in a frame taken apart every pin force stands twice, on two parts, with one name and opposite senses at one
// place of the frame; every reaction once; every member once. Where two parts were one, a face tells.
func TestApart(t *testing.T) {
	t.Parallel()
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		a := d.Cut(t)
		s := figure.OfParts(a, nil, figure.Options{Style: d.Style})
		members := 0
		for _, part := range s.Parts {
			members += len(part.Strokes)
		}
		if members != len(a.Frame.Members) || len(s.Parts) != a.Bodies() || len(s.Strokes)+len(s.Arrows) > 0 {
			t.Errorf("%s: %d members in %d parts", filepath.Base(file), members, len(s.Parts))
		}
		for _, f := range a.Forces {
			if fault := faceFault(s, f); !f.Couple && fault != "" {
				t.Errorf("%s: %s %s", filepath.Base(file), f.Name, fault)
			}
		}
	}
}

// faceFault is what is wrong with the arrows of a force, or nothing.
func faceFault(s figure.Scene, f statics.Force) string {
	var found []figure.Arrow
	var on []int
	for i, part := range s.Parts {
		for _, k := range part.Arrows {
			if k.Text == f.Name {
				found, on = append(found, k), append(on, i)
			}
		}
	}
	switch {
	case f.By == statics.None && (len(found) != 1 || on[0] != f.On):
		return fmt.Sprint("is a reaction and stands on ", on)
	case f.By == statics.None:
		return ""
	case len(found) != 2 || on[0] == on[1]:
		return fmt.Sprint("stands on ", on)
	case found[0].Toward != found[1].Toward.Opposite() || found[0].At != found[1].At:
		return fmt.Sprintf("is %+v", found)
	case !slices.ContainsFunc(s.Faces, func(k figure.Face) bool { return k.At == found[0].At && k.A+k.B == on[0]+on[1] }):
		return "has no face"
	}
	return ""
}
