package tutor

import "testing"

// Rows: where the cut of each question for M is, member by member; read off the files of the problems.
func TestSpots(t *testing.T) {
	t.Parallel()
	words := map[spot]string{within: "within", corner: "corner", pinned: "pinned", supported: "supported", stiffly: "stiffly", free: "free"}
	rows := []struct{ problem, question, want string }{
		{"jetty-deck", "M(AB, 0)", "supported"},
		{"jetty-deck", "M(AB, 2.5)", "within"},
		{"jetty-deck", "M(AB, 8)", "corner"},
		{"jetty-deck", "M(BC, 0)", "corner"},
		{"jetty-deck", "M(BC, 3)", "free"},
		{"quay-gantry", "M(AB, 0)", "stiffly"},
		{"quay-gantry", "M(AB, 4)", "pinned"},
		{"camp-table", "M(AE, 450)", "corner"},
		{"camp-table", "M(ED, 450)", "pinned"},
		{"camp-table", "M(BE, 0)", "supported"},
		{"stage-lift", "M(CD, 0)", "stiffly"},
		{"stage-lift", "M(DE, 2.5)", "supported"},
	}
	for _, r := range rows {
		l := lesson(t, r.problem, Values)
		found := false
		for _, q := range l.sheet.questions {
			if q.Name == r.question {
				found = true
				if got := words[l.about.spotOf(q)]; got != r.want {
					t.Errorf("%s, %s: %s, want %s", r.problem, r.question, got, r.want)
				}
			}
		}
		if !found {
			t.Errorf("%s does not ask for %s", r.problem, r.question)
		}
	}
}
