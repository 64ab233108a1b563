package worksheet

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A cut is a place along a member at which N, V and M are asked for, with the sums of a kept piece that give them.
type cut struct {
	section
	kept  statics.Kept
	sums  []string // of N, V and M, in symbols, those that are asked for; empty where the place is to be found
	gives []answer // what comes of them, by name and unit, a place before
}

// cuts are those along a member.
func (d answering) cuts(member int) []cut {
	var all []cut
	for _, s := range d.sections(member) {
		c := cut{section: s, kept: d.kept(member, s.station)}
		if s.place != nil {
			c.gives = append(c.gives, answer{name: "x", unit: d.st.UnitOf(notation.Length)})
		}
		for q := range statics.BendingMoment + 1 {
			if item := s.values[q]; item != nil {
				c.gives = append(c.gives, answer{name: q.Letter(), unit: d.st.UnitOf(item.Dim)})
				if !s.station.Found {
					c.sums = append(c.sums, d.keptSum(c.kept, q))
				}
			}
		}
		all = append(all, c)
	}
	return all
}

// kept is the piece with fewer terms of the two that a cut at a station leaves.
func (d answering) kept(member int, at statics.Station) statics.Kept {
	from, to := statics.Kept{Solution: d.Solution, Member: member, At: at}, statics.Kept{Solution: d.Solution, Member: member, At: at, Side: statics.ToEnd}
	if countedTerms(to) < countedTerms(from) {
		return to
	}
	return from
}

// countedTerms is how many terms the sums of a kept piece have that count.
func countedTerms(k statics.Kept) int {
	n := 0
	for q := range statics.BendingMoment + 1 {
		_, sum := k.Sum(q)
		for _, t := range sum.Terms() {
			if t.Why == statics.Counts {
				n++
			}
		}
	}
	return n
}

// keptSum is the sum of a kept piece that gives a quantity, in symbols, by the signs of the problem.
func (d answering) keptSum(k statics.Kept, q statics.Quantity) string {
	a, sum := k.Sum(q)
	if q == statics.ShearForce && d.st.Shear == notation.CounterClockwiseShear {
		terms := slices.Clone(sum.Terms())
		last := &terms[len(terms)-1]
		last.Sign, last.Toward = -last.Sign, last.Toward.Neg()
		sum = sum.With(terms)
	}
	return wording.New(a, d.st).Symbols(sum)
}

// toFind says how a place is found at which V is zero.
func (c cut) toFind(d answering) string {
	return fmt.Sprintf("Where %s: cut there, x from %s, and set V = 0 in the sum across the member: it gives x. Moments about the cut give M.",
		d.placeName(c.kept.Member, c.section), d.Frame.Joints[d.Frame.Members[c.kept.Member].From].Name)
}

// cuts are the printed sums that give N, V and M, with room to put numbers in.
func (s sheet) cuts() {
	s.lead("Every sum is printed, of the piece that is named. Put in what was found before, and solve it.")
	for _, m := range s.ask.members() {
		s.subhead(s.say.Member(m))
		s.lead(s.say.SectionSigns(m))
		s.symbolic("NVM")
		for _, c := range s.ask.cuts(m) {
			s.cut(c)
		}
	}
}

func (s sheet) cut(c cut) {
	if c.section.station.Found {
		s.numbered("", c.toFind(s.ask))
		s.room(valueRoom)
	} else {
		s.numbered("", wording.Capital(s.say.KeptTitle(c.kept)))
		for _, sum := range c.sums {
			s.equate("", sum)
		}
		s.room(len(c.sums))
	}
	var gives []string
	for _, a := range c.gives {
		gives = append(gives, strings.TrimSpace(a.name+" = "+valueBlank+" "+a.unit))
	}
	s.conclude("", strings.Join(gives, "   "))
}
