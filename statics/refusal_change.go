package statics

import "slices"

// A ChangeKind is one way to alter how a frame is held.
type ChangeKind int

// The kinds of change. Those before ThroughAt take a hold away, those from there to FixedAt add some, the others
// exchange one for another. Of each sort the usual ones come first.
const (
	PinForFixed    ChangeKind = iota // a pin support in place of a fixed one
	HingeAt                          // a pin for all members at a joint, or for one of them
	RollerForPin                     // a roller in place of a pin support
	NoRoller                         // no support where a roller is
	RollerForGuide                   // a roller in place of a guide
	GuideForFixed                    // a guide in place of a fixed support
	ThroughAt                        // at a pin of three members or more, each two that lie in one line joined as one bar that passes through
	PinForRoller                     // a pin support in place of a roller
	PinForSlot                       // a pin in place of a slot
	RigidAt                          // no pin, slot or sleeve: the members joined rigidly
	FixedForPin                      // a fixed support in place of a pin support
	FixedForGuide                    // a fixed support in place of a guide
	RollerAt                         // a roller where there is no support
	PinAt                            // a pin support where there is none
	FixedAt                          // a fixed support where there is none
	PinForSleeve                     // a pin in place of a sleeve
	PinForGuide                      // a pin support in place of a guide
	TurnedRoller                     // a roller that acts in another direction
	MovedJoint                       // a joint somewhere else
)

// A Change is one alteration of a frame at a joint.
type Change struct {
	Kind   ChangeKind
	Joint  int
	Member int    // HingeAt: the one member hinged, or None: all of them
	Along  Vector // of a new roller or guide, the direction in which it acts; MovedJoint: how far it is moved
}

// With is the frame with a change made; what was given is not altered.
func (f *Frame) With(c Change) Frame {
	g := *f
	switch c.Kind {
	case HingeAt:
		g.Connections = append(slices.Clone(f.Connections), f.hinged(c.Joint, c.Member))
	case RigidAt:
		g.Connections = slices.DeleteFunc(slices.Clone(f.Connections), func(k Connection) bool { return k.Joint == c.Joint })
	case ThroughAt:
		g.connect(f.through(c.Joint))
	case PinForSlot, PinForSleeve:
		k, _ := f.connectionAt(c.Joint)
		k.Kind, k.Along = Pin, Vector{}
		g.connect(k)
	case RollerAt, PinAt, FixedAt:
		g.Supports = append(slices.Clone(f.Supports), Support{Joint: c.Joint, Kind: c.support(), Along: c.Along, On: None})
	case NoRoller:
		g.Supports = slices.DeleteFunc(slices.Clone(f.Supports), func(s Support) bool { return s.Joint == c.Joint })
	case MovedJoint:
		g.Joints = slices.Clone(f.Joints)
		g.Joints[c.Joint].At = g.Joints[c.Joint].At.Plus(c.Along)
	default:
		g.Supports = slices.Clone(f.Supports)
		if s := supportAt(g.Supports, c.Joint); s != nil {
			s.Kind, s.Along = c.support(), c.Along
		}
	}
	return g
}

// holds is how many motions of the frame the change prevents, if each of its holds prevents one.
func (f *Frame) holds(c Change) int {
	switch c.Kind {
	case ThroughAt:
		return len(f.ThroughBars(c.Joint))
	case PinAt:
		return 2
	case FixedAt:
		return 3
	}
	return 1
}

// support is the kind of support that the change puts in place of another.
func (c Change) support() SupportKind {
	switch c.Kind {
	case PinForFixed, PinForRoller, PinForGuide, PinAt:
		return Pinned
	case FixedForPin, FixedForGuide, FixedAt:
		return Fixed
	case GuideForFixed:
		return Guide
	}
	return Roller
}

// hinged is a pin at joint j that hinges one member, or None: all of them. What a support there holds against turning
// stays the piece of the first.
func (f *Frame) hinged(j, member int) Connection {
	c := Connection{Joint: j, Kind: Pin, Main: None}
	var rest []int
	for m, x := range f.Members {
		switch {
		case x.From != j && x.To != j:
		case member == None || m == member:
			c.Pieces = append(c.Pieces, []int{m})
		default:
			rest = append(rest, m)
		}
	}
	if len(rest) > 0 {
		c.Main = len(c.Pieces)
		c.Pieces = append(c.Pieces, rest)
	}
	return c
}

// connectionAt is the connection at a joint.
func (f *Frame) connectionAt(joint int) (Connection, bool) {
	for _, c := range f.Connections {
		if c.Joint == joint {
			return c, true
		}
	}
	return Connection{}, false
}

// connect puts a connection in place of the one at its joint; the list of connections is not shared any more.
func (f *Frame) connect(c Connection) {
	f.Connections = slices.Clone(f.Connections)
	for i := range f.Connections {
		if f.Connections[i].Joint == c.Joint {
			f.Connections[i] = c
		}
	}
}

// supportAt is the support at a joint, or nil.
func supportAt(all []Support, joint int) *Support {
	for i := range all {
		if all[i].Joint == joint {
			return &all[i]
		}
	}
	return nil
}
