package record

import (
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Fingerprints never change: earlier work hangs on them. The old ones were written by versions 1 and 2.
func TestFingerprintsStay(t *testing.T) {
	t.Parallel()
	rows := []struct{ name, first, second, now string }{
		{"jetty-deck", "c5bb806d14292797", "v2:9c7811ed0981be1f", "v3:c45ebf681526b924"},
		{"quay-gantry", "b7d0d108c005c0f3", "v2:a989fceb2ea4f9d8", "v3:422e2155ee8d2761"},
		{"stage-lift", "5ed529c9e1aadc06", "v2:6830f785f0316f4f", "v3:801ae6c697ccf639"},
	}
	for _, r := range rows {
		p, _ := problems.Library(r.name)
		if got, want := Fingerprints(p), []string{r.now, r.second, r.first}; !slices.Equal(got, want) {
			t.Errorf("%s: the fingerprints are %v, want %v, of\n%s", r.name, got, want, Canon(p))
		}
	}
}

// A rope has its other direction and its radius in the fingerprint; the lines of other loads stay as they are.
func TestFingerprintOfRopes(t *testing.T) {
	t.Parallel()
	seen := map[string]string{}
	for _, rope := range []string{
		"to: [down, left]", "to: [down, right]", "to: [down, left], radius: 0.3", "to: [down, left], radius: 0.4", "to: [left, down], radius: 0.3",
	} {
		p, err := problems.Read("rope.yaml", []byte("title: Rope\nunits: kN m\njoints: {A: [0, 0], B: [4, 0]}\nmembers: [AB]\nsupports: {A: fixed}\nloads:\n"+
			"  - {pulley: B, rope: 6, "+rope+"}\n  - {point: 6, to: up, joint: B}\n"))
		if err != nil {
			t.Fatal(err)
		}
		if other, ok := seen[Fingerprint(p)]; ok {
			t.Errorf("%s and %s have one fingerprint", rope, other)
		}
		seen[Fingerprint(p)] = rope
		if n := strings.Count(Canon(p), "second="); n != 1 {
			t.Errorf("%d loads have a second direction in\n%s", n, Canon(p))
		}
	}
}

// What changes an answer changes the fingerprint; what is only said does not.
func TestFingerprintTells(t *testing.T) {
	t.Parallel()
	fresh := func() *problems.Problem {
		p, _ := problems.Library("jetty-deck")
		other := *p
		other.Frame.Loads = append(other.Frame.Loads[:0:0], p.Frame.Loads...)
		return &other
	}
	base := Fingerprint(fresh())
	for name, change := range map[string]func(*problems.Problem){
		"a load":                func(p *problems.Problem) { p.Frame.Loads[0].Size = p.Frame.Loads[0].Size.Add(exact.Int(1)) },
		"the moments":           func(p *problems.Problem) { p.Conventions.Moments = notation.ClockwiseMoments },
		"the shear":             func(p *problems.Problem) { p.Conventions.Shear = notation.CounterClockwiseShear },
		"the two-force members": func(p *problems.Problem) { p.Conventions.TwoForce = notation.TwoForceShortcut },
		"the units":             func(p *problems.Problem) { p.Units, _ = notation.ParseUnits("N mm") },
		"what to find":          func(p *problems.Problem) { p.Find = []string{"pins"} },
	} {
		p := fresh()
		change(p)
		if Fingerprint(p) == base {
			t.Errorf("%s can change without the fingerprint", name)
		}
	}
	p := fresh()
	p.Title, p.Text, p.Conventions.Decimal, p.Grade = "Another", "title", notation.DecimalComma, 5
	if Fingerprint(p) != base {
		t.Error("the fingerprint depends on what is only said")
	}
}
