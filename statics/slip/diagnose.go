package slip

import (
	"sort"

	"unpin/statics/exact"
)

// A Typed value is what a student wrote, in the problem's units. It agrees with a number that is no further from it than
// Within: half a unit of the place it was written to, or nought.
type Typed struct {
	Value, Within exact.Num
	// Figures is how many significant figures it was written with; an expression has as many as one likes.
	Figures int
}

// A Diagnosis is what can be said of a wrong value: the candidates that it agrees with, one for each slip and giver.
type Diagnosis struct {
	Matches []Candidate
	// Possible is a pair of slips that would lead to it together, where no single one does.
	Possible []Candidate
}

// Diagnose finds the candidates, in rising order, that a value agrees with. Only a value of three figures or more can
// agree with any.
func Diagnose(v Typed, candidates []Candidate) Diagnosis {
	if v.Figures < 3 {
		return Diagnosis{}
	}
	var d Diagnosis
	low, high := v.Value.Sub(v.Within), v.Value.Add(v.Within)
	from := sort.Search(len(candidates), func(i int) bool { return candidates[i].Value.Cmp(low) >= 0 })
	for _, c := range candidates[from:] {
		if c.Value.Cmp(high) > 0 {
			break
		}
		d.add(c)
	}
	return d
}

// add notes a match, once for each slip and giver.
func (d *Diagnosis) add(c Candidate) {
	for _, m := range d.Matches {
		if m.Slip == c.Slip && m.Giver == c.Giver {
			return
		}
	}
	d.Matches = append(d.Matches, c)
}

// Named is the one slip that all matches share; nil if there is none or they are several.
func (d Diagnosis) Named() *Slip {
	if len(d.Matches) == 0 {
		return nil
	}
	for _, m := range d.Matches {
		if m.Slip != d.Matches[0].Slip {
			return nil
		}
	}
	return d.Matches[0].Slip
}
