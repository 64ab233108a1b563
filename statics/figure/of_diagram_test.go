package figure_test

import (
	"math"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
	"unpin/statics/notation"
)

// TestCurves holds each curve against the sections of its member: every value that is written, and every ordinate, on the
// side it belongs to. M must stand on the side that it stretches.
func TestCurves(t *testing.T) {
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		if d.Style.Units.Letters() {
			continue
		}
		d.Style.Figures = 8
		s := d.Solution(t)
		for _, q := range []figure.InternalForce{figure.AxialForce, figure.ShearForce, figure.BendingMoment} {
			scene := figure.OfDiagram(s, q, nil, figure.Options{Style: d.Style})
			for _, c := range scene.Curves {
				checkCurve(t, filepath.Base(file), s, q, c)
			}
		}
	}
}

func checkCurve(t *testing.T, file string, s *statics.Solution, q figure.InternalForce, c figure.Curve) {
	m := slices.IndexFunc(s.Frame.Members, func(k statics.Member) bool {
		return point(s, k.From) == c.From && point(s, k.To) == c.To
	})
	g := s.Diagrams[m]
	length := math.Hypot(c.To.X-c.From.X, c.To.Y-c.From.Y)
	along := figure.Direction{X: (c.To.X - c.From.X) / length, Y: (c.To.Y - c.From.Y) / length}
	left := along.X*c.Side.Y - along.Y*c.Side.X // +1 if the side is on the left of the member
	if want := c.Side.Y > 0 || c.Side.Y == 0 && c.Side.X < 0; q != figure.BendingMoment && !want {
		t.Errorf("%s: %s of %s stands below", file, q.Letter(), s.Frame.Members[m].Name)
	}
	if q == figure.BendingMoment && math.Abs(left+1) > 1e-9 {
		t.Errorf("%s: positive M of %s does not stand on its right", file, s.Frame.Members[m].Name)
	}
	for _, v := range c.Values {
		text := strings.ReplaceAll(v.Text, "−", "-")
		if shown, err := strconv.ParseFloat(text, 64); err != nil || !occurs(g, q, v.Along*g.Length.Float(), shown) {
			t.Errorf("%s: %s of %s is not %s at %.3f of it", file, q.Letter(), s.Frame.Members[m].Name, v.Text, v.Along)
		}
	}
}

func point(s *statics.Solution, j int) figure.Position {
	at := s.Frame.Joints[j].At
	return figure.Position{X: at.X.Float(), Y: at.Y.Float()}
}

// occurs reports whether the quantity has that value at x, as the piece before or after it has it.
func occurs(g statics.Diagram, q figure.InternalForce, x, value float64) bool {
	at := exact.MustParse(strconv.FormatFloat(x, 'f', 9, 64))
	return slices.ContainsFunc(g.Stretches, func(p statics.Stretch) bool {
		in := p.At(at)
		got := [...]exact.Num{in.N, in.V, in.M}[q].Float()
		return p.From.Float() < x+1e-6 && p.Until.Float() > x-1e-6 && math.Abs(got-value) < 1e-5*(1+math.Abs(value))
	})
}

// TestConventions: the options turn the sign of V, and the side of M without its sign.
func TestConventions(t *testing.T) {
	d, _, _ := figuretest.Load(t, filepath.Join("testdata", "portal.txt"))
	s := d.Solution(t)
	plain, turned := figure.Options{Style: d.Style}, figure.Options{Style: d.Style}
	turned.Style.Shear, turned.Style.Side = notation.CounterClockwiseShear, notation.CompressionSide
	for i, c := range figure.OfDiagram(s, figure.ShearForce, nil, plain).Curves {
		o := figure.OfDiagram(s, figure.ShearForce, nil, turned).Curves[i]
		if o.Side != c.Side || o.Values[0].Value != -c.Values[0].Value {
			t.Errorf("V of member %d: %+v, reversed %+v", i, c, o)
		}
	}
	for i, c := range figure.OfDiagram(s, figure.BendingMoment, nil, plain).Curves {
		o := figure.OfDiagram(s, figure.BendingMoment, nil, turned).Curves[i]
		if o.Side.X != -c.Side.X || o.Side.Y != -c.Side.Y || o.Values[0] != c.Values[0] {
			t.Errorf("M of member %d: %+v, on the other side %+v", i, c, o)
		}
	}
}

// TestSomeMembers: only the members asked for have curves, and at the scale of all.
func TestSomeMembers(t *testing.T) {
	d, _, _ := figuretest.Load(t, filepath.Join("testdata", "portal.txt"))
	s, o := d.Solution(t), figure.Options{Style: d.Style, LitMembers: []int{1}}
	all, one := figure.OfDiagram(s, figure.BendingMoment, nil, o), figure.OfDiagram(s, figure.BendingMoment, []int{1}, o)
	if len(one.Curves) != 1 || one.Curves[0].Emphasis != figure.Lit || !slices.Equal(one.Curves[0].Ordinates, all.Curves[1].Ordinates) {
		t.Errorf("member 1 alone is %+v", one.Curves)
	}
	if none := figure.OfDiagram(s, figure.BendingMoment, []int{}, o); len(none.Curves) > 0 || len(none.Strokes) != 3 {
		t.Errorf("no member has %+v", none.Curves)
	}
}
