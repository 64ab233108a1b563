package statics

import (
	"slices"

	"unpin/statics/exact"
)

// Has reports whether the body numbered i is inside the cut.
func (b FreeBody) Has(i int) bool {
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
	f := a.Forces[i]
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
func (a *Assembly) ForcesOn(b FreeBody) []int {
	return gather(b, a.forcesOn)
}

// ActionsOn lists what the loads do to the bodies inside the cut, in order.
func (a *Assembly) ActionsOn(b FreeBody) []int {
	return gather(b, a.actionsOn)
}

func gather(b FreeBody, lists [][]int) []int {
	if len(b) == 1 {
		return lists[b[0]]
	}
	var all []int
	for _, i := range b {
		all = append(all, lists[i]...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// index notes where the joints are and which unknowns and actions touch each body.
func (a *Assembly) index() {
	a.places = newPlaces(a.Frame.Joints)
	a.forcesOn, a.actionsOn = make([][]int, a.Bodies()), make([][]int, a.Bodies())
	for i, f := range a.Forces {
		a.forcesOn[f.On] = append(a.forcesOn[f.On], i)
		if f.By != None {
			a.forcesOn[f.By] = append(a.forcesOn[f.By], i)
		}
	}
	for i, x := range a.Loads {
		a.actionsOn[x.Body] = append(a.actionsOn[x.Body], i)
	}
}

// ForceSum is the sum of the forces on b along a direction, which is not zero.
func (a *Assembly) ForceSum(b FreeBody, along Vector) Sum {
	s := Sum{Body: b, Along: along, Centre: None}
	a.collect(&s, func(t Term, size exact.Num) []Term { return []Term{alongTerm(t, size, along)} })
	return s
}

// MomentSum is the sum of the moments on b about a point.
func (a *Assembly) MomentSum(b FreeBody, about Point) Sum {
	return a.momentSum(b, about, a.JointAt(about))
}

// momentSum is MomentSum about a point of which it is known which joint it is.
func (a *Assembly) momentSum(b FreeBody, about Point, centre int) Sum {
	s := Sum{Body: b, Moment: true, About: about, Centre: centre}
	a.collect(&s, func(t Term, size exact.Num) []Term { return momentTerms(t, size, about) })
	return s
}

// JointAt is the joint at a point, or None; of several the first.
func (a *Assembly) JointAt(p Point) int { return a.places.at(p) }

// collect gives s a term or two for everything that acts on its body. A bare term has its giver, its place and its
// direction; its size comes beside it, with a sign.
func (a *Assembly) collect(s *Sum, terms func(bare Term, size exact.Num) []Term) {
	for _, i := range a.ForcesOn(s.Body) {
		f := a.Forces[i]
		sign, _ := a.Facing(s.Body, i)
		bare := Term{Force: i, Action: None, At: a.Frame.Joints[f.Joint].At, Toward: f.Along, Arm: exact.Int(1)}
		if sign == 0 {
			bare.Why = InsideBody
			s.Terms = append(s.Terms, bare)
			continue
		}
		if sign < 0 {
			bare.Toward = f.Along.Neg()
		}
		size := exact.Int(1)
		if f.Couple {
			bare.What, size = TurnOnly, exact.Int(int64(sign))
		}
		s.Terms = append(s.Terms, terms(bare, size)...)
	}
	for _, i := range a.ActionsOn(s.Body) {
		x := a.Loads[i]
		bare := Term{Force: None, Action: i, At: x.At, Toward: x.Along, Arm: exact.Int(1)}
		if x.Shape == Turning {
			bare.What = TurnOnly
		}
		s.Terms = append(s.Terms, terms(bare, x.Size)...)
	}
}

// alongTerm is the term of a force in a sum along a direction.
func alongTerm(t Term, size exact.Num, along Vector) Term {
	if t.What == TurnOnly {
		t.Why = NoPush
		return t
	}
	share := t.Toward.Dot(along)
	if share.IsZero() {
		t.Why = SquareTo
		return t
	}
	if size.Sign() < 0 {
		t.Toward = t.Toward.Neg()
	}
	t.Sign = size.Sign() * share.Sign()
	t.Size = over(size.Mul(share).Abs(), t.Toward.Length().Mul(along.Length()))
	return t
}

// momentTerms are the terms of a force or couple in a sum of moments: one where the force stands along an axis or
// square to the line from the centre, else one for each component.
func momentTerms(t Term, size exact.Num, about Point) []Term {
	t.Sign, t.Size = size.Sign(), size.Abs()
	if t.What == TurnOnly {
		return []Term{t}
	}
	if size.Sign() < 0 {
		t.Toward = t.Toward.Neg()
	}
	from := about.To(t.At)
	turn := from.Cross(t.Toward)
	t.Sign = turn.Sign()
	switch {
	case t.Sign == 0:
		t.Why, t.Arm = ThroughCentre, exact.Num{}
		return []Term{t}
	case t.Toward.X.IsZero():
		t.Arm = from.X.Abs()
		return []Term{t}
	case t.Toward.Y.IsZero():
		t.Arm = from.Y.Abs()
		return []Term{t}
	case from.Dot(t.Toward).IsZero():
		t.Arm = from.Length()
		return []Term{t}
	}
	return []Term{component(t, Horizontal, from), component(t, Vertical, from)}
}

// component is one component of a force in a sum of moments; from leads from the centre to where the force acts.
func component(t Term, what Component, from Vector) Term {
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
	return t
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
