package tutor

import (
	"slices"
	"strconv"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Kind is what a question asks for.
type Kind int

// The kinds of question.
const (
	Reading     Kind = iota // nothing: a worked step to read
	ForceValue              // the value of an unknown
	TermSize                // the force of one term
	TermArm                 // its arm
	TermSign                // its sign
	SectionPart             // N, V or M at a place along a member
	ZeroPlace               // where along a stretch of a member V is zero
	ShapeDegree             // the degree of V or M on a stretch
	ShapeSlope              // the way the slope of M goes along a stretch
	ChooseSum               // a free body and a sum of it
	TypeSum                 // the equation of the sum chosen
	CheckSum                // in an exam: a sum that was not used, and what it comes to
)

// A Question is one thing the student is asked.
type Question struct {
	Kind     Kind
	Name     string // what is asked: Cy, "V(BC, 2.4 before)", "arm 2"
	Dim      notation.Dimension
	Step     int // of the plan, or statics.None once the forces are known
	Sum      int // which of the step's sums, for a term
	Term     int // which of the sum's terms, for a term
	Force    int // the unknown asked for, for a value
	Member   int // for a section, and for reading a member's diagram
	Station  statics.Station
	Quantity statics.Quantity
	Stretch  statics.Stretch // for a place or shape on it
	truth    exact.Num
}

// key is the question's name where that stands for itself in the lesson, else with the step and sum before it: 2.1 arm 3.
func (q Question) key() string {
	switch q.Kind {
	case TermSize, TermArm, TermSign:
		return strconv.Itoa(q.Step+1) + "." + strconv.Itoa(q.Sum+1) + " " + q.Name
	}
	return q.Name
}

// A script is which questions are asked of a matter, at its levels and in order.
type script struct{ about *matter }

// all lists the questions of a lesson whose plan is given, in order.
func (sc script) all() []Question {
	var all []Question
	spare := spareSteps(sc.about)
	for i, step := range sc.about.solution.Plan {
		switch {
		case spare[i] && sc.about.asked != nil:
		case sc.about.levels.level == Read || sc.about.levels.of(i) == Read && len(step.Gives) > 0:
			all = append(all, Question{Kind: Reading, Step: i, Member: statics.None})
		case step.Relation || step.Check:
		default:
			if sc.about.levels.of(i) == Terms {
				all = append(all, sc.termQuestions(i)...)
			}
			all = append(all, sc.valueQuestions(i)...)
		}
	}
	return append(all, sc.sections()...)
}

// sections lists the questions along the members, if they are to be found.
func (sc script) sections() []Question {
	if sc.about.asked != nil {
		return sc.askedAlong()
	}
	var all []Question
	if !slices.Contains(sc.about.problem.Find, "diagrams") {
		return nil
	}
	for _, d := range sc.about.solution.Diagrams {
		if sc.about.levels.along(d.Member) == Read {
			all = append(all, Question{Kind: Reading, Step: statics.None, Member: d.Member})
		} else {
			all = append(all, sc.sectionQuestions(d)...)
		}
	}
	return all
}

// valueQuestions asks for what step i gives.
func (sc script) valueQuestions(i int) []Question {
	var all []Question
	for _, f := range sc.about.solution.Plan[i].Gives {
		force := sc.about.solution.Forces[f]
		all = append(all, Question{
			Kind:   ForceValue,
			Name:   force.Name,
			Dim:    notation.ForceDimension(force),
			Step:   i,
			Force:  f,
			Member: statics.None,
			truth:  sc.about.solution.Values[f],
		})
	}
	return all
}

// termQuestions asks for the terms of step i's sums: the size where it is a load's, the arm where the sum is of
// moments, the sign always.
func (sc script) termQuestions(i int) []Question {
	var all []Question
	for s, sum := range sc.about.solution.Plan[i].Sums {
		number := 0
		for t, term := range sum.Terms() {
			if term.Why != statics.Counts {
				continue
			}
			number++
			ask := func(kind Kind, word string, dim notation.Dimension, truth exact.Num) {
				all = append(all, Question{Kind: kind, Name: word + " " + strconv.Itoa(number), Dim: dim, Step: i, Sum: s, Term: t,
					Force: term.Force, Member: statics.None, truth: truth})
			}
			switch {
			case term.Force == statics.None && term.What == statics.TurnOnly:
				ask(TermSize, "couple", notation.Moment, term.Size)
			case term.Force == statics.None:
				ask(TermSize, "force", notation.Force, term.Size)
			}
			if sum.Moment && term.What != statics.TurnOnly {
				ask(TermArm, "arm", notation.Length, term.Arm)
			}
			ask(TermSign, "sign", notation.Pure, exact.Int(int64(sc.about.shownSign(sum, term))))
		}
	}
	return all
}

// shownSign is a term's sign by the positive turn the problem asks for.
func (m *matter) shownSign(s statics.Sum, t statics.Term) int {
	if s.Moment && m.clockwise() {
		return -t.Sign
	}
	return t.Sign
}
