package paper_test

import (
	"math"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
	"unpin/statics/figure/paper"
)

// given is the sheet of the frame of a problem.
func given(t *testing.T, name string, width, height float64) paper.Sheet {
	t.Helper()
	return paper.Layout(figuretest.Given(t, name), width, height)
}

// label is where the first label with that text stands.
func label(t *testing.T, s paper.Sheet, text string) figure.Drawn {
	t.Helper()
	for _, d := range s.Drawn {
		if d.Kind == figure.DrawnLabel && d.Text == text {
			return d
		}
	}
	t.Fatalf("%s has no label %q", s.Title, text)
	return figure.Drawn{}
}

// fromLabel is the distance of a place from a label.
func fromLabel(d figure.Drawn, at figure.Position) float64 {
	return math.Hypot(max(d.From.X-at.X, at.X-d.To.X, 0), max(d.From.Y-at.Y, at.Y-d.To.Y, 0))
}

// TestValuesAtCorners: where two diagrams meet at a corner their values are not changed for one another. In the stage lift the
// mast has M = 73 on its right, the platform, which begins there, 82 on its underside: both stand right of the mast and beneath
// the platform, and 73 nearer to the mast. In the hillside garage the 12 of the wall's V stands beneath the beam.
func TestValuesAtCorners(t *testing.T) {
	t.Parallel()
	for _, wide := range []float64{227, 470} {
		sheet := paper.Layout(figuretest.Diagram(t, "stage-lift", figure.BendingMoment), wide, wide*0.92)
		mast, platform := math.Inf(1), 0.0
		for _, d := range sheet.Drawn {
			switch level := d.From.Y == d.To.Y; {
			case d.Kind == figure.DrawnMember && level:
				platform = d.From.Y
			case d.Kind == figure.DrawnMember:
				mast = min(mast, d.From.X)
			}
		}
		of, on := label(t, sheet, "73"), label(t, sheet, "82")
		if of.From.X < mast || on.From.X < mast || of.From.Y < platform || on.From.Y < platform || of.From.X > on.From.X {
			t.Errorf("%.0f points wide: mast at %.0f, platform at %.0f, 73 at %.0f, 82 at %.0f", wide, mast, platform, of.From, on.From)
		}
	}
	sheet := paper.Layout(figuretest.Diagram(t, "hillside-garage", figure.ShearForce), 227, 210)
	for _, d := range sheet.Drawn {
		if k := label(t, sheet, "12"); d.Kind == figure.DrawnMember && d.From.Y == d.To.Y && k.From.Y < d.From.Y {
			t.Errorf("12 of the wall stands at %.0f, the beam at %.0f", k.From.Y, d.From.Y)
		}
	}
}

// TestNamesByTheirJoints: a load half a metre above joint B of the flood board does not take its name: B stands nearer to the end
// of the two members than to where the load acts.
func TestNamesByTheirJoints(t *testing.T) {
	t.Parallel()
	for _, tall := range []float64{180, 220, 420} {
		sheet := given(t, "flood-board", 470, tall)
		ends := map[figure.Position]int{}
		var load figure.Position
		for _, d := range sheet.Drawn {
			switch {
			case d.Kind == figure.DrawnMember:
				ends[d.From]++
				ends[d.To]++
			case d.Kind == figure.DrawnArrow && d.Text == "4 kN":
				load = d.At
			}
		}
		name, shared := label(t, sheet, "B"), 0
		for at, n := range ends {
			if n < 2 {
				continue
			}
			if shared++; fromLabel(name, at) > fromLabel(name, load) {
				t.Errorf("%.0f points tall: B stands %.1f off its joint and %.1f off the load", tall, fromLabel(name, at), fromLabel(name, load))
			}
		}
		if shared != 1 || load == (figure.Position{}) {
			t.Errorf("%d shared ends, load at %v", shared, load)
		}
	}
}

// TestLeadersMissLabels: no thin line from a label runs through another, nor through the numbers of a slope, in the frames of the
// library as given, and in their N, V and M: in the frame of the ferry ramp one ran through 1 kN/m, in the M of the net loft one
// through 56/5 PL.
func TestLeadersMissLabels(t *testing.T) {
	t.Parallel()
	count := 0
	for _, name := range problems.Names() {
		for _, tall := range []float64{110, 150, 220} {
			count += missLabels(t, name, given(t, name, 470, tall))
		}
		for q := range 3 {
			for _, wide := range []float64{227, 470} {
				count += missLabels(t, name, paper.Layout(figuretest.Diagram(t, name, figure.InternalForce(q)), wide, wide*0.92))
			}
		}
	}
	if count < 100 {
		t.Errorf("only %d lines", count)
	}
}

// missLabels holds the lines from labels on a sheet against all labels, and counts them.
func missLabels(t *testing.T, name string, sheet paper.Sheet) int {
	t.Helper()
	lines := leaders(sheet)
	for _, m := range lines {
		for _, d := range sheet.Drawn {
			if d.Kind == figure.DrawnLabel && crossesLabel(m.Path[0], m.Path[1], d) {
				t.Errorf("%s, %.0f by %.0f points: a line runs through %q", name, sheet.Width, sheet.Height, d.Text)
			}
		}
	}
	return len(lines)
}

