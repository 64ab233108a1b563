package tutor

import (
	"cmp"
	"fmt"
	"runtime"
	"strings"
	"testing"
	"time"

	"unpin/problems"
	"unpin/statics"
	"unpin/tutor/record"
)

// atHand is the whole library.
func atHand() []*problems.Problem {
	var all []*problems.Problem
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		all = append(all, p)
	}
	return all
}

// today0 is the first day of histories.
var today0 = time.Date(2026, 3, 2, 17, 0, 0, 0, time.UTC)

// worked is what a lesson on a problem leaves in the record, step by step; wrong tells for a skill that it is still wanting.
func worked(t *testing.T, name string, day int, wrong func(skill string) bool) []record.Record {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("there is no %s", name)
	}
	s, err := solved(p)
	if err != nil {
		t.Fatal(err)
	}
	m := &matter{problem: p, solution: s}
	var tasks []task
	for i, step := range s.Plan {
		if len(step.Gives) > 0 {
			tasks = append(tasks, task{i, -1})
		}
	}
	for _, d := range s.Diagrams {
		tasks = append(tasks, task{-1, d.Member})
	}
	var all []record.Record
	both := problems.Solved{Problem: p, Solution: s}
	for _, k := range tasks {
		var asked []string
		if k.step == statics.None {
			asked = both.MemberSkills(s.Diagrams[k.member])
		} else {
			asked = stepSkills(both, s.Plan[k.step])
		}
		r := record.Record{At: today0.AddDate(0, 0, day), Problem: name, Frame: fmt.Sprint(name, day), Skills: asked, Outcome: record.StepRight, Kind: m.kind(k)}
		for _, skill := range r.Skills {
			if wrong(skill) {
				r.Outcome, r.Missed = record.StepHelped, append(r.Missed, skill)
			}
		}
		all = append(all, r)
	}
	return all
}

// What is offered, in testdata/today.txt. Rows: what was worked, as "day problem, ..." with the skills that went wrong after a slash; and a day.
func TestToday(t *testing.T) {
	t.Parallel()
	rows := []struct {
		done string
		on   int
	}{
		{"", 0},
		{"0 jetty-deck", 0},
		{"0 jetty-deck", 1},
		{"0 jetty-deck, 0 mill-bridge/pin-pair", 1},
		{"0 mill-bridge, 1 mill-bridge, 4 mill-bridge", 5},
		{"0 mill-bridge/cut-forces, 0 riding-hall/cut-forces, 0 jetty-deck/cut-forces", 0},
	}
	var b strings.Builder
	for _, r := range rows {
		var all []record.Record
		for _, item := range strings.Split(r.done, ", ") {
			if item == "" {
				continue
			}
			var day int
			var name string
			fmt.Sscan(item, &day, &name)
			name, wanting, _ := strings.Cut(name, "/")
			all = append(all, worked(t, name, day, func(skill string) bool { return skill == wanting })...)
		}
		fmt.Fprintf(&b, "day %d, after %s\n", r.on, cmp.Or(r.done, "nothing"))
		for _, o := range Today(all, today0.AddDate(0, 0, r.on), atHand()) {
			fmt.Fprintf(&b, "    %s, %s; %s\n", o.Problem.Name, o.Level, o.Why)
		}
	}
	golden(t, "today.txt", []byte(b.String()))
}

// A clock that ran a year ahead for a day is told of, in the account and at the head of the list, and hides no problem: what was done by it is due.
func TestClockAhead(t *testing.T) {
	t.Parallel()
	all := append(history(t, "0 jetty-deck"), history(t, "365 jetty-deck")...)
	now := today0.AddDate(0, 0, 1)
	const want = "skills are dated up to 2027-03-02, still to come. They count as due today."
	if said := AccountOf(all, now).Lines()[0]; !strings.Contains(said, want) {
		t.Errorf("the account begins with %q", said)
	}
	if page := string(AccountOf(all, now).HTML()); !strings.Contains(page, want) {
		t.Error("the page says nothing of it")
	}
	for _, o := range Today(all, now, atHand())[:1] {
		if !strings.HasSuffix(o.Why, "last done by a clock that ran ahead") {
			t.Errorf("offered: %s", o.Why)
		}
	}
	all = append(all, history(t, "1 jetty-deck")...)
	if said := ClockSays(all, now); said != "" {
		t.Errorf("once all is practised again: %s", said)
	}
}

// What was looked over is as looked over anew, and goes with its problem.
func TestMaterialsGoWithTheirProblems(t *testing.T) {
	t.Parallel()
	var ms materials
	count := func() (n int) {
		ms.all.Range(func(any, any) bool { n++; return true })
		return n
	}
	all := atHand()[:6]
	for range 2 {
		for _, p := range all {
			got, _ := ms.of(p)
			if want, _ := materialOf(p); fmt.Sprint(got) != fmt.Sprint(want) {
				t.Errorf("%s: %v, not %v", p.Name, got, want)
			}
			ms.of(p.In(p.Conventions)) // one that nobody holds
		}
	}
	for end := time.Now().Add(time.Minute); count() > len(all); time.Sleep(time.Millisecond) {
		if runtime.GC(); time.Now().After(end) {
			t.Fatalf("%d are held, of %d", count(), len(all))
		}
	}
	runtime.KeepAlive(all)
}
