package record

import (
	"testing"

	"unpin/problems"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Fingerprints never change: earlier work hangs on them. The old ones were written by version 1.
func TestFingerprintsStay(t *testing.T) {
	t.Parallel()
	rows := []struct{ name, old, now string }{
		{"jetty-deck", "c5bb806d14292797", "v2:9c7811ed0981be1f"},
		{"quay-gantry", "b7d0d108c005c0f3", "v2:a989fceb2ea4f9d8"},
		{"stage-lift", "5ed529c9e1aadc06", "v2:6830f785f0316f4f"},
	}
	for _, r := range rows {
		p, _ := problems.Library(r.name)
		if got := OldFingerprint(&p.Frame); got != r.old {
			t.Errorf("%s: the old fingerprint is %s, want %s", r.name, got, r.old)
		}
		if got := Fingerprint(p); got != r.now {
			t.Errorf("%s: the fingerprint is %s, want %s, of\n%s", r.name, got, r.now, Canon(p))
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
		"a load":       func(p *problems.Problem) { p.Frame.Loads[0].Size = p.Frame.Loads[0].Size.Add(exact.Int(1)) },
		"the moments":  func(p *problems.Problem) { p.Conventions.Moments = notation.ClockwiseMoments },
		"the shear":    func(p *problems.Problem) { p.Conventions.Shear = notation.CounterClockwiseShear },
		"the units":    func(p *problems.Problem) { p.Units, _ = notation.ParseUnits("N mm") },
		"what to find": func(p *problems.Problem) { p.Find = []string{"pins"} },
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
