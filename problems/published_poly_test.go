package problems

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// printedTerm is one term of a printed polynomial: +0.3494x^2, -9.75x, 59.10.
var printedTerm = regexp.MustCompile(`^([+-]?[0-9.]+)(x(\^([0-9]))?)?$`)

// checkPolynomial compares V or M along a member, coefficient by coefficient, each to the figures printed.
func checkPolynomial(t *testing.T, s *statics.Solution, v publishedValue) {
	t.Helper()
	words := strings.Split(v.What, ".") // poly, V, A-B
	pieces := diagramOf(t, s, words[2]).Stretches
	if len(pieces) != 1 {
		t.Fatalf("%s: the member has %d pieces", v.What, len(pieces))
	}
	got := map[string]exact.Poly{"V": pieces[0].V, "M": pieces[0].M}[words[1]].Trim()
	printed := map[int]string{}
	for _, term := range strings.Fields(v.Published) {
		m := printedTerm.FindStringSubmatch(term)
		if m == nil {
			t.Fatalf("%s: %q is no term", v.What, term)
		}
		power, _ := strconv.Atoi(m[4])
		if m[4] == "" {
			power = len(m[2]) // 0 or, for x, 1
		}
		printed[power] = strings.TrimPrefix(m[1], "+")
	}
	for power := range max(len(got), 4) {
		var k exact.Num
		if power < len(got) {
			k = got[power]
		}
		text, ok := printed[power]
		if ok && !agrees(k, text, "1/2") || !ok && !k.IsZero() {
			t.Errorf("%s: printed %s, the engine gives %s for x^%d", v.What, v.Published, k.Decimal(8), power)
		}
	}
}
