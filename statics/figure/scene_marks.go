package figure

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
