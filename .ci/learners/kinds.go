package main

import (
	"fmt"
	"math/rand/v2"
)

// A pupil is a simulated learner of any kind.
type pupil interface {
	// step does one step of a lesson, and tells what went wrong.
	step(skills []string, day int) (missed []string)
	// recall is the chance that a skill is in mind if it is asked for on a day after the last; slips and guesses do not count.
	recall(skill string, day int) float64
}

// surely is the chance of recall from which on a skill is truly known.
const surely = 0.8

// trulyKnows reports whether a pupil knows a skill for the report, whatever its kind: it is recalled with that chance on the day.
func trulyKnows(p pupil, skill string, day int) bool { return p.recall(skill, day) >= surely }

// newPupil makes one of a kind. The last two are ends of the scale, to see that the report is sane there.
func newPupil(kind string, r *rand.Rand) (pupil, error) {
	switch kind {
	case "own":
		return newLearner(r, false), nil
	case "power":
		return newLearner(r, true), nil
	case "another":
		return newMind(r), nil
	case "perfect":
		return perfect{}, nil
	case "nothing":
		return nothing{newMind(r)}, nil
	}
	return nil, fmt.Errorf("-kind %q: want own, power, another, perfect or nothing", kind)
}

// A perfect pupil knows all and never slips.
type perfect struct{}

func (perfect) step([]string, int) []string { return nil }
func (perfect) recall(string, int) float64  { return 1 }

// A pupil of nothing brings nothing and keeps nothing: it only guesses, with the luck of a mind.
type nothing struct{ *mind }

func (n nothing) step(skills []string, day int) []string {
	clear(n.traces)
	return n.mind.step(skills, day)
}

func (nothing) recall(string, int) float64 { return 0 }
