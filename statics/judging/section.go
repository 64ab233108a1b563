package judging

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// Section is the case of N, V or M at a critical point of a member whose diagram is not withheld.
func (j Judge) Section(member int, at statics.Station, q statics.Quantity) *Case {
	truth := [...]exact.Num{at.N, at.V, at.M}[q]
	var targets []target
	var balances []balance
	for _, values := range j.values() {
		s := j.Cut(member, at, q, values)
		targets = append(targets, s)
		balances = append(balances, balance{factor: one, rest: s.Value().Neg(), largest: j.scale(member, q)})
	}
	return j.newCase(truth, targets, balances)
}

// Cut is a section as the catalogue of slips sees it, with these values of the forces; its method Sum is the sum of all
// that acts on the piece kept.
func (j Judge) Cut(member int, at statics.Station, q statics.Quantity, values []exact.Num) slip.Section {
	return slip.Section{
		Solution:  j.Solution,
		Member:    member,
		Station:   at,
		Quantity:  q,
		Values:    j.given(values),
		Customary: j.Style.Units.Customary(),
	}
}

// scale is what N, V or M at a section is measured by: the largest force on the part, for M times its largest dimension.
func (j Judge) scale(member int, q statics.Quantity) exact.Num {
	part := j.Solution.PartOf(member)
	if q == statics.BendingMoment {
		return j.largestForce(part).Mul(j.extent(part))
	}
	return j.largestForce(part)
}

// largestForce is the largest force on a part, load or unknown.
func (j Judge) largestForce(p int) exact.Num {
	var largest exact.Num
	body := statics.FreeBody{p}
	for _, i := range j.Solution.ForcesOn(body) {
		if !j.Solution.Forces[i].Couple {
			largest = exact.Max(largest, j.Solution.Values[i].Abs())
		}
	}
	for _, i := range j.Solution.ActionsOn(body) {
		if x := j.Solution.Actions[i]; x.Shape != statics.Turning {
			largest = exact.Max(largest, x.Size.Abs())
		}
	}
	return largest
}

// extent is a part's largest dimension: its width or its height.
func (j Judge) extent(p int) exact.Num {
	joints := j.Solution.Parts[p].Joints
	low := j.Solution.Frame.Joints[joints[0]].At
	high := low
	for _, i := range joints {
		at := j.Solution.Frame.Joints[i].At
		low = statics.Point{X: exact.Min(low.X, at.X), Y: exact.Min(low.Y, at.Y)}
		high = statics.Point{X: exact.Max(high.X, at.X), Y: exact.Max(high.Y, at.Y)}
	}
	return exact.Max(high.X.Sub(low.X), high.Y.Sub(low.Y))
}
