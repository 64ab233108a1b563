package figuretest

import "unpin/statics/figure"

// A Piece is a scene of one or two things, for a look at how a medium draws each.
type Piece struct {
	Name  string
	Scene figure.Scene
}

// beam is a level member from x = 0 to 6 and a place on it.
var (
	beam   = figure.Stroke{To: figure.Position{X: 6}, Look: figure.Look{Role: figure.MemberLine}}
	middle = figure.Position{X: 3}
	down   = figure.Direction{Y: -1}
	right  = figure.Direction{X: 1}
	sloped = figure.Direction{X: 0.6, Y: -0.8}
)

// Pieces are one scene for each kind of thing and for each way in which it may stand.
func Pieces() []Piece {
	list := []Piece{
		{"member", figure.Scene{}},
		{"sloping member", figure.Scene{Strokes: []figure.Stroke{{To: figure.Position{X: 4, Y: 3}, Look: beam.Look}}}},
		{"members that cross", figure.Scene{Strokes: []figure.Stroke{{From: figure.Position{X: 3, Y: -1}, To: figure.Position{X: 3, Y: 1}, Look: beam.Look}}}},
		{"motion", figure.Scene{Guides: []figure.Stroke{{To: figure.Position{X: 6, Y: 1}, Look: figure.Look{Role: figure.MotionMark}}}}},
		{"arm", figure.Scene{Guides: []figure.Stroke{{To: figure.Position{X: 6, Y: 1}, Look: figure.Look{Role: figure.DimensionMark}}}}},
		{"names", figure.Scene{Notes: []figure.Note{name("A", 0), name("B", 6)}}},
		{"legend", figure.Scene{Legend: []string{"M in kN m", "+ tension below"}}},
	}
	list = append(list, symbolPieces()...)
	list = append(list, forcePieces()...)
	list = append(list, loadPieces()...)
	list = append(list, measuredPieces()...)
	list = append(list, pulleyPieces()...)
	for i := range list {
		if s := &list[i].Scene; len(s.Strokes) == 0 || s.Strokes[0].To.X == 3 {
			s.Strokes = append([]figure.Stroke{beam}, s.Strokes...)
		}
	}
	return list
}

func name(text string, x float64) figure.Note {
	return figure.Note{At: figure.Position{X: x}, Text: text, Look: figure.Look{Role: figure.NameMark}}
}

// symbolPieces are the supports, lying, upright and inclined, and what joins members.
func symbolPieces() []Piece {
	kinds := []struct {
		name string
		kind figure.SymbolKind
		role figure.Role
		ways []figure.Direction
	}{
		{"pinned support", figure.PinnedSupport, figure.SupportMark, []figure.Direction{down, right}},
		{"fixed support", figure.FixedSupport, figure.SupportMark, []figure.Direction{down, right}},
		{"roller", figure.RollerSupport, figure.SupportMark, []figure.Direction{down, right, sloped}},
		{"guide", figure.GuideSupport, figure.SupportMark, []figure.Direction{down, right, sloped}},
		{"pin on the joint", figure.PinSymbol, figure.PinMark, []figure.Direction{{}}},
		{"pin beside the joint", figure.PinSymbol, figure.PinMark, []figure.Direction{right}},
		{"slot", figure.SlotSymbol, figure.PinMark, []figure.Direction{right, down}},
		{"sleeve", figure.SleeveSymbol, figure.PinMark, []figure.Direction{right}},
		{"centre", figure.CentreSymbol, figure.CentreMark, []figure.Direction{{}}},
		{"couple counter-clockwise", figure.TurnLeft, figure.KnownForce, []figure.Direction{{Y: 1}}},
		{"couple clockwise", figure.TurnRight, figure.UnknownForce, []figure.Direction{{Y: 1}}},
	}
	way := map[figure.Direction]string{down: " down", right: " right", sloped: " inclined"}
	var list []Piece
	for _, k := range kinds {
		for _, v := range k.ways {
			s := figure.Symbol{Kind: k.kind, At: middle, Toward: v, Look: figure.Look{Role: k.role}}
			if k.role == figure.SupportMark && v == right { // the beam ends there
				s.At = figure.Position{X: 6}
			}
			if k.role == figure.KnownForce || k.role == figure.UnknownForce {
				s.Text = "MA 5 kN m"
			}
			list = append(list, Piece{k.name + way[v], figure.Scene{Symbols: []figure.Symbol{s}}})
		}
	}
	return list
}

