package marking

import (
	"strings"
	"testing"

	"unpin/statics/exact"
)

// TestColumnsAddUp: the points of a table add up to what a paper is worth, to a hundredth, as a person with a spreadsheet adds them: six
// forces of 10 points had 10.002.
func TestColumnsAddUp(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"grain-chute", "jetty-deck", "hillside-garage"} {
		m := markerOf(t, name)
		a, err := ReadAnswers("paper", strings.NewReader("Ax = 1\n"))
		if err != nil {
			t.Fatal(err)
		}
		sum := exact.Num{}
		for _, row := range m.Mark(a.Papers[0], DefaultScheme(), ten).Rows() {
			of, err := exact.Parse(row[11])
			if err != nil {
				t.Fatal(err)
			}
			sum = sum.Add(of)
		}
		if got := sum.Places(4); got != "10.0000" {
			t.Errorf("%s: the column adds up to %s", name, got)
		}
	}
}
