package main

import (
	"fmt"

	"unpin/problems"
)

// A claim is a skill of one learner that is taken for mastered at the end.
type claim struct {
	skill       string
	days, right int // that counted, and steps
	recall      float64
}

// tellClaims prints how many of the skills that are taken for mastered are known: by days that count, by steps that came right, by skill.
func (t *tally) tellClaims() {
	for days := range 6 {
		t.tellSome(fmt.Sprintf("%d days", days), func(c claim) bool { return c.days == days })
	}
	for right := 2; right < 20; right += 2 {
		t.tellSome(fmt.Sprintf("%d or %d steps right", right, right+1), func(c claim) bool { return c.right/2*2 == right })
	}
	for _, skill := range problems.Skills() {
		t.tellSome(skill.Name, func(c claim) bool { return c.skill == skill.Name })
	}
}

// tellSome prints it for some, if there are any.
func (t *tally) tellSome(what string, of func(claim) bool) {
	n, known, recall := 0, 0, 0.0
	for _, c := range t.claims {
		if of(c) {
			n++
			recall += c.recall
			if c.recall >= surely {
				known++
			}
		}
	}
	if n > 0 {
		fmt.Printf("  %-22s %4d taken for mastered, known %3d %%, recalled with %.2f\n", what, n, 100*known/n, recall/float64(n))
	}
}