// forcePieces are arrows of each sense of knowledge, that push and that pull.
func forcePieces() []Piece {
	arrow := func(toward figure.Direction, pull bool, role figure.Role) figure.Scene {
		return figure.Scene{
			Arrows: []figure.Arrow{{At: middle, Toward: toward, Pull: pull, Text: "By", Look: figure.Look{Role: role}}},
			Names:  map[string]figure.Symbolic{"By": {Letter: "B", Index: "y"}},
		}
	}
	lit := arrow(down, false, figure.KnownForce)
	lit.Arrows[0].Emphasis = figure.Lit
	beside := arrow(right, false, figure.LoadMark)
	beside.Arrows[0].Beside = figure.Direction{Y: 1}
	return []Piece{
		{"known force", arrow(down, false, figure.KnownForce)},
		{"assumed force", arrow(down, false, figure.UnknownForce)},
		{"assumed force that pulls", arrow(down, true, figure.UnknownForce)},
		{"load", arrow(down, false, figure.LoadMark)},
		{"load up", arrow(down.Opposite(), false, figure.LoadMark)},
		{"inclined load", arrow(sloped, false, figure.LoadMark)},
		{"resultant", arrow(down, false, figure.ResultantMark)},
		{"lit force", lit},
		{"load beside its member", beside},
	}
}

// loadPieces are distributed loads.
func loadPieces() []Piece {
	load := func(toward figure.Direction, first, last float64) figure.Spread {
		return figure.Spread{To: beam.To, Toward: toward, First: first, Last: last, Look: figure.Look{Role: figure.LoadMark}}
	}
	even, rising := load(down, 1, 1), load(down, 0, 1)
	even.MidText, rising.LastText = "4 kN/m", "6 kN/m"
	above := load(down, 0.5, 0.5)
	above.On = []int{0}
	lifted := even
	lifted.Projected, lifted.To = true, figure.Position{X: 3}
	turned := load(down, 1, -1)
	piece := func(name string, list ...figure.Spread) Piece { return Piece{name, figure.Scene{Spreads: list}} }
	return []Piece{
		piece("uniform load", even),
		piece("triangular load", rising),
		piece("load on a load", even, above),
		piece("load on a projection", lifted),
		piece("load that changes sense", turned),
		piece("load along the member", load(right, 1, 1)),
		piece("inclined distributed load", load(sloped, 1, 1)),
	}
}

// pulleyPieces are ropes over pulleys at the end of the beam.
func pulleyPieces() []Piece {
	left := right.Opposite()
	pulley := func(radius float64, ends, out [2]figure.Direction) figure.Scene {
		rope := figure.Look{Role: figure.LoadMark}
		w := figure.Wheel{At: beam.To, Radius: radius, Ends: ends, Out: out, Look: figure.Look{Role: figure.PinMark}, Rope: rope}
		s := figure.Scene{Wheels: []figure.Wheel{w}}
		for i, end := range ends {
			s.Arrows = append(s.Arrows, figure.Arrow{At: w.Rim(out[i]), Toward: end, Pull: true, Text: "12 kN", Look: rope, Rope: radius > 0, Hub: beam.To})
		}
		return s
	}
	over := [2]figure.Direction{down, left}
	up := figure.Direction{Y: 1}
	return []Piece{
		{"small pulley", pulley(0.3, over, [2]figure.Direction{right, up})},
		{"large pulley", pulley(0.9, over, [2]figure.Direction{right, up})},
		{"pulley without a radius", pulley(0, over, [2]figure.Direction{})},
		{"rope that runs back", pulley(0.6, [2]figure.Direction{up, up}, [2]figure.Direction{left, right})},
		{"inclined rope", pulley(0.5, [2]figure.Direction{sloped, left}, [2]figure.Direction{{X: 0.8, Y: 0.6}, up})},
	}
}

// measuredPieces are dimensions, and a diagram with its values.
func measuredPieces() []Piece {
	dimension := func(from, to float64, text string) figure.Dimension {
		return figure.Dimension{From: from, To: to, Text: text + " m", Short: text, Meaning: text + " m across"}
	}
	upright := dimension(0, 2, "2")
	upright.Vertical = true
	curve := figure.Curve{
		To: beam.To, Side: down, Look: figure.Look{Role: figure.DiagramMark},
		Ordinates: []figure.Ordinate{{}, {Along: 0.5, Value: 1}, {Along: 1, Value: -0.5}},
		Values:    []figure.CurveValue{{Ordinate: figure.Ordinate{Along: 0.5, Value: 1}, Text: "12"}, {Ordinate: figure.Ordinate{Along: 1, Value: -0.5}, Text: "−6"}},
	}
	tall := figure.Stroke{From: beam.To, To: figure.Position{X: 6, Y: 2}, Look: beam.Look}
	return []Piece{
		{"long dimensions", figure.Scene{Dimensions: []figure.Dimension{dimension(0, 3, "3"), dimension(3, 6, "3")}}},
		{"a short one among them", figure.Scene{Dimensions: []figure.Dimension{dimension(0, 0.25, "0.25"), dimension(0.25, 6, "5.75")}}},
		{"upright dimension", figure.Scene{Strokes: []figure.Stroke{beam, tall}, Dimensions: []figure.Dimension{upright}}},
		{"diagram", figure.Scene{Curves: []figure.Curve{curve}}},
	}
}
