package judging

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// An Entry is what is asked for in one term of a sum.
type Entry int

// The entries of a term.
const (
	Size Entry = iota // the force, or its component
	Arm
	Sign // +1 or −1, by the positive turn of the style
)

// A termCase is what is asked for in one term of a step's sums.
type termCase struct {
	step  Step
	sum   int
	term  int
	entry Entry
}

// Term is the case of what is in one term: the one numbered term of the step's sum numbered sum.
func (j Judge) Term(s Step, sum, term int, entry Entry) *Case {
	t := &termCase{s, sum, term, entry}
	truth := j.entered(t, s.Sums[sum].Terms()[term])
	balances := noBalances
	if entry != Sign {
		balances = func() []balance {
			b, _ := linear(one, truth.Neg(), truth.Mul(percent))
			return []balance{b}
		}
	}
	c := j.newCase(truth, nil, balances)
	c.term = t
	return c
}

// entered is what stands in a term where it is asked for.
func (j Judge) entered(c *termCase, t statics.Term) exact.Num {
	switch {
	case c.entry == Size && t.What == statics.TurnOnly:
		return t.Size.Mul(t.Arm) // a couple has no arm of its own; one that it was given stands in its size
	case c.entry == Size:
		return t.Size
	case c.entry == Arm:
		return t.Arm
	}
	return exact.Int(int64(j.ShownSign(c.step.Sums[c.sum], t)))
}

// TermSlips lists the slips that make of a term what was typed of it; none where no term is asked about.
func (c *Case) TermSlips(v Typed) []*slip.Slip {
	var all []*slip.Slip
	if c.term == nil {
		return nil
	}
	for _, a := range c.alteredTerms() {
		is := c.judge.entered(c.term, a.Term)
		if same := v.Value.Equal(is) || c.term.entry != Sign && v.Means(is); same && !slices.Contains(all, a.Slip) {
			all = append(all, a.Slip)
		}
	}
	if c.term.entry == Sign {
		return all
	}
	for _, n := range slip.OfNumber(c.Truth) {
		if same := v.Value.Equal(n.Value) || !n.Whole && v.Means(n.Value); same && !slices.Contains(all, n.Slip) {
			all = append(all, n.Slip)
		}
	}
	return all
}

// alteredTerms lists what slips make of the term.
func (c *Case) alteredTerms() []slip.Altered {
	t := c.term
	force := t.step.Sums[t.sum].Terms()[t.term].Force
	return c.judge.question(t.step, force, c.judge.Solution.Values).OfTerm(t.sum, t.term)
}

// findInTerm says which slip a wrong size, arm or sign of a term came from, asks where several make the same of it, or
// says nothing.
func (c *Case) findInTerm(f *Finding, v Typed) {
	slips := c.TermSlips(v)
	var asks []string
	for _, s := range slips {
		f.note(s.ID)
		asks = append(asks, s.Asks())
	}
	defer func() { f.Says = ofOne.Replace(f.Says) }()
	switch asks = asksOnce(asks); {
	case len(asks) == 0:
	case len(slips) == 1 && (!slips[0].Seldom || v.figures() > 3):
		f.Says = lowerFirst(slips[0].Says)
	case len(asks) == 1:
		f.Says = oneThing + joined(asks)
	default:
		f.Says = "there is more than one way to this entry: " + joined(asks)
	}
}

// ofOne speaks of the one term asked about where a slip's sentence speaks of each.
var ofOne = strings.NewReplacer(
	"does each force", "does this force", "is each component", "is this component", "does each component", "does this component",
	"is each load", "is this load", "does each of your arms end", "does this arm end", "is each of your arms", "is this arm",
	"what is the unknown multiplied by", "what is the force multiplied by",
)

// asksOnce leaves out what is asked already, or with which another begins.
func asksOnce(asks []string) []string {
	var all []string
	for i, ask := range asks {
		said := slices.Contains(asks[:i], ask)
		if !said && !slices.ContainsFunc(asks, func(o string) bool { return strings.HasPrefix(o, ask+", ") }) {
			all = append(all, ask)
		}
	}
	return all
}
