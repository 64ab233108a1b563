package wording

import (
	"fmt"
	"strconv"

	"unpin/statics"
	"unpin/statics/notation"
)

// check says what a closing check is good for.
func (r reasons) check(step statics.Step) string {
	text := "No force came from this sum, so it checks the work: it must come to 0."
	if len(step.Catches) > 0 {
		text += " This catches a mistake in " + Steps(step.Catches) + "."
	}
	return text
}

// Steps names steps of a plan by their numbers from 1, those that follow each other together: "steps 1, 2 and 5 to 8".
func Steps(places []int) string {
	var all []string
	for n := 0; n < len(places); n++ {
		first := n
		for n+1 < len(places) && places[n+1] == places[n]+1 {
			n++
		}
		switch {
		case n > first+1:
			all = append(all, fmt.Sprintf("%d to %d", places[first]+1, places[n]+1))
		default:
			for _, place := range places[first : n+1] {
				all = append(all, strconv.Itoa(place+1))
			}
		}
	}
	return Plural(len(places), "step") + " " + notation.List(all)
}

// Unchecked says which steps of a plan no closing check catches; it is empty if there are none.
func Unchecked(s *statics.Solution) string {
	if open := s.Unchecked(); len(open) > 0 {
		return "No check catches a mistake in " + Steps(open) + "."
	}
	return ""
}
