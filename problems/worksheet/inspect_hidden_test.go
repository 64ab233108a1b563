package worksheet

import (
	"strings"
	"testing"
)

// TestHiddenSlips: on a beam of 2 with a load at the middle the arm of the load is 1, and sharing the load by halves is
// right; on a beam with the load elsewhere neither is so.
func TestHiddenSlips(t *testing.T) {
	const beam = "title: Beam\nunits: kN m\njoints: {A: [0, 0], B: [L, 0]}\nmembers: [AB]\nsupports: {A: pin, B: {roller: up}}\n" +
		"loads: [{point: 12, to: down, on: AB, at: a}]\n"
	for _, test := range []struct {
		given  string
		hidden []string
		not    []string
	}{
		{"given: {L: 2, a: 1}\n", []string{"an arm in step 2 is 1", "at step 2", "for RB: load halved without symmetry", "the smallest change that shows them all: a becomes 0.8"}, nil},
		{"given: {L: 5, a: 2}\n", nil, []string{"an arm in step", "load halved", " for "}},
	} {
		p, s := solve(t, "beam.yaml", []byte(beam+test.given))
		text := strings.Join(strings.Fields(Inspect(p, s, Options{})), " ")
		for _, id := range test.hidden {
			if !strings.Contains(text, id) {
				t.Errorf("%s%q is missed:\n%s", test.given, id, text)
			}
		}
		for _, id := range test.not {
			if _, slips, _ := strings.Cut(text, "Mistakes "); strings.Contains(slips, id) {
				t.Errorf("%s%q is told:\n%s", test.given, id, text)
			}
		}
	}
}
