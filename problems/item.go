package problems

import (
	"math/big"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// An Item is one value that a problem asks for, by the name and the sense in which the plain lesson asks for it.
type Item struct {
	Name     string             // Cy, MA, F_BD, "V(BC, 2.4 before)", "x of V = 0 in BC from 0 to 5"
	Dim      notation.Dimension // of Value
	Force    int                // of the solution's forces, or statics.None for what is asked along a member
	Member   int                // for what is asked along it, else statics.None
	Station  statics.Station    // along the member
	Quantity statics.Quantity   // N, V or M at the station; V where Place is set
	Place    bool               // the place where V is zero is asked for, not a value there
	Stretch  statics.Stretch    // in which that place lies
	Value    exact.Num          // in the problem's units; a force along its + sense, N V M by the signs of package statics
}

// Items lists every value that a solved problem can be asked for: the forces in the order of the plan, then member by member
// what SectionItems lists. Find chooses among them.
func (p Solved) Items() []Item {
	all := p.ForceItems()
	for _, d := range p.Diagrams {
		all = append(all, SectionItems(p.Solution, d)...)
	}
	return all
}

// ForceItems lists the forces in the order in which the plan gives them.
func (p Solved) ForceItems() []Item {
	var all []Item
	for _, step := range p.Plan {
		for _, f := range step.Gives {
			force := p.Forces[f]
			all = append(all, Item{
				Name: force.Name, Dim: notation.ForceDimension(force), Force: f, Member: statics.None, Value: p.Values[f],
			})
		}
	}
	return all
}

// SectionItems lists what is asked along one member of a solution: M at all its critical points, N and V where they are not what
// was asked last. A place where V is zero comes before the value of M there, whose name gives it away.
func SectionItems(s *statics.Solution, d statics.Diagram) []Item {
	var all []Item
	var last [statics.BendingMoment + 1]*exact.Num
	stations := d.Stations()
	for i, st := range stations {
		again := i > 0 && stations[i-1].At.Equal(st.At)
		for q := range statics.BendingMoment + 1 {
			value := st.Of(q)
			same := last[q] != nil && last[q].Equal(value)
			if same && (again || q != statics.BendingMoment) || st.Found && q != statics.BendingMoment {
				continue
			}
			last[q] = &value
			if st.Found {
				all = append(all, zeroItem(s, d, st))
			}
			all = append(all, SectionItem(s, d.Member, q, st, sideWord(stations, i, q)))
		}
	}
	return all
}

// SectionItem asks for a quantity at a station, on the side named where that matters.
func SectionItem(s *statics.Solution, member int, q statics.Quantity, st statics.Station, side string) Item {
	return Item{
		Name:  SectionName(s, member, q, st.At, side),
		Dim:   [...]notation.Dimension{notation.Force, notation.Force, notation.Moment}[q],
		Force: statics.None, Member: member, Station: st, Quantity: q, Value: st.Of(q),
	}
}

// zeroItem asks for the place st where the shear is zero, in the stretch that holds it.
func zeroItem(s *statics.Solution, d statics.Diagram, st statics.Station) Item {
	stretch := d.StretchFrom(st)
	return Item{
		Name: "x of V = 0 in " + StretchName(s, d.Member, stretch), Dim: notation.Length,
		Force: statics.None, Member: d.Member, Station: st, Quantity: statics.ShearForce, Place: true, Stretch: stretch, Value: st.At,
	}
}

// sideWord is "before" or "after" where the quantity steps at station i, and nothing where it does not.
func sideWord(stations []statics.Station, i int, q statics.Quantity) string {
	steps := func(j int) bool {
		return j >= 0 && j < len(stations) && stations[j].At.Equal(stations[i].At) && !stations[j].Of(q).Equal(stations[i].Of(q))
	}
	switch {
	case steps(i + 1):
		return "before"
	case steps(i - 1):
		return "after"
	}
	return ""
}

// SectionName is V(BC, 2.4 before): the quantity, the member, the distance from the start of its name, and the side where that
// matters, else "".
func SectionName(s *statics.Solution, member int, q statics.Quantity, at exact.Num, side string) string {
	if side != "" {
		side = " " + side
	}
	return q.Letter() + "(" + s.Frame.Members[member].Name + ", " + PlaceText(at) + side + ")"
}

// StretchName is BC from 2.4 to 7.2.
func StretchName(s *statics.Solution, member int, p statics.Stretch) string {
	return s.Frame.Members[member].Name + " from " + PlaceText(p.From) + " to " + PlaceText(p.Until)
}

// largestDenominator is that of the fractions in names.
var largestDenominator = big.NewInt(99)

// PlaceText is a distance in a name: a decimal where it is one, a simple fraction, else rounded to six figures.
func PlaceText(at exact.Num) string {
	switch r, rational := at.Rat(); {
	case at.Inexact(), rational && !at.Terminates() && r.Denom().Cmp(largestDenominator) > 0:
		return at.Rounded(6).Decimal(6)
	case rational && !at.Terminates():
		return at.String()
	}
	return at.Decimal(6)
}
