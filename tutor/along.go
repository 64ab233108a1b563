package tutor

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/tutor/record"
)

// What is supplied along a member counts by places: each cut at which values are asked, each stretch whose shape is, is a step of one skill.
// N, V and M at one cut are three sums of one kept piece, and come right or wrong together; a member has three cuts or nine.

// A place is one of them, with what became of what was asked there.
type place struct {
	Question // the first that was asked
	record.Place
	slips []string
	open  bool // something went wrong in which no mistake was found
}

// places are those along one member, in the order in which they were asked.
type places []place

// add takes a question that is settled.
func (ps *places) add(m *matter, q Question, a answer) {
	i := slices.IndexFunc(*ps, func(p place) bool { return p.holds(q) })
	if i < 0 {
		i = len(*ps)
		*ps = append(*ps, place{Question: q, Place: record.Place{Skill: skillAlong(m, q), Outcome: record.StepRight}})
	}
	p := &(*ps)[i]
	p.slips = append(p.slips, a.slips...)
	switch wrong := a.told || !a.first; {
	case !wrong:
		return
	case a.told:
		p.Outcome = record.StepTold
	case p.Outcome == record.StepRight:
		p.Outcome = record.StepHelped
	}
	p.open = p.open || len(a.slips) == 0
}

// holds reports whether a question is asked at the place.
func (p place) holds(q Question) bool {
	if p.curve() || q.curve() {
		return p.curve() && q.curve() && p.Stretch.From.Equal(q.Stretch.From)
	}
	return p.Station.At.Equal(q.Station.At) && p.Station.Side == q.Station.Side
}

// curve reports whether a question is of how V or M runs along a stretch.
func (q Question) curve() bool { return q.Kind == ShapeDegree || q.Kind == ShapeSlope }

// kept are the places as a record keeps them: where one went wrong, with what its mistakes show to be wanting.
func (ps places) kept() []record.Place {
	asked := ps.skills()
	var all []record.Place
	for _, p := range ps {
		if p.Outcome != record.StepRight {
			p.Missed = missed(asked, p.slips)
			if p.open && !slices.Contains(p.Missed, p.Skill) {
				p.Missed = append(p.Missed, p.Skill)
			}
		}
		all = append(all, p.Place)
	}
	return all
}

// skills are what the places ask for, in teaching order.
func (ps places) skills() []string {
	var all []string
	for _, skill := range problems.Skills() {
		if slices.ContainsFunc(ps, func(p place) bool { return p.Skill == skill.Name }) {
			all = append(all, skill.Name)
		}
	}
	return all
}

// placesAlong are the places of a member at which something is asked at a level.
func placesAlong(s problems.Solved, d statics.Diagram, level Level) places {
	var all places
	m := &matter{problem: s.Problem, solution: s.Solution, levels: ladder{level: level}}
	for _, q := range (script{m}).sectionQuestions(d) {
		all.add(m, q, answer{first: true})
	}
	return all
}

// SkillsAlong are what the places of a member ask for, one skill a place, as a record counts them: from the level terms on with the shapes of
// its stretches.
func SkillsAlong(s problems.Solved, d statics.Diagram, level Level) []string {
	var all []string
	for _, p := range placesAlong(s, d, level) {
		all = append(all, p.Skill)
	}
	return all
}

// skillAlong is what a question along a member asks for before all else; that is wanting where no mistake is found to lead to what was typed.
func skillAlong(m *matter, q Question) string {
	switch {
	case q.curve():
		return "slopes"
	case q.Kind == ZeroPlace, q.Quantity == statics.BendingMoment && q.Station.Found:
		return "extreme-moment"
	case q.Station.Side == statics.After && !q.Station.At.IsZero():
		return "jumps"
	case m.spotOf(q) == corner && q.Station.At.IsZero() && m.bends(q.Member):
		return "corner-forces"
	}
	return "cut-forces"
}

// bends reports whether at the start of a member another one goes on at an angle.
func (m *matter) bends(member int) bool {
	f := &m.solution.Frame
	from := f.Members[member].From
	for n, other := range f.Members {
		if n != member && (other.From == from || other.To == from) && !f.Span(member).Cross(f.Span(n)).IsZero() {
			return true
		}
	}
	return false
}

// missed are those of the skills that mistakes show to be wanting.
func missed(asked, slips []string) []string {
	var all []string
	for _, id := range slips {
		if skill := problems.SkillOfSlip(id); slices.Contains(asked, skill) && !slices.Contains(all, skill) {
			all = append(all, skill)
		}
	}
	return all
}
