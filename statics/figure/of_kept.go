package figure

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A Section is a cut across a member with the piece that is kept, and what is known of N, V and M there.
type Section struct {
	statics.Kept
	Found []statics.Quantity // those whose values at the cut are drawn; the others stand in their positive senses
	Lit   []statics.Quantity // those that are set off
}

// OfKept is the scene of the piece of a part that is kept where a member is cut: its members, the loads as far as they lie
// on it, the forces that act on it, and N, V and M at the cut, nothing else. Known is as in OfBody. A cut just beside a
// joint or a load is drawn a little further off, so that it is seen on which side of it the cut lies. Between two cuts N, V
// and M at the other one have their values.
func OfKept(s Section, known map[int]exact.Num, o Options) Scene {
	a, _ := s.Sum(statics.AxialForce)
	c := newKeptPiece(s, a, known, o)
	c.Title = wording.Sentence(wording.New(a, o.Style).KeptPiece(s.Kept))
	c.pins()
	c.loads(c.loadsOn())
	for _, i := range c.forcesOn() {
		sign, _ := c.a.Facing(c.body, i)
		c.force(i, sign)
	}
	c.faces()
	c.finish()
	c.names(c.named())
	c.dimension(c.measured)
	c.Names = symbols(a, c.body)
	for _, letter := range []string{"N", "V", "M"} {
		c.Names[letter] = Symbolic{Letter: letter}
	}
	return c.Scene
}

// A keptPiece is the draft of a piece of a part: in its frame the member that is cut ends in joints of its own.
type keptPiece struct {
	cutBody
	s            Section
	first, last  int   // the joints where the member is cut, or None
	measured     []int // the joints to which dimensions are given
	members, ofP []int // the other members, and the joints, of the piece
}

// newKeptPiece begins the scene of a piece with its members.
func newKeptPiece(s Section, a *statics.Assembly, known map[int]exact.Num, o Options) *keptPiece {
	c := &keptPiece{s: s, first: statics.None, last: statics.None}
	c.ofP, c.members = s.Beyond()
	f := a.Frame
	f.Joints, f.Members, f.Loads = slices.Clone(f.Joints), slices.Clone(f.Members), slices.Clone(f.Loads)
	c.cutMember(&f)
	inside := make([]bool, len(f.Members))
	for _, m := range append([]int{s.Member}, c.members...) {
		inside[m] = true
	}
	part := s.Solution.PartOf(s.Member)
	c.cutBody = cutBody{newDraft(&f, o, inside), a, statics.FreeBody{part}, known}
	for _, j := range c.draft.joints() {
		if j < len(a.Frame.Joints) {
			c.measured = append(c.measured, j)
		}
	}
	for _, j := range []int{c.first, c.last} {
		if j != statics.None && f.Joints[j].Name != nudgedCut {
			c.measured = append(c.measured, j)
		}
	}
	return c
}

// The names of the places where a member is cut: where it is drawn at its place, and where a little off it.
const (
	cutPlace  = "the cut"
	nudgedCut = "just beyond"
)

// cutMember lets the member that is cut end where the piece does, and counts distances on it from there.
func (c *keptPiece) cutMember(f *statics.Frame) {
	from, until := exact.Num{}, f.Length(c.s.Member)
	begin, end := c.s.At, c.s.Other
	if c.s.Facing() > 0 {
		begin, end = end, begin
	}
	m := f.Members[c.s.Member]
	if c.s.Side != statics.FromStart {
		from = begin.At
	}
	if c.s.Side != statics.ToEnd {
		until = end.At
	}
	low, high := from, until
	if c.s.Side != statics.FromStart {
		low = c.drawn(f, from, until, -1)
		m.From = c.cutJoint(f, low, from)
		c.first = m.From
	}
	if c.s.Side != statics.ToEnd {
		high = c.drawn(f, until, from, 1)
		m.To = c.cutJoint(f, high, until)
		c.last = m.To
	}
	f.Members[c.s.Member] = m
	for i := range f.Loads {
		if l := &f.Loads[i]; l.Member == c.s.Member {
			l.At, l.Start, l.End = l.At.Sub(low), l.Start.Sub(low), l.End.Sub(low)
		}
	}
}

// cutJoint adds the joint at which the member is drawn to be cut.
func (c *keptPiece) cutJoint(f *statics.Frame, drawn, place exact.Num) int {
	name := cutPlace
	if !drawn.Equal(place) {
		name = nudgedCut
	}
	f.Joints = append(f.Joints, statics.Joint{Name: name, At: f.Along(c.s.Member, drawn)})
	return len(f.Joints) - 1
}

