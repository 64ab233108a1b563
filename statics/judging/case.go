package judging

import (
	"slices"
	"sync"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A Case is one value asked for, with what an answer is held against. It is not safe for use by several goroutines.
type Case struct {
	Truth    exact.Num
	judge    Judge
	sensed   bool // a value in the opposite sense is told from other mistakes
	targets  []target
	balances func() []balance
	term     *termCase // where what is asked for is in one term
	section  *section  // where it is N, V or M at a section
	lists    func() [][]slip.Candidate
	excluded func() [][]slip.Candidate // what the slips lead to that cannot have been made
	slight   func() [][]slip.Candidate // what slight slips lead to
	step     *Step                     // where a force is asked for whose sums stand on the page
}

// A target is what is asked for as the catalogue of slips sees it, with exact values or the student's own: the right
// value, and those that slips lead to.
type target interface {
	Value() exact.Num
	Candidates() []slip.Candidate
	// Excluded lists what the slips lead to that cannot have been made, as the sums stand on the page.
	Excluded() []slip.Candidate
	// Slight lists what slight slips lead to.
	Slight() []slip.Candidate
}

// newCase gathers what slips lead to, once it is asked for.
func (j Judge) newCase(truth exact.Num, targets []target, balances func() []balance) *Case {
	c := &Case{Truth: truth, judge: j, targets: targets, balances: sync.OnceValue(balances), sensed: len(targets) > 0}
	gather := func(list func(target) []slip.Candidate) func() [][]slip.Candidate {
		return sync.OnceValue(func() [][]slip.Candidate {
			var lists [][]slip.Candidate
			for _, t := range c.targets {
				lists = append(lists, list(t))
			}
			return lists
		})
	}
	c.lists, c.excluded, c.slight = gather(target.Candidates), gather(target.Excluded), gather(target.Slight)
	return c
}

// Plain is the case of a value that must be met as it is: a length along a member, the degree of a curve.
func (j Judge) Plain(truth exact.Num) *Case { return j.newCase(truth, nil, noBalances) }

func noBalances() []balance { return nil }

// A Step is where forces are asked for: sums, and the forces that they give, as many as there are sums.
type Step struct {
	Sums  []statics.Sum
	Gives []int
	// Known tells which forces were known before; those alone can have been put in with a value.
	Known func(force int) bool
	// Stands tells that the sums stand on the page, printed or written and found right: what is left is to solve them.
	Stands bool
	// Written tells that they are the student's own: what was measured and chosen for them was right.
	Written bool
}

// Force is the case of a force that a step gives.
func (j Judge) Force(s Step, force int) *Case {
	var targets []target
	for _, values := range j.values() {
		targets = append(targets, j.question(s, force, values))
	}
	c := j.newCase(j.Solution.Values[force], targets, func() []balance { return j.stepBalances(s, force) })
	if s.Stands {
		c.step = &s
	}
	return c
}

// stepBalances lists the sums of a step that a force has to fit, with exact values and with the student's own.
func (j Judge) stepBalances(s Step, force int) []balance {
	var all []balance
	for _, values := range j.values() {
		for _, sum := range s.Sums {
			if b, ok := stepBalance(sum, force, values); ok {
				all = append(all, b)
			}
		}
	}
	return all
}

// question is a force that a step gives as the catalogue of slips sees it, with these values of the forces.
func (j Judge) question(s Step, force int, values []exact.Num) slip.Question {
	return slip.Question{
		Assembly:  j.Solution.Assembly,
		Sums:      s.Sums,
		Gives:     s.Gives,
		Force:     force,
		Values:    values,
		Known:     s.Known,
		Customary: j.Style.Units.Customary(),
		Stands:    s.Stands,
	}
}

// slipValues lists the values that slips in a sum and in its solution lead to, whatever stands on the page. A product
// reckoned wrong and the figures of the answer are not among them: honest rounding may come near to one of these.
func (c *Case) slipValues() []exact.Num {
	var all []exact.Num
	for _, candidates := range slices.Concat(c.excluded(), c.lists()) {
		for _, candidate := range candidates {
			if w := candidate.Slip.Needs; w != slip.Multiplying && w != slip.Reporting {
				all = append(all, candidate.Value)
			}
		}
	}
	return all
}

// Diagnosis is what slips a wrong value may have come from. At a section a student may keep either piece, so that slips in
// the sums of both are among them.
func (c *Case) Diagnosis(v Typed) slip.Diagnosis { return slip.Diagnose(v.Readings(), c.lists()...) }
