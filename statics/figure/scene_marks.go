package figure

import "math"

// A Symbolic is a force's name as print sets it.
type Symbolic struct{ Letter, Index string }

// A Stroke is a straight member.
type Stroke struct {
	From, To Position
	Look
	Slope Slope
}

// A Slope is how an inclined line lies, as two small whole numbers; zero where the line is level or upright or no such numbers
// say it.
type Slope struct{ Across, Up string }

// IsZero reports whether there is no slope to show.
func (s Slope) IsZero() bool { return s.Across == "" }

// String is the slope as it stands in a label: "3:4", across to up.
func (s Slope) String() string { return s.Across + ":" + s.Up }

// A Face is a place at which two of the parts of a scene, by index, were one before a cut.
type Face struct {
	At   Position
	A, B int
}

// A SymbolKind is a drawing convention for something at a point.
type SymbolKind int

// The symbols.
const (
	PinSymbol     SymbolKind = iota // a small circle
	SlotSymbol                      // a peg in a slot along Toward
	SleeveSymbol                    // a sleeve along Toward
	PinnedSupport                   // a triangle on the ground
	FixedSupport                    // built into the ground
	RollerSupport                   // a wheel on the ground
	GuideSupport                    // a plate on wheels
	TurnLeft                        // a couple, counter-clockwise
	TurnRight                       // a couple, clockwise
	CentreSymbol                    // a centre of moments, or of a turn
)

// A Symbol is something at a point.
type Symbol struct {
	Kind   SymbolKind
	At     Position
	Toward Direction // support: to the ground. pin: the side of the joint it lies on, or zero. slot, sleeve: its line. couple: the side on which it stands if its point is taken
	Aside  Direction // of a support that has no room on its joint: where it stands beside it, on a lug; else none
	Text   string    // a value or note, or none
	Look
	Slope Slope // of a support's reaction
}

// An Arrow is a force at a point.
type Arrow struct {
	At     Position
	Toward Direction // its sense
	Pull   bool      // the tail stands at the point; otherwise the head does
	Beside Direction // not zero where a member runs both ways along the arrow: it stands on this side of it
	Text   string
	Look
	Slope Slope
	Rope  bool     // a pull of a rope: it leaves a wheel at its point, or stands at the wheel's middle where the wheel has no radius
	Hub   Position // of a rope, the middle of its wheel
}

// A Wheel is a pulley. Where it has a radius, arrows of its rope stand on its rim.
type Wheel struct {
	At     Position
	Radius float64      // in the frame's unit of length; 0 where it is not given, and the wheel only a symbol
	Ends   [2]Direction // in which the rope leaves
	Out    [2]Direction // from the middle to where it leaves, one for each end; none where the wheel has no radius
	Look
	Rope Look
}

// Rim is a point on the rim of a wheel.
func (w Wheel) Rim(out Direction) Position {
	return Position{w.At.X + w.Radius*out.X, w.At.Y + w.Radius*out.Y}
}

// Lap are directions from the middle of a wheel along the arc on which its rope lies, so many steps from end to end.
func (w Wheel) Lap(steps int) []Direction {
	first := math.Atan2(w.Out[0].Y, w.Out[0].X)
	turn := math.Remainder(math.Atan2(w.Out[1].Y, w.Out[1].X)-first, 2*math.Pi)
	if math.Abs(turn) > math.Pi-1e-6 && turned(first+turn/2).Dot(w.Ends[0]) > 0 { // both ends run the same way
		turn = -turn
	}
	var lap []Direction
	for i := range steps + 1 {
		lap = append(lap, turned(first+turn*float64(i)/float64(steps)))
	}
	return lap
}

// turned is the direction at an angle from the x axis.
func turned(angle float64) Direction { return Direction{math.Cos(angle), math.Sin(angle)} }

// Circle are directions all round, so many of them.
func Circle(n int) []Direction {
	var all []Direction
	for i := range n {
		all = append(all, turned(2*math.Pi*float64(i)/float64(n)))
	}
	return all
}

// A Spread is a load along a straight line: the member itself, or the projection on which its intensity is counted.
type Spread struct {
	From, To    Position
	Toward      Direction // the sense of a positive intensity
	First, Last float64   // at From and To; 1 is the greatest intensity in the scene
	Projected   bool      // From and To are a projection, which stands free of the member and is drawn
	Pull        bool      // its arrows leave the line instead of meeting it
	On          []int     // spread loads of the scene on which this one stands
	FirstText   string    // beside From, or none
	LastText    string    // beside To, or none
	MidText     string    // beside the middle, or none
	Look
}

// A Dimension is a distance between two places along one axis. Dimensions that meet end to end form a chain.
type Dimension struct {
	Vertical bool
	From, To float64 // along the axis, From < To
	Level    int     // the line on which it stands, 0 the nearest to the figure
	Text     string  // with its unit
	Short    string  // without, where the line is short
	Meaning  string  // in words, where there is no room to draw it: "A to B 4.5 m"
}

// A Note is text that belongs to a point: a joint's name, or a remark.
type Note struct {
	At   Position
	Text string
	Look
}

// A Curve is an internal force along a member, drawn perpendicular to it.
type Curve struct {
	From, To  Position
	Side      Direction  // the side on which positive values stand
	Ordinates []Ordinate // along the member; straight lines join them, and two at one place are a step
	Values    []CurveValue
	Look
}

// An Ordinate is a value of a curve: where on the member, from 0 to 1, and how large, 1 being the greatest in the scene.
type Ordinate struct{ Along, Value float64 }

// A CurveValue is a value written beside a curve.
type CurveValue struct {
	Ordinate
	Text string
}

// Outward is the direction in which a load of positive intensity stands off its line.
func (s Spread) Outward() Direction {
	if s.Pull {
		return s.Toward
	}
	return s.Toward.Opposite()
}
