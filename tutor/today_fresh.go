package tutor

import (
	"time"

	"unpin/problems"
	"unpin/problems/variant"
)

// mostTried bounds how many draws are looked at for new numbers, so that a lesson opens at once.
const mostTried = 60

// Fresh is a problem with other numbers than those of its file, as good as they are; where it has no others, or none is found soon, as
// it is. Each moment has its own.
func Fresh(p *problems.Problem, now time.Time) *problems.Problem {
	maker, err := variant.New(p)
	if err != nil {
		return p
	}
	draw := variant.Source{Set: p.Name, Seed: now.UTC().Format(time.RFC3339Nano), Place: 1}.First("", 1)
	for range mostTried {
		if maker.Judge(draw) == variant.Good {
			if copied, err := maker.At(draw); err == nil {
				return copied.In(p.Conventions)
			}
		}
		draw = draw.Next()
	}
	return p
}