// drawn is where along the member a cut is drawn: at its place, or a little further out, which is toward +1 or −1 along the
// member, where the piece has no length up to the cut or a load stands there.
func (c *keptPiece) drawn(f *statics.Frame, place, other exact.Num, out int) exact.Num {
	stands := place.Equal(other) || slices.ContainsFunc(f.Loads, func(l statics.Load) bool {
		return l.Member == c.s.Member && l.Joint == statics.None && l.Kind != statics.SpreadLoad && !l.Size.IsZero() && l.At.Equal(place)
	})
	if !stands {
		return place
	}
	off := f.Length(c.s.Member).Mul(c.nudge(f))
	if out < 0 {
		off = off.Neg()
	}
	return place.Add(off)
}

// nudge is the share of the member's length by which a cut is drawn off its place: enough to be seen in the frame.
func (c *keptPiece) nudge(f *statics.Frame) exact.Num {
	const seen = 0.12
	all := noBounds
	for _, j := range c.ofP {
		at := point(f.Joints[j].At)
		all = all.with(bounds{at, at})
	}
	least := seen * all.longer()
	for _, l := range f.Loads {
		if l.Kind == statics.RopeLoad && slices.Contains(c.ofP, l.Joint) {
			least = max(least, clearOfWheel*l.Radius.Float())
		}
	}
	long := f.Length(c.s.Member)
	share := nudgeShare
	for long.Mul(share).Float() < least && share.Cmp(half) < 0 {
		share = share.Add(share)
	}
	return share
}

// clearOfWheel is how far from the middle of a wheel a cut is drawn, in its radii.
const clearOfWheel = 1.4

var nudgeShare = exact.MustParse("0.125")

// named lists the joints of the piece that have names.
func (c *keptPiece) named() []int {
	return slices.DeleteFunc(c.draft.joints(), func(j int) bool { return j == c.first || j == c.last })
}

// forcesOn lists the forces on the piece.
func (c *keptPiece) forcesOn() []int {
	var list []int
	for _, i := range c.a.ForcesOn(c.body) {
		sign, _ := c.a.Facing(c.body, i)
		if f := c.a.Forces[i]; f.Kind != statics.CutForce && sign != 0 && slices.Contains(c.ofP, f.Joint) {
			list = append(list, i)
		}
	}
	return list
}

// loadsOn lists the loads on the piece, each once.
func (c *keptPiece) loadsOn() []int {
	return slices.DeleteFunc(c.cutBody.loadsOn(), func(i int) bool {
		switch l := c.a.Frame.Loads[i]; {
		case l.Joint != statics.None:
			return !slices.Contains(c.ofP, l.Joint)
		case l.Member != c.s.Member:
			return !slices.Contains(c.members, l.Member)
		}
		return false // the frame of the piece has no others
	})
}

// faces adds N, V and M where the member is cut.
func (c *keptPiece) faces() {
	joint, far := c.last, c.first
	if c.s.Facing() < 0 {
		joint, far = far, joint
	}
	for _, q := range []statics.Quantity{statics.BendingMoment, statics.ShearForce, statics.AxialForce} {
		look := Look{UnknownForce, emphasisIf(slices.Contains(c.s.Lit, q))}
		if c.s.Side == statics.Between {
			value := c.s.Other.Of(q)
			c.face(q, far, -c.s.Facing(), &value, Look{Role: KnownForce})
		}
		if slices.Contains(c.s.Found, q) {
			value := c.s.At.Of(q)
			c.face(q, joint, c.s.Facing(), &value, Look{KnownForce, look.Emphasis})
			continue
		}
		c.face(q, joint, c.s.Facing(), nil, look)
	}
}

func emphasisIf(lit bool) Emphasis {
	if lit {
		return Lit
	}
	return Plain
}

// face adds an internal force at a joint where the piece ends (facing +1) or begins (−1), with its value if that is known.
func (c *keptPiece) face(q statics.Quantity, joint, facing int, value *exact.Num, look Look) {
	text, at, turned := q.Letter(), c.joint(joint), false
	if value != nil {
		if text += " " + c.o.result(value.Abs(), InternalForce(q).dimension()); value.IsZero() {
			c.Notes = append(c.Notes, Note{at, q.Letter() + " = 0", look})
			return
		}
		turned = value.Sign() < 0
	}
	out := vector(c.f.Span(c.s.Member))
	if facing < 0 {
		out = out.Opposite()
	}
	sense := out
	switch q {
	case statics.BendingMoment:
		kind, way := TurnRight, " cw"
		if (facing > 0) != turned {
			kind, way = TurnLeft, " ccw"
		}
		c.Symbols = append(c.Symbols, Symbol{Kind: kind, At: at, Toward: out, Text: text + way, Look: look})
		return
	case statics.ShearForce:
		if sense = out.Left().Opposite(); value == nil && c.o.Style.Shear == notation.CounterClockwiseShear {
			sense = sense.Opposite() // a value's own sign tells how it acts
		}
	}
	toward := sense
	if turned {
		toward = sense.Opposite()
	}
	c.arrow(Arrow{At: at, Toward: toward, Text: text, Look: look}, sense, false)
}
