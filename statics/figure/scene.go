package figure

import "math"

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
	ResultantMark      // the resultant of a distributed load
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
	Title      string   // one line, for a reader who cannot see the figure
	Parts      []Scene  // bodies that are drawn apart from one another, each where it stands in the frame; then nothing else is set but Title and Faces
	Faces      []Face   // where parts were one before they were cut
	Guides     []Stroke // fine lines: arms, lines of action, members that have moved
	Strokes    []Stroke
	Wheels     []Wheel
	Symbols    []Symbol
	Spreads    []Spread
	Arrows     []Arrow
	Dimensions []Dimension
	Curves     []Curve
	Notes      []Note
	Legend     []string            // lines beneath the figure
	Names      map[string]Symbolic // how print sets the names of the forces in it
	Letters    string              // those that stand for a quantity in its labels, where they stand alone: print sets them italic
}

// IsApart reports whether a scene shows bodies apart from one another.
func (s Scene) IsApart() bool { return len(s.Parts) > 0 }

// IsPin reports whether a scene shows a pin alone, without a member, perhaps with a wheel on it.
func (s Scene) IsPin() bool { return len(s.Strokes) == 0 }

// MostScale is the largest scale that a scene should be drawn to, in steps a unit of length, where a wheel is to fill no more than
// so many: that of a pin with a wheel, which would else fill the figure.
func (s Scene) MostScale(steps float64) float64 {
	most := math.Inf(1)
	for _, w := range s.Wheels {
		if s.IsPin() && w.Radius > 0 {
			most = min(most, steps/w.Radius)
		}
	}
	return most
}

// CountArrows is the number of arrows, in parts as well.
func (s Scene) CountArrows() int {
	n := len(s.Arrows)
	for _, k := range s.Parts {
		n += len(k.Arrows)
	}
	return n
}

// IsLevel reports whether all members lie in one level line, as those of a beam do.
func (s Scene) IsLevel() bool {
	if s.IsApart() {
		return false
	}
	for _, k := range s.Strokes {
		if k.From.Y != s.Strokes[0].From.Y || k.To.Y != k.From.Y {
			return false
		}
	}
	return true
}
