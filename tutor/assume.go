package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

// A student who makes the plan may also choose the sense in which an unknown is taken: "let Dy down". From then on its
// terms, its value, the sheet and the figure are by that sense, since the unknown itself is turned round.

// A let is a line that had an unknown taken in a sense, with the question at which it was typed.
type let struct {
	at   int
	line string
}

// assume takes a name and a sense, and perhaps the part it is meant on.
func (l *Lesson) assume(words []string) Reply {
	if l.route == nil {
		return Reply{Kind: Unread, Lines: []string{"Here each unknown is taken in its positive sense, and an answer may name another: 15 down; at the levels plan and blank you choose it."}}
	}
	words = slices.DeleteFunc(words, func(w string) bool { return slices.Contains([]string{"act", "be", "=", "positive", "on"}, w) })
	if len(words) < 2 {
		return Reply{Kind: Unread, Lines: []string{"Name an unknown and the sense it is taken in, as in: let " + l.about.solution.Forces[0].Name + " left."}}
	}
	i := l.about.forceNamed(words[0])
	if i == statics.None {
		return Reply{Kind: Unread, Lines: []string{words[0] + " is no unknown here; they are " + notation.List(l.about.forceNames(l.about.allForces())) + "."}}
	}
	sign, err := l.about.assumedSign(i, words[1], words[2:])
	if err != nil {
		return unread(err)
	}
	if sign < 0 {
		l.turn(i)
	}
	return Reply{Kind: Listed, Lines: []string{l.about.unknownText(i)}}
}

// assumedSign is +1 if the sense, on the part it is meant on, is the positive sense that force i has now, else −1.
func (m *matter) assumedSign(i int, word string, on []string) (int, error) {
	f := m.solution.Forces[i]
	q := judging.Asked{Name: f.Name, Dim: notation.ForceDimension(f), Force: &f}
	a, err := notation.ReadAnswer("1 "+strings.ToLower(word), m.problem.Units, q.Dim)
	if err != nil || a.Sense == notation.NoSense {
		return 0, fmt.Errorf("%s is no sense of %s; %s", word, f.Name, q.Senses())
	}
	sign, err := q.SenseSign(a.Sense)
	switch part := strings.Join(on, " "); {
	case err != nil || part == "" || f.Kind == statics.MemberPull || strings.EqualFold(part, m.solution.BodyName(f.On)):
		return sign, err
	case f.By != statics.None && strings.EqualFold(part, m.solution.BodyName(f.By)):
		return -sign, nil
	default:
		return 0, fmt.Errorf("%s does not act on %s", f.Name, strings.ToUpper(part))
	}
}

// allForces numbers the unknowns.
func (m *matter) allForces() []int {
	var all []int
	for i := range m.solution.Forces {
		all = append(all, i)
	}
	return all
}

// turn turns the positive sense of force i round, wherever the lesson speaks of it.
func (l *Lesson) turn(i int) {
	s, r := *l.about.solution, l.route
	s.Assembly = s.Turn(i)
	s.Values = slices.Clone(s.Values)
	s.Values[i] = s.Values[i].Neg()
	s.Plan, r.expert = stepsAgain(s.Assembly, s.Plan), stepsAgain(s.Assembly, r.expert)
	r.kept = sumsAgain(s.Assembly, r.kept)
	if len(r.chosen.Body) > 0 {
		r.chosen = r.chosen.Again(s.Assembly)
	}
	l.about.solution = &s
	for n := range l.sheet.questions {
		if q := &l.sheet.questions[n]; q.Force == i && (q.Kind == ForceValue || q.Kind == TermSign) {
			q.truth = q.truth.Neg()
			l.sheet.answers[n].value = l.sheet.answers[n].value.Neg()
		}
	}
}

// stepsAgain are steps with their sums made anew.
func stepsAgain(a *statics.Assembly, steps []statics.Step) []statics.Step {
	all := slices.Clone(steps)
	for n := range all {
		all[n].Sums = sumsAgain(a, all[n].Sums)
	}
	return all
}

func sumsAgain(a *statics.Assembly, sums []statics.Sum) []statics.Sum {
	var all []statics.Sum
	for _, s := range sums {
		all = append(all, s.Again(a))
	}
	return all
}

// assumedLines list the unknowns that are taken in another sense than the one they are given.
func (m *matter) assumedLines() []string {
	var lines []string
	for i, f := range m.solution.Forces {
		if f.Turned {
			lines = append(lines, "As assumed, "+m.unknownText(i))
		}
	}
	return lines
}

// asGiven are values of the forces by the senses that these are given.
func (m *matter) asGiven(values []exact.Num) []exact.Num {
	given := slices.Clone(values)
	for i, f := range m.solution.Forces {
		if f.Turned {
			given[i] = given[i].Neg()
		}
	}
	return given
}
