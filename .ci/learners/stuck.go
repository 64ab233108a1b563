package main

import (
	"fmt"

	"unpin/problems"
)

// tellStuck prints for each skill that is stuck at the end of how many learners it is, and their means.
func (t *tally) tellStuck() {
	for _, skill := range problems.Skills() {
		all := t.which[skill.Name]
		if len(all) == 0 {
			continue
		}
		var right, of, recall, days float64
		for _, e := range all {
			right, of, recall, days = right+float64(e.right), of+float64(e.of), recall+e.recall, days+float64(e.days)
		}
		n := float64(len(all))
		fmt.Printf("  %-22s of %3d learners: %.1f of %.1f steps right, recalled with %.2f, stuck for %.1f days\n", skill.Name, len(all), right/n, of/n, recall/n, days/n)
	}
}
