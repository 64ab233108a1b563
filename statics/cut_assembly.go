package statics

import "unpin/statics/exact"

// An Assembly is a frame cut at its pins: the bodies, the forces between them and the ground, and the loads on each.
// Bodies are numbered with the parts first, in file order of their first members, then the pins, in file order.
type Assembly struct {
	Frame   Frame
	Parts   []Part
	Pins    []PinBody
	Forces  []Force  // the unknowns, in file order of their joints
	Actions []Action // what the loads do to the bodies, a load that runs on over members of one part in line taken together

	axes      []axes         // of each member
	trees     []tree         // of each part
	outer     []int          // of each member, the end at which the walk over its part reached a new joint, or None
	places    places         // of the joints
	lines     []lineOfAction // of the forces
	forcesOn  [][]int        // forces that touch each body
	actionsOn [][]int        // actions on each body

	pieces   []Action // what the loads do, each member's stretch for itself
	piecesOn [][]int  // pieces on each body
}

// A Part is a rigid piece of the frame.
type Part struct {
	Name    string // its joints in walking order, ABC; or if it branches its first member and a plus, AC+
	Members []int
	Joints  []int // in walking order where it does not branch
	Inner   int   // unknowns hidden in its rings: 3 a ring, less what each connection of the part to itself releases
	Ring    []int // those of its members that lie on a ring
}

// A PinBody is a pin that is a free body of its own.
type PinBody struct {
	Name  string // "pin C"
	Joint int
}

// A ForceKind tells where an unknown comes from.
type ForceKind int

// The kinds of unknown.
const (
	Reaction   ForceKind = iota // of the ground on a body
	PinForce                    // of one part on another through a pin, slot or sleeve
	PinOnPart                   // of a pin that is a body of its own, on a part
	MemberPull                  // of a two-force member, tension positive
	CutForce                    // N, V or M where a member is cut, on the piece that is kept
)

// A Force is one unknown: a force along a line, or a couple. Its value is positive along Along (a couple:
// counter-clockwise) as it acts on the body On; the body By, if it is not the ground, receives the opposite.
type Force struct {
	Name   string // Ax, MA, RD, Cy, Cy.CDE, SC, F_BD
	Kind   ForceKind
	Joint  int // where it acts on On
	Far    int // of a member's pull, where it acts on By
	Couple bool
	Turned bool   // its positive sense is turned round: a couple's clockwise, a member's pull compression
	Along  Vector // unscaled; zero for a couple
	On     int    // body
	By     int    // body, or None: the ground
}

// An ActionShape is the simple shape of an action, which fixes where its resultant acts.
type ActionShape int

// The shapes of an action.
const (
	AtPoint     ActionShape = iota
	Turning                 // a couple
	Uniform                 // its resultant acts at the middle
	RisingRamp              // a triangle, zero at its start: its resultant acts at two thirds
	FallingRamp             // a triangle, zero at its end: its resultant acts at one third
)

// Spread reports whether an action of the shape lies along a member.
func (s ActionShape) Spread() bool { return s != AtPoint && s != Turning }

// An Action is what a load, or one simple shape of it, does to one body: a resultant force at a point, or a couple. A
// trapezoid comes as a uniform and a triangle, a load that changes sense as two triangles.
type Action struct {
	Load  int   // index into Frame.Loads
	Loads []int // of a load that runs on over members in line, all of them, as it goes from Start to End, with Load among them; else nil
	Body  int
	Shape ActionShape
	Size  exact.Num // along Along, or a couple counter-clockwise; may be negative
	Along Vector    // unscaled
	At    Point

	// A spread action's stretch of its member, from the member's start (where it runs on, beyond the member's ends), and the intensity of its uniform or of its
	// triangle's tall end, in the load's own terms (Per as given there).
	Start, End, Intensity exact.Num
}
