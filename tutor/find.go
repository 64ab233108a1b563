package tutor

import (
	"fmt"
	"math/rand/v2"
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// Finding the mistake in a worked solution teaches those who have the skill, and shows a week later and not at once (McLaren, Adams
// and Mayer, International Journal of Artificial Intelligence in Education 25, 2015); it is not for beginners.

// A hunt is the worked solution of a problem with one mistake of the catalogue in it. What comes after is worked right, with the wrong
// value carried on.
type hunt struct {
	about *matter
	mishap
	values []exact.Num // of all forces, as the worked solution has them
	rules  choice      // which rule was broken
}

// A mishap is a mistake in one step of a plan, and the rules that it does not break though they could be broken there.
type mishap struct {
	step  int
	erred slip.Erred
	kept  []*slip.Slip
}

// alongIn is in how many exercises for no skill one is about N, V and M.
const alongIn = 3

// FindTheMistake is a worked solution of a problem with a mistake in it, or N, V and M along a member. Where the problem allows, the mistake is one
// that shows the skill to be wanting; n chooses among several. The error says why there is none.
func FindTheMistake(p *problems.Problem, skill string, n uint64) (*Drill, error) {
	m, err := matterOf(p)
	if err != nil {
		return nil, err
	}
	pick := rand.New(rand.NewPCG(n, 0))
	if isAlong(skill) || skill == "" && pick.IntN(alongIn) == 0 {
		if d := findAlong(m, skill, pick); d != nil {
			return d, nil
		}
	}
	all := mishapsIn(m)
	if some := slices.DeleteFunc(slices.Clone(all), func(x mishap) bool { return problems.SkillOfSlip(x.erred.Slip.ID) != skill }); len(some) > 0 {
		all = some
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("%s has no sum in which a mistake would show and could be told from others", p.Title)
	}
	// One mistake is as likely as another, though some can be made in many places.
	ids := mistakesIn(all)
	id := ids[pick.IntN(len(ids))]
	all = slices.DeleteFunc(all, func(x mishap) bool { return x.erred.Slip.ID != id })
	h := &hunt{about: m, mishap: all[pick.IntN(len(all))]}
	h.carry()
	h.rules = chooseRule(h.erred.Slip, h.kept, pick)
	return h.drill(), nil
}

// mistakesIn lists the mistakes of some mishaps, each once.
func mistakesIn(all []mishap) []string {
	var ids []string
	for _, x := range all {
		if !slices.Contains(ids, x.erred.Slip.ID) {
			ids = append(ids, x.erred.Slip.ID)
		}
	}
	return ids
}

// matterOf is a problem that is fit for a lesson, with its solution.
func matterOf(p *problems.Problem) (*matter, error) {
	l, err := New(p, Values, false)
	if err != nil {
		return nil, err
	}
	return l.about, nil
}

// questionOf is what the catalogue of slips sees of a step of one sum.
func questionOf(m *matter, i int) slip.Question {
	step, before := m.solution.Plan[i], m.solution.KnownBefore(i)
	return slip.Question{Assembly: m.solution.Assembly, Sums: step.Sums, Gives: step.Gives, Force: step.Gives[0], Values: m.solution.Values,
		Known: func(f int) bool { _, known := before(f); return known }, Customary: m.problem.Units.Customary()}
}

// mishapsIn lists the mistakes that the steps of a plan allow, each of which shows on the page and can be told from others.
func mishapsIn(m *matter) []mishap {
	var all []mishap
	for i, step := range m.solution.Plan {
		if len(step.Sums) != 1 || len(step.Gives) != 1 {
			continue
		}
		q := questionOf(m, i)
		ways, other := q.Erred(), q.Candidates()
		for _, e := range ways {
			x := mishap{i, e, keptRules(e, ways, other)}
			if shows(m, x) && len(x.kept) >= leastRules {
				all = append(all, x)
			}
		}
	}
	return all
}

// shows reports whether a mistake can be seen on the page: the sum or what it gives reads otherwise.
func shows(m *matter, x mishap) bool {
	h := &hunt{about: m, mishap: x}
	h.values = slices.Clone(m.solution.Values)
	h.values[h.force()] = x.erred.Value
	_, wrong := h.written()
	return wrong > 0 && !noRule(x.erred.Slip) && !oddlyWritten(m, x.erred)
}

// oddlyWritten reports whether a mistake would stand there as nobody writes it: a single force with a factor of two.
func oddlyWritten(m *matter, e slip.Erred) bool {
	return e.Slip.ID == "spread-counted-twice" && slices.ContainsFunc(e.Terms, func(t statics.Term) bool {
		return t.Action == statics.None || !m.solution.Actions[t.Action].Shape.Spread()
	})
}

// force is what the step of the mistake gives.
func (x mishap) force(m *matter) int { return m.solution.Plan[x.step].Gives[0] }

func (h *hunt) force() int { return h.mishap.force(h.about) }

// carry works the steps after the mistake, by their true sums, with the values that stand by then.
func (h *hunt) carry() {
	h.values = slices.Clone(h.about.solution.Values)
	h.values[h.force()] = h.erred.Value
	for _, step := range h.about.solution.Plan[h.step+1:] {
		if len(step.Gives) == 0 {
			continue
		}
		factors, rests := make([][]exact.Num, len(step.Sums)), make([]exact.Num, len(step.Sums))
		for n, s := range step.Sums {
			for _, f := range step.Gives {
				factors[n] = append(factors[n], s.Factor(f))
			}
			rests[n] = s.Residual(without(h.values, step.Gives))
		}
		if found, ok := statics.SolveEquations(factors, rests); ok {
			for k, f := range step.Gives {
				h.values[f] = found[k]
			}
		}
	}
}

// without are values with some of them zero.
func without(values []exact.Num, some []int) []exact.Num {
	values = slices.Clone(values)
	for _, f := range some {
		values[f] = exact.Num{}
	}
	return values
}
