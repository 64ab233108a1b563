package statics

import (
	"slices"
)

// A FreeBody is the bodies inside one cut, in rising order.
type FreeBody []int

// Has reports whether the body numbered i is inside the cut.
func (b FreeBody) Has(i int) bool {
	if len(b) == 1 {
		return b[0] == i
	}
	_, found := slices.BinarySearch(b, i)
	return found
}

// Whole is the free body of all parts and pins.
func (a *Assembly) Whole() FreeBody {
	b := make(FreeBody, a.Bodies())
	for i := range b {
		b[i] = i
	}
	return b
}

// Bodies is the number of parts and pins.
func (a *Assembly) Bodies() int { return len(a.Parts) + len(a.Pins) }

// BodyName is the name of a part or pin.
func (a *Assembly) BodyName(i int) string {
	if i < len(a.Parts) {
		return a.Parts[i].Name
	}
	return a.Pins[i-len(a.Parts)].Name
}

// IsPin reports whether body i is a pin, which has no moment sum.
func (a *Assembly) IsPin(i int) bool { return i >= len(a.Parts) }

// joint is the pin's joint, or the first of a part's.
func (a *Assembly) joint(b int) int {
	if a.IsPin(b) {
		return a.Pins[b-len(a.Parts)].Joint
	}
	return a.Parts[b].Joints[0]
}

// jointsOf lists the joints of the bodies in b, in file order.
func (a *Assembly) jointsOf(b FreeBody) []int {
	var joints []int
	for _, i := range b {
		if a.IsPin(i) {
			joints = append(joints, a.joint(i))
		} else {
			joints = append(joints, a.Parts[i].Joints...)
		}
	}
	slices.Sort(joints)
	return slices.Compact(joints)
}

// Facing is how force i acts on a free body: +1 as named, −1 reversed, 0 if both its faces are inside the cut or both
// outside (S2). The second result tells whether the cut touches it at all.
func (a *Assembly) Facing(b FreeBody, i int) (sign int, touches bool) {
	f := &a.Forces[i]
	on, by := b.Has(f.On), f.By != None && b.Has(f.By)
	switch {
	case on && by:
		return 0, true
	case on:
		return 1, true
	case by:
		return -1, true
	}
	return 0, false
}

// across is the body, or None for the ground, on the other side of force i.
func (a *Assembly) across(i, body int) int {
	if f := &a.Forces[i]; f.On != body {
		return f.On
	}
	return a.Forces[i].By
}

// PartOf is the part that a member belongs to, or None: then it is of a two-force member, which WithPulls left out.
func (a *Assembly) PartOf(member int) int {
	return slices.IndexFunc(a.Parts, func(p Part) bool { return contains(p.Members, member) })
}

// ForcesOn lists the unknowns with at least one face inside the cut, in order.
func (a *Assembly) ForcesOn(b FreeBody) []int { return a.gather(b, a.forcesOn, len(a.Forces)) }

// ActionsOn lists what the loads do to the bodies inside the cut, in order.
func (a *Assembly) ActionsOn(b FreeBody) []int { return a.gather(b, a.actionsOn, len(a.Actions)) }

// gather lists what is on the bodies inside the cut, out of so many in all.
func (a *Assembly) gather(b FreeBody, lists [][]int, all int) []int {
	switch len(b) {
	case 1:
		return lists[b[0]]
	case a.Bodies():
		return upTo(all)
	}
	found := newMarks(all)
	for _, i := range b {
		for _, x := range lists[i] {
			found.set(x)
		}
	}
	return found.list()
}

// facesOf lists the forces that have one face inside the cut.
func (a *Assembly) facesOf(b FreeBody) []int {
	if len(b) == 1 { // no force has both its faces on one body
		return a.forcesOn[b[0]]
	}
	one := newMarks(len(a.Forces))
	for _, i := range b {
		for _, x := range a.forcesOn[i] {
			one.turn(x)
		}
	}
	return one.list()
}

// index notes where the joints are and which unknowns and actions touch each body, in rising order (S3).
func (a *Assembly) index() {
	a.places = newPlaces(a.Frame.Joints)
	a.lines = a.places.linesOf(a.Forces)
	a.forcesOn = lists(a.Bodies(), func(tell func(body, force int)) {
		for i := range a.Forces {
			f := &a.Forces[i]
			tell(f.On, i)
			if f.By != None {
				tell(f.By, i)
			}
		}
	})
	a.actionsOn = byBody(a.Actions, a.Bodies())
	if a.piecesOn = a.actionsOn; slices.ContainsFunc(a.Actions, func(x Action) bool { return x.Loads != nil }) {
		a.piecesOn = byBody(a.pieces, a.Bodies())
	}
}

// byBody lists the actions on each of so many bodies.
func byBody(actions []Action, bodies int) [][]int {
	return lists(bodies, func(tell func(body, action int)) {
		for i := range actions {
			tell(actions[i].Body, i)
		}
	})
}

// JointAt is the joint at a point, or None; of several the first.
func (a *Assembly) JointAt(p Point) int { return a.places.joint(a.places.ranksOf(&p)) }

// ofOneForce reports whether two unknowns are components of one force.
func (a *Assembly) ofOneForce(forces []int) bool {
	f, g := &a.Forces[forces[0]], &a.Forces[forces[1]]
	return !f.Couple && !g.Couple && f.Joint == g.Joint && f.On == g.On && f.By == g.By
}

// isFoot reports whether a support stands at a joint.
func (a *Assembly) isFoot(joint int) bool {
	return joint != None && slices.ContainsFunc(a.Frame.Supports, func(s Support) bool { return s.Joint == joint })
}

// restsFreely reports whether the body has a pinned or roller support, and none that holds it against turning.
func (a *Assembly) restsFreely(b int) bool {
	var reactions, couples int
	for _, i := range a.forcesOn[b] {
		if f := &a.Forces[i]; f.Kind == Reaction {
			reactions++
			if f.Couple {
				couples++
			}
		}
	}
	return reactions > 0 && couples == 0
}
