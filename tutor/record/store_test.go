package record

import (
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

// A program killed while it writes leaves part of a line; what comes after must not be lost with it.
func TestTornLine(t *testing.T) {
	t.Parallel()
	path := filepath.Join(t.TempDir(), "unpin", "practice.jsonl")
	if err := At(path).Add(Record{Run: "a", Typed: "1"}); err != nil {
		t.Fatal(err)
	}
	whole, _ := os.ReadFile(path)
	for cut := range whole {
		if err := os.WriteFile(path, whole[:cut], 0o600); err != nil {
			t.Fatal(err)
		}
		s := At(path)
		if err := s.Add(Record{Run: "b", Typed: "2"}); err != nil {
			t.Fatal(err)
		}
		all, passed, err := s.Records()
		if err != nil || len(all) == 0 || all[len(all)-1].Typed != "2" {
			t.Fatalf("cut at %d: %v %v", cut, all, err)
		}
		if torn := cut > 0 && cut < len(whole)-1; (passed.Torn == 1) != torn {
			t.Fatalf("cut at %d: %+v", cut, passed)
		}
	}
}

// Several programs write at once; each line comes out whole and in the order of its program.
func TestWritersAtOnce(t *testing.T) {
	t.Parallel()
	path := filepath.Join(t.TempDir(), "practice.jsonl")
	const each = 200
	var group sync.WaitGroup
	for _, run := range []string{"a", "b", "c"} {
		group.Go(func() {
			s := At(path)
			for i := range each {
				if err := s.Add(Record{Run: run, Number: i, Typed: strings.Repeat(run, i)}); err != nil {
					t.Error(err)
				}
			}
		})
	}
	group.Wait()
	all, passed, err := At(path).Records()
	if err != nil || len(all) != 3*each || passed != (Passed{}) {
		t.Fatalf("%d records, want %d: %+v %v", len(all), 3*each, passed, err)
	}
	next := map[string]int{}
	for _, r := range all {
		if r.Number != next[r.Run] {
			t.Fatalf("event %d of run %s, want %d", r.Number, r.Run, next[r.Run])
		}
		next[r.Run]++
	}
}

// Lines that cannot be used hide nothing that follows, and are counted.
func TestLinesPassedOver(t *testing.T) {
	t.Parallel()
	good := func(typed string) string { return `{"v":2,"run":"a","typed":"` + typed + `","outcome":"exact"}` }
	rows := []struct {
		name, lines string
		want        string // what was typed in the lines that are read
		passed      Passed
	}{
		{"an empty file", "", "", Passed{}},
		{"blank lines", "\n\n" + good("1") + "\n\n", "1", Passed{}},
		{"no end of the last line", good("1") + "\n" + good("2"), "1 2", Passed{}},
		{"not JSON", good("1") + "\nnonsense\n" + good("2") + "\n", "1 2", Passed{Torn: 1}},
		{"no object", "[1]\n17\n" + good("2") + "\n", "2", Passed{Torn: 2}},
		{"no run", `{"v":2,"typed":"1"}` + "\n" + good("2") + "\n", "2", Passed{Torn: 1}},
		{"a field of another type", `{"v":2,"run":"a","number":"x"}` + "\n" + good("2") + "\n", "2", Passed{Torn: 1}},
		{"over 1 MiB", good("1") + "\n" + good(strings.Repeat("9", 3<<20)) + "\n" + good("2") + "\n", "1 2", Passed{Long: 1}},
		{"over 1 MiB at the end", good("1") + "\n" + strings.Repeat("9", 2<<20), "1", Passed{Long: 1}},
		{"zeros alone", good("1") + "\n" + strings.Repeat("\x00", 5000) + "\n" + good("2") + "\n", "1 2", Passed{}},
		{"zeros before a line", strings.Repeat("\x00", 5000) + good("1") + "\n", "1", Passed{}},
		{"zeros within a line", `{"v":2,"run":"a",` + strings.Repeat("\x00", 50) + "\n" + good("2") + "\n", "2", Passed{Torn: 1}},
		{"a newer version", `{"v":3,"run":{"id":7}}` + "\n" + good("2") + "\n", "2", Passed{Newer: 1}},
		{"a field more", `{"v":2,"run":"a","typed":"1","mood":"fine"}` + "\n", "1", Passed{}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			t.Parallel()
			path := filepath.Join(t.TempDir(), "practice.jsonl")
			if err := os.WriteFile(path, []byte(r.lines), 0o600); err != nil {
				t.Fatal(err)
			}
			all, passed, err := At(path).Records()
			var typed []string
			for _, x := range all {
				typed = append(typed, x.Typed)
			}
			if got := strings.Join(typed, " "); err != nil || got != r.want || passed != r.passed {
				t.Errorf("read %q and passed over %+v, want %q and %+v: %v", got, passed, r.want, r.passed, err)
			}
			if (passed.String() == "") != (passed == Passed{}) {
				t.Errorf("%+v is told as %q", passed, passed)
			}
		})
	}
}

func TestTooLongToKeep(t *testing.T) {
	t.Parallel()
	s := At(filepath.Join(t.TempDir(), "practice.jsonl"))
	if err := s.Add(Record{Run: "a", Typed: strings.Repeat("9", 2<<20)}); err == nil {
		t.Error("a line is written that will not be read")
	}
}
