package problems

import (
	"strings"
	"testing"

	"unpin/statics"
)

// Every starter is a good problem as it stands: read without warning, determinate, tidy by every rule, with no mistake hidden;
// and it tells how it is written.
func TestStarters(t *testing.T) {
	t.Parallel()
	all := Starters()
	if len(all) < 10 {
		t.Errorf("there are only %d starters", len(all))
	}
	for _, st := range all {
		p, err := Read(st.Kind+".yaml", []byte(st.Text))
		if err != nil {
			t.Error(err)
			continue
		}
		s, err := statics.Solve(p.Frame)
		if err != nil || s.Count.Determinacy() != statics.Determinate {
			t.Errorf("%s is not determinate (%v)", st.Kind, err)
			continue
		}
		for _, w := range p.Warnings {
			t.Errorf("%s: %s", st.Kind, w)
		}
		solved := Solved{p, s}
		for _, x := range solved.Shortcomings() {
			t.Errorf("%s: %s", st.Kind, x.Detail)
		}
		if hidden, _ := solved.Hidden(); len(hidden) > 0 {
			t.Errorf("%s hides mistakes at %d steps", st.Kind, len(hidden))
		}
		if comments := strings.Count(st.Text, "# "); !strings.HasPrefix(st.Text, "# ") || comments < 1 || p.Text == "" {
			t.Errorf("%s has %d comments, and the text %q", st.Kind, comments, p.Text)
		}
		if n := p.PlainNumber(); n != "" {
			t.Errorf("the text of %s has the number %s, which changes with the frame", st.Kind, n)
		}
	}
}
