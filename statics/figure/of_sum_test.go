package figure_test

import (
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// TestSumScenes reads each sum of moments off its figure as a student would: the dimensions and fine lines are the arms of
// the terms that count, what is faded is what passes through the centre, and the centre is marked.
func TestSumScenes(t *testing.T) {
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		s := d.Solution(t)
		for i, step := range s.Plan {
			sum := step.Sums[0]
			scene := figure.OfSum(s.Assembly, sum, nil, figure.Options{Style: d.Style})
			where := filepath.Base(file) + ", step " + scene.Title
			if got, want := faded(scene), idle(s, sum); got != want {
				t.Errorf("%s (%d): %d arrows and couples are faded, not %d", where, i+1, got, want)
			}
			marks := slices.ContainsFunc(scene.Symbols, func(k figure.Symbol) bool {
				return k.Kind == figure.CentreSymbol && k.At == figure.Position{X: sum.About.X.Float(), Y: sum.About.Y.Float()}
			})
			if marks != sum.Moment {
				t.Errorf("%s: a centre is marked: %v", where, marks)
			}
			for _, x := range sum.Terms() {
				if sum.Moment && x.Why == statics.Counts && x.What != statics.TurnOnly && !hasArm(scene, x.Arm.Float()) {
					t.Errorf("%s: no arm is %v long", where, x.Arm)
				}
			}
		}
	}
}

// faded counts what of the unknowns is faded.
func faded(s figure.Scene) int {
	n := 0
	for _, k := range s.Arrows {
		if k.Emphasis == figure.Faded && k.Role == figure.UnknownForce {
			n++
		}
	}
	for _, k := range s.Symbols {
		if k.Emphasis == figure.Faded && k.Role == figure.UnknownForce {
			n++
		}
	}
	return n
}

// idle counts the unknowns that cross the cut of a sum and have no term that counts.
func idle(s *statics.Solution, sum statics.Sum) int {
	n := 0
	for _, i := range s.ForcesOn(sum.Body) {
		sign, _ := s.Facing(sum.Body, i)
		counts := slices.ContainsFunc(sum.Terms(), func(t statics.Term) bool { return t.Force == i && t.Why == statics.Counts })
		if sign != 0 && !counts {
			n++
		}
	}
	return n
}

// hasArm reports whether a dimension or a fine line of that length is drawn.
func hasArm(s figure.Scene, length float64) bool {
	near := func(x float64) bool { return math.Abs(x-length) < 1e-9*(1+length) }
	return slices.ContainsFunc(s.Dimensions, func(k figure.Dimension) bool { return near(k.To - k.From) }) ||
		slices.ContainsFunc(s.Guides, func(k figure.Stroke) bool { return near(math.Hypot(k.To.X-k.From.X, k.To.Y-k.From.Y)) })
}

// TestMotionScenes: a support holds in the figure as it does in the frame: a pinned joint does not move, and what a roller
// holds moves along the ground only.
func TestMotionScenes(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("testdata", "motions", "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatal("no motions")
	}
	for _, file := range files {
		d, _, _ := figuretest.Load(t, file)
		a := d.Cut(t)
		for _, m := range a.Motions() {
			scene := figure.OfMotion(a, m, figure.Options{Style: d.Style})
			if len(scene.Guides) == 0 {
				t.Errorf("%s: nothing moves", file)
			}
			for _, k := range a.Frame.Supports {
				checkHeld(t, strings.TrimSuffix(filepath.Base(file), ".txt"), a, scene, k)
			}
		}
	}
}

func checkHeld(t *testing.T, file string, a *statics.Assembly, scene figure.Scene, k statics.Support) {
	at := figure.Position{X: a.Frame.Joints[k.Joint].At.X.Float(), Y: a.Frame.Joints[k.Joint].At.Y.Float()}
	moved := map[figure.Position]figure.Position{}
	for i, g := range scene.Guides { // in the order of the members, if all move
		if len(scene.Guides) == len(scene.Strokes) {
			moved[scene.Strokes[i].From], moved[scene.Strokes[i].To] = g.From, g.To
		}
	}
	to, ok := moved[at]
	if !ok {
		return
	}
	dx, dy := to.X-at.X, to.Y-at.Y
	if k.Kind == statics.Pinned && math.Hypot(dx, dy) > 1e-9 || k.Kind == statics.Roller && math.Abs(dx*k.Along.X.Float()+dy*k.Along.Y.Float()) > 1e-9 {
		t.Errorf("%s: the support at %v moves by (%v, %v)", file, at, dx, dy)
	}
}
