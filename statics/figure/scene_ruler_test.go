package figure

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestRulerIsTrue: whole cells for stations, in order, apart, and within half a cell of true to scale where nothing is
// held apart.
func TestRulerIsTrue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var list []Station
		for range rapid.IntRange(1, 9).Draw(t, "n") {
			list = append(list, Station{float64(rapid.IntRange(0, 400).Draw(t, "at")) / 8, 3})
		}
		list = distinct(list)
		scale := rapid.Float64Range(0.1, 9).Draw(t, "scale")
		r := NewRuler(list, scale, 3)
		for i, s := range list {
			if got := r.Place(s.At); got != float64(r.Steps[i]) {
				t.Fatalf("station %v lies at %v, not %v", s.At, got, r.Steps[i])
			}
			if i > 0 && r.Steps[i]-r.Steps[i-1] < 3 {
				t.Fatalf("stations %v and %v fall together", list[i-1].At, s.At)
			}
		}
		loose := NewRuler(list, scale, 0)
		for i, s := range list {
			if off := math.Abs(float64(loose.Steps[i]) - (s.At-list[0].At)*scale); off > 0.5+1e-9 {
				t.Fatalf("station %v is %v cells off", s.At, off)
			}
		}
	})
}