// leaders are the lines from labels to what they belong to.
func leaders(sheet paper.Sheet) []paper.Mark {
	var all []paper.Mark
	for _, m := range sheet.Marks {
		if len(m.Path) == 2 && m.Weight == 0.5 && !m.Dashed && m.Line == leaderInk {
			all = append(all, m)
		}
	}
	return all
}

// TestValueAcrossMember: a value that stands on the other side of a member than its curve has a line to it. In the N of the grain chute
// the −34 of the prop stands beside the floor, whose own N is −14.
func TestValueAcrossMember(t *testing.T) {
	t.Parallel()
	sheet := paper.Layout(figuretest.Diagram(t, "grain-chute", figure.AxialForce), 227, 210)
	stands := label(t, sheet, "−34")
	for _, m := range leaders(sheet) {
		if fromLabel(stands, figure.Position(m.Path[0])) < 0.1 {
			return
		}
	}
	t.Errorf("no line leads from −34, which stands from %v to %v", stands.From, stands.To)
}

// TestRootsInFigures: an exact value with a root stands in a figure as in the tables, and the letter that a legend begins with is set as
// a symbol though a comma follows it.
func TestRootsInFigures(t *testing.T) {
	t.Parallel()
	sheet := paper.Layout(figuretest.Diagram(t, "net-loft", figure.BendingMoment), 227, 210)
	label(t, sheet, "8√6/3 PL")
	for _, m := range sheet.Marks {
		if len(m.Text) > 1 && strings.HasPrefix(m.Text[1].Text, ", drawn") && m.Text[0].Text == "M" && m.Text[0].Italic {
			return
		}
	}
	t.Error("no legend begins with the symbol M")
}

// leaderInk is the grey of lines from labels.
const leaderInk paper.Ink = 0x767676

// crossesLabel reports whether some point of a line lies clearly within a label.
func crossesLabel(a, b paper.Place, d figure.Drawn) bool {
	const rim, steps = 1.5, 60
	for i := range steps + 1 {
		t := float64(i) / steps
		x, y := a.X+(b.X-a.X)*t, a.Y+(b.Y-a.Y)*t
		if x > d.From.X+rim && x < d.To.X-rim && y > d.From.Y+rim && y < d.To.Y-rim {
			return true
		}
	}
	return false
}

// TestLettersInFigures: what stands for a quantity is italic in figures as in the text around them: P and L of a problem in
// letters, r of a pulley; units, names of joints and words are upright.
func TestLettersInFigures(t *testing.T) {
	t.Parallel()
	for _, k := range []struct{ name, text, italic string }{
		{"landing-stage", "5/2 P", "P"}, {"landing-stage", "2 P/L", "P L"}, {"landing-stage", "PL/2 ccw", "PL"}, {"landing-stage", "3/2 L", "L"},
		{"fly-loft", "r = 0.75 ft", "r"}, {"fly-loft", "55 lb, 5 ft from E", ""}, {"kiln-portal", "L", "L"},
	} {
		found := false
		for _, m := range given(t, k.name, 470, 300).Marks {
			whole, italic := "", []string{}
			for _, r := range m.Text {
				if whole += r.Text; r.Italic {
					italic = append(italic, r.Text)
				}
			}
			if whole != k.text {
				continue
			}
			found = true
			if got := strings.Join(italic, " "); got != k.italic {
				t.Errorf("%s: of %q %q is italic, not %q", k.name, k.text, got, k.italic)
			}
		}
		if !found {
			t.Errorf("%s has no label %q", k.name, k.text)
		}
	}
}

// TestLaddersAreStraight: where near joints are held apart a straight line of members stays straight: in the small figure of a key the
// ladders of step-ladders were bent at the pins of the chain.
func TestLaddersAreStraight(t *testing.T) {
	t.Parallel()
	lines := 0
	for _, name := range problems.Names() {
		scene := figuretest.Given(t, name)
		for _, wide := range []float64{227, 470} {
			sheet := paper.Layout(scene, wide, wide*0.8)
			var drawn []figure.Drawn
			for _, d := range sheet.Drawn {
				if d.Kind == figure.DrawnMember {
					drawn = append(drawn, d)
				}
			}
			for i, k := range scene.Strokes {
				for j, o := range scene.Strokes {
					if k.To != o.From || bend(k.From, k.To, o.To) > 1e-6 {
						continue
					}
					if lines++; bend(drawn[i].From, drawn[i].To, drawn[j].To) > 0.1 {
						t.Errorf("%s, %.0f points wide: members %d and %d are bent", name, wide, i, j)
					}
				}
			}
		}
	}
	if lines < 40 {
		t.Errorf("only %d straight lines", lines)
	}
}

// bend is the angle, in radians, by which the way over three points turns.
func bend(a, b, c figure.Position) float64 {
	turn := math.Atan2(c.Y-b.Y, c.X-b.X) - math.Atan2(b.Y-a.Y, b.X-a.X)
	return math.Abs(math.Remainder(turn, 2*math.Pi))
}
