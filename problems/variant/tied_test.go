package variant

import (
	"strings"
	"testing"

	"unpin/problems"
)

const goodsCrane = `title: Goods crane, %
units: kN m
joints: {A: [0, 0], F: [0, 1.2], B: [0, 3], G: [0, 3.3], C: [0, 4.5], E: [2.4, 3], D: [4.2, 3]}
members: [AF, FB, BG, GC, BE, ED, FE]
pins: {B: [BE], E: [FE], F: [FE]}
supports: {A: pin, C: {roller: right}}
loads:
  - {pulley: D, rope: 2.4, to: [down, left], radius: 0.3}
  - {point: 2.4, to: right, joint: G}
  - {uniform: 2.5, to: left, on: AF}
`

const equalBays = `title: A shed with %
units: kN m
joints: {A: [0, 0], B: [0, 3], C: [4, 5], D: [8, 3], E: [8, 0]}
members: [AB, BC, CD, DE]
pins: [C]
supports: {A: pin, E: pin}
loads: [{point: 6, to: down, on: BC, at: 1}]
`

// A rope that runs to the force at its other end does so in a copy, and is as tight there; what the text calls symmetrical or equal stays so,
// and of what it does not call so nothing is asked.
func TestTies(t *testing.T) {
	t.Parallel()
	for _, r := range []struct {
		file, title, was, becomes string
		kept                      bool
	}{
		{goodsCrane, "as drawn", "uniform: 2.5", "uniform: 2", true},
		{goodsCrane, "the end lower than the rope", "G: [0, 3.3]", "G: [0, 3.2]", false},
		{goodsCrane, "another wheel", "radius: 0.3", "radius: 0.2", false},
		{goodsCrane, "the end as tight as before", "rope: 2.4", "rope: 3", false},
		{goodsCrane, "the jib longer", "D: [4.2, 3]", "D: [4.8, 3]", true},
		{equalBays, "a ridge", "C: [4, 5]", "C: [5, 5]", true},
		{equalBays, "a symmetrical roof", "C: [4, 5]", "C: [5, 5]", false},
		{equalBays, "a symmetrical roof", "C: [4, 5]", "C: [4, 6]", true},
		{equalBays, "rafters of equal length", "C: [4, 5]", "C: [5, 5]", false},
		{equalBays, "a ridge half way", "C: [4, 5]", "C: [5, 5]", false},
	} {
		own := strings.Replace(r.file, "%", r.title, 1)
		if other := strings.Replace(own, r.was, r.becomes, 1); sameForm(readText(t, own), readText(t, other)) != r.kept {
			t.Errorf("%s, %s in place of %s: kept is not %v", r.title, r.becomes, r.was, r.kept)
		}
	}
}

func readText(t *testing.T, text string) *problems.Problem {
	t.Helper()
	p, err := problems.Read("test.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// Of copies that are few it is said how many, and what would give more; of many nothing.
func TestFew(t *testing.T) {
	t.Parallel()
	few := strings.Replace(ropeStore, "vary: {h: [8, 10, 12.5], w: 0.8..2.4 by 0.1, P: 4..12 by 0.5}", "vary: {P: [4, 6, 7], w: [1.5, 1.6]}", 1)
	if s, why := Few(readText(t, few)); s == nil || s.Judged != 6 || !strings.Contains(why, "of the 6 sets of numbers that its file allows") {
		t.Errorf("of 6 sets: %v, %q", s, why)
	}
	if s, why := Few(readText(t, ropeStore)); s != nil || why != "" {
		t.Errorf("of plenty: %v, %q", s, why)
	}
	total := 0
	s, _ := Few(readText(t, few))
	for _, x := range s.Excluded {
		total += x.Times
	}
	if total+s.Good != s.Judged {
		t.Errorf("%d good and %d excluded are not %d", s.Good, total, s.Judged)
	}
}
