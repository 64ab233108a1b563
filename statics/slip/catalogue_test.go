package slip

import (
	"regexp"
	"strings"
	"testing"
)

// Every row is whole: a plain name of its own, a source, and one sentence that gives no number away, blames nobody and
// ends by asking for the goal.
func TestCatalogue(t *testing.T) {
	plain := regexp.MustCompile(`^[a-z]+(-[a-z]+)+$`)
	blame := regexp.MustCompile(`(?i)\b(you|wrong|mistake|forgot|forgotten|error|should have|incorrect)\b`)
	odd := regexp.MustCompile(`(?i)\b(givers?|shares?|square|aslant|nought|reckon\w*|spread|upright|come to|comes to|, so)\b`)
	seen := map[string]bool{}
	for _, s := range Catalogue() {
		if !plain.MatchString(s.ID) || seen[s.ID] {
			t.Errorf("%q is no plain name, or stands twice", s.ID)
		}
		seen[s.ID] = true
		if s.Source == "" || s.find == nil && s.Group != Internal {
			t.Errorf("%s has no source, or nothing finds it", s.ID)
		}
		switch {
		case strings.ContainsAny(s.Says, "0123456789"):
			t.Errorf("%s gives a number: %s", s.ID, s.Says)
		case strings.ContainsAny(strings.TrimSuffix(s.Says, "?"), ".!?"):
			t.Errorf("%s says more than one sentence: %s", s.ID, s.Says)
		case !strings.HasSuffix(s.Says, "?") || strings.Count(s.Says, ": ") != 1 || s.Principle()+": "+s.Asks()+"?" != s.Says:
			t.Errorf("%s is not a principle, a colon and a question: %s", s.ID, s.Says)
		case len(strings.Fields(s.Says)) > 28:
			t.Errorf("%s is long: %s", s.ID, s.Says)
		case odd.MatchString(s.Says):
			t.Errorf("%s uses a word that few readers know: %s", s.ID, s.Says)
		case blame.MatchString(s.Says):
			t.Errorf("%s blames: %s", s.ID, s.Says)
		}
	}
	if len(seen) < 60 {
		t.Errorf("%d slips", len(seen))
	}
}
