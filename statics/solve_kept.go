package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A Kept piece is what is left of a part where a member is cut at a station: the piece from the member's start, the piece
// to its end, or the stretch of the member between this cut and another one. The sums of what acts on it give N, V and M
// at the station. The member lies on no ring.
type Kept struct {
	Solution *Solution
	Member   int
	At       Station
	Side     KeptSide
	Other    Station // Between: the other cut, at which N, V and M are known
}

// A KeptSide tells which piece is kept.
type KeptSide int

// The pieces that can be kept.
const (
	FromStart KeptSide = iota // all of the part on the side of the member's start
	ToEnd                     // all of it on the side of the member's end
	Between                   // the stretch between the two cuts
)

// Sum is the sum of all that acts on the piece that gives a quantity, as one of an assembly of its own: along the member
// for N, across it for V, of moments about the station for M. The quantity is the assembly's last force; between two cuts
// the three before it are N, V and M at the other one. All other forces are numbered as in the solution. The sum's body is
// the part; what does not act on the piece has no term.
func (k Kept) Sum(q Quantity) (*Assembly, Sum) {
	a, err := Cut(k.trimmed())
	if err != nil {
		panic("internal error: a frame that was cut before cannot be cut with shorter loads: " + err.Error())
	}
	a = a.Apart() // a stretch of another member may lie beyond the cut
	part := k.Solution.PartOf(k.Member)
	s := k.Only(a, k.partSum(a, part, q))
	terms := s.Terms()
	if k.Side == Between {
		for r := AxialForce; r <= BendingMoment; r++ {
			terms = append(terms, k.faceTerms(k.addFace(a, part, r), q, r, k.Other, -k.Facing())...)
		}
	}
	return a, s.With(append(terms, k.faceTerms(k.addFace(a, part, q), q, q, k.At, k.Facing())...))
}

// addFace adds the internal force q of the member that is cut to the forces of an assembly, and tells its number.
func (k Kept) addFace(a *Assembly, part int, q Quantity) int {
	a.Forces = append(a.Forces, Force{Name: q.Letter(), Kind: CutForce, Joint: None, Couple: q == BendingMoment,
		Along: k.Solution.Frame.Span(k.Member), On: part, By: None})
	return len(a.Forces) - 1
}

// Facing is +1 where the cut at the station is where the piece ends, as seen along the member, and −1 where it begins.
func (k Kept) Facing() int {
	if k.Side == ToEnd || k.Side == Between && comesBefore(k.At, k.Other) {
		return -1
	}
	return 1
}

// faceTerms is the term of the internal force r at a cut in the sum that gives q; none where it has no part in it. On a
// face where the piece ends, N acts along the member, V to its right and M counter-clockwise.
func (k Kept) faceTerms(force int, q, r Quantity, cut Station, facing int) []Term {
	f := &k.Solution.Frame
	along := f.Span(k.Member)
	t := Term{Force: force, Action: None, Size: one, Arm: one, Sign: facing, At: f.Along(k.Member, cut.At)}
	switch {
	case r == q && q == AxialForce:
		t.Toward = along.times(facing)
	case r == q && q == ShearForce:
		t.Sign, t.Toward = -facing, along.Left().times(-facing)
	case r == q:
		t.What = TurnOnly
	case r == ShearForce && q == BendingMoment:
		arm := cut.At.Sub(k.At.At)
		t.Sign, t.Arm, t.Toward = -facing*arm.Sign(), arm.Abs(), along.Left().times(-facing)
		if t.Sign == 0 {
			t.Why = ThroughCentre
		}
	default:
		return nil
	}
	return []Term{t}
}

// times is v turned round where sign is negative.
func (v Vector) times(sign int) Vector {
	if sign < 0 {
		return v.Neg()
	}
	return v
}

// partSum is the sum for a quantity of all that acts on the part.
func (k Kept) partSum(a *Assembly, part int, q Quantity) Sum {
	body, along := FreeBody{part}, k.Solution.Frame.Span(k.Member)
	switch q {
	case AxialForce:
		return a.ForceSum(body, along)
	case ShearForce:
		return a.ForceSum(body, along.Left())
	}
	return a.MomentSum(body, k.Solution.Frame.Along(k.Member, k.At.At))
}

