package slip

import (
	"testing"

	"unpin/statics/exact"
)

// What a value agrees with, by the place it was typed to.
func TestDiagnose(t *testing.T) {
	n := exact.MustParse
	a, b, c := &Slip{ID: "a"}, &Slip{ID: "b"}, &Slip{ID: "c"}
	candidates := []Candidate{{Slip: a, Value: n("-3"), Giver: nobody}, {Slip: b, Value: n("12.34"), Giver: nobody}, {Slip: c, Value: n("12.3456"), Giver: nobody}, {Slip: c, Value: n("37/3"), Giver: Giver{Load: 1}}}
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

// The first reading of a value that agrees with any candidate counts, in all lists; each slip of a giver is told once.
func TestDiagnoseReadings(t *testing.T) {
	t.Parallel()
	n := exact.MustParse
	a, b := &Slip{ID: "a"}, &Slip{ID: "b"}
	first := []Candidate{{Slip: a, Value: n("1200"), Giver: nobody}, {Slip: a, Value: n("1204"), Giver: nobody}, {Slip: b, Value: n("1249"), Giver: nobody}}
	second := []Candidate{{Slip: a, Value: n("1203"), Giver: Giver{Load: 1}}, {Slip: b, Value: n("1249"), Giver: nobody}}
	ones, tens, hundreds := Typed{n("1203"), n("0.5"), 4}, Typed{n("1200"), n("5"), 3}, Typed{n("1200"), n("50"), 2}
	for _, r := range []struct {
		readings []Typed
		matches  int
		named    *Slip
	}{
		{[]Typed{ones, tens}, 1, a}, // 1203 alone
		{[]Typed{tens, ones}, 2, a}, // 1200 and 1203; 1204 is the slip of 1200 once more
		{[]Typed{hundreds}, 3, nil}, // 1249 as well, which stands in both lists
		{[]Typed{{n("7"), n("0"), 1}, tens}, 2, a},
		{nil, 0, nil},
	} {
		d := Diagnose(r.readings, first, second)
		if len(d.Matches) != r.matches || d.Named() != r.named {
			t.Errorf("%v: %d matches, named %v", r.readings, len(d.Matches), d.Named())
		}
	}
}
