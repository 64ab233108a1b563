package paper_test

import (
	"flag"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
	"unpin/statics/figure/paper"
)

// TestNeverFalse holds every figure of the library, and of frames with crossing bars, rings, slots, sleeves and pins of many
// parts, and of the published cases, to the rules of figuretest on paper. A plain run takes every third.
func TestNeverFalse(t *testing.T) {
	t.Parallel()
	unfit := 0
	for i, k := range figuretest.OfProblems(t, false, "../testdata/frames/*.yaml", published) {
		if !*whole && i%3 > 0 || testing.Short() && i%9 > 0 {
			continue
		}
		sheet := paper.Layout(k.Scene, 470, 420)
		if !sheet.Fits {
			sheet = paper.Layout(k.Scene, 470, 690)
		}
		for size := 1.2; !sheet.Fits && !k.Scene.IsApart() && size < 2; size *= 1.2 { // as an image of its own it may be larger
			sheet = paper.Layout(k.Scene, 470*size, 690*size)
		}
		if !sheet.Fits {
			if unfit++; !k.Scene.IsApart() {
				t.Errorf("%s does not fit", k.Name)
			}
			continue
		}
		for _, fault := range figuretest.Paper.Violations(sheet.Drawn) {
			t.Errorf("%s: %s", k.Name, fault)
		}
	}
	t.Logf("%d of parts apart do not fit a page", unfit)
}

// TestApartAtAnyHeight holds the parts of each problem of the library to the same rules at heights that a document may give them,
// of those at which they say they fit. A plain run takes every third.
func TestApartAtAnyHeight(t *testing.T) {
	t.Parallel()
	fit := 0
	for i, k := range figuretest.ApartOfLibrary(t) {
		if !*whole && i%3 != 1 && k.Name != "log-buck" && k.Name != "step-ladders" { // these two were false once
			continue
		}
		for tall := 160.0; tall <= 340; tall += 30 {
			sheet := paper.Layout(k.Scene, 470, tall)
			if !sheet.Fits {
				continue
			}
			fit++
			for _, fault := range figuretest.Paper.Violations(sheet.Drawn) {
				t.Errorf("%s, %.0f points tall: %s", k.Name, tall, fault)
			}
		}
	}
	if fit < 50 {
		t.Errorf("only %d fit", fit)
	}
}

// TestRandomNeverFalse holds the figures of random frames, sound or not, of up to ten members with crossings, slots, sleeves
// and pins of several parts, to the same rules.
func TestRandomNeverFalse(t *testing.T) {
	t.Parallel()
	fit, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		for _, s := range figuretest.RandomScenes(t, false) {
			sheet := paper.Layout(s, 470, 690)
			if all++; !sheet.Fits {
				continue
			}
			fit++
			if faults := figuretest.Paper.InAnyFrame(sheet.Drawn); len(faults) > 0 {
				t.Fatalf("%s: %v", s.Title, faults)
			}
		}
	})
	t.Logf("%d of %d fit", fit, all)
	if fit < all*8/10 {
		t.Errorf("only %d of %d figures fit a page", fit, all)
	}
}

const published = "../../../testdata/cases/published.json"

// whole asks for all of what a plain run takes a sample of.
var whole = flag.Bool("whole", false, "hold all figures to the rules, not a sample")

// TestRopeBetweenPulleys: where a rope runs from one pulley of a frame to another, its two pulls stand between them, at any size
// at which the figure fits; past the other pulley each would seem to act there.
func TestRopeBetweenPulleys(t *testing.T) {
	t.Parallel()
	pairs := 0
	for _, k := range figuretest.OfProblems(t, false) {
		if !strings.HasPrefix(k.Name, "fly-loft") {
			continue
		}
		for _, width := range []float64{160, 220, 300, 470} {
			sheet := paper.Layout(k.Scene, width, 420)
			for _, a := range sheet.Drawn {
				for _, b := range sheet.Drawn {
					facing := a.Kind == figure.DrawnArrow && b.Kind == figure.DrawnArrow && a.Text == b.Text && a.To.X > a.From.X && b.To.X < b.From.X &&
						math.Abs(a.To.Y-a.From.Y) < 1 && math.Abs(a.At.Y-b.At.Y) < 1 && a.At.X < b.At.X
					if !facing {
						continue
					}
					if pairs++; a.To.X > b.To.X {
						t.Errorf("%s, %.0f wide: the pulls of a rope from %.0f to %.0f reach to %.0f and %.0f", k.Name, width, a.At.X, b.At.X, a.To.X, b.To.X)
					}
				}
			}
		}
	}
	if pairs < 8 {
		t.Errorf("only %d pairs", pairs)
	}
}

// TestForceBesideLoad: where a load acts close to a pin, no force of the pin is drawn beyond the load's arrow, as if it acted there.
func TestForceBesideLoad(t *testing.T) {
	t.Parallel()
	forces := 0
	for _, k := range figuretest.OfProblems(t, false) {
		if !strings.HasPrefix(k.Name, "step-ladders") {
			continue
		}
		sheet := paper.Layout(k.Scene, 470, 420)
		for _, a := range sheet.Drawn {
			if a.Kind != figure.DrawnArrow || !strings.HasPrefix(a.Text, "D") {
				continue
			}
			forces++
			end := a.To
			if math.Hypot(a.From.X-a.At.X, a.From.Y-a.At.Y) < math.Hypot(end.X-a.At.X, end.Y-a.At.Y) {
				end = a.From
			}
			way := figure.Drawn{From: a.At, To: end}
			for _, b := range sheet.Drawn {
				if b.Kind == figure.DrawnArrow && strings.HasPrefix(b.Text, "60") && way.Gap(b, 1) == 0 {
					t.Errorf("%s: %s stands between %s and its point", k.Name, b.Text, a.Text)
				}
			}
		}
	}
	if forces < 8 {
		t.Errorf("only %d forces", forces)
	}
}
