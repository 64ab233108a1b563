package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A Quantity is one of the internal forces.
type Quantity int

// The internal forces.
const (
	Axial Quantity = iota
	Shear
	Bending
)

// A Section is a question for N, V or M at a place along a member whose part has no ring there.
type Section struct {
	Solution  *statics.Solution
	Member    int
	Station   statics.Station
	Quantity  Quantity
	Values    []exact.Num // of all forces: exact or the student's own
	Customary bool
}

// Candidates lists the values that single slips lead to, as Question.Candidates does.
func (c Section) Candidates() []Candidate {
	q, k := c.question()
	y, ok := q.system()
	if !ok {
		return nil
	}
	all := y.candidates(&scene{Question: q, sum: q.Sums[0], right: y.answer, cut: k})
	sortCandidates(all)
	return all
}

// Value is what the forces on the starting side of the section give for the quantity.
func (c Section) Value() exact.Num {
	q, _ := c.question()
	y, _ := q.system()
	return y.answer
}

// Sum is the sum of all that acts on the starting side, as one of an assembly of its own, in which the quantity is the
// last force, named by its letter. Its body is the part; what does not act on the starting side has no term.
func (c Section) Sum() (*statics.Assembly, statics.Sum) {
	q, _ := c.question()
	return q.Assembly, q.Sums[0]
}

// A cut is a section with the piece of the part that is kept: what lies on the starting side.
type cut struct {
	Section
	part    int
	at      statics.Point
	along   statics.Vector // of the member
	kept    []int          // joints
	members []int          // members, without the one that is cut
}

// question is the sum of the kept piece, in which the quantity is the only unknown: a force numbered after all others.
func (c Section) question() (Question, *cut) {
	k := c.keep()
	a, err := statics.Cut(k.trimmed())
	if err != nil {
		panic("internal error: a frame that was cut before cannot be cut with shorter loads: " + err.Error())
	}
	internal := statics.Force{Name: [...]string{"N", "V", "M"}[c.Quantity], Kind: statics.MemberPull, Joint: statics.None, Couple: c.Quantity == Bending,
		Along: k.along, On: k.part, By: statics.None}
	a.Forces = append(a.Forces, internal)
	sum := k.sumOf(a, c.Quantity)
	own := statics.Term{Force: len(a.Forces) - 1, Action: statics.None, Size: one, Arm: one, Sign: 1, At: k.at, Toward: k.along}
	switch c.Quantity {
	case Shear:
		own.Sign, own.Toward = -1, k.along.Left().Neg()
	case Bending:
		own.What, own.Toward = statics.TurnOnly, statics.Vector{}
	}
	sum.Terms = append(sum.Terms, own)
	return Question{
		Assembly:  a,
		Sums:      []statics.Sum{sum},
		Gives:     []int{own.Force},
		Force:     own.Force,
		Values:    append(slices.Clone(c.Values), exact.Num{}),
		Known:     func(force int) bool { return force != own.Force },
		Customary: c.Customary,
	}, k
}

// keep finds what lies on the starting side.
func (c Section) keep() *cut {
	f := &c.Solution.Frame
	k := &cut{Section: c, at: f.Along(c.Member, c.Station.At), along: f.Span(c.Member)}
	for p, part := range c.Solution.Parts {
		if slices.Contains(part.Members, c.Member) {
			k.part = p
		}
	}
	k.kept = []int{f.Members[c.Member].From}
	for i := 0; i < len(k.kept); i++ {
		for _, m := range c.Solution.Parts[k.part].Members {
			mem := f.Members[m]
			if m == c.Member || slices.Contains(k.members, m) || mem.From != k.kept[i] && mem.To != k.kept[i] {
				continue
			}
			k.members = append(k.members, m)
			for _, j := range []int{mem.From, mem.To} {
				if !slices.Contains(k.kept, j) {
					k.kept = append(k.kept, j)
				}
			}
		}
	}
	return k
}

// before reports whether what acts at distance x of the cut member lies on the starting side.
func (k *cut) before(x exact.Num) bool {
	order := x.Cmp(k.Station.At)
	return order < 0 || order == 0 && k.Station.Side != statics.Before
}

// trimmed is the frame with the loads of the cut member only as far as the section; what lies beyond comes to nothing.
func (k *cut) trimmed() statics.Frame {
	f := k.Solution.Frame
	f.Loads = slices.Clone(f.Loads)
	for i, l := range f.Loads {
		if l.Member != k.Member || l.Joint != statics.None {
			continue
		}
		beyond := !k.before(l.At)
		if l.Kind == statics.SpreadLoad {
			beyond = l.Start.Cmp(k.Station.At) >= 0
		}
		switch {
		case beyond:
			f.Loads[i] = statics.Load{Kind: statics.CoupleLoad, Entry: l.Entry, Joint: statics.None, Member: l.Member}
		case l.Kind == statics.SpreadLoad && l.End.Cmp(k.Station.At) > 0:
			share := over(k.Station.At.Sub(l.Start), l.End.Sub(l.Start))
			f.Loads[i].Last = l.First.Add(l.Last.Sub(l.First).Mul(share))
			f.Loads[i].End = k.Station.At
		}
	}
	return f
}

// sumOf is the sum for a quantity of all that acts on the kept piece.
func (k *cut) sumOf(a *statics.Assembly, q Quantity) statics.Sum {
	body := statics.FreeBody{k.part}
	var s statics.Sum
	switch q {
	case Axial:
		s = a.ForceSum(body, k.along)
	case Shear:
		s = a.ForceSum(body, k.along.Left())
	default:
		s = a.MomentSum(body, k.at)
	}
	return k.keptTerms(a, s)
}

// keptTerms is a sum with the terms of the kept piece only.
func (k *cut) keptTerms(a *statics.Assembly, s statics.Sum) statics.Sum {
	s.Terms = slices.DeleteFunc(slices.Clone(s.Terms), func(t statics.Term) bool { return !k.keeps(a, t) })
	return s
}

// keeps reports whether what gives a term acts on the kept piece.
func (k *cut) keeps(a *statics.Assembly, t statics.Term) bool {
	if t.Force != statics.None {
		return slices.Contains(k.kept, a.Forces[t.Force].Joint)
	}
	l := a.Frame.Loads[a.Loads[t.Action].Load]
	switch {
	case l.Joint != statics.None:
		return slices.Contains(k.kept, l.Joint)
	case l.Member == k.Member:
		return l.Kind == statics.SpreadLoad || k.before(l.At)
	}
	return slices.Contains(k.members, l.Member)
}
