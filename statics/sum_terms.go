package statics

import (
	"slices"

	"unpin/statics/exact"
)

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

// Facing is how force i acts on a free body: +1 as named, −1 reversed, 0 if both its faces are inside the cut or both
// outside. The second result tells whether the cut touches it at all.
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

// ForcesOn lists the unknowns with at least one face inside the cut, in order.
func (a *Assembly) ForcesOn(b FreeBody) []int { return a.gather(b, a.forcesOn, len(a.Forces)) }

// ActionsOn lists what the loads do to the bodies inside the cut, in order.
func (a *Assembly) ActionsOn(b FreeBody) []int { return a.gather(b, a.actionsOn, len(a.Loads)) }

// gather lists what is on the bodies inside the cut, out of so many in all.
func (a *Assembly) gather(b FreeBody, lists [][]int, all int) []int {
	switch len(b) {
	case 1:
		return lists[b[0]]
	case a.Bodies():
		return upTo(all)
	}
	found, n := make([]bool, all), 0
	for _, i := range b {
		for _, x := range lists[i] {
			if !found[x] {
				found[x] = true
				n++
			}
		}
	}
	return marked(found, n)
}

// upTo lists the numbers from 0 to n − 1.
func upTo(n int) []int {
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	return all
}

// index notes where the joints are and which unknowns and actions touch each body.
func (a *Assembly) index() {
	a.places = newPlaces(a.Frame.Joints)
	a.forcesOn = lists(a.Bodies(), func(tell func(body, force int)) {
		for i := range a.Forces {
			f := &a.Forces[i]
			tell(f.On, i)
			if f.By != None {
				tell(f.By, i)
			}
		}
	})
	a.actionsOn = lists(a.Bodies(), func(tell func(body, action int)) {
		for i := range a.Loads {
			tell(a.Loads[i].Body, i)
		}
	})
}

// ForceSum is the sum of the forces on b along a direction, which is not zero.
func (a *Assembly) ForceSum(b FreeBody, along Vector) Sum {
	s := Sum{Body: b, Along: along, Centre: None}
	length := along.Length()
	a.collect(&s, func(t *Term) { t.push(along, length) })
	return s
}

// MomentSum is the sum of the moments on b about a point.
func (a *Assembly) MomentSum(b FreeBody, about Point) Sum {
	return a.momentSum(b, about, a.JointAt(about))
}

// momentSum is MomentSum about a point of which it is known which joint it is.
func (a *Assembly) momentSum(b FreeBody, about Point, centre int) Sum {
	s := Sum{Body: b, Moment: true, About: about, Centre: centre}
	a.collect(&s, func(t *Term) {
		if from := about.To(t.At); t.turn(from) {
			second := *t
			t.component(Horizontal, from)
			second.component(Vertical, from)
			s.Terms = append(s.Terms, second)
		}
	})
	return s
}

// JointAt is the joint at a point, or None; of several the first.
func (a *Assembly) JointAt(p Point) int { return a.places.at(p) }

// Turn is the assembly with the positive sense of force i turned round. Sums of one hold signs that those of the other
// do not.
func (a *Assembly) Turn(i int) *Assembly {
	turned := *a
	turned.Forces = slices.Clone(a.Forces)
	f := &turned.Forces[i]
	f.Along, f.Turned = f.Along.Neg(), !f.Turned
	return &turned
}

// Again is a sum of this assembly made anew as a sum of another with the same bodies.
func (s Sum) Again(a *Assembly) Sum {
	if s.Moment {
		return a.MomentSum(s.Body, s.About)
	}
	return a.ForceSum(s.Body, s.Along)
}

// collect gives s a term for everything that acts on its body, and has it finished. It begins with its giver, its place,
// its direction and its size.
func (a *Assembly) collect(s *Sum, finish func(*Term)) {
	forces, actions := a.ForcesOn(s.Body), a.ActionsOn(s.Body)
	s.Terms = make([]Term, 0, len(forces)+len(actions))
	for _, i := range forces {
		f := &a.Forces[i]
		sign, _ := a.Facing(s.Body, i)
		at := f.Joint
		if f.Kind == MemberPull && sign < 0 {
			at = f.Far
		}
		s.Terms = append(s.Terms, Term{Force: i, Action: None, At: a.Frame.Joints[at].At, Toward: f.Along, Size: one, Arm: one})
		t := &s.Terms[len(s.Terms)-1]
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
		finish(t)
	}
	for _, i := range actions {
		x := &a.Loads[i]
		s.Terms = append(s.Terms, Term{Force: None, Action: i, At: x.At, Toward: x.Along, Size: x.Size.Abs(), Arm: one})
		t := &s.Terms[len(s.Terms)-1]
		if x.Shape == Turning {
			t.What = TurnOnly
		}
		t.reverse(x.Size.Sign())
		finish(t)
	}
}

var one = exact.Int(1)

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
// reports whether the force must be taken by components: it neither stands along an axis nor square to that line.
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
		t.Arm = from.Length()
	default:
		return true
	}
	return false
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

// Factor is what the value of force i is multiplied by in the sum.
func (s Sum) Factor(i int) exact.Num {
	var k exact.Num
	for _, t := range s.Terms {
		if t.Force == i {
			k = k.Add(t.Value())
		}
	}
	return k
}

// Unknowns lists the forces that count in the sum and whose values are not known.
func (s Sum) Unknowns(known func(force int) bool) []int {
	var left []int
	for _, t := range s.Terms {
		if t.Force != None && t.Why == Counts && !known(t.Force) && !slices.Contains(left, t.Force) {
			left = append(left, t.Force)
		}
	}
	return left
}

// Amount is what the term adds up to when the forces have these values.
func (t Term) Amount(values []exact.Num) exact.Num {
	if t.Force == None {
		return t.Value()
	}
	return t.Value().Mul(values[t.Force])
}

// Residual is what the sum comes to when the forces have these values: nought in equilibrium.
func (s Sum) Residual(values []exact.Num) exact.Num {
	var r exact.Num
	for _, t := range s.Terms {
		r = r.Add(t.Amount(values))
	}
	return r
}
