package figure_test

import (
	"flag"
	"fmt"
	"math"
	"strings"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

var update = flag.Bool("update", false, "rewrite the lists of scenes in testdata")

// TestScenes lists what the scenes of some frames hold, one thing a line: what it is, where, which way, and what is said.
func TestScenes(t *testing.T) {
	t.Parallel()
	var names []string
	text := map[string]string{}
	add := func(name string, s figure.Scene) {
		names = append(names, name)
		text[name] = list(s)
	}
	for _, frame := range []string{"portal", "gable", "slots", "supports", "wind", "bracket"} {
		d, _, _ := figuretest.Load(t, "testdata/"+frame+".txt")
		for _, scene := range []string{"given", "whole", "solved whole", "apart", "V", "M", "sum 1"} {
			add(frame+", "+scene, d.Scene(t, strings.Fields(scene), false))
		}
	}
	d, _, _ := figuretest.Load(t, "testdata/portal.txt")
	add("portal, outline BC", d.Scene(t, []string{"outline", "BC"}, false))
	add("portal, axes BC", d.Scene(t, []string{"axes", "BC", "NVM"}, false))
	s := d.Solution(t)
	add("portal, kept BC 2.4 after start", d.Scene(t, []string{"kept", "BC", "2.4", "after", "start"}, false))
	found := map[int]figure.Growth{0: {Stretches: []bool{true}}, 1: {Places: s.Diagrams[1].Stations()[:1]}, 2: {Stretches: []bool{true}}}
	add("portal, N so far", figure.OfDiagramSoFar(s, figure.AxialForce, found, figure.Options{Style: d.Style}))
	for _, frame := range []string{"sway", "rollers"} {
		d, _, _ := figuretest.Load(t, "testdata/motions/"+frame+".txt")
		add(frame+", motion", d.Scene(t, []string{"motion", "1"}, false))
	}
	figuretest.Golden(t, "testdata/scenes/list.txt", *update, names, text)
}

// list lists what a scene holds.
func list(s figure.Scene) string {
	var b strings.Builder
	line := func(l figure.Look, form string, a ...any) {
		fmt.Fprintf(&b, "%s%s%s\n", roles[l.Role], [...]string{"", ", lit", ", faded"}[l.Emphasis], fmt.Sprintf(": "+form, a...))
	}
	fmt.Fprintf(&b, "title: %s\n", s.Title)
	for _, k := range s.Parts {
		b.WriteString(list(k))
	}
	for _, k := range s.Faces {
		fmt.Fprintf(&b, "face: %s of %d and %d\n", place(k.At), k.A, k.B)
	}
	for _, k := range s.Guides {
		line(k.Look, "guide %s to %s", place(k.From), place(k.To))
	}
	for _, k := range s.Strokes {
		line(k.Look, "%s to %s", place(k.From), place(k.To))
	}
	for _, k := range s.Symbols {
		line(k.Look, "%s at %s toward %s %q", symbolNames[k.Kind], place(k.At), way(k.Toward), k.Text)
	}
	for _, k := range s.Spreads {
		line(k.Look, "%s to %s toward %s, %s to %s, projected %t, on %v %q %q %q",
			place(k.From), place(k.To), way(k.Toward), short(k.First), short(k.Last), k.Projected, k.On, k.FirstText, k.MidText, k.LastText)
	}
	for _, k := range s.Arrows {
		line(k.Look, "arrow at %s toward %s, pulls %t, beside %s %q", place(k.At), way(k.Toward), k.Pull, way(k.Beside), k.Text)
	}
	for _, k := range s.Dimensions {
		line(figure.Look{Role: figure.DimensionMark}, "upright %t, %s to %s, line %d %q %q %q", k.Vertical, short(k.From), short(k.To), k.Level, k.Text, k.Short, k.Meaning)
	}
	for _, k := range s.Curves {
		line(k.Look, "%s to %s, side %s,%s%s", place(k.From), place(k.To), way(k.Side), ordinates(k), values(k))
	}
	for _, k := range s.Notes {
		line(k.Look, "%s %q", place(k.At), k.Text)
	}
	for _, l := range s.Legend {
		fmt.Fprintf(&b, "legend: %s\n", l)
	}
	return b.String()
}

var roles = map[figure.Role]string{
	figure.MemberLine: "member", figure.PinMark: "pin", figure.SupportMark: "support", figure.LoadMark: "load", figure.KnownForce: "known",
	figure.UnknownForce: "assumed", figure.ReversedForce: "reversed", figure.DimensionMark: "dimension", figure.NameMark: "name",
	figure.DiagramMark: "diagram", figure.ResultantMark: "resultant", figure.CentreMark: "centre", figure.MotionMark: "motion",
}

var symbolNames = map[figure.SymbolKind]string{
	figure.PinSymbol: "pin", figure.SlotSymbol: "slot", figure.SleeveSymbol: "sleeve", figure.PinnedSupport: "pinned", figure.FixedSupport: "fixed",
	figure.RollerSupport: "roller", figure.GuideSupport: "guide", figure.TurnLeft: "counter-clockwise", figure.TurnRight: "clockwise",
	figure.CentreSymbol: "centre",
}

// short is a number to three decimals, without a sign if it is zero.
func short(x float64) string {
	return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.3f", math.Round(x*1000)/1000+0), "0"), ".")
}

func place(p figure.Position) string { return short(p.X) + "," + short(p.Y) }

func way(v figure.Direction) string {
	if v.IsZero() {
		return "none"
	}
	return short(v.X) + "," + short(v.Y)
}

// ordinates are those of a curve, every one of up to five, else each fourth.
func ordinates(c figure.Curve) string {
	step, text := 1, ""
	if len(c.Ordinates) > 5 {
		step = 4
	}
	for i := 0; i < len(c.Ordinates); i += step {
		text += " " + short(c.Ordinates[i].Along) + "=" + short(c.Ordinates[i].Value)
	}
	return text
}

func values(c figure.Curve) string {
	text := ""
	for _, v := range c.Values {
		text += fmt.Sprintf(" %q at %s", v.Text, short(v.Along))
	}
	return text
}
