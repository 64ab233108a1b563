package marking

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// An Override is what an instructor decides about one answer, whatever its verdict.
type Override struct {
	Line                       int
	Student, Problem, Quantity string // Problem is a name or a code; empty where there is one alone
	Got                        exact.Num
	Reason                     string
}

// overrideColumns are the columns of decisions.
var overrideColumns = []string{"student", "problem", "quantity", "got", "reason"}

// ReadOverrides reads decisions that are called name: CSV with the columns student, problem, quantity, got and reason. All
// faults are told at once, each with its line: a decision must not be lost.
func ReadOverrides(name string, from io.Reader) ([]Override, error) {
	lines, err := linesOf(name, from)
	if err != nil {
		return nil, err
	}
	var all []Override
	var faults []string
	var columns []int
	comma := separator(firstLine(lines))
	for i, line := range lines {
		if strings.Trim(line, " \t,;") == "" {
			continue
		}
		cells, err := cellsOf(line, comma)
		switch {
		case err != nil || unfit(line) != "":
			faults = append(faults, fmt.Sprintf("%s:%d: the line cannot be read as cells", notation.Visible(name), i+1))
		case columns == nil:
			if columns = columnsOf(cells); columns == nil {
				return nil, fmt.Errorf("%s:%d: the first line names the columns %s", notation.Visible(name), i+1, strings.Join(overrideColumns, ","))
			}
		default:
			o, err := overrideOf(cells, columns)
			if err != nil {
				faults = append(faults, fmt.Sprintf("%s:%d: %v", notation.Visible(name), i+1, err))
			}
			o.Line = i + 1
			all = append(all, o)
		}
	}
	if len(faults) > 0 {
		return nil, errors.New(strings.Join(faults, "\n"))
	}
	return all, nil
}

// columnsOf is where each column of decisions stands; nil where one is missing.
func columnsOf(head []string) []int {
	var at []int
	for _, name := range overrideColumns {
		i := slices.Index(lowered(head), name)
		if i < 0 {
			return nil
		}
		at = append(at, i)
	}
	return at
}

func overrideOf(cells []string, columns []int) (o Override, err error) {
	var c [5]string
	for n, i := range columns {
		if i < len(cells) {
			c[n] = cells[i]
		}
	}
	o = Override{Student: c[0], Problem: c[1], Quantity: c[2], Reason: c[4]}
	if o.Quantity == "" {
		return o, errors.New("no quantity is named")
	}
	if o.Reason == "" {
		return o, errors.New("no reason is given: the student reads it")
	}
	if o.Got, err = exact.Parse(strings.ReplaceAll(c[3], ",", ".")); err != nil || o.Got.Sign() < 0 {
		return o, fmt.Errorf("got is a number of points, not %q", shortened(c[3]))
	}
	return o, nil
}

// IsOf reports whether a decision is about a paper.
func (o Override) IsOf(p *Paper, problem string) bool {
	return o.Student == p.Student && (o.Problem == "" || o.Problem == problem || p.Code != "" && strings.EqualFold(o.Problem, p.Code))
}

// Override gives an answer the points that were decided, with the reason, and counts anew. The error says what is wrong with
// the decision.
func (r *Result) Override(o Override, s *Scheme) error {
	if _, _, ok := partOf(o.Quantity); ok {
		return r.overridePart(o, s)
	}
	spot, err := r.Marker.find(o.Quantity)
	if err != nil {
		return err
	}
	for i := range r.Answers {
		a := &r.Answers[i]
		if !a.Asked || spot.item < 0 || a.Item.Name != r.Marker.Items[spot.item].Name {
			continue
		}
		said, err := o.decide(a.Name, &a.Got, a.Of)
		if err != nil {
			return err
		}
		a.hollow, a.Remark = false, joinedNotes(a.Remark, said)
		r.Got = s.rounded(r.points())
		return nil
	}
	return fmt.Errorf("%s is not asked for here", shortened(o.Quantity))
}

// overridePart does so for a part of the working.
func (r *Result) overridePart(o Override, s *Scheme) error {
	for i := range r.Parts {
		p := &r.Parts[i]
		if p.Name() != o.Quantity {
			continue
		}
		said, err := o.decide(p.Name(), &p.Got, p.Of)
		if err != nil {
			return err
		}
		p.Remark = joinedNotes(p.Remark, said)
		r.Got = s.rounded(r.points())
		return nil
	}
	return fmt.Errorf("this paper shows no %s", o.Quantity)
}

// decide gives the points decided, of so many, and says so.
func (o Override) decide(name string, got *exact.Num, of exact.Num) (said string, err error) {
	if o.Got.Cmp(of.Add(thousandth)) > 0 {
		return "", fmt.Errorf("%s has %s points, and cannot get %s", name, Points(of), Points(o.Got))
	}
	if *got = exact.Min(o.Got, of); o.Got.Sub(of).Abs().Cmp(thousandth) <= 0 {
		*got = of
	}
	return fmt.Sprintf("decided: %s of %s points, %s", Points(*got), Points(of), shownReason(o.Reason)), nil
}

func joinedNotes(notes ...string) string {
	return strings.Join(slices.DeleteFunc(notes, func(s string) bool { return s == "" }), "; ")
}

// thousandth is by how much points as they are written may be off.
var thousandth = exact.MustParse("0.001")

// shownReason is a reason as it can be shown.
func shownReason(text string) string { return notation.Visible(text) }

// points are what all answers together get, exact.
func (r *Result) points() exact.Num {
	total := exact.Num{}
	for _, a := range r.Answers {
		if a.Asked {
			total = total.Add(a.Got)
		}
	}
	for _, p := range r.Parts {
		total = total.Add(p.Got)
	}
	return total
}