// Only is a sum of the part with the terms of what acts on the piece. The sum is one of an assembly whose loads on the
// member reach no further than the piece does.
func (k Kept) Only(a *Assembly, s Sum) Sum {
	joints, members := k.Beyond()
	return s.With(slices.DeleteFunc(slices.Clone(s.Terms()), func(t Term) bool { return !k.keeps(a, t, joints, members) }))
}

// Keeps reports whether what gives a term acts on the piece; of a distributed load on the member it is taken to.
func (k Kept) Keeps(a *Assembly, t Term) bool {
	joints, members := k.Beyond()
	return k.keeps(a, t, joints, members)
}

func (k Kept) keeps(a *Assembly, t Term, joints, members []int) bool {
	if t.Force != None {
		return slices.Contains(joints, a.Forces[t.Force].Joint)
	}
	l := a.Frame.Loads[a.Actions[t.Action].Load]
	switch {
	case l.Joint != None:
		return slices.Contains(joints, l.Joint)
	case l.Member == k.Member:
		return l.Kind == SpreadLoad || k.holds(l.At)
	}
	return slices.Contains(members, l.Member)
}

// Beyond lists the joints and the other members of the part that belong to the piece.
func (k Kept) Beyond() (joints, members []int) {
	f := &k.Solution.Frame
	switch k.Side {
	case FromStart:
		joints = []int{f.Members[k.Member].From}
	case ToEnd:
		joints = []int{f.Members[k.Member].To}
	}
	for i := 0; i < len(joints); i++ {
		for _, m := range k.Solution.Parts[k.Solution.PartOf(k.Member)].Members {
			mem := f.Members[m]
			if m == k.Member || slices.Contains(members, m) || mem.From != joints[i] && mem.To != joints[i] {
				continue
			}
			members = append(members, m)
			if far := f.farEnd(m, joints[i]); !slices.Contains(joints, far) {
				joints = append(joints, far)
			}
		}
	}
	return joints, members
}

// holds reports whether what acts at distance x of the member lies on the piece.
func (k Kept) holds(x exact.Num) bool {
	switch k.Side {
	case FromStart:
		return k.At.passed(x)
	case ToEnd:
		return !k.At.passed(x)
	}
	first, last := k.cuts()
	return last.passed(x) && !first.passed(x)
}

// cuts are the two cuts of a stretch in order.
func (k Kept) cuts() (first, last Station) {
	if comesBefore(k.At, k.Other) {
		return k.At, k.Other
	}
	return k.Other, k.At
}

// passed reports whether what acts at distance x of a member lies before a cut at the station.
func (s Station) passed(x exact.Num) bool {
	order := x.Cmp(s.At)
	return order < 0 || order == 0 && s.Side != Before
}

// comesBefore reports whether one cut lies before another.
func comesBefore(s, t Station) bool {
	order := s.At.Cmp(t.At)
	return order < 0 || order == 0 && s.Side == Before && t.Side != Before
}

// trimmed is the frame with the loads of the member only as far as the piece reaches; what lies beyond comes to nothing.
func (k Kept) trimmed() Frame {
	f := k.Solution.Frame
	f.Loads = slices.Clone(f.Loads)
	from, until := exact.Num{}, k.At.At
	switch k.Side {
	case ToEnd:
		from, until = k.At.At, k.Solution.Diagrams[k.Member].Length
	case Between:
		first, last := k.cuts()
		from, until = first.At, last.At
	}
	for i, l := range f.Loads {
		switch {
		case l.Member != k.Member || l.Joint != None:
		case l.Kind == SpreadLoad && from.Cmp(until) < 0 && l.Start.Cmp(until) < 0 && l.End.Cmp(from) > 0:
			f.Loads[i] = l.within(from, until)
		case l.Kind == SpreadLoad || !k.holds(l.At):
			f.Loads[i] = Load{Kind: CoupleLoad, Entry: l.Entry, Joint: None, Member: l.Member}
		}
	}
	return f
}

// within is a distributed load as far as it lies between two distances.
func (l Load) within(from, until exact.Num) Load {
	whole := l
	at := func(x exact.Num) exact.Num {
		along := over(x.Sub(whole.Start), whole.End.Sub(whole.Start))
		return whole.First.Add(whole.Last.Sub(whole.First).Mul(along))
	}
	if l.Start.Cmp(from) < 0 {
		l.Start, l.First = from, at(from)
	}
	if l.End.Cmp(until) > 0 {
		l.End, l.Last = until, at(until)
	}
	return l
}
