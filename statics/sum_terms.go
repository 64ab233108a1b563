package statics

import (
	"slices"

	"unpin/statics/exact"
)

// ForceSum is the sum of the forces on b along a direction, which is not zero.
func (a *Assembly) ForceSum(b FreeBody, along Vector) Sum {
	return Sum{Body: b, Along: along, Centre: None, terms: &terms{of: a}}
}

// MomentSum is the sum of the moments on b about a point.
func (a *Assembly) MomentSum(b FreeBody, about Point) Sum {
	return a.momentSum(b, about, a.JointAt(about))
}

// momentSum is MomentSum about a point of which it is known which joint it is.
func (a *Assembly) momentSum(b FreeBody, about Point, centre int) Sum {
	return Sum{Body: b, Moment: true, About: about, Centre: centre, terms: &terms{of: a}}
}

// Turn is the assembly with the positive sense of force i turned round. Sums of one hold signs that those of the other
// do not.
func (a *Assembly) Turn(i int) *Assembly {
	turned := *a
	turned.Forces = slices.Clone(a.Forces)
	f := &turned.Forces[i]
	f.Along, f.Turned = f.Along.Neg(), !f.Turned
	return &turned
}

// A writing is the terms of a sum in the making.
type writing struct {
	sum    Sum
	length exact.Num // of the direction of a sum of forces
	all    []Term
}

// write gives a sum a term for everything that acts on its body (S5). It begins with its giver, its place, its direction and its size.
func (a *Assembly) write(s Sum) []Term {
	forces, actions := a.ForcesOn(s.Body), a.ActionsOn(s.Body)
	w := writing{sum: s, length: s.Along.Length(), all: make([]Term, 0, len(forces)+len(actions))}
	for _, i := range forces {
		f := &a.Forces[i]
		sign, _ := a.Facing(s.Body, i)
		at := f.Joint
		if f.Kind == MemberPull && sign < 0 {
			at = f.Far
		}
		w.all = append(w.all, Term{Force: i, Action: None, At: a.Frame.Joints[at].At, Toward: f.Along, Size: one, Arm: one})
		t := &w.all[len(w.all)-1]
		if sign == 0 {
			t.Why, t.Size = InsideBody, exact.Num{}
			continue
		}
		if f.Couple {
			t.What = TurnOnly
			if f.Turned {
				sign = -sign
			}
		}
		t.reverse(sign)
		w.finish(t)
	}
	for _, i := range actions {
		x := &a.Actions[i]
		w.all = append(w.all, Term{Force: None, Action: i, At: x.At, Toward: x.Along, Size: x.Size.Abs(), Arm: one})
		t := &w.all[len(w.all)-1]
		if x.Shape == Turning {
			t.What = TurnOnly
		}
		t.reverse(x.Size.Sign())
		w.finish(t)
	}
	return w.all
}

// finish finishes the last term, as two where a force is taken by components.
func (w *writing) finish(t *Term) {
	if !w.sum.Moment {
		t.push(w.sum.Along, w.length)
		return
	}
	if from := w.sum.About.To(t.At); t.turn(from) {
		second := *t
		t.component(Horizontal, from)
		second.component(Vertical, from)
		w.all = append(w.all, second)
	}
}

// reverse gives a bare term its sense.
func (t *Term) reverse(sign int) {
	t.Sign = sign
	if sign < 0 && t.What != TurnOnly {
		t.Toward = t.Toward.Neg()
	}
}

// push finishes the term of a force in a sum along a direction of that length.
func (t *Term) push(along Vector, length exact.Num) {
	if t.What == TurnOnly {
		t.absent(NoPush)
		return
	}
	share := t.Toward.Dot(along)
	if share.IsZero() {
		t.absent(SquareTo)
		return
	}
	t.Sign = share.Sign()
	t.Size = over(t.Size.Mul(share.Abs()), t.Toward.Length().Mul(length))
}

// absent says why the term has no part in its sum.
func (t *Term) absent(why Absence) { t.Why, t.Sign, t.Size = why, 0, exact.Num{} }

// turn finishes the term of a force or couple in a sum of moments; from leads from the centre to where it acts. It
// reports whether the force must be taken by components: it neither stands along an axis nor perpendicular to that line.
func (t *Term) turn(from Vector) bool {
	if t.What == TurnOnly {
		return false
	}
	t.Sign = from.Cross(t.Toward).Sign()
	switch {
	case t.Sign == 0:
		t.Why, t.Arm = ThroughCentre, exact.Num{}
	case t.Toward.X.IsZero():
		t.Arm = from.X.Abs()
	case t.Toward.Y.IsZero():
		t.Arm = from.Y.Abs()
	case from.Dot(t.Toward).IsZero():
		t.Arm = acrossArm(from, t.Toward)
	default:
		return true
	}
	return false
}

// acrossArm is the length of a line to a force that is perpendicular to it. Where the place of the force is irrational, as
// at a distance along a member of length √10, the length may be no number of the exact set; as the moment of the unit
// force it is (S8 would not hold otherwise).
func acrossArm(from, force Vector) exact.Num {
	if length := from.Length(); !length.Inexact() {
		return length
	}
	return over(from.Cross(force).Abs(), force.Length())
}

// component leaves of a force in a sum of moments one component.
func (t *Term) component(what Component, from Vector) {
	length := t.Toward.Length()
	share, arm := Vector{X: t.Toward.X}, from.Y
	size := share.X
	if what == Vertical {
		share, arm = Vector{Y: t.Toward.Y}, from.X
		size = share.Y
	}
	t.What, t.Toward = what, share
	t.Size = over(t.Size.Mul(size.Abs()), length)
	t.Arm, t.Sign = arm.Abs(), from.Cross(share).Sign()
	if t.Sign == 0 {
		t.Why = ThroughCentre
	}
}
