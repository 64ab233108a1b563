package wording

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

var update = flag.Bool("update", false, "rewrite the expected output in testdata")

// compare holds a text against a file, or writes the file.
func compare(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	wants := strings.Split(string(want), "\n")
	for i, line := range strings.Split(got, "\n") {
		if i >= len(wants) || line != wants[i] {
			t.Fatalf("%s:%d: got\n%s\nwant\n%s", path, i+1, line, strings.Join(wants[min(i, len(wants)):min(i+1, len(wants))], ""))
		}
	}
	if got != string(want) {
		t.Fatalf("%s: more is expected than was said", path)
	}
}

func num(s string) exact.Num { return exact.MustParse(s) }

// units are the units of that text.
func units(text string) notation.Units {
	u, err := notation.ParseUnits(text)
	if err != nil {
		panic(err)
	}
	return u
}

func vec(x, y string) statics.Vector { return statics.Vector{X: num(x), Y: num(y)} }

// canopy is a fixed column AB, a beam BC and a leg CD on a pin, hinged at B and C. A wind of 8 kN/m pushes the column,
// 30 kN stands on the beam and 15 kN at its end B.
func canopy(t testing.TB) *statics.Solution {
	t.Helper()
	at := func(x, y string) statics.Point { return statics.Point{X: num(x), Y: num(y)} }
	f := statics.Frame{
		Joints:  []statics.Joint{{Name: "A", At: at("0", "0")}, {Name: "B", At: at("0", "4.5")}, {Name: "C", At: at("7.2", "4.5")}, {Name: "D", At: at("7.2", "0")}},
		Members: []statics.Member{{Name: "AB", From: 0, To: 1}, {Name: "BC", From: 1, To: 2}, {Name: "CD", From: 2, To: 3}},
		Connections: []statics.Connection{
			{Joint: 1, Pieces: [][]int{{0}, {1}}, Main: statics.None},
			{Joint: 2, Pieces: [][]int{{1}, {2}}, Main: statics.None},
		},
		Supports: []statics.Support{{Joint: 0, Kind: statics.Fixed, On: statics.None}, {Joint: 3, Kind: statics.Pinned, On: statics.None}},
		Loads: []statics.Load{
			{Kind: statics.SpreadLoad, Along: vec("1", "0"), Joint: statics.None, Member: 0, First: num("8"), Last: num("8"), End: num("4.5")},
			{Kind: statics.PointLoad, Size: num("30"), Along: vec("0", "-1"), Joint: statics.None, Member: 1, At: num("2.4")},
			{Kind: statics.PointLoad, Size: num("15"), Along: vec("0", "-1"), Joint: 1, Member: 1},
		},
	}
	s, err := statics.Solve(f)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// shelter is a post and raking roof ABC, fixed at A, on whose pin C a second piece CDE leans; an inclined roller holds it
// at D. A load acts on the pin itself, a trapezoid on CD square to it, a couple at E.
func shelter(t testing.TB) *statics.Solution {
	t.Helper()
	at := func(x, y string) statics.Point { return statics.Point{X: num(x), Y: num(y)} }
	f := statics.Frame{
		Joints: []statics.Joint{{Name: "A", At: at("0", "0")}, {Name: "B", At: at("0", "9")}, {Name: "C", At: at("8", "15")},
			{Name: "D", At: at("16", "9")}, {Name: "E", At: at("20", "9")}},
		Members:     []statics.Member{{Name: "AB", From: 0, To: 1}, {Name: "BC", From: 1, To: 2}, {Name: "CD", From: 2, To: 3}, {Name: "DE", From: 3, To: 4}},
		Connections: []statics.Connection{{Joint: 2, Pieces: [][]int{{1}, {2}}, Main: statics.None}},
		Supports: []statics.Support{{Joint: 0, Kind: statics.Fixed, On: statics.None},
			{Joint: 3, Kind: statics.Roller, Along: vec("-3", "4"), On: statics.None}},
		Loads: []statics.Load{
			{Kind: statics.SpreadLoad, Along: vec("0", "-1"), Joint: statics.None, Member: 1, First: num("0.6"), Last: num("0.6"), End: num("10"), Per: statics.PerRun},
			{Kind: statics.SpreadLoad, Along: vec("3", "4"), Joint: statics.None, Member: 2, First: num("0.9"), Last: num("0.3"), Start: num("2"), End: num("8")},
			{Kind: statics.PointLoad, Size: num("2"), Along: vec("0", "-1"), Joint: 2, Member: statics.None},
			{Kind: statics.CoupleLoad, Size: num("-5"), Joint: 4, Member: 3},
		},
	}
	s, err := statics.Solve(f)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// TestProse compares what is said of every step of a plan with the files in testdata/prose.
func TestProse(t *testing.T) {
	unusual := notation.Conventions{Figures: 4, Moments: notation.ClockwiseMoments, Decimal: notation.DecimalComma}
	for _, c := range []struct {
		file string
		of   *statics.Solution
		st   notation.Style
	}{
		{"canopy.txt", canopy(t), notation.Style{Units: units("kN m")}},
		{"canopy-ascii.txt", canopy(t), notation.NewStyle(unusual, units("kN m"), true)},
		{"canopy-letters.txt", canopy(t), notation.Style{Units: units("P L")}},
		{"shelter.txt", shelter(t), notation.Style{Units: units("kip ft")}},
	} {
		path := filepath.Join("testdata", "prose", c.file)
		compare(t, path, prose(c.of, c.st))
	}
}

// prose is everything that is said of the steps of a plan.
func prose(s *statics.Solution, st notation.Style) string {
	w := New(s.Assembly, st)
	var b strings.Builder
	known := map[int]bool{}
	isKnown := func(i int) bool { return known[i] }
	value := func(i int) (exact.Num, bool) { return s.Values[i], known[i] }
	for _, step := range s.Plan {
		fmt.Fprintln(&b, w.Because(step, isKnown))
		for _, sum := range step.Sums {
			fmt.Fprintf(&b, "  %s: %s\n  %s\n  %s\n", Body(s.Assembly, sum.Body), w.SumTitle(sum),
				w.Symbols(sum), w.Numbers(sum, value))
			for _, x := range sum.Terms {
				fmt.Fprintln(&b, "   ", w.Term(sum, x))
			}
			fmt.Fprintln(&b, "  absent:", w.Absent(sum))
		}
		for _, i := range step.Gives {
			known[i] = true
		}
		fmt.Fprintln(&b)
	}
	return b.String()
}
