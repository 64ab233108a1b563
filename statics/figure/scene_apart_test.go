package figure

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// slowlyApart is SetApart put plainly: every pair of boxes is looked at each time, and all are set anew.
func slowlyApart(boxes []Box, gap, steep float64) []Box {
	var after [2][][2]int
	for {
		moved := slices.Clone(boxes)
		for axis := range after {
			for _, j := range byMiddles(boxes, axis) {
				push := 0.0
				for _, pair := range after[axis] {
					if pair[1] == j {
						_, until := moved[pair[0]].along(axis)
						from, _ := boxes[j].along(axis)
						push = max(push, until+gap-from)
					}
				}
				moved[j] = moved[j].by([]float64{push, 0}[axis], []float64{0, push}[axis])
			}
		}
		axis, pair, least := -1, [2]int{}, math.Inf(1)
		for k := range after {
			order := byMiddles(boxes, k)
			for n, i := range order {
				for _, j := range order[n+1:] {
					if !(&setting{gap: gap}).near(moved[i], moved[j]) || slices.Contains(after[k], [2]int{i, j}) {
						continue
					}
					_, until := moved[i].along(k)
					from, _ := moved[j].along(k)
					if cost := (until + gap - from) * []float64{1, steep}[k]; cost < least {
						axis, pair, least = k, [2]int{i, j}, cost
					}
				}
			}
		}
		if axis < 0 {
			return moved
		}
		after[axis] = append(after[axis], pair)
	}
}

// TestSetApart: boxes come to stand where the plain way sets them, none too near to another.
func TestSetApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		gap := float64(rapid.IntRange(0, 4).Draw(t, "gap"))
		steep := rapid.SampledFrom([]float64{0.3, 1, 2}).Draw(t, "steep")
		var boxes []Box
		for range rapid.IntRange(1, 14).Draw(t, "boxes") {
			x, y := float64(rapid.IntRange(0, 30).Draw(t, "x")), float64(rapid.IntRange(0, 30).Draw(t, "y"))
			w, h := float64(rapid.IntRange(0, 12).Draw(t, "w")), float64(rapid.IntRange(0, 12).Draw(t, "h"))
			boxes = append(boxes, Box{x, y, x + w, y + h})
		}
		got := SetApart(boxes, gap, steep)
		if want := slowlyApart(boxes, gap, steep); !slices.Equal(got, want) {
			t.Fatalf("%v\nset apart as %v\nnot       as %v", boxes, got, want)
		}
		for i, a := range got {
			for _, b := range got[i+1:] {
				if a.X1+gap > b.X0+1e-3 && b.X1+gap > a.X0+1e-3 && a.Y1+gap > b.Y0+1e-3 && b.Y1+gap > a.Y0+1e-3 {
					t.Fatalf("%v and %v are nearer than %g", a, b, gap)
				}
			}
		}
	})
}
