package record

import (
	"encoding/json"
	"flag"
	"fmt"
	"iter"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// drawn draws records as lessons make them, on few frames and with few skills, so that all limits are met.
func drawn(t *rapid.T) []Record {
	n := rapid.IntRange(0, 300).Draw(t, "records")
	at := time.Date(2026, 3, 1, 8, 0, 0, 0, time.UTC)
	all := make([]Record, n)
	for i := range all {
		pick := func(of int) int { return rapid.IntRange(0, of-1).Draw(t, "pick") }
		at = at.Add(time.Duration(pick(40)-2) * time.Hour)
		frame := pick(5)
		r := Record{Version: version, At: at, Run: fmt.Sprint(pick(3)), Problem: fmt.Sprint("p", frame/2), Frame: fmt.Sprint("v3:", frame), Level: "values",
			Number: i, Outcome: []Outcome{Exact, Wrong, Restarted}[pick(20)*3/20]}
		if pick(2) == 0 {
			r.Kind, r.Outcome = Kinds()[pick(2)], []Outcome{StepRight, StepHelped, StepTold}[pick(3)]
			r.Skills = [][]string{{"a"}, {"a", "b"}, {"c"}}[pick(3)]
			if r.Outcome != StepRight && pick(2) == 0 {
				r.Missed = r.Skills[:1]
			}
			if pick(6) == 0 {
				r.Kind, r.Along = Diagrams, []Place{{Skill: "c", Outcome: []Outcome{StepRight, StepHelped}[pick(2)]}, {Skill: "c", Outcome: StepHelped}}
			}
		}
		all[i] = r
	}
	return all
}

// lastOn is when each problem was worked on last.
func lastOn(all []Record) map[string]time.Time {
	last := map[string]time.Time{}
	for _, r := range all {
		last[r.Problem] = r.At
	}
	return last
}

// What is drawn from the past is what all records give, whenever a brief was made on the way.
func TestPastIsAll(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	n := 0
	rapid.Check(t, func(rt *rapid.T) {
		n++
		s := At(filepath.Join(dir, fmt.Sprint(n), "practice.jsonl"))
		s.often = rapid.IntRange(1, 200).Draw(rt, "often")
		all := drawn(rt)
		for from := 0; from < len(all); {
			to := min(from+rapid.IntRange(1, 200).Draw(rt, "until"), len(all))
			appendLines(rt, s, all[from:to])
			if from = to; rapid.Bool().Draw(rt, "open") {
				checkPast(rt, s, all[:to])
			}
		}
		checkPast(rt, s, all)
	})
}

// appendLines adds records in one go.
func appendLines(t rapid.TB, s *Store, records []Record) {
	var text []byte
	for _, r := range records {
		line, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		text = append(append(text, line...), '\n')
	}
	if err := s.log.Append(slices.Clip(text[:max(len(text)-1, 0)])); err != nil {
		t.Fatal(err)
	}
}

// checkPast holds the past against all records.
func checkPast(t rapid.TB, s *Store, all []Record) {
	p, err := s.Past()
	if err != nil {
		t.Fatal(err)
	}
	for _, frames := range [][]string{nil, {"v3:0"}, {"v3:1", "v3:3"}, {"elsewhere"}} {
		got, err := p.Of(frames...)
		if err != nil {
			t.Fatal(err)
		}
		for what, of := range map[string]func([]Record) any{
			"standings": func(all []Record) any { return Standings(all) },
			"skills":    func(all []Record) any { return Skills(all, frames) },
			"earned":    func(all []Record) any { return Earned(all, frames) },
			"work":      func(all []Record) any { return WorkOn(all, frames, "values", false) },
			"last":      func(all []Record) any { return lastOn(all) },
		} {
			if x, y := of(got), of(all); !reflect.DeepEqual(x, y) {
				t.Fatalf("of %d records, %v of frames %v: %v, want %v", len(all), what, frames, x, y)
			}
		}
	}
}

// A brief that does not hold for the lines is not heeded: of another file, of one cut short, of a later version, of nonsense.
func TestBriefOfOtherLines(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	s := At(filepath.Join(dir, "practice.jsonl"))
	s.often = 1
	line := func(typed string) Record { return Record{Run: "a", Frame: "f", Problem: "p", Typed: typed} }
	for _, typed := range []string{"1", "2", "3"} {
		if err := s.Add(line(typed)); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := s.Past(); err != nil {
		t.Fatal(err)
	}
	kept, err := os.ReadFile(filepath.Join(dir, latelyName))
	if err != nil {
		t.Fatal(err)
	}
	whole, _ := os.ReadFile(filepath.Join(dir, "practice.jsonl"))
	for name, with := range map[string][2]string{
		"as it was":       {string(whole), string(kept)},
		"cut short":       {string(whole[:len(whole)-20]), string(kept)},
		"other lines":     {`{"v":2,"run":"b","frame":"f","typed":"7"}` + "\n", string(kept)},
		"nothing":         {"", string(kept)},
		"a later version": {string(whole), `{"version":99}`},
		"nonsense":        {string(whole), "\x00nonsense"},
		"half of it":      {string(whole), string(kept[:len(kept)/2])},
	} {
		for file, text := range map[string]string{"practice.jsonl": with[0], latelyName: with[1]} {
			if err := os.WriteFile(filepath.Join(dir, file), []byte(text), 0o600); err != nil {
				t.Fatal(err)
			}
		}
		all, passed, err := s.Records()
		if err != nil {
			t.Fatal(err)
		}
		p, err := s.Past()
		if err != nil {
			t.Fatal(err)
		}
		got, err := p.Of("f")
		if err != nil || p.Passed() != passed || len(got) != len(all) || len(all) > 0 && !reflect.DeepEqual(got, all) {
			t.Errorf("%s: %v, want %v: %v", name, got, all, err)
		}
	}
}

// A line that another program is still writing is read when it is whole, and once.
func TestPastBesideAWriter(t *testing.T) {
	t.Parallel()
	path := filepath.Join(t.TempDir(), "practice.jsonl")
	s := At(path)
	s.often = 1
	line, _ := json.Marshal(Record{Version: version, Run: "a", Frame: "f", Typed: "1"})
	for cut := range line {
		if err := os.WriteFile(path, append(append(slices.Clone(line), '\n'), line[:cut]...), 0o600); err != nil {
			t.Fatal(err)
		}
		if _, err := s.Past(); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, append(append(append(slices.Clone(line), '\n'), line...), '\n'), 0o600); err != nil {
			t.Fatal(err)
		}
		p, err := s.Past()
		if err != nil {
			t.Fatal(err)
		}
		if got, err := p.Of("f"); err != nil || len(got) != 2 || p.Passed() != (Passed{}) {
			t.Fatalf("cut at %d: %d records, %+v, %v", cut, len(got), p.Passed(), err)
		}
	}
}

// counting counts the lines that are read of a log.
type counting struct {
	Log
	lines int
}

// Lines counts as they are read.
func (c *counting) Lines(from int64) iter.Seq2[Line, error] {
	return func(yield func(Line, error) bool) {
		for line, err := range c.Log.Lines(from) {
			if c.lines++; !yield(line, err) {
				return
			}
		}
	}
}

// However long the record is, an opening reads few of its lines once there is a brief.
func TestFewLinesAtAnOpening(t *testing.T) {
	t.Parallel()
	log := &counting{Log: longRecord(t, 6*often+500).log}
	s := On(log)
	for _, want := range [][2]int{{6*often + 500, 6*often + 500}, {1, 1}} {
		log.lines = 0
		if _, err := s.Past(); err != nil || log.lines < want[0] || log.lines > want[1] {
			t.Errorf("%d lines are read, want %v: %v", log.lines, want, err)
		}
	}
	p, err := s.Past()
	if err != nil {
		t.Fatal(err)
	}
	log.lines = 0
	if got, err := p.Of("v3:7"); err != nil || log.lines > 61 || len(WorkOn(got, []string{"v3:7"}, "gradual", false).Together()) != 60 {
		t.Errorf("%d lines are read for one frame: %v", log.lines, err)
	}
}

var records = flag.Int("records", 100_000, "lines in the longer record of BenchmarkOpening")

// BenchmarkOpening opens a record of a hundred thousand lines, eight years of daily practice; with and without its brief.
func BenchmarkOpening(b *testing.B) {
	for _, size := range []int{1_000, *records} {
		s := longRecord(b, size)
		for _, brief := range []bool{true, false} {
			b.Run(fmt.Sprintf("%d/brief=%v", size, brief), func(b *testing.B) {
				if _, err := s.Past(); err != nil {
					b.Fatal(err)
				}
				for b.Loop() {
					if !brief {
						if err := s.log.SetNote(latelyName, nil); err != nil {
							b.Fatal(err)
						}
					}
					p, err := s.Past()
					if err == nil {
						_, err = p.Of("v3:7")
					}
					if err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}

// longRecord is a store with many lines, such as lessons leave.
func longRecord(t testing.TB, size int) *Store {
	s := At(filepath.Join(t.TempDir(), "practice.jsonl"))
	at := time.Date(2020, 3, 1, 8, 0, 0, 0, time.UTC)
	var records []Record
	for i := range size {
		at = at.Add(20 * time.Minute)
		r := Record{Version: version, At: at, Run: fmt.Sprint("2026-11-28T08:00:00.123456789Z ", i/60), Problem: fmt.Sprint("problem ", i/60%48), Frame: fmt.Sprint("v3:", i/60),
			Level: "gradual", Number: i % 60, Question: "V(BC, 2.4 before)", Key: "2.1 arm 3", Typed: "46.4 up", Outcome: Exact}
		if i%5 == 0 {
			r.Kind, r.Outcome, r.Skills = Kinds()[i/5%4], StepRight, []string{fmt.Sprint("skill ", i/5%20)}
		}
		if records = append(records, r); len(records) == 1000 || i == size-1 {
			appendLines(t.(rapid.TB), s, records)
			records = nil
		}
	}
	return s
}
