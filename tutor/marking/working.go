package marking

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics/exact"
)

// A Part is one part of the working on a paper, with its marks: of what leads to a force the body and sum that were chosen, the
// method of the equation, its terms; or the check. Marks have it as an answer called body for Cy, method for Cy, terms for Cy or
// check, which no value is called.
type Part struct {
	Kind         string // one of problems.SchemeParts
	For          string // the force that it leads to; empty for the check
	Given        string // as it was written; empty where it was left open
	Right, Asked int    // so many pieces of so many are right
	Slip         string // the mistake in it, by its ID
	Says         string // why it is not right, a clause; empty where it is
	Remark       string // something to know beside the verdict
	Got, Of      exact.Num
}

// forWord stands, in the name of a part, between what it is and the force that it leads to.
const forWord = " for "

// Name is what marks call a part.
func (p Part) Name() string {
	if p.For == "" {
		return p.Kind
	}
	return p.Kind + forWord + p.For
}

// partOf reads the name of a part; false where it is a value's.
func partOf(name string) (kind, force string, ok bool) {
	kind, force, _ = strings.Cut(name, forWord)
	return kind, force, slices.Contains(problems.SchemeParts, kind) && (force == "") == (kind == "check")
}

// Verdict is that on a part.
func (p Part) Verdict() string {
	switch {
	case p.Given == "":
		return Missing
	case p.Right == p.Asked:
		return Right
	case p.Slip != "":
		return Slip
	}
	return Wrong
}

// note is the reason why marks are lost in a part.
func (p Part) note() string {
	pieces := ""
	if p.Verdict() != Right && p.Asked > 1 {
		pieces = fmt.Sprintf("%d of %d right", p.Right, p.Asked)
	}
	return joinedNotes(pieces, strings.TrimSuffix(p.Says, "."), p.Remark)
}

// ShowWorking has the working counted beside the values, by the scheme.
func (r *Result) ShowWorking(parts []Part, s *Scheme) {
	r.Parts = parts
	s.count(r, r.Of)
}

// countParts counts the points of the working, and returns what of the problem is left for the values.
func (s *Scheme) countParts(r *Result, points exact.Num) (left exact.Num) {
	left = exact.Int(1)
	for k, kind := range problems.SchemeParts {
		var of []*Part
		for i := range r.Parts {
			r.Parts[i].weigh(kind, s, &of)
		}
		each, err := s.Working[k].Quo(exact.Int(int64(100 * len(of))))
		if err != nil {
			continue // none is shown
		}
		left = left.Sub(each.Mul(exact.Int(int64(len(of)))))
		for _, p := range of {
			p.Of = each.Mul(points)
			if p.Got, err = p.Of.Mul(exact.Int(int64(p.Right))).Quo(exact.Int(int64(p.Asked))); err != nil {
				p.Got = exact.Num{}
			}
		}
	}
	return left
}

// weigh adds a part to those of a kind that earn something together, but for what the scheme leaves out.
func (p *Part) weigh(kind string, s *Scheme, to *[]*Part) {
	if p.Kind != kind {
		return
	}
	if p.Got, p.Of = (exact.Num{}), (exact.Num{}); !slices.Contains(s.Void, p.Name()) {
		*to = append(*to, p)
	}
}
