package logtest

import (
	"testing"
	"time"

	"unpin/tutor/record"
)

// practised adds a step of a skill that came right at a time.
func practised(t *testing.T, log record.Log, frame string, at time.Time) {
	t.Helper()
	r := record.Record{At: at, Run: "r", Problem: frame, Frame: frame, Kind: record.Forces, Skills: []string{"pin-pair"}, Outcome: record.StepRight}
	if err := record.On(log).Add(r); err != nil {
		t.Fatal(err)
	}
}

// standing is how far a learner is by what a log keeps.
func standing(t *testing.T, log record.Log) record.Standing {
	t.Helper()
	past, err := record.On(log).Past()
	if err != nil {
		t.Fatal(err)
	}
	all, err := past.Of()
	if err != nil {
		t.Fatal(err)
	}
	return record.Standings(all)["pin-pair"]
}

// clockJumps lets the clock of a machine run a year ahead for a day, and then a year behind: what was practised is due no later than it would be
// by a clock that is right, and once it is practised by that, all is as ever.
func clockJumps(t *testing.T, log record.Log, again func() record.Log) {
	day := func(n int) time.Time { return time.Date(2026, 3, 2+n, 9, 0, 0, 0, time.FixedZone("", 3600)) }
	practised(t, log, "a", day(0))
	practised(t, log, "b", day(365))
	if s := standing(t, again()); !s.Due(day(1)) || s.Overdue(day(1)) != 0 || !s.Ahead(day(1)) {
		t.Errorf("after a jump ahead: due %t, late by %d, ahead %t", s.Due(day(1)), s.Overdue(day(1)), s.Ahead(day(1)))
	}
	practised(t, log, "a", day(1))
	if s := standing(t, again()); s.Ahead(day(1)) || s.Due(day(1)) || !s.Due(day(1+21)) {
		t.Errorf("once it is practised again: ahead %t, due at once %t, due in three weeks %t", s.Ahead(day(1)), s.Due(day(1)), s.Due(day(22)))
	}
	practised(t, log, "b", day(-365))
	if s := standing(t, again()); !s.Due(day(2)) || s.Overdue(day(2)) > 21 {
		t.Errorf("after a jump back: due %t, late by %d", s.Due(day(2)), s.Overdue(day(2)))
	}
	practised(t, log, "a", day(2))
	if s := standing(t, again()); s.Due(day(2)) || !s.Due(day(2+21)) {
		t.Errorf("after it: due at once %t, due in three weeks %t", s.Due(day(2)), s.Due(day(23)))
	}
}

// twoClocks lets a learner practise by turns on two machines, one of which is in another zone and the other two days ahead: on neither is anything
// put off for longer than three weeks and these two days, and a zone alone says nothing of a clock that is wrong.
func twoClocks(t *testing.T, log record.Log, again func() record.Log) {
	east, west := time.FixedZone("", 13*3600), time.FixedZone("", -10*3600)
	for n := range 12 {
		real := time.Date(2026, 3, 2+n, 20, 0, 0, 0, time.UTC)
		practised(t, log, "a", real.In(east))
		if s := standing(t, again()); s.Ahead(real.In(west)) || s.Ahead(real) {
			t.Fatalf("day %d: a zone is taken for a clock that is wrong", n)
		}
		practised(t, again(), "b", real.AddDate(0, 0, 2).In(west))
		s := standing(t, log)
		if !s.Ahead(real) || !s.Due(real) {
			t.Fatalf("day %d: what the machine that is ahead kept is not seen to be so", n)
		}
		if !s.Due(real.AddDate(0, 0, 2+21+1)) {
			t.Fatalf("day %d: it is put off for more than three weeks", n)
		}
	}
}
