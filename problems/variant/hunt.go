package variant

import (
	"context"
	"fmt"
	"slices"
)

// A hit is a draw whose copy will do.
type hit struct {
	draw Draw
	long bool // good but for long decimals
}

// key stands for the numbers of a draw.
func (m *Maker) key(d Draw) string { return fmt.Sprint(picks(m.changes, d)) }

// The most steps from a draw to a good one: where the choices are few, so many for each of them that all are met; where they
// are many, so many at all.
const (
	fewChoices   = 20_000
	stepsEach    = 60
	mostUnlucky  = 20_000
	leastUnlucky = 2_000
)

// How many draws are looked at before one is taken that is good but for long decimals.
const (
	patience    = 60
	farPatience = 2_000
)

// good is the first good draw from d on whose numbers are not taken; where there is none within so many draws as patient, the
// first that is good but for long decimals.
func (s *search) good(d Draw, taken map[string]bool, patient int) (hit, error) {
	choices := combinations(s.changes, fewChoices)
	steps := max(leastUnlucky, choices*stepsEach)
	if choices == fewChoices {
		steps = mostUnlucky + len(taken)
	}
	if len(taken) >= choices {
		return hit{}, s.shortage()
	}
	var long []Draw // passed by
	for n := range steps {
		if s.ctx.Err() != nil {
			return hit{}, context.Cause(s.ctx)
		}
		if !taken[s.key(d)] {
			switch s.glance(picks(s.changes, d)) {
			case Good:
				return hit{draw: d}, nil
			case overlong:
				long = append(long, d)
			}
		}
		if n >= patient-1 {
			if i := slices.IndexFunc(long, s.spare); i >= 0 {
				return hit{long[i], true}, nil
			}
			long = nil
		}
		d = d.Next()
	}
	return hit{}, s.shortage()
}

// everyChoice goes through all combinations of choices, until look says no.
func (m *Maker) everyChoice(look func(choices []int) bool) {
	choices := make([]int, len(m.changes))
	for look(slices.Clone(choices)) {
		i := 0
		for ; i < len(choices); i++ {
			if choices[i]++; choices[i] < len(m.changes[i].Choices) {
				break
			}
			choices[i] = 0
		}
		if i == len(choices) {
			return
		}
	}
}
