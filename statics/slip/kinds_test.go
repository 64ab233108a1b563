package slip

import (
	"slices"
	"strings"
	"testing"
)

// What a kind of mistake is called stands in a list on the last page of a lesson: short, each name once, and none of
// the words that a textbook would not use.
func TestKinds(t *testing.T) {
	t.Parallel()
	left := map[string]bool{}
	for id := range kinds {
		left[id] = true
	}
	seen := map[string]string{}
	for _, s := range Catalogue() {
		delete(left, s.ID)
		k := s.Kind()
		if seen[k] != "" || len(k) > 64 || strings.ContainsAny(k, ".:?") {
			t.Errorf("%s and %s: %q is no name of its own", s.ID, seen[k], k)
		}
		seen[k] = s.ID
		for _, word := range []string{"spread", "share", "square", "elsewhere", "slant", "across for"} {
			if slices.Contains(strings.Fields(k), word) {
				t.Errorf("%s: %q has the word %q", s.ID, k, word)
			}
		}
	}
	for id := range left {
		t.Errorf("there is no slip %s", id)
	}
}
