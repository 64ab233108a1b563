package problems

import (
	"testing"

	"unpin/statics"
)

// refusedFrames are frames that equilibrium alone cannot solve, with the count that textbooks give for them (common
// practice, no source). Numbers of unknowns and sums do not show the faults of the first and the last: their rank does.
var refusedFrames = []struct {
	name, problem string
	verdict       statics.Determinacy
	count         statics.Count
}{
	{
		"three pins in one straight line",
		`{joints: {A: [0, 0], B: [3, 0], C: [8, 0]}, members: [AB, BC], pins: [B], supports: {A: pin, C: pin}`,
		statics.IndeterminateUnstable, statics.Count{Unknowns: 6, Sums: 6, Rank: 5},
	},
	{
		"portal on two pinned feet without a pin between them",
		`{joints: {A: [0, 0], B: [0, 4], C: [6, 4], D: [6, 0]}, members: [AB, BC, CD], supports: {A: pin, D: pin}`,
		statics.Indeterminate, statics.Count{Unknowns: 4, Sums: 3, Rank: 3},
	},
	{
		"beam fixed at 0 with rollers at 5 and 12 and a pin at 7 m",
		`{joints: {A: [0, 0], B: [5, 0], C: [7, 0], D: [12, 0]}, members: [AB, BC, CD], pins: [C],
			supports: {A: fixed, B: {roller: up}, D: {roller: up}}`,
		statics.Indeterminate, statics.Count{Unknowns: 7, Sums: 6, Rank: 6},
	},
	{
		"beam on three parallel rollers",
		`{joints: {A: [0, 0], B: [4, 0], C: [9, 0]}, members: [AB, BC],
			supports: {A: {roller: up}, B: {roller: up}, C: {roller: up}}`,
		statics.IndeterminateUnstable, statics.Count{Unknowns: 3, Sums: 3, Rank: 2},
	},
}

// TestRefusedFrames checks that each is counted, refused and not solved.
func TestRefusedFrames(t *testing.T) {
	for _, r := range refusedFrames {
		p, err := Read(r.name, []byte(r.problem+`, title: T, units: kN m, loads: [{point: 10, to: [3, -4], joint: B, on: AB}]}`))
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		s, err := statics.Solve(p.Frame)
		if err != nil {
			t.Errorf("%s: %v", r.name, err)
			continue
		}
		if s.Count != r.count || s.Count.Determinacy() != r.verdict {
			t.Errorf("%s: %s with %+v, want %s with %+v", r.name, s.Count.Determinacy(), s.Count, r.verdict, r.count)
		}
		if s.Values != nil || len(s.Plan) > 0 || len(s.Diagrams) > 0 {
			t.Errorf("%s: it has values, a plan or diagrams", r.name)
		}
	}
}
