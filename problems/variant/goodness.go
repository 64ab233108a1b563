package variant

import (
	"fmt"
	"strings"
	"unpin/problems"
)

// goodness counts, for each change and each of its choices, how many sets of numbers were looked at and how many are good.
type goodness struct {
	all, good [][]int
}

func newGoodness(changes []Change) *goodness {
	g := &goodness{}
	for _, c := range changes {
		g.all, g.good = append(g.all, make([]int, len(c.Choices))), append(g.good, make([]int, len(c.Choices)))
	}
	return g
}

// add counts a set of numbers.
func (g *goodness) add(choices []int, good bool) {
	for i, choice := range choices {
		g.all[i][choice]++
		if good {
			g.good[i][choice]++
		}
	}
}

// enoughTried is how many sets of numbers with a choice must be no good before the choice is blamed.
const enoughTried = 4

// dead are the choices of a change with which nothing is good.
func (g *goodness) dead(change int) (choices []int) {
	for choice, good := range g.good[change] {
		if good == 0 && g.all[change][choice] >= enoughTried {
			choices = append(choices, choice)
		}
	}
	return choices
}

// mostDead bounds the choices that are named.
const mostDead = 6

// namedChoices names choices of a change.
func namedChoices(c Change, choices []int) string {
	var names []string
	for _, choice := range choices[:min(len(choices), mostDead)] {
		names = append(names, c.Choices[choice])
	}
	if more := len(choices) - len(names); more > 0 {
		names = append(names, fmt.Sprintf("%d more", more))
	}
	return strings.Join(names, ", ")
}

// more says what would give more copies: other values for those with which nothing is good, and more values of what has the most good
// ones a value. Of a file that says nothing under vary, that it may.
func (g *goodness) more(changes []Change, p *problems.Problem) string {
	ways := []string{"give numbers names under given, and list under vary the values that they may have, for what may change was only found"}
	switch {
	case len(p.Vary) > 0:
		ways = g.ways(changes)
	case len(p.Given) > 0:
		ways = []string{"list under vary the values that " + p.Given[0].Name + " and what else is given may have, for what may change was only found"}
	}
	return "What would give more: " + strings.Join(ways, "; and ") + "."
}

// ways are what would give more copies, a clause each.
func (g *goodness) ways(changes []Change) []string {
	var dead []string
	best, most, of := -1, 0, 1 // the good ones and the choices of the best
	for i, c := range changes {
		none := g.dead(i)
		live, good := len(c.Choices)-len(none), 0
		if live == 0 {
			return []string{"other values under vary, or other numbers in the problem itself"}
		}
		if len(none) > 0 {
			dead = append(dead, c.Name+" "+namedChoices(c, none))
		}
		for _, n := range g.good[i] {
			good += n
		}
		if good*of > most*live {
			best, most, of = i, good, live
		}
	}
	var ways []string
	if len(dead) > 0 {
		ways = append(ways, "other values in place of those with which none is good: "+strings.Join(dead, "; "))
	}
	if best >= 0 {
		ways = append(ways, "more values of "+changes[best].Name)
	}
	return ways
}
