package problems

import (
	"regexp"
	"testing"

	"pgregory.net/rapid"
)

// Names are told letter by letter as the patterns tell them that the schema of files shows.
func TestNamesByPatterns(t *testing.T) {
	t.Parallel()
	joint := regexp.MustCompile(jointPattern)
	member := regexp.MustCompile(`^([A-Z][a-z0-9']*)([A-Z][a-z0-9']*)$`)
	check := func(t rapid.TB, word string) {
		if got, want := isJointName(word), joint.MatchString(word); got != want {
			t.Errorf("%q is the name of a joint: %v, want %v", word, got, want)
		}
		first, second, ok := parted(word)
		found := member.FindStringSubmatch(word)
		if ok != (found != nil) || ok && (first != found[1] || second != found[2]) {
			t.Errorf("%q comes apart as %q, %q, %v; want %q", word, first, second, ok, found)
		}
	}
	for _, word := range []string{"", "A", "AB", "S1S2", "B'C", "ABC", "aB", "A b", "AÄ", "ÄB", "A\n", "AB\n", "É"} {
		check(t, word)
	}
	rapid.Check(t, func(t *rapid.T) {
		check(t, rapid.StringOf(rapid.RuneFrom([]rune("ABYZaz09' _ÄéΣ\n"))).Draw(t, "word"))
	})
}
