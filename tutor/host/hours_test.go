package host

import (
	"testing"
	"time"

	"unpin/problems"
)

// clock reads a time of the day on which the sets of these tests are worked.
func clock(t *testing.T, text string) time.Time {
	t.Helper()
	if text == "" {
		return time.Time{}
	}
	at, err := time.Parse("2006-01-02T15:04Z07:00", "2026-12-04T"+text+"+01:00")
	if err != nil {
		t.Fatal(err)
	}
	return at
}

// Rows by hand: the end is min(start + minutes, closes) + minutes · extra, and what a pause takes is given back to those who have begun.
func TestEndOfALearner(t *testing.T) {
	t.Parallel()
	at := func(text string) time.Time { return clock(t, text) }
	for _, r := range []struct {
		name           string
		opens, closes  string
		minutes, extra int
		orders         []order
		begun, now     string
		end            string
	}{
		{"minutes", "10:00", "12:00", 60, 0, nil, "10:05", "10:10", "11:05"},
		{"closes first", "10:00", "11:30", 90, 0, nil, "10:30", "10:40", "11:30"},
		{"extra after closes", "10:00", "11:30", 90, 50, nil, "10:30", "10:40", "12:15"},
		{"extra", "10:00", "12:00", 60, 25, nil, "10:00", "10:40", "11:15"},
		{"a pause that lasts", "10:00", "12:00", 60, 0, []order{{Do: pauseSet, At: at("10:20")}}, "10:00", "10:30", "11:10"},
		{"a pause that is over", "10:00", "12:00", 60, 0, []order{{Do: pauseSet, At: at("10:20")}, {Do: goOn, At: at("10:30")}}, "10:00", "11:00", "11:10"},
		{"begun in a pause's middle", "10:00", "12:00", 60, 0, []order{{Do: pauseSet, At: at("10:20")}, {Do: goOn, At: at("10:30")}}, "10:25", "11:00", "11:30"},
		{"a pause before the start", "10:00", "12:00", 60, 0, []order{{Do: pauseSet, At: at("10:20")}, {Do: goOn, At: at("10:30")}}, "10:40", "11:00", "11:40"},
		{"a pause moves the close", "10:00", "11:00", 60, 0, []order{{Do: pauseSet, At: at("10:20")}, {Do: goOn, At: at("10:30")}}, "10:40", "10:50", "11:10"},
		{"paused twice", "10:00", "", 60, 0, []order{{Do: pauseSet, At: at("10:10")}, {Do: pauseSet, At: at("10:11")}, {Do: goOn, At: at("10:15")}, {Do: pauseSet, At: at("10:30")}, {Do: goOn, At: at("10:31")}}, "10:00", "10:50", "11:06"},
		{"given to all and to one", "10:00", "12:00", 60, 0, []order{{Do: giveBack, Minutes: 5}, {Do: giveBack, Who: "a", Minutes: 2}, {Do: giveBack, Who: "b", Minutes: 30}}, "10:00", "10:30", "11:07"},
		{"opened by hand", "", "", 30, 0, []order{{Do: openSet, At: at("14:00")}}, "14:10", "14:11", "14:40"},
		{"opened until", "10:00", "11:00", 30, 0, []order{{Do: openSet, At: at("14:00"), Until: at("14:30")}}, "14:10", "14:11", "14:30"},
		{"closed by hand", "10:00", "12:00", 60, 50, []order{{Do: closeSet, At: at("10:20")}}, "10:00", "10:30", "10:20"},
		{"other minutes and extra", "10:00", "12:00", 60, 10, []order{{Do: setMinutes, Minutes: 40}, {Do: setExtra, Who: "a", Percent: 50}}, "10:00", "10:30", "11:00"},
		{"no exam", "10:00", "12:00", 0, 50, []order{{Do: setMinutes, Minutes: 40}}, "10:00", "10:30", "12:00"},
		{"no end", "10:00", "", 0, 0, nil, "10:00", "10:30", ""},
	} {
		s := &problems.Set{Opens: at(r.opens), Closes: at(r.closes), Minutes: r.minutes}
		w := hoursOf(s, map[string]int{"a": r.extra}, r.orders)
		end, limited := w.ends("a", at(r.begun), at(r.now))
		if !end.Equal(at(r.end)) || limited != (r.end != "") {
			t.Errorf("%s: it ends at %s", r.name, end.Format("15:04"))
		}
	}
}

// Rows by hand: how far a set is, and whether the time of everybody is over.
func TestPhases(t *testing.T) {
	t.Parallel()
	at := func(text string) time.Time { return clock(t, text) }
	for _, r := range []struct {
		name          string
		opens, closes string
		minutes       int
		extra         int
		orders        []order
		now           string
		want          phase
		done          bool
	}{
		{"lessons without times", "", "", 0, 0, nil, "10:00", running, false},
		{"before", "10:00", "11:00", 60, 0, nil, "09:59", before, false},
		{"running", "10:00", "11:00", 60, 0, nil, "10:00", running, false},
		{"over", "10:00", "11:00", 60, 0, nil, "11:00", over, true},
		{"over but for one", "10:00", "11:00", 60, 50, nil, "11:20", over, false},
		{"over for all", "10:00", "11:00", 60, 50, nil, "11:30", over, true},
		{"given back", "10:00", "11:00", 60, 0, []order{{Do: giveBack, Minutes: 5}}, "11:04", over, false},
		{"given to one", "10:00", "11:00", 60, 0, []order{{Do: giveBack, Who: "b", Minutes: 5}}, "11:04", over, false},
		{"an exam that nobody opened", "", "", 60, 0, nil, "10:00", before, false},
		{"opened", "", "", 60, 0, []order{{Do: openSet, At: at("09:00")}}, "10:00", running, false},
		{"paused", "10:00", "11:00", 60, 0, []order{{Do: pauseSet, At: at("10:30")}}, "11:30", resting, false},
		{"closed", "10:00", "11:00", 60, 50, []order{{Do: closeSet, At: at("10:30")}}, "10:31", over, true},
		{"opened again", "10:00", "11:00", 60, 0, []order{{Do: closeSet, At: at("10:30")}, {Do: openSet, At: at("10:35")}}, "11:31", running, false},
	} {
		w := hoursOf(&problems.Set{Opens: at(r.opens), Closes: at(r.closes), Minutes: r.minutes}, map[string]int{"a": r.extra}, r.orders)
		if got := w.at(at(r.now)); got != r.want || w.done(at(r.now)) != r.done {
			t.Errorf("%s: phase %d, done %v", r.name, got, w.done(at(r.now)))
		}
	}
}
