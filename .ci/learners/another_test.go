package main

import (
	"math/rand/v2"
	"testing"

	"unpin/problems"
)

// after is the mean chance that many minds recall a skill so many days after they used it n times, alone, a gap of days apart.
func after(n, gap, days int) (mean float64) {
	const minds = 400
	for i := range uint64(minds) {
		m := newMind(rand.New(rand.NewPCG(i, 5)))
		clear(m.traces)
		for k := range n {
			m.step([]string{"couple-in-sum"}, k*gap)
		}
		mean += m.recall("couple-in-sum", (n-1)*gap+days) / minds
	}
	return mean
}

// TestMindLearnsAndForgets holds a mind against what any account of memory says.
func TestMindLearnsAndForgets(t *testing.T) {
	t.Parallel()
	if few, many := after(2, 1, 1), after(10, 1, 1); few >= many {
		t.Errorf("two uses give %.2f, ten %.2f: practice should help", few, many)
	}
	if soon, late := after(7, 1, 1), after(7, 1, 30); late >= soon {
		t.Errorf("after a day %.2f, after a month %.2f: it should be forgotten", soon, late)
	}
	if massed, spaced := after(7, 0, 7), after(7, 1, 7); massed >= spaced {
		t.Errorf("seven uses in a row give %.2f, a day apart %.2f: spacing should help", massed, spaced)
	}
	if none := after(0, 1, 1); none != 0 {
		t.Errorf("what was never used is recalled with %.2f", none)
	}
}

// TestNeighbourInTheWay holds that a strong neighbour makes a weak skill harder to recall.
func TestNeighbourInTheWay(t *testing.T) {
	t.Parallel()
	m := newMind(rand.New(rand.NewPCG(1, 5)))
	clear(m.traces)
	for day := range 5 {
		m.step([]string{"roller-support"}, day)
	}
	alone := m.recall("roller-support", 5)
	for day := range 5 {
		for range 10 {
			m.use("pin-support", clock(day, 0), 1)
		}
	}
	if beside := m.recall("roller-support", 5); beside >= alone {
		t.Errorf("alone %.3f, beside a strong neighbour %.3f", alone, beside)
	}
}

// TestNeighboursExist holds that the names are those of skills.
func TestNeighboursExist(t *testing.T) {
	t.Parallel()
	skills := map[string]bool{}
	for _, s := range problems.Skills() {
		skills[s.Name] = true
	}
	for name, list := range neighbours {
		for _, n := range append(list, name) {
			if !skills[n] {
				t.Errorf("%s is no skill", n)
			}
		}
	}
}

// TestMissesAreOfTheStep holds that a step reports only what it asked for, each once.
func TestMissesAreOfTheStep(t *testing.T) {
	t.Parallel()
	m := newMind(rand.New(rand.NewPCG(2, 5)))
	skills := []string{"pin-support", "roller-support", "pin-pair", "solve-with-sense"}
	for day := range 50 {
		left := map[string]bool{}
		for _, s := range skills {
			left[s] = true
		}
		for _, s := range m.step(skills, day) {
			if !left[s] {
				t.Fatalf("day %d: %s is missed twice or was not asked for", day, s)
			}
			left[s] = false
		}
	}
}
