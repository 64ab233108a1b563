package figure

// A Point is a place in the frame, in its unit of length, y upward.
type Point struct{ X, Y float64 }

// A Vector is a direction in the frame, of length 1, or nought where a field says so.
type Vector struct{ X, Y float64 }

// A Role says what a mark means. The screen gives it a colour, paper a line weight.
type Role uint8

// The roles.
const (
	Blank         Role = iota
	MemberLine         // a member of the frame
	PinMark            // a pin, slot or sleeve
	SupportMark        // what holds the frame, and its note
	GroundMark         // the hatch of the ground
	LoadMark           // a given load, and its value
	KnownForce         // a force whose value is known
	UnknownForce       // a force with an assumed sense
	ReversedForce      // what the other part receives at a pin
	DimensionMark      // a dimension line and its number
	NameMark           // the name of a joint
	KeyMark            // a number that stands for a label, and the key that explains it
	DiagramMark        // the curve of an internal force, and its values
	DiagramHatch       // the strokes from a curve to its member
	ResultantMark      // the resultant of a spread load
	CentreMark         // the centre of a sum of moments, or of a turn
	MotionMark         // how a frame moves
)

// An Emphasis sets a mark off from its like.
type Emphasis uint8

// The emphases.
const (
	Plain Emphasis = iota
	Lit            // what is being asked about
	Faded          // has no part in the sum at hand
)

// A Look is what a mark means and how it is set off.
type Look struct {
	Role     Role
	Emphasis Emphasis
}

// A Scene is what a figure shows. Later items stand above earlier ones where they meet.
type Scene struct {
	Title      string // one line, for a reader who cannot see the figure
	Links      []Link
	Guides     []Stroke // fine lines: arms, lines of action, members that have moved
	Strokes    []Stroke
	Symbols    []Symbol
	Spreads    []Spread
	Arrows     []Arrow
	Dimensions []Dimension
	Curves     []Curve
	Notes      []Note
	Legend     []string            // lines beneath the figure
	Names      map[string]Symbolic // how print sets the names of the forces in it
}

// IsLevel reports whether all members lie in one level line, as those of a beam do.
func (s Scene) IsLevel() bool {
	for _, k := range s.Strokes {
		if k.From.Y != s.Strokes[0].From.Y || k.To.Y != k.From.Y {
			return false
		}
	}
	return true
}

// A Stroke is a straight member.
type Stroke struct {
	From, To Point
	Look
}

// A Link joins two places that were one before a cut.
type Link struct{ From, To Point }

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
	At     Point
	Toward Vector // support: to the ground. pin: the side of the joint it lies on, or nought. slot, sleeve: its line. couple: the side on which it stands if its point is taken
	Text   string // a value or note, or none
	Look
}

// An Arrow is a force at a point.
type Arrow struct {
	At     Point
	Toward Vector // its sense
	Pull   bool   // the tail stands at the point; otherwise the head does
	Beside Vector // not nought where a member runs both ways along the arrow: it stands on this side of it
	Text   string
	Look
}

// A Spread is a load along a straight line: the member itself, or the projection on which its intensity is counted.
type Spread struct {
	From, To    Point
	Toward      Vector  // the sense of a positive intensity
	First, Last float64 // at From and To; 1 is the greatest intensity in the scene
	Projected   bool    // From and To are a projection, which stands free of the member and is drawn
	Pull        bool    // its arrows leave the line instead of meeting it
	On          []int   // spread loads of the scene on which this one stands
	FirstText   string  // beside From, or none
	LastText    string  // beside To, or none
	MidText     string  // beside the middle, or none
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
	At   Point
	Text string
	Look
}

// A Curve is an internal force along a member, drawn square to it.
type Curve struct {
	From, To  Point
	Side      Vector     // the side on which positive values stand
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
