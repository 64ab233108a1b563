package judging

import (
	"slices"
	"sync"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A Found value is N, V or M at a place along a member as the student has it, accepted.
type Found struct {
	Member   int
	Station  statics.Station
	Quantity statics.Quantity
	Value    exact.Num
}

// Section is the case of N, V or M at a critical point of a member whose diagram is not withheld.
func (j Judge) Section(member int, at statics.Station, q statics.Quantity) *Case {
	j = j.full()
	var targets []target
	for _, values := range j.values() {
		for _, side := range bothSides {
			cut := j.Cut(member, at, q, values)
			cut.Side = side
			targets = append(targets, cut)
		}
	}
	s := &section{j, member, at, q}
	acting := sync.OnceValue(s.givers)
	j.piece = func(g slip.Giver) bool { return slices.Contains(acting(), g) }
	c := j.newCase(at.Of(q), targets, s.balances)
	c.section = s
	return c
}

// Place is the case of a place within a stretch of a member where the shear is zero.
func (j Judge) Place(member int, at statics.Station, in statics.Stretch) *Case {
	s := &section{j.full(), member, at, statics.ShearForce}
	return j.newCase(at.At, nil, func() []balance {
		var all []balance
		slope := in.V.Derivative().At(at.At).Abs()
		for _, b := range s.balances() {
			off := func(x exact.Num) exact.Num { return b.gives.Add(in.V.At(x)).Sub(in.V.At(at.At)).Abs() }
			allowance := b.allowance.Add(thirdFigure(at.At).Mul(slope))
			reach, err := allowance.Quo(slope)
			if err != nil { // V only touches zero there
				reach = thirdFigure(at.At)
			}
			all = append(all, balance{gives: at.At, off: off, allowance: allowance, reach: reach})
		}
		return all
	})
}

// Cut is a section as the catalogue of slips sees it, with these values of the forces; its method Sum is the sum of all
// that acts on the piece kept.
func (j Judge) Cut(member int, at statics.Station, q statics.Quantity, values []exact.Num) slip.Section {
	return slip.Section{
		Solution:  j.Solution.Full(),
		Member:    member,
		Station:   at,
		Quantity:  q,
		Values:    j.Solution.FullValues(j.given(values)),
		Customary: j.Style.Units.Customary(),
	}
}

// unlikely lists the values of the slips that hardly anyone makes here, for either piece.
func (s *section) unlikely() [][]slip.Candidate {
	var all [][]slip.Candidate
	for _, values := range s.judge.values() {
		cut := s.judge.Cut(s.member, s.at, s.quantity, values)
		for _, side := range bothSides {
			cut.Side = side
			all = append(all, cut.Unlikely())
		}
	}
	return all
}

// bothSides are the two pieces that a section leaves.
var bothSides = [...]statics.KeptSide{statics.FromStart, statics.ToEnd}

// A section is where N, V or M is asked for.
type section struct {
	judge    Judge
	member   int
	at       statics.Station
	quantity statics.Quantity
}

// balances lists the sums of the pieces that may be kept: from the start of the member, to its end, and between this cut
// and each at which a value was found; with exact values and with the student's own.
func (s *section) balances() []balance {
	var all []balance
	for _, side := range bothSides {
		k := s.kept(side, statics.Station{})
		a, sum := k.Sum(s.quantity)
		for _, values := range s.judge.values() {
			all = append(all, s.balance(a, sum, append(s.judge.given(values), exact.Num{})))
		}
	}
	for _, cut := range s.cuts() {
		k := s.kept(statics.Between, cut)
		a, sum := k.Sum(s.quantity)
		forces := s.judge.given(s.judge.Solution.Values)
		for _, at := range []statics.InternalForces{cut.InternalForces, s.own(cut)} {
			all = append(all, s.balance(a, sum, append(slices.Clone(forces), at.N, at.V, at.M, exact.Num{})))
		}
	}
	return all
}

// givers lists what acts on the piece on the side of the member's start.
func (s *section) givers() []slip.Giver {
	a, sum := s.kept(statics.FromStart, statics.Station{}).Sum(s.quantity)
	var all []slip.Giver
	for _, t := range sum.Terms() {
		g := slip.Giver{Force: t.Force, Load: statics.None}
		if t.Action != statics.None {
			g = slip.Giver{Force: statics.None, Load: a.Actions[t.Action].Load}
		}
		all = append(all, g)
	}
	return all
}

func (s *section) kept(side statics.KeptSide, other statics.Station) statics.Kept {
	return statics.Kept{Solution: s.judge.Solution, Member: s.member, At: s.at, Side: side, Other: other}
}

// balance is the sum of a kept piece with its allowance: half a unit in the third figure of what is asked for, and what
// rounding each of its terms may come to. The last of the values is that of what is asked for.
func (s *section) balance(a *statics.Assembly, sum statics.Sum, values []exact.Num) balance {
	own := len(values) - 1
	rest, allowance, empty := exact.Num{}, thirdFigure(s.at.Of(s.quantity)), true
	for _, t := range sum.Terms() {
		if t.Force == own {
			continue
		}
		x := t.Amount(values)
		rest, empty = rest.Add(x), empty && x.IsZero()
		allowance = allowance.Add(termAllowance(a, t, values))
	}
	b, _ := linear(sum.Factor(own), rest, allowance)
	b.empty = empty
	return b
}

// empty reports whether on one side of the section every term is zero, with exact values and with the student's own.
// The balances are the section's own, those of the two sides first.
func (s *section) empty(balances []balance) bool {
	n := len(s.judge.values())
	for side := range 2 {
		if !slices.ContainsFunc(balances[side*n:(side+1)*n], func(b balance) bool { return !b.empty }) {
			return true
		}
	}
	return false
}

// cuts lists the places along the member at which the student has found a value, without this one.
func (s *section) cuts() []statics.Station {
	var all []statics.Station
	for _, f := range s.judge.Found {
		same := func(at statics.Station) bool { return at.At.Equal(f.Station.At) && at.Side == f.Station.Side }
		if f.Member == s.member && !same(s.at) && !slices.ContainsFunc(all, same) {
			all = append(all, f.Station)
		}
	}
	return all
}

// own is N, V and M at a cut as the student has them. What was not asked there since it had not changed is what was found
// where it last was; else it is exact.
func (s *section) own(cut statics.Station) statics.InternalForces {
	has := func(q statics.Quantity) exact.Num {
		value := cut.Of(q)
		for _, f := range s.judge.Found {
			if f.Member != s.member || f.Quantity != q || !f.Station.Of(q).Equal(cut.Of(q)) {
				continue
			}
			value = f.Value
			if f.Station.At.Equal(cut.At) && f.Station.Side == cut.Side {
				break
			}
		}
		return value
	}
	return statics.InternalForces{N: has(statics.AxialForce), V: has(statics.ShearForce), M: has(statics.BendingMoment)}
}
