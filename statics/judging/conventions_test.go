package judging

import (
	"strings"
	"testing"

	"unpin/statics/notation"
	"unpin/statics/slip"
)

// The area of a shear that counts the other way does the other thing to the moment; one slip speaks of it.
func TestAreaOfTurnedShear(t *testing.T) {
	t.Parallel()
	usual, turned := Judge{}, Judge{}
	turned.Style.Shear = notation.CounterClockwiseShear
	differ := 0
	for _, s := range slip.Catalogue() {
		if usual.inStyle(s.Says) != s.Says {
			t.Errorf("%s says %s", s.ID, usual.inStyle(s.Says))
		}
		if says := turned.inStyle(s.Says); says != s.Says {
			differ++
			if s.ID != "area-sign-lost" || !strings.HasPrefix(says, areasCounterClockwise) {
				t.Errorf("%s says %s", s.ID, says)
			}
		}
	}
	if differ != 1 {
		t.Errorf("%d slips speak of the signs of areas", differ)
	}
}

// Where decimal commas are printed, those between digits are read, and no other commas are touched.
func TestDecimals(t *testing.T) {
	t.Parallel()
	var j Judge
	const line = "RD = 1,234 + (2, 3) - 0,5"
	if got := j.Decimals(line); got != line {
		t.Error(got)
	}
	j.Style.Decimal = notation.DecimalComma
	if got := j.Decimals(line); got != "RD = 1.234 + (2, 3) - 0.5" {
		t.Error(got)
	}
}
