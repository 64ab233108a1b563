package librarytest

import (
	"slices"
	"testing"

	"unpin/problems"
)

// The sample is of the library, in its order, each problem once, as many of each grade.
func TestSample(t *testing.T) {
	grades := map[int]int{}
	places := []int{}
	for _, name := range Sample() {
		p, ok := problems.Library(name)
		if !ok {
			t.Fatalf("there is no %s", name)
		}
		grades[p.Grade]++
		places = append(places, slices.Index(problems.Names(), name))
	}
	if !slices.IsSorted(places) || len(slices.Compact(places)) != len(Sample()) {
		t.Error("the sample is not in the order of the library, or has a problem twice")
	}
	for grade := 1; grade <= 6; grade++ {
		if grades[grade] != len(Sample())/6 {
			t.Errorf("%d problems are of grade %d", grades[grade], grade)
		}
	}
}
