package problems

import (
	"testing"

	"unpin/statics"
)

// TestLibrary checks that every embedded file is read, is found by its name, gives no warning and can be solved.
func TestLibrary(t *testing.T) {
	entries, err := files.ReadDir("library")
	if err != nil {
		t.Fatal(err)
	}
	if len(entries) != 8 || len(Names()) != len(entries) {
		t.Fatalf("%d files and %d problems, want 8 of each", len(entries), len(Names()))
	}
	units := map[string]bool{}
	for _, name := range Names() {
		p, ok := Library(name)
		if !ok || p.Name != name || p.Text == "" || p.Grade == 0 {
			t.Errorf("%s is not found, or lacks text or grade", name)
			continue
		}
		if len(p.Warnings) > 0 {
			t.Errorf("%s: %s", name, p.Warnings[0])
		}
		if s, err := statics.Solve(p.Frame); err != nil || s.Count.Verdict() != statics.Determinate {
			t.Errorf("%s is not determinate (%v)", name, err)
		}
		units[p.Units.String()] = true
	}
	if !units["kN m"] || !units["kip ft"] && !units["lb ft"] {
		t.Errorf("the units are %v; both systems should be there", units)
	}
}
