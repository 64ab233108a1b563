package slip

import (
	"testing"

	"unpin/statics/exact"
)

// What a value agrees with, by the place it was typed to.
func TestDiagnose(t *testing.T) {
	n := exact.MustParse
	a, b, c := &Slip{ID: "a"}, &Slip{ID: "b"}, &Slip{ID: "c"}
	candidates := []Candidate{{a, n("-3"), nobody}, {b, n("12.34"), nobody}, {c, n("12.3456"), nobody}, {c, n("37/3"), Giver{Load: 1}}}
	sortCandidates(candidates)
	rows := []struct {
		value, within string
		matches       int
		named         *Slip
	}{
		{"12.3456", "0", 1, c},
		{"12.35", "0.005", 1, c},       // 12.3456 rounds so
		{"12.34", "0.005", 1, b},       // 12.3456 is too far by 0.0006
		{"12.3", "0.05", 3, nil},       // all three
		{"12.333", "0.0005", 1, c},     // 37/3
		{"12", "0", 0, nil},            // two figures are meant as they stand
		{"3", "0", 0, nil},             // the opposite is another value
		{"12.3457", "0.00005", 0, nil}, // too far by 0.00005
	}
	for _, r := range rows {
		d := Diagnose([]Typed{{Value: n(r.value), Within: n(r.within)}}, candidates)
		if len(d.Matches) != r.matches || d.Named() != r.named {
			t.Errorf("%s: %d matches, named %v", r.value, len(d.Matches), d.Named())
		}
	}
}
