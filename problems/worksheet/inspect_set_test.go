package worksheet

import (
	"slices"
	"strings"
	"testing"

	"unpin/problems"
)

// The beam of answered by hand: 2 minutes for the problem, 1 for its one body, then ΣFx with 1 term, ΣM with 2 and ΣFy with 3, which
// are 3 minutes and 3 more for their terms, and 1 for each of V and M: 11 minutes. For Ax alone, the first sum, 4½.
func TestLengthByHand(t *testing.T) {
	t.Parallel()
	task := answered(t, "figures: 3")
	if got := halfMinutes(task.Solved, task.Items); got != 22 {
		t.Errorf("%d half minutes, want 22", got)
	}
	first, err := task.Asked([]string{task.Forces[task.Plan[0].Gives[0]].Name})
	if err != nil {
		t.Fatal(err)
	}
	if got := halfMinutes(task.Solved, first); got != 9 {
		t.Errorf("%d half minutes for one force, want 9", got)
	}
}

// Skills are covered or missing, never both, and conventions clash only where they differ.
func TestSurvey(t *testing.T) {
	t.Parallel()
	read := func(text string) *problems.Set {
		s, err := problems.ReadSet("s", []byte("id: w\ntitle: T\nseed: x\nask: {moments: cw}\n"+text), problems.Beside("../../testdata/sets"))
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	one := surveyed(read("problems: [{problem: jetty-deck, points: 7.5}, {problem: shelf.yaml, points: 1}]"))
	if len(one.covered)+len(one.missing) != len(problems.Skills()) || slices.ContainsFunc(one.covered, func(s string) bool { return slices.Contains(one.missing, s) }) {
		t.Errorf("covered %v, missing %v", one.covered, one.missing)
	}
	if len(one.clashes) > 0 || one.pointsText() != "8.5: 7.5, 1" {
		t.Errorf("%q clash; points %s", one.clashes, one.pointsText())
	}
	two := surveyed(read("problems: [{problem: jetty-deck}, {problem: own-way.yaml}, {problem: mill-bridge}]"))
	want := []string{"moments: cw in jetty-deck and mill-bridge; ccw in own-way", "shear: clockwise in jetty-deck and mill-bridge; counter-clockwise in own-way",
		"units: kN m in jetty-deck and own-way; kip ft in mill-bridge"}
	if !slices.Equal(two.clashes, want) {
		t.Errorf("clashes %q, want %q", two.clashes, want)
	}
	if text := InspectSet(two.Set, Options{}); strings.Count(text, "\n") < 15 || !strings.Contains(text, "30: 10, 10, 10") {
		t.Error(text)
	}
}
