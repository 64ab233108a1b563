package exact

import (
	"testing"

	"pgregory.net/rapid"
)

// TestFloatIsNearest holds Float to the oracle, which carries 3000 bits.
func TestFloatIsNearest(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		a := drawTwin(t, rapid.IntRange(0, 3).Draw(t, "depth"))
		if a.n.Inexact() || a.n.IsZero() {
			t.Skip("past the bound on roots, or held to no size")
		}
		if want, _ := a.f.Float64(); a.n.Float() != want {
			t.Fatalf("%v as a float is %v, want %v", a.n, a.n.Float(), want)
		}
	})
}
