package judging

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// A Judge is what answers to one problem are held against. It may be copied, and changes nothing that it holds.
type Judge struct {
	Solution *statics.Solution // by the senses in which the student takes the forces
	// Own lists the values of all forces as the student has them: what was typed and accepted, else the exact one. Nil is
	// the exact ones.
	Own []exact.Num
	// Found lists what the student has found along the members, accepted, in the order in which it was found. It may be nil.
	Found []Found
	Style notation.Style // the units, the positive turn, and how loads are named in what is said
	// piece reports, where a section is asked for, whether something acts on the piece on the side of the member's start, which is shown.
	piece func(slip.Giver) bool
}

// values lists the values of the forces that an answer may rest on: the exact ones, and the student's own where they
// differ.
func (j Judge) values() [][]exact.Num {
	all := [][]exact.Num{j.Solution.Values}
	if j.Own != nil && !slices.EqualFunc(j.Own, j.Solution.Values, exact.Num.Equal) {
		all = append(all, j.Own)
	}
	return all
}

// given are values of the forces by the senses that these were given.
func (j Judge) given(values []exact.Num) []exact.Num {
	given := slices.Clone(values)
	for i, f := range j.Solution.Forces {
		if f.Turned {
			given[i] = given[i].Neg()
		}
	}
	return given
}

// full is the judge of what is asked along members: two-force members are parts like all others, with the pin forces that
// belong to the pulls the student has.
func (j Judge) full() Judge {
	s := j.Solution
	if s.Full() == s {
		return j
	}
	if j.Own != nil {
		j.Own = s.FullValues(j.given(j.Own))
	}
	j.Solution = s.Full()
	return j
}

// ForceNamed is the force of an assembly that a typed name means, or None.
func ForceNamed(a *statics.Assembly, name string) int {
	for i, f := range a.Forces {
		if notation.NameMatches(name, f.Name) {
			return i
		}
	}
	return statics.None
}

// ForceMeant is the force that a typed name means, or None: also one with the part it acts on, such as Cy.CD, for which the
// sign is −1 if that is the part on which the force acts reversed.
func ForceMeant(a *statics.Assembly, name string) (force, sign int) {
	if f := ForceNamed(a, name); f != statics.None {
		return f, 1
	}
	plain, part, _ := strings.Cut(name, ".")
	f := ForceNamed(a, plain)
	if f == statics.None || part == "" {
		return statics.None, 0
	}
	for body, sign := range map[int]int{a.Forces[f].On: 1, a.Forces[f].By: -1} {
		if body != statics.None && strings.EqualFold(strings.TrimSuffix(part, "+"), strings.TrimSuffix(a.BodyName(body), "+")) {
			return f, sign
		}
	}
	return statics.None, 0
}

// ShownSign is a term's sign by the positive turn that the style asks for.
func (j Judge) ShownSign(s statics.Sum, t statics.Term) int {
	if s.Moment {
		return j.Style.Moments.Sign(t.Sign)
	}
	return t.Sign
}

// say says what a term or a load is.
func (j Judge) say() wording.Speaker { return wording.New(j.Solution.Assembly, j.Style) }
