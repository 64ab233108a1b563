package statics

import (
	"fmt"
	"strings"
	"testing"
)

// compoundBeam is a beam of n parts with pins between them, the first fixed, each further one on a roller at its middle.
func compoundBeam(n int) string {
	var b strings.Builder
	b.WriteString("joint P0 0 0\n")
	for i := range n {
		fmt.Fprintf(&b, "joint R%d %d 0\njoint P%d %d 0\n", i, 4*i+2, i+1, 4*i+4)
		fmt.Fprintf(&b, "member a%d P%d R%d\nmember b%d R%d P%d\n", i, i, i, i, i, i+1)
	}
	b.WriteString("support P0 fixed\n")
	for i := 1; i < n; i++ {
		fmt.Fprintf(&b, "pin P%d\nsupport R%d roller 0 1\n", i, i)
	}
	for i := range n {
		fmt.Fprintf(&b, "point 6 0 -1 on a%d 1\nspread 2 2 0 -1 on b%d 0 2\n", i, i)
	}
	return b.String()
}

// bays is a row of three-pinned gables with sloped rafters, each joined to the next by a beam that rests on it in a
// slot: three parts a bay. For other numbers a beam from a wall begins the row. Where the feet of a gable
// are not level, two sums must be solved together in each.
func bays(n int, level bool) string {
	var b strings.Builder
	for k := range n / 3 {
		x, foot := 12*k, 0
		if !level {
			foot = 1
		}
		fmt.Fprintf(&b, "joint A%d %d 0\njoint B%d %d 4\njoint C%d %d 6\njoint D%d %d 4\njoint E%d %d %d\n", k, x, k, x, k, x+4, k, x+8, k, x+8, foot)
		fmt.Fprintf(&b, "joint L%d %d 4\n", k, x+12)
	}
	var loads strings.Builder
	last := n/3 - 1
	for k := range n / 3 {
		end := fmt.Sprintf("L%d", k)
		if k < last {
			end = fmt.Sprintf("B%d", k+1)
		}
		fmt.Fprintf(&b, "member a%d A%d B%d\nmember b%d B%d C%d\nmember c%d C%d D%d\nmember d%d D%d E%d\nmember l%d D%d %s\n",
			k, k, k, k, k, k, k, k, k, k, k, k, k, k, end)
		fmt.Fprintf(&loads, "pin C%d\npin D%d l%d\nsupport A%d pinned\nsupport E%d pinned\n", k, k, k, k, k)
		if k > 0 {
			fmt.Fprintf(&loads, "slot B%d l%d 1 0\n", k, k-1)
		}
		fmt.Fprintf(&loads, "spread 3 3 0 -1 on b%d 0 1L run\npoint 5 0 -1 on l%d 1\nspread 2 0 1 0 on a%d 0 4\n", k, k, k)
	}
	fmt.Fprintf(&loads, "support L%d roller 0 1\n", last)
	if n%3 == 1 {
		b.WriteString("joint Q -6 4\nmember q Q B0\n")
		loads.WriteString("support Q pinned\npoint 2 0 -1 on q 3\nslot B0 q 1 0\n")
	}
	return b.String() + loads.String()
}

// chains are the frames of the benchmarks.
var chains = []string{"beam", "bays", "uneven"}

// shaped is the frame of that shape and so many parts.
func shaped(t testing.TB, shape string, parts int) Frame {
	if shape == "beam" {
		return build(t, compoundBeam(parts))
	}
	return build(t, bays(parts, shape == "bays"))
}

// longestForce is the most letters that a force of these frames has, as 155/24.
const longestForce = 6

// TestBenchmarkedFrames sees to it that the frames of the benchmarks are what they are said to be: of so many parts,
// determinate, with answers that agree with float64 elimination and are no longer in a long frame than in a short one.
func TestBenchmarkedFrames(t *testing.T) {
	t.Parallel()
	sizes := []int{3, 10, 30, 100, 1000}
	if testing.Short() {
		sizes = sizes[:4]
	}
	for _, parts := range sizes {
		for _, name := range chains {
			s, err := Solve(shaped(t, name, parts))
			if err != nil || s.Values == nil || len(s.Parts) != parts {
				t.Fatalf("%s of %d parts: %d parts, %v, %v", name, parts, len(s.Parts), s.Count, err)
			}
			for i, v := range s.Values {
				if len(v.String()) > longestForce {
					t.Errorf("%s of %d parts: %s = %s", name, parts, s.Forces[i].Name, v)
				}
			}
			if parts > 100 { // a dense matrix of 3,000 rows takes long
				continue
			}
			if err := nearLU(s); err != nil {
				t.Errorf("%s of %d parts: %v", name, parts, err)
			}
		}
	}
}
