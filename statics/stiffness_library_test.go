package statics_test

import (
	"flag"
	"testing"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics"
)

var copiesEach = flag.Int("copies", 1, "look at `N` copies of each problem in TestCopiesAgainstStiffness")

// TestCopiesAgainstStiffness solves every problem of the library, and copies of each with other numbers, by the displacement
// method too. What a wide run gave stands in testdata/measured/variants.md: go test ./statics -run CopiesAgainst -v -copies 1000
func TestCopiesAgainstStiffness(t *testing.T) {
	t.Parallel()
	compared := 0
	try := func(name string, p *problems.Problem) {
		n, err := statics.AgreesWithStiffness(p.Frame)
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
		compared += n
	}
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		try(name, p)
		m, err := variant.New(p)
		if err != nil {
			t.Fatal(err)
		}
		copies, err := m.Copies(t.Context(), variant.Job{Source: variant.Source{Set: name, Seed: "stiff", Place: 1}, Wishes: variant.Numbered(*copiesEach), Distinct: true})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		for _, c := range copies {
			copied, err := m.At(c.Draw)
			if err != nil {
				t.Fatal(err)
			}
			try(name+" "+c.Code, copied)
		}
	}
	if t.Logf("%d values compared", compared); compared < 20*len(problems.Names()) {
		t.Errorf("only %d values were compared", compared)
	}
}
