package main

import (
	"math"
	"math/rand/v2"

	"unpin/problems"
)

// A person is how one mind differs from another.
type person struct {
	pace       float64 // weight of a trace
	fades      float64 // decay of a first trace
	help       float64 // weight of a trace of what was told, as a part of one of what was recalled
	tellsApart float64 // what a neighbour wants in strength
	slips      float64 // chance of a slip at a step, rested
	guesses    float64 // to come right with nothing in mind
	tires      float64 // part by which slips grow with each step of a sitting
}

// newMind draws a person, who may have had a course before.
func newMind(r *rand.Rand) *mind {
	m := &mind{r: r, traces: map[string][]trace{}, knack: map[string]float64{}, day: -1, person: person{
		pace: math.Exp(0.4 * r.NormFloat64()), fades: math.Max(0.08, fadeBase+0.03*r.NormFloat64()), help: 0.4 + 0.6*r.Float64(),
		tellsApart: 0.9 + 0.6*r.Float64(), slips: 0.02 + 0.06*r.Float64(), guesses: 0.02 + 0.13*r.Float64(), tires: 0.1 * r.Float64()}}
	if r.Float64() < 0.1 { // slow
		m.pace /= 2
	}
	if r.Float64() < 0.2 { // careless
		m.slips = 0.1 + 0.15*r.Float64()
	}
	before := 0.0
	if r.Float64() < 1.0/3 { // has had a course
		before = 0.2 + 0.5*r.Float64()
	}
	for _, s := range problems.Skills() {
		m.knack[s.Name] = 0.35 * r.NormFloat64()
		if r.Float64() < before {
			m.had(s.Name)
		}
	}
	return m
}

// had leaves the traces of a course that ended more than a week ago, three to ten uses of a skill about a week from one to the next.
func (m *mind) had(skill string) {
	uses := 3 + m.r.IntN(8)
	for k := range uses {
		m.use(skill, clock(-5-7*(uses-k)+m.r.IntN(5), 0), m.pace)
	}
}

// guess is the chance to come right at a skill with nothing in mind: more where there are only two or three answers.
func (m *mind) guess(skill string) float64 {
	switch skill {
	case "pick-body", "moment-centre", "pin-pair", "solve-with-sense", "slopes":
		return 0.4
	}
	return m.guesses
}

// neighbours are skills that are easily taken for one another: a support for a support, sine for cosine, a sense for the other, a load for
// another. The pairs are our own judgement of what looks alike.
var neighbours = bothWays([][2]string{
	{"pin-support", "roller-support"}, {"pin-support", "fixed-support"}, {"pin-support", "pin-pair"},
	{"pin-pair", "load-at-pin"}, {"pin-pair", "two-force-member"}, {"pin-pair", "solve-with-sense"},
	{"components", "inclined-force-moment"}, {"axis-force-moment", "inclined-force-moment"}, {"axis-force-moment", "couple-in-sum"},
	{"uniform-resultant", "triangle-resultant"}, {"triangle-resultant", "trapezoid-resultant"}, {"uniform-resultant", "line-of-action"},
	{"load-at-pin", "load-across-pin"}, {"pick-body", "moment-centre"}, {"cut-forces", "corner-forces"}, {"jumps", "slopes"},
	{"slopes", "extreme-moment"},
})

func bothWays(pairs [][2]string) map[string][]string {
	all := map[string][]string{}
	for _, p := range pairs {
		all[p[0]], all[p[1]] = append(all[p[0]], p[1]), append(all[p[1]], p[0])
	}
	return all
}
