package statics

import "unpin/statics/exact"

// A Point is a place in the plane, in the frame's unit of length.
type Point struct{ X, Y exact.Num }

// A Vector is a direction or a force. As a direction its length has no meaning.
type Vector struct{ X, Y exact.Num }

// A Frame is what a problem describes, as plain data. Joints, members and loads refer to each other by index.
type Frame struct {
	Joints      []Joint
	Members     []Member
	Connections []Connection // one at most for each joint; where there is none, all members are rigidly joined
	Supports    []Support    // one at most for each joint
	Loads       []Load
}

// A Joint is a named point at which members end.
type Joint struct {
	Name string
	At   Point
}

// A Member is a straight bar between two joints. Distances along it run from From.
type Member struct {
	Name     string
	From, To int
}

// A ConnectionKind says what the pieces at a joint can do to each other.
type ConnectionKind int

// The kinds of connection.
const (
	Pin    ConnectionKind = iota // pieces turn freely on each other; two force components pass
	Slot                         // a peg in a slot: the free piece turns and slides along a line; one force perpendicular to it passes
	Sleeve                       // the free piece slides along a line but does not turn; one force and a couple pass
)

// A Connection is a joint at which the members do not all move as one.
type Connection struct {
	Joint  int
	Kind   ConnectionKind
	Pieces [][]int // the members meeting here, grouped into rigid pieces
	Main   int     // the piece that was not named as hinged or free, or None if all were; a slot or sleeve always has one
	Along  Vector  // slot, sleeve: the line of sliding
}

// A SupportKind says what a support can exert.
type SupportKind int

// The kinds of support.
const (
	Pinned SupportKind = iota // two force components
	Fixed                     // two force components and a couple
	Roller                    // one force along Along, in either sense
	Guide                     // one force along Along, in either sense, and a couple; it slides perpendicular to Along
)

// A Support holds the frame to the ground at a joint.
type Support struct {
	Joint int
	Kind  SupportKind
	Along Vector // roller, guide
	On    int    // the member whose piece it holds, or None: the pin itself, or the piece that is not hinged
}

// A LoadKind is the shape of a load.
type LoadKind int

// The kinds of load.
const (
	PointLoad LoadKind = iota
	CoupleLoad
	SpreadLoad
	RopeLoad // a rope over a wheel on a joint: two pulls
)

// A Per says what length the intensity of a distributed load is counted on.
type Per int

// The bases of an intensity.
const (
	PerLength Per = iota // the member's own length
	PerRun               // its horizontal projection
	PerRise              // its vertical projection
)

// A Load is a given force, couple, distributed load or rope over a wheel, on one member or at one joint.
type Load struct {
	Kind   LoadKind
	Entry  int       // which entry of the problem it stems from; a load over several members shares one
	Size   exact.Num // force along Along, couple (counter-clockwise positive), or a rope's tension; unused for a distributed load
	Along  Vector    // the direction of a force or distributed load
	Joint  int       // the joint it acts at, or None
	Member int       // the member it acts on; with a joint, the member whose piece carries it, or None: the pin itself
	At     exact.Num // point, couple on a member: the distance from the member's start

	// A distributed load runs straight from intensity First at distance Start to Last at End, all seen from the member's start.
	First, Last exact.Num
	Start, End  exact.Num
	Per         Per

	// A rope leaves its wheel along Along and along Second.
	Second Vector
	Radius exact.Num // of the wheel; 0 where both pulls are taken to act at the joint itself
}
