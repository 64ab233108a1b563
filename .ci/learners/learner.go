package main

import (
	"math"
	"math/rand/v2"
)

// A learner is one of the simulated of the own kind, with what it knows.
type learner struct {
	r        *rand.Rand
	learns   float64 // chance to learn at a step
	slips    float64 // to go wrong though known
	guesses  float64 // to come right though not known
	lasts    float64 // days after which a half of what was learned today is forgotten
	power    bool    // forgets by a power of time and not exponentially
	known    map[string]bool
	last     map[string]int // day of the last use
	recalled map[string]int // times it was recalled after a day or more
}

func newLearner(r *rand.Rand, power bool) *learner {
	return &learner{r: r, learns: 0.12 + 0.25*r.Float64(), slips: 0.03 + 0.07*r.Float64(), guesses: 0.02 + 0.05*r.Float64(), lasts: 3 + 6*r.Float64(),
		power: power, known: map[string]bool{}, last: map[string]int{}, recalled: map[string]int{}}
}

// recalls draws whether what was known is known still, a day or more after it was used.
func (l *learner) recalls(skill string, day int) bool {
	return day <= l.last[skill] || l.r.Float64() < l.recall(skill, day)
}

// recall is the chance of that, and zero for what was not known.
func (l *learner) recall(skill string, day int) float64 {
	gap := math.Max(0, float64(day-l.last[skill]))
	half := l.lasts * math.Pow(2, float64(l.recalled[skill]))
	switch {
	case !l.known[skill]:
		return 0
	case l.power:
		return math.Pow(1+gap/half, -1)
	}
	return math.Pow(0.5, gap/half)
}

// step does one step of a lesson, and tells what went wrong.
func (l *learner) step(skills []string, day int) (missed []string) {
	news := 0
	for _, s := range skills {
		if l.known[s] && !l.recalls(s, day) {
			l.known[s], l.recalled[s] = false, max(0, l.recalled[s]-1)
		} else if l.known[s] && day > l.last[s] {
			l.recalled[s]++
		}
		if !l.known[s] {
			news++
		}
	}
	for _, s := range skills {
		right := l.r.Float64() < l.guesses
		if l.known[s] {
			right = l.r.Float64() >= l.slips
		} else if l.r.Float64() < l.learns/math.Sqrt(float64(news)) {
			l.known[s] = true
		}
		if !right {
			missed = append(missed, s)
		}
		l.last[s] = day
	}
	return missed
}
