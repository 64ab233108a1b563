package problems

import (
	"slices"
	"testing"

	"unpin/statics/slip"
)

// Every mistake of the catalogue stands with exactly one skill, and no other does.
func TestSkillsOfSlips(t *testing.T) {
	t.Parallel()
	with := map[string]int{}
	for skill, ids := range slipSkills {
		if !slices.Contains(skillNames(), skill) {
			t.Errorf("%s is no skill", skill)
		}
		for _, id := range ids {
			with[id]++
		}
	}
	for _, s := range slip.Catalogue() {
		if with[s.ID] != 1 {
			t.Errorf("the mistake %s stands with %d skills", s.ID, with[s.ID])
		}
		delete(with, s.ID)
	}
	for id := range with {
		t.Errorf("%s is no mistake of the catalogue", id)
	}
}
