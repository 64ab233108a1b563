package statics_test

import (
	"encoding/json"
	"os"
	"testing"

	"unpin/problems"
	"unpin/statics"
)

// TestChecksOfProblems makes mistakes in every step of the plans of the library and of the published cases, and sees that
// the closing checks catch what they say.
func TestChecksOfProblems(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile("../testdata/cases/published.json")
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(err)
	}
	seen := map[string]int{}
	try := func(name string, p *problems.Problem) {
		s, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if s.Values == nil {
			return
		}
		for _, way := range []*statics.Solution{s, s.WithPulls()} {
			if way == nil {
				continue
			}
			if err := statics.ChecksCatch(way, seen); err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		try(name, p)
	}
	for _, c := range cases {
		p, err := problems.Read(c.ID, c.Problem)
		if err != nil {
			t.Fatalf("%s: %v", c.ID, err)
		}
		try(c.ID, p)
	}
	t.Log(seen)
	if len(cases) < 20 || seen["shows"] < 200 {
		t.Errorf("%d cases, %v", len(cases), seen)
	}
}
