package slip

import (
	"slices"
	"sort"

	"unpin/statics/exact"
)

// AllFigures is how many figures an expression has, which stands for its value in full.
const AllFigures = 1000

// A Typed value is what a student wrote, in the problem's units. It agrees with a number that is no further from it than
// Within: half a unit of the place it was written to, or zero where the number is meant as it stands.
type Typed struct {
	Value, Within exact.Num
	Figures       int // significant figures as written
}

// A Diagnosis is what can be said of a wrong value: the candidates that it agrees with, one for each slip and what it
// changes.
type Diagnosis struct {
	Matches []Candidate
}

// Diagnose finds the candidates that a value agrees with, in lists each in rising order. Of several readings of the
// value, the first that agrees with any counts.
func Diagnose(readings []Typed, lists ...[]Candidate) Diagnosis {
	var d Diagnosis
	for _, v := range readings {
		for _, candidates := range lists {
			d.find(v, candidates)
		}
		if len(d.Matches) > 0 {
			break
		}
	}
	return d
}

// find notes the candidates that a value agrees with.
func (d *Diagnosis) find(v Typed, candidates []Candidate) {
	low, high := v.Value.Sub(v.Within), v.Value.Add(v.Within)
	from := sort.Search(len(candidates), func(i int) bool { return candidates[i].Value.Cmp(low) >= 0 })
	for _, c := range candidates[from:] {
		if c.Value.Cmp(high) > 0 {
			return
		}
		if !c.Whole || c.Value.Equal(v.Value) {
			d.add(c)
		}
	}
}

// add notes a match, once for each slip and what it changes.
func (d *Diagnosis) add(c Candidate) {
	for _, m := range d.Matches {
		if m.Slip == c.Slip && m.Giver == c.Giver && m.Sum == c.Sum && slices.Equal(m.Terms, c.Terms) {
			return
		}
	}
	d.Matches = append(d.Matches, c)
}

// OfZero keeps of very many slips that a typed zero agrees with those that say why zero was taken, if there are any.
func (d Diagnosis) OfZero() Diagnosis {
	return d.those(func(s *Slip) bool { return s.OfZero })
}

// Likelier leaves out the matches of slips that are seldom made, if there are others.
func (d Diagnosis) Likelier() Diagnosis {
	return d.those(func(s *Slip) bool { return !s.Seldom })
}

// those keeps the matches of some slips, if there are any; else all.
func (d Diagnosis) those(kept func(*Slip) bool) Diagnosis {
	var of Diagnosis
	for _, m := range d.Matches {
		if kept(m.Slip) {
			of.Matches = append(of.Matches, m)
		}
	}
	if len(of.Matches) == 0 {
		return d
	}
	return of
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
