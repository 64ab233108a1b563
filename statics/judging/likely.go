package judging

import (
	"cmp"
	"slices"
	"strings"
	"sync"

	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A WrongValue is one to which slips lead.
type WrongValue struct {
	Value exact.Num
	Slips []string // all that lead to it, by their IDs
	Says  string   // one sentence to the student, as Find says it of this value with three figures
}

// LikelyWrong lists the wrong values that are likeliest, at most n, for keys and for questions that are judged elsewhere.
// Three figures tell each of them from the right value, from that in the opposite sense, which is not among them, and from
// the others. A case without slips, such as a place along a member, has none.
//
// How often each slip is made in frames with pins nobody has counted. The order is that of the five years of marked quizzes
// of Gross and Dinehart (source GD of package slip): setting up, then carrying out, then arithmetic and copying; before it,
// slips that a study names come before those of common practice, and these before derived ones. So that not all three are
// loads left off, each aspect (what is in the sum, its size, its arm, its sense…) has its turn before any has a second. Of
// one slip, that in the first term of the sum comes first. At a section, slips about sections come before all others.
func (c *Case) LikelyWrong(n int) []WrongValue {
	ranked := slices.Concat(c.lists()...)
	slices.SortStableFunc(ranked, func(a, b slip.Candidate) int {
		return cmp.Or(c.apart(a.Slip)-c.apart(b.Slip), standing(a.Slip)-standing(b.Slip), int(a.Slip.Needs)-int(b.Slip.Needs), order()[a.Slip]-order()[b.Slip], slices.Compare(a.Terms, b.Terms))
	})
	low, high := c.Range()
	l := likely{about: c, low: low, high: high}
	for len(ranked) > 0 && len(l.found) < n {
		ranked = l.round(ranked, n)
	}
	return l.found
}

// likely are the wrong values found so far.
type likely struct {
	about     *Case
	low, high exact.Num // of what is right
	found     []WrongValue
}

// round takes the first of each aspect among the candidates, and returns those that it has not looked at.
func (l *likely) round(ranked []slip.Candidate, n int) (rest []slip.Candidate) {
	had := map[slip.Aspect]bool{}
	for _, x := range ranked {
		switch {
		case len(l.found) == n:
			return nil
		case had[x.Slip.About]:
			rest = append(rest, x)
		default:
			had[x.Slip.About] = l.take(x)
		}
	}
	return rest
}

// take adds a candidate, if it can be told from the others and something can be said of it.
func (l *likely) take(x slip.Candidate) bool {
	if l.meets(x.Value) {
		return false
	}
	v := inThree(x.Value)
	verdict := l.about.Verdict(v)
	if verdict.Right() || verdict == OtherSense {
		return false
	}
	f := l.about.Find(verdict, v)
	if f.Says == "" || !slices.Contains(f.Slips, x.Slip.ID) {
		return false
	}
	l.found = append(l.found, WrongValue{Value: x.Value, Slips: f.Slips, Says: f.Says})
	return true
}

// meets reports whether a value with three figures may be taken for the right one, in either sense, or for one found.
func (l *likely) meets(v exact.Num) bool {
	reach := thirdFigure(v)
	near := func(low, high exact.Num) bool { return v.Add(reach).Cmp(low) >= 0 && v.Sub(reach).Cmp(high) <= 0 }
	if near(l.low, l.high) || near(l.about.Truth.Neg(), l.about.Truth.Neg()) {
		return true
	}
	return slices.ContainsFunc(l.found, func(w WrongValue) bool {
		own := thirdFigure(w.Value)
		return near(w.Value.Sub(own), w.Value.Add(own))
	})
}

// ThirdFigure is half a unit in the third significant figure of a number: by how much it may be off when it is rounded to
// three; 0 for 0.
func ThirdFigure(x exact.Num) exact.Num { return thirdFigure(x) }

// inThree is a value as somebody types it with three figures.
func inThree(x exact.Num) Typed {
	if x.IsZero() {
		return Typed{Unit: one, Places: []int{0}}
	}
	r := x.Rounded(3)
	return Typed{Value: r, Written: r, Unit: one, Places: []int{leading(r) - 2}}
}

// apart puts slips about sections before all others where a section is asked for.
func (c *Case) apart(s *slip.Slip) int {
	if c.section != nil && s.Group != slip.Internal {
		return 1
	}
	return 0
}

// standing puts slips that a study names before those of common practice, and these before derived ones.
func standing(s *slip.Slip) int {
	for source := range strings.SplitSeq(s.Source, ", ") {
		if source != "TB" && source != "DV" {
			return 0
		}
	}
	return map[bool]int{true: 1, false: 2}[strings.Contains(s.Source, "TB")]
}

// order is the place of each slip in the catalogue.
var order = sync.OnceValue(func() map[*slip.Slip]int {
	all := map[*slip.Slip]int{}
	for i, s := range slip.Catalogue() {
		all[s] = i
	}
	return all
})
