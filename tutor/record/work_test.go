package record

import (
	"strings"
	"testing"
)

// events reads events of one problem at one level from a short form: run number outcome, and after resume the run taken up.
func events(text string) []Record {
	var all []Record
	for _, line := range strings.Split(strings.TrimSpace(text), "\n") {
		f := strings.Fields(line)
		r := Record{Run: f[0], Frame: "f", Level: "plan", Number: int(f[1][0] - '0'), Outcome: Outcome(f[2])}
		if len(f) > 3 {
			r.From = f[3]
		}
		all = append(all, r)
	}
	return all
}

// short is the short form, in one line.
func short(all []Record) string {
	var parts []string
	for _, r := range all {
		parts = append(parts, r.Run+string(rune('0'+r.Number)))
	}
	return strings.Join(parts, " ")
}

func TestWork(t *testing.T) {
	t.Parallel()
	rows := []struct{ name, lines, together, furthest string }{
		{"one run", "a 0 exact\na 1 wrong\na 1 exact", "a0 a1 a1", "a0 a1 a1"},
		{"two windows", "a 0 exact\nb 0 exact\na 1 exact\nb 1 wrong", "a0 b0 a1 b1", "a0 a1"},
		{"a new run is no further", "a 0 exact\na 1 exact\nb 0 exact", "a0 a1 b0", "a0 a1"},
		{"taken up and gone on", "a 0 exact\na 1 exact\nb 0 resume a\nb 2 exact", "a0 a1 b0 b2", "a0 a1 b0 b2"},
		{"taken up twice", "a 0 exact\nb 0 resume a\na 1 exact\na 2 exact\nb 1 exact", "a0 b0 a1 a2 b1", "a0 a1 a2"},
		{"taken up of itself", "a 0 exact\na 1 resume a\na 1 exact", "a0 a1 a1", "a0 a1 a1"},
		{"taken up of nothing", "a 0 resume z\na 0 exact", "a0 a0", "a0 a0"},
		{"restarted", "a 0 exact\na 1 exact\nb 0 restart\nb 0 exact", "b0 b0", "b0 b0"},
	}
	for _, r := range rows {
		w := WorkOn(events(r.lines), []string{"f"}, "plan", false)
		if got := short(w.Together()); got != r.together {
			t.Errorf("%s: together %s, want %s", r.name, got, r.together)
		}
		if got := short(w.Furthest()); got != r.furthest {
			t.Errorf("%s: furthest %s, want %s", r.name, got, r.furthest)
		}
	}
}

func TestUnfinishedExam(t *testing.T) {
	t.Parallel()
	rows := []struct{ name, lines, want string }{
		{"left after one", "a 0 noted", "a0"},
		{"finished", "a 0 noted\na 1 told", ""},
		{"finished, and another begun", "a 0 noted\na 1 noted\nb 0 noted", "b0"},
		{"taken up and finished", "a 0 noted\nb 0 resume a\nb 1 noted", ""},
		{"taken up and left again", "a 0 noted\nb 0 resume a\nb 0 noted", "a0 b0 b0"},
		{"begun anew by oversight", "a 0 noted\nb 0 quit", "a0"},
		{"set aside", "a 0 noted\nb 0 restart", ""},
	}
	for _, r := range rows {
		all := events(r.lines)
		for i := range all {
			all[i].Exam = true
		}
		if got := short(WorkOn(all, []string{"f"}, "plan", true).Unfinished(func(events []Record) bool { return Answered(events) >= 2 })); got != r.want {
			t.Errorf("%s: %s, want %s", r.name, got, r.want)
		}
	}
}

func TestWorkOnOtherThings(t *testing.T) {
	t.Parallel()
	all := []Record{{Run: "a", Frame: "g", Level: "plan"}, {Run: "a", Frame: "f", Level: "blank"}, {Run: "a", Frame: "f", Level: "plan", Exam: true}}
	if w := WorkOn(all, []string{"f"}, "plan", false); len(w.Together()) != 0 || len(w.Furthest()) != 0 {
		t.Errorf("work on another frame, at another level or in an exam is taken for this: %v", w)
	}
}

// The lines of version 1 come out in the codes of version 2.
func TestVersion1(t *testing.T) {
	t.Parallel()
	all, passed, err := At("testdata/version1.jsonl").Records()
	if err != nil || passed != (Passed{}) || len(all) != 72 {
		t.Fatalf("%d lines, %+v, %v", len(all), passed, err)
	}
	outcomes, kinds, levels := map[Outcome]int{}, map[Kind]int{}, map[string]int{}
	for _, r := range all {
		outcomes[r.Outcome]++
		kinds[r.Kind]++
		levels[r.Level]++
		if (r.Kind != "") != (r.Question == "") {
			t.Errorf("a step has the question %q and the kind %q", r.Question, r.Kind)
		}
	}
	if outcomes[""] != 0 || outcomes[Exact] == 0 || outcomes[Wrong] == 0 || outcomes[Told] == 0 || outcomes[StepTold] == 0 || outcomes[StepHelped] != 2 {
		t.Errorf("outcomes %v", outcomes)
	}
	if kinds[Forces] == 0 || kinds[Moments] == 0 || kinds[Diagrams] == 0 {
		t.Errorf("kinds %v", kinds)
	}
	if levels["plan"] == 0 || levels["gradual"] == 0 || levels["order"]+levels["fading"] != 0 {
		t.Errorf("levels %v", levels)
	}
}

func TestEarned(t *testing.T) {
	t.Parallel()
	all := []Record{
		{Frame: "f", Kind: Forces, Outcome: StepRight}, {Frame: "f", Kind: Forces, Outcome: StepRight}, {Frame: "f", Kind: Forces, Outcome: StepTold},
		{Frame: "f", Kind: Moments, Outcome: StepTold}, {Frame: "f", Kind: Moments, Outcome: StepRight},
		{Frame: "f", Kind: Diagrams, Outcome: StepHelped}, {Frame: "this", Kind: Together, Outcome: StepRight},
	}
	got := Earned(all, []string{"this"})
	if got[Forces] != 1 || got[Moments] != 1 || got[Diagrams] != 0 || got[Together] != 0 {
		t.Errorf("earned %v", got)
	}
}
