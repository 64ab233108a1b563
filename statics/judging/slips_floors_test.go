package judging

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"unpin/statics/slip"
)

// A floor is what a slip must keep to: how many of those made must be found, in %, and how many must be made at all.
type floor struct {
	found float64
	made  int
}

// readFloors reads testdata/slips-floors.txt, which is written by hand.
func readFloors(t *testing.T) map[string]floor {
	t.Helper()
	data, err := os.ReadFile("testdata/slips-floors.txt")
	if err != nil {
		t.Fatal(err)
	}
	floors := map[string]floor{}
	for line := range strings.Lines(string(data)) {
		if strings.HasPrefix(line, "#") {
			continue
		}
		var id string
		var f floor
		if _, err := fmt.Sscanf(line, "%s %g %d", &id, &f.found, &f.made); err != nil {
			t.Fatalf("testdata/slips-floors.txt: %q: %v", line, err)
		}
		floors[id] = f
	}
	return floors
}

// checkFloors holds each slip of the catalogue to its floor. Each has one.
func checkFloors(t *testing.T, by map[*slip.Slip]*tally) {
	floors := readFloors(t)
	for _, row := range slip.Catalogue() {
		f, listed := floors[row.ID]
		delete(floors, row.ID)
		of := by[row]
		switch rate := 100 * float64(of.found()) / float64(max(of.seen(), 1)); {
		case !listed:
			t.Errorf("%s has no floor in testdata/slips-floors.txt; of %d made, %.1f %% are found", row.ID, of.seen(), rate)
		case rate < f.found:
			t.Errorf("%s: %.1f %% of %d are found, want at least %g %%", row.ID, rate, of.seen(), f.found)
		case of.seen() < f.made:
			t.Errorf("%s is made %d times, want at least %d", row.ID, of.seen(), f.made)
		}
	}
	for id := range floors {
		t.Errorf("testdata/slips-floors.txt: there is no slip %s", id)
	}
}
