package figure

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// DescribeKept says in sentences what the figure of a kept piece shows, as OfKept draws it: which piece, what acts on it,
// and N, V and M at the cut.
func DescribeKept(s Section, known map[int]exact.Num, o Options) []string {
	a, _ := s.Sum(statics.AxialForce)
	w := wording.New(a, o.Style).Spoken()
	c := newKeptPiece(s, a, known, o)
	lines := []string{w.KeptPiece(s.Kept) + ", is cut free"}
	for _, l := range c.loadsOn() {
		lines = append(lines, w.Load(a.Frame.Loads[l]))
	}
	for _, i := range c.forcesOn() {
		sign, _ := a.Facing(c.body, i)
		if value, ok := known[i]; ok {
			lines = append(lines, w.OnBody(c.body, i, sign, &value))
		} else {
			lines = append(lines, w.OnBody(c.body, i, sign, nil))
		}
	}
	if s.Side == statics.Between {
		other := s.Kept
		other.At, other.Other = s.Other, s.At
		for q := statics.AxialForce; q <= statics.BendingMoment; q++ {
			value := s.Other.Of(q)
			lines = append(lines, w.AtCut(other, q, &value))
		}
	}
	for q := statics.AxialForce; q <= statics.BendingMoment; q++ {
		if value := s.At.Of(q); slices.Contains(s.Found, q) {
			lines = append(lines, w.AtCut(s.Kept, q, &value))
		} else {
			lines = append(lines, w.AtCut(s.Kept, q, nil))
		}
	}
	return sentences(lines)
}
