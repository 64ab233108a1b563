package problems

import (
	"math"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// publishedPulleys are frames with pulleys, with answers that somebody printed.
var publishedPulleys = []struct {
	source, file string
	forces       map[string]float64 // as printed, by the engine's name, in its sense
	half         float64            // half a unit of the last figure printed
}{
	{
		// The figures of the book were opened for testdata/cases, AF03, where the rope is given by its forces: 660 lb to the right over
		// a pulley of radius 9 in on E, and down. The forces of the pins F and C on the bar ECF are printed.
		source: "A. Paulson, Jupyter Notebooks for Engineering Mechanics: Statics, Examples 6, example G (as in testdata/cases, AF03)",
		file: `
title: Crane of three bars
units: lb in
joints: {A: [0, 0], B: [0, 76], C: [0, 102], D: [0, 111], E: [-89, 102], F: [16, 102], G: [-64, 0]}
members: [EC, CF, AB, BC, CD, GB, BF]
pins: {B: [[GB, BF]], C: [[EC, CF]], F: all}
supports: {A: pin, G: {roller: up}}
loads:
  - {pulley: E, rope: 660, to: [right, down], radius: 9}
  - {point: 660, to: left, joint: D}
`,
		forces: map[string]float64{"Cx": -888.46, "Cy": 4331.25, "Fx": 228.46, "Fy": -3671.25},
		half:   0.005,
	},
	{
		// A mast of 5 m with a pin at its foot and a roller at its top, a boom of 5 m at 3 m, propped from 1.5 m on the mast to 3 m
		// along the boom, and a rope with a mass of 400 kg over a pulley of radius 0.5 m at the boom's end, tied to the mast.
		source: "J. L. Meriam and L. G. Kraige, Engineering Mechanics: Statics, Sample Problem 4/6 (from memory, geometry and answers)",
		file: `
title: Frame with a load on a rope
units: kN m
given: {T: 0.4*9.81}
joints: {A: [0, 0], C: [0, 1.5], B: [0, 3], G: [0, 3.5], D: [0, 5], E: [3, 3], F: [5, 3]}
members: [BE, EF, AC, CB, BG, GD, CE]
pins: {B: [[BE]], C: [[CE]], E: [CE]}
supports: {A: pin, D: {roller: left}}
loads:
  - {pulley: F, rope: T, to: [down, left], radius: 0.5}
  - {point: T, to: right, joint: G}
`,
		forces: map[string]float64{"RD": 4.32, "Ax": 4.32, "Ay": 3.92, "Bx": -9.15, "By": -2.62, "Ex": 13.08, "Ey": 6.54},
		half:   0.0065, // 9.15 is printed for 9.156
	},
}

// TestPublishedPulleys holds each printed value against the engine's, to the figures printed. The senses are checked by the
// sums of the frame, which the engine's values satisfy (statics, S8).
func TestPublishedPulleys(t *testing.T) {
	for _, c := range publishedPulleys {
		t.Log(c.source)
		got := pulleyForces(t, c.file)
		for name, want := range c.forces {
			if v, ok := got[name]; !ok || math.Abs(v.Float()-want) > c.half {
				t.Errorf("%s is %v, printed %v", name, v, want)
			}
		}
	}
}

// pulleyForces solves a frame and lists its forces by name.
func pulleyForces(t *testing.T, file string) map[string]exact.Num {
	t.Helper()
	p, err := Read("pulley.yaml", []byte(file))
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil || s.Values == nil {
		t.Fatal("not solved", err)
	}
	values := map[string]exact.Num{}
	for i, f := range s.Forces {
		values[f.Name] = s.Values[i]
	}
	return values
}

// TestPulleyTakenOff holds that a frame with a pulley has the same forces whatever its radius, and with two forces of the rope's
// tension at the joint in its place: what F. P. Beer and E. R. Johnston, Vector Mechanics for Engineers: Statics, set as an
// exercise on frames (from memory: "show that when a frame supports a pulley, an equivalent loading is obtained by removing
// the pulley and applying at its pin two forces equal and parallel to those of the cable").
func TestPulleyTakenOff(t *testing.T) {
	const frame = `
title: Hoist
units: kN m
joints: {A: [0, 0], F: [0, 1.2], B: [0, 3], E: [2.4, 3], D: [4.2, 3]}
members: [AF, FB, BE, ED, FE]
pins: {B: all, E: [FE], F: [FE]}
supports: {A: fixed}
loads:
`
	for _, at := range []string{"D", "E, on: ED", "E", "B, on: BE", "B"} {
		var first map[string]exact.Num
		for _, loads := range []string{
			"  - {pulley: " + at + ", rope: 7, to: [[3, -4], left]}\n",
			"  - {pulley: " + at + ", rope: 7, to: [[3, -4], left], radius: 0.3}\n",
			"  - {pulley: " + at + ", rope: 7, to: [left, [3, -4]], radius: 2.5}\n",
			"  - {point: 7, to: [3, -4], joint: " + at + "}\n  - {point: 7, to: left, joint: " + at + "}\n",
		} {
			got := pulleyForces(t, frame+loads)
			if first == nil {
				first = got
			}
			for name, v := range first {
				if !v.Equal(got[name]) {
					t.Errorf("at %s: %s is %v, and %v with\n%s", at, name, v, got[name], loads)
				}
			}
		}
	}
}
