package tutor

import (
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"unpin/problems"
)

// clock gives a later time at each call.
func clock() func() time.Time {
	t := time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC)
	return func() time.Time { t = t.Add(time.Second); return t }
}

func noComplaint(t *testing.T) func(error) {
	return func(err error) { t.Helper(); t.Error(err) }
}

func TestResume(t *testing.T) {
	s := StoreAt(filepath.Join(t.TempDir(), "unpin", "practice.jsonl"))
	name, now := problems.Names()[0], clock()
	first := lesson(t, name, Values)
	first.Keep(s, now, noComplaint(t))
	for _, line := range []string{"7", "0", "tell", "hint", "nonsense", "11.5"} {
		first.Type(line)
	}
	at, _ := first.Position()

	again := lesson(t, name, Values)
	again.Keep(s, now, noComplaint(t))
	if n := again.Earlier(); n != at || n != 3 {
		t.Fatalf("%d questions are settled in earlier work, want %d", n, at)
	}
	if r := again.Type("resume"); r.Kind != Resumed {
		t.Fatalf("resume: %v", r)
	}
	if got, _ := again.Position(); got != at {
		t.Errorf("taken up at %d, want %d", got, at)
	}
	if _, _, told, _ := again.Standing(1); !told {
		t.Error("what was told is not marked so after resuming")
	}
	for what, other := range map[string]*Lesson{"another rung": lesson(t, name, Terms), "another problem": lesson(t, problems.Names()[1], Values)} {
		other.Keep(s, now, noComplaint(t))
		if n := other.Earlier(); n != 0 {
			t.Errorf("%s takes up %d questions", what, n)
		}
	}
}

// A program killed while it writes leaves part of a line; what comes after must not be lost with it.
func TestTornLine(t *testing.T) {
	path := filepath.Join(t.TempDir(), "practice.jsonl")
	if err := StoreAt(path).Add(Record{Run: "a", Typed: "1"}); err != nil {
		t.Fatal(err)
	}
	whole, _ := os.ReadFile(path)
	for cut := range whole {
		if err := os.WriteFile(path, whole[:cut], 0o600); err != nil {
			t.Fatal(err)
		}
		s := StoreAt(path)
		if err := s.Add(Record{Run: "b", Typed: "2"}); err != nil {
			t.Fatal(err)
		}
		all, err := s.Records()
		if err != nil || len(all) == 0 || all[len(all)-1].Typed != "2" {
			t.Fatalf("cut at %d: %v %v", cut, all, err)
		}
	}
}

func TestTwoProgramsAtOnce(t *testing.T) {
	path := filepath.Join(t.TempDir(), "practice.jsonl")
	const each = 200
	var group sync.WaitGroup
	for _, run := range []string{"a", "b", "c"} {
		group.Add(1)
		go func() {
			defer group.Done()
			s := StoreAt(path)
			for i := range each {
				if err := s.Add(Record{Run: run, Number: i, Typed: strings.Repeat(run, i)}); err != nil {
					t.Error(err)
				}
			}
		}()
	}
	group.Wait()
	all, err := StoreAt(path).Records()
	if err != nil || len(all) != 3*each {
		t.Fatalf("%d records, want %d: %v", len(all), 3*each, err)
	}
}

// Where nothing can be kept the lesson says so once and goes on.
func TestNothingCanBeKept(t *testing.T) {
	inTheWay := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(inTheWay, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	complaints := 0
	l := lesson(t, problems.Names()[0], Values)
	l.Keep(StoreAt(filepath.Join(inTheWay, "practice.jsonl")), clock(), func(error) { complaints++ })
	l.Type("0")
	l.Type("tell")
	if at, _ := l.Position(); at != 2 || complaints != 1 {
		t.Errorf("at question %d with %d complaints", at, complaints)
	}
}
