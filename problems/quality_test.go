package problems

import (
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// The grades that are told come within one of those that a person gave to the library, and most of them meet.
func TestDifficultyOfLibrary(t *testing.T) {
	t.Parallel()
	same := 0
	for _, p := range solvedLibrary(t) {
		d := p.Difficulty()
		if off := d.Grade - p.Grade; off < -1 || off > 1 {
			t.Errorf("%s is of grade %d and told to be of %d: %s", p.Name, p.Grade, d.Grade, strings.Join(d.Reasons, "; "))
		} else if off == 0 {
			same++
		}
	}
	if same < librarySize/2 {
		t.Errorf("only %d grades meet", same)
	}
}

// The skills that a problem of the library claims and that steps can show are asked for by some step.
func TestStepSkillsOfLibrary(t *testing.T) {
	t.Parallel()
	for _, p := range solvedLibrary(t) {
		asked := map[string]bool{}
		for _, step := range p.Plan {
			for _, skill := range p.StepSkills(step) {
				if !slices.Contains(skillNames(), skill) {
					t.Errorf("%s: there is no skill %q", p.Name, skill)
				}
				asked[skill] = true
			}
		}
		for _, skill := range p.Skills {
			if stepsShow[skill] && !asked[skill] {
				t.Errorf("%s claims %s, and no step asks for it", p.Name, skill)
			}
		}
	}
}

// stepsShow are the skills that sums show, others being of counting, of shortcuts or of diagrams.
var stepsShow = map[string]bool{"pick-body": true, "pin-support": true, "roller-support": true, "fixed-support": true, "pin-pair": true,
	"moment-centre": true, "couple-in-sum": true, "uniform-resultant": true, "triangle-resultant": true, "trapezoid-resultant": true}

// TestRulesOfForces: a rule that is not of the plan finds the same where there is no plan.
func TestRulesOfForces(t *testing.T) {
	t.Parallel()
	broken := map[string]int{}
	for _, name := range Names() {
		p, _ := Library(name)
		whole, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		forces, err := statics.SolveForces(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		for i, v := range forces.Values {
			forces.Values[i] = v.Mul(exact.MustParse("1/3")) // so that rules are broken
			whole.Values[i] = forces.Values[i]
		}
		for _, r := range Rules() {
			if r.OfPlan {
				continue
			}
			got, want := r.faults(Solved{p, forces}), r.faults(Solved{p, whole})
			if broken[r.Name] += len(want); !slices.Equal(got, want) {
				t.Errorf("%s: %s: %q, want %q", name, r.Name, got, want)
			}
		}
	}
	if broken["terminating"] == 0 {
		t.Error("no rule is broken anywhere")
	}
}

// A reader of a grade looks for what is special about the frame: ropes over pulleys are said, though they do not count.
func TestDifficultySaysRopes(t *testing.T) {
	t.Parallel()
	for name, want := range map[string]string{"fly-loft": "ropes over pulleys: 2", "well-crane": "ropes over pulleys: 1"} {
		p, _ := Library(name)
		solution, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		if got := (Solved{p, solution}).Difficulty().Reasons; !slices.Contains(got, want) {
			t.Errorf("the reasons of %s are %q", name, got)
		}
	}
}
