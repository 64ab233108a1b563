package problems

import (
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// A publishedCase is one entry of testdata/cases/published.json, where the names of quantities are explained.
type publishedCase struct {
	ID        string
	Source    string
	Read      string // whether the source was read or is from memory
	Problem   json.RawMessage
	Published []publishedValue
}

// A publishedValue is one number, or polynomial, as it was printed.
type publishedValue struct {
	What, Published, Meaning string
	EquilibriumGives         string `json:"equilibrium_gives"` // where the printed value breaks equilibrium
}

// publishedCases are all of them. Their number is fixed, so that none is lost unseen.
func publishedCases(t *testing.T) []publishedCase {
	t.Helper()
	var cases []publishedCase
	if err := json.Unmarshal(readFile(t, filepath.Join("..", "testdata", "cases", "published.json")), &cases); err != nil {
		t.Fatal(err)
	}
	if len(cases) != 48 {
		t.Fatalf("%d cases, want 48", len(cases))
	}
	return cases
}

// handRounded lists the printed values that lie further from the exact one than half a unit of their last figure, with
// the distance allowed in units of it, and the reason.
var handRounded = map[string]struct {
	units, why string
}{
	"CB08 Mx.H-I":   {"1.6", "worked in four figures by a way not shown: from M = -346 at G and the printed shears it is 91.43"},
	"TH05 N.C-D@L":  {"0.7", "from components rounded to two decimals: 34.15 + 11.38"},
	"TH05 |V.B-C@0": {"0.7", "from components rounded to two decimals: 102.46 - 11.38"},
	"TH05 N.B-C@0":  {"0.6", "from components rounded to two decimals: 34.15 + 34.15"},
	"TH05 |V.B-C@L": {"0.7", "from components rounded to two decimals: 34.15 + 11.38"},
	"TH06 |M.C-D@L": {"1.1", "from the printed shears: (31.45 - 6.14)/2 times the length, 4.257"},
	"TH07 N.B-C@0":  {"0.7", "from the printed reactions: 20.20 and 22.50 turned along the member"},
}

// TestPublishedValues solves each case and holds every printed number against the engine's, to the figures printed.
func TestPublishedValues(t *testing.T) {
	values, wrong, used := 0, 0, map[string]bool{}
	for _, c := range publishedCases(t) {
		t.Run(c.ID, func(t *testing.T) {
			t.Logf("%s [%s]", c.Source, c.Read)
			s := solvePublished(t, c)
			for _, v := range c.Published {
				key := c.ID + " " + v.What
				used[key] = true
				checkPublished(t, s, c.ID, v)
				values++
				if v.EquilibriumGives != "" {
					wrong++
				}
			}
		})
	}
	t.Logf("48 cases, %d printed values checked, of which %d break equilibrium and %d are rounded by hand", values, wrong, len(handRounded))
	if values != 370 {
		t.Errorf("%d values, want 370", values)
	}
	for key := range handRounded {
		if !used[key] {
			t.Errorf("an allowance is made for %s, which is not printed", key)
		}
	}
}

// solvePublished reads and solves a case, which is determinate.
func solvePublished(t *testing.T, c publishedCase) *statics.Solution {
	t.Helper()
	p, err := Read(c.ID+".json", c.Problem)
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	if v := s.Count.Determinacy(); v != statics.Determinate {
		t.Fatalf("the frame is %s", v)
	}
	return s
}

// checkPublished compares one printed value.
func checkPublished(t *testing.T, s *statics.Solution, id string, v publishedValue) {
	t.Helper()
	if strings.HasPrefix(v.What, "poly.") {
		checkPolynomial(t, s, v)
		return
	}
	got, printed := publishedQuantity(t, s, id, v.What), v.Published
	if v.EquilibriumGives != "" {
		t.Logf("%s (%s): the printed %s breaks equilibrium, which gives %s", v.What, v.Meaning, printed, v.EquilibriumGives)
		if agrees(got, printed, "1/2") {
			t.Errorf("%s: equilibrium is said to give %s, but the printed %s agrees", v.What, v.EquilibriumGives, printed)
		}
		printed = v.EquilibriumGives
	}
	if strings.HasPrefix(v.What, "|") {
		got = got.Abs()
	}
	units := "1/2"
	if h, ok := handRounded[id+" "+v.What]; ok {
		if agrees(got, printed, units) {
			t.Errorf("%s: the printed %s needs no allowance", v.What, printed)
		}
		units = h.units
		t.Logf("%s: printed %s, exactly %s; %s", v.What, printed, got.Decimal(8), h.why)
	}
	if !agrees(got, printed, units) {
		t.Errorf("%s (%s): printed %s, the engine gives %s", v.What, v.Meaning, printed, got.Decimal(8))
	}
}

// agrees reports whether a value lies within so many units of the last figure of a printed decimal.
func agrees(got exact.Num, printed, units string) bool {
	_, behind, _ := strings.Cut(printed, ".")
	unit := exact.Int(1)
	for range behind {
		unit = unit.Mul(exact.MustParse("1/10"))
	}
	off := got.Sub(exact.MustParse(printed)).Abs()
	return off.Cmp(unit.Mul(exact.MustParse(units))) <= 0
}
