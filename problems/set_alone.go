package problems

import (
	"fmt"

	"unpin/statics"
)

// Alone is a problem as the only one of a paper. The error says that its frame is not determinate.
func Alone(p *Problem) (Task, error) {
	s, err := statics.Solve(p.Frame)
	if err != nil {
		return Task{}, err
	}
	if s.Count.Determinacy() != statics.Determinate {
		return Task{}, fmt.Errorf("the frame of %s is not determinate, as unpin inspect tells", p.Name)
	}
	return Task{Solved: Solved{p, s}, Word: p.Name, Points: UsualPoints}, nil
}
