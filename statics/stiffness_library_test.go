package statics_test

import (
	"testing"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics"
)

// TestCopiesAgainstStiffness solves every problem of the library, and one copy of each with other numbers, by the displacement
// method too.
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
		copies, err := m.Copies(t.Context(), variant.Job{Source: variant.Source{Set: name, Seed: "stiff", Place: 1}, Wishes: variant.Numbered(1)})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		copied, err := m.At(copies[0].Draw)
		if err != nil {
			t.Fatal(err)
		}
		try(name+" "+copies[0].Code, copied)
	}
	if t.Logf("%d values compared", compared); compared < 20*len(problems.Names()) {
		t.Errorf("only %d values were compared", compared)
	}
}
