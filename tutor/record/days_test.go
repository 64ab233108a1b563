package record

import (
	"fmt"
	"maps"
	"slices"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// heldSlowly is what the days of a skill come to, day after day from a table of the first step of each.
func heldSlowly(all []Record) (held int) {
	first := map[string]Record{}
	for _, r := range slices.Backward(all) {
		first[r.At.Format(time.DateOnly)] = r
	}
	for _, on := range slices.Sorted(maps.Keys(first)) {
		switch r := first[on]; {
		case r.Outcome == StepRight:
			held = min(5, held+1)
		case len(r.Missed) == 1 || len(r.Skills) == 1:
			held = max(0, held-1)
		}
	}
	return held
}

// Days of steps that come in the order of time, against the table.
func TestDaysAgainstTable(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		at := time.Date(2026, 3, 1, 8, 0, 0, 0, time.UTC)
		var all []Record
		for range rapid.IntRange(1, daysCount).Draw(t, "steps") { // no more days than count
			at = at.Add(time.Duration(rapid.IntRange(0, 20).Draw(t, "hours")) * time.Hour)
			r := Record{At: at, Frame: "a", Skills: [][]string{{"jumps"}, {"jumps", "slopes"}}[rapid.IntRange(0, 1).Draw(t, "skills")], Outcome: StepRight}
			switch rapid.IntRange(0, 4).Draw(t, "came") {
			case 0:
				r.Outcome = StepTold
			case 1:
				r.Outcome, r.Missed = StepHelped, []string{"jumps"}
			}
			all = append(all, r)
		}
		if got, want := Standings(all)["jumps"].DaysHeld(), heldSlowly(all); got != want {
			t.Fatalf("%v: %d days, by the table %d", all, got, want)
		}
	})
}

// However much is practised on a day, days before it count: sixty steps a day for a week.
func TestDaysOutlastTheWindow(t *testing.T) {
	t.Parallel()
	s := At(t.TempDir() + "/practice.jsonl")
	s.often = 1
	var all []Record
	for day := range 7 {
		for n := range window {
			all = append(all, Record{Version: version, Run: "a", At: time.Date(2026, 3, 1+day, 8, n, 0, 0, time.UTC), Frame: fmt.Sprint(n), Kind: Forces, Skills: []string{"jumps"}, Outcome: StepRight})
		}
		appendLines(t, s, all[len(all)-window:])
		checkPast(t, s, all) // keeps a brief, from which the next day goes on
		if got, want := Standings(all)["jumps"], min(day+1, mostHeld); got.DaysHeld() != want || got.Of != window {
			t.Errorf("after day %d: %d days, want %d; of %d steps", day+1, got.DaysHeld(), want, got.Of)
		}
	}
}
