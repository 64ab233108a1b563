package record

import (
	"maps"
	"testing"
)

// TestSkills counts steps by their kind, and passes over other events and the frames named.
func TestSkills(t *testing.T) {
	t.Parallel()
	of := func(frame string, k Kind, o Outcome) Record { return Record{Frame: frame, Kind: k, Outcome: o} }
	all := []Record{
		of("a", Moments, StepRight), of("a", Moments, StepHelped), of("b", Moments, StepTold), of("b", Forces, StepRight),
		of("c", Forces, StepRight), of("a", "", Exact), of("a", Diagrams, Left),
	}
	want := map[Kind]Count{Moments: {1, 3}, Forces: {1, 1}, Diagrams: {}}
	if got := Skills(all, []string{"c"}); !maps.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
}
