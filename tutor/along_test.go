package tutor

import (
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/tutor/record"
)

// Rows: a member, and the skill of each place along it; by hand, from the figures. A beam AB with a load in the middle is cut at its start, before
// the load, after it and before its end: where M has a corner and V a jump.
func TestPlacesAlong(t *testing.T) {
	t.Parallel()
	for _, r := range []struct {
		problem, member string
		level           Level
		want            string
	}{
		{"jetty-deck", "AB", Values, "cut-forces cut-forces jumps cut-forces"},
		{"jetty-deck", "AB", Terms, "slopes slopes cut-forces cut-forces jumps cut-forces"},
		{"jetty-deck", "BC", Values, "cut-forces cut-forces"}, // on in one line with AB: no corner
		{"riding-hall", "BC", Values, "corner-forces extreme-moment cut-forces"},
		{"ferry-ramp", "AB", Values, "cut-forces extreme-moment cut-forces"},
	} {
		p, _ := problems.Library(r.problem)
		s, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range s.Diagrams {
			if got := strings.Join(SkillsAlong(problems.Solved{Problem: p, Solution: s}, d, r.level), " "); s.Frame.Members[d.Member].Name == r.member && got != r.want {
				t.Errorf("%s, %s at the level %s: %q", r.problem, r.member, r.level, got)
			}
		}
	}
}

// What is supplied along a member is kept by places: one wrong value makes its place wrong, whatever else was right; two values at a place are one.
func TestAlongIsKeptByPlaces(t *testing.T) {
	t.Parallel()
	s, now := store(t), clock()
	l := kept(t, s, "jetty-deck", Values, now)
	for q, asking := l.Now(); asking; q, asking = l.Now() {
		switch q.Name {
		case "V(AB, 2.5 after)":
			l.Type("1234567")
		case "M(AB, 2.5)":
			l.Type("tell")
			continue
		}
		l.Type(answerExactly(l, q))
	}
	all, _, err := s.Records()
	if err != nil {
		t.Fatal(err)
	}
	var places []string
	steps := record.Count{}
	for _, r := range all {
		for _, p := range r.Along {
			places = append(places, p.Skill+" "+string(p.Outcome))
		}
		if r.Kind == record.Diagrams {
			steps.AddAll(r)
		}
	}
	if want := []string{"cut-forces step-right", "cut-forces step-told", "jumps step-helped", "cut-forces step-right", "cut-forces step-right", "cut-forces step-right"}; !slices.Equal(places, want) {
		t.Errorf("kept are %q", places)
	}
	if steps != (record.Count{Right: 4, Of: 6}) {
		t.Errorf("%+v", steps)
	}
	standings := record.Standings(all)
	if a, b := standings["cut-forces"], standings["jumps"]; a.Right != 4 || a.Of != 5 || b.Right != 0 || b.Of != 1 {
		t.Errorf("cut-forces %d of %d, jumps %d of %d", a.Right, a.Of, b.Right, b.Of)
	}
	if _, met := standings["slopes"]; met {
		t.Error("slopes count, though none was asked for")
	}
}

// Of RB*8 - 20*2.5 - 4*3*9.5 = 0 the value 8 has the load's moment on the wrong side. A step that goes wrong by one mistake which is known, and is mended without help, counts as right for what else it asks; one that is told does not.
func TestOneMistakeSparesTheRest(t *testing.T) {
	t.Parallel()
	for _, row := range []struct {
		typed []string
		right bool
	}{{[]string{"8"}, true}, {[]string{"8", "hint"}, false}, {[]string{"8", "1234567"}, false}, {[]string{"8", "tell"}, false}, {[]string{"1234567"}, false}} {
		s, now := store(t), clock()
		l := kept(t, s, "jetty-deck", Values, now)
		l.Type("0") // Ax
		q, _ := l.Now()
		for _, text := range row.typed {
			l.Type(text)
		}
		if again, _ := l.Now(); again.Name == q.Name {
			l.Type(answerExactly(l, q))
		}
		all, _, err := s.Records()
		if err != nil {
			t.Fatal(err)
		}
		last := all[len(all)-1]
		if last.Kind != record.Moments || (len(last.Right) > 0) != row.right || row.right && (len(last.Missed) == 0 || len(last.Right)+len(last.Missed) != len(last.Skills)) {
			t.Errorf("%v: %s asks for %v, missed %v, right %v", row.typed, last.Outcome, last.Skills, last.Missed, last.Right)
		}
	}
}
