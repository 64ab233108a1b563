package marking

import (
	"fmt"
	"testing"

	"unpin/problems"
	"unpin/statics/exact"
)

// A paper that says one value throughout earns under 20 % of any problem, and a paper of true values all of it.
func TestOneValueThroughout(t *testing.T) {
	t.Parallel()
	for _, name := range problems.Names() {
		m := markerOf(t, name)
		for _, value := range []string{"0", "5", "-12.5", "1"} {
			p := &Paper{Problem: name, Attempt: 1}
			for i, item := range m.Items {
				p.Entries = append(p.Entries, Entry{Line: i + 1, Quantity: item.Name, Value: value})
			}
			if r := m.Mark(p, DefaultScheme(), ten); r.Got.Cmp(exact.Int(2)) >= 0 {
				t.Errorf("%s: %s throughout earns %s of 10", name, value, r.Got)
			}
		}
		p := &Paper{Problem: name, Attempt: 1}
		for i, item := range m.Items {
			p.Entries = append(p.Entries, Entry{Line: i + 1, Quantity: item.Name, Value: fmt.Sprint(m.judge.Style.ResultNumber(m.shownValue(Answer{Item: item}), item.Dim))})
		}
		if r := m.Mark(p, DefaultScheme(), ten); !r.Got.Equal(ten) {
			t.Errorf("%s: true values earn %s of 10\n%s", name, r.Got, shown(r))
		}
	}
}
