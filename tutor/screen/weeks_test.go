package screen

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"unpin/tutor"
	"unpin/tutor/record"
)

var (
	weeks    = flag.Int("weeks", 0, "play so many weeks of practice; without it three days")
	pictures = flag.String("pictures", "", "a folder for the screens of these weeks")
)

// A student opens the program day after day at a clock that the test sets, takes what stands first in the list, and works it to its end:
// right but for every seventh answer, with tell where a mistake is to be found. Whatever comes, every screen has its size, every piece
// comes to its end, and the next day offers something.
func TestDayAfterDay(t *testing.T) {
	t.Parallel()
	s := student{t: t, store: record.At(filepath.Join(t.TempDir(), "practice.jsonl"))}
	days := max(*weeks*7, 3)
	for day := range days {
		s.at = [][2]int{{100, 30}, {60, 18}, {80, 24}, {140, 45}}[day%4]
		s.now = time.Date(2026, 3, 2+day, 17, 0, 0, 0, time.UTC)
		s.day(day)
	}
	if s.pieces < days {
		t.Errorf("%d pieces in %d days", s.pieces, days)
	}
	if *weeks > 0 {
		all, _, _ := s.store.Records()
		standings := record.Standings(all)
		stand := 0
		for _, x := range standings {
			if x.Stands() {
				stand++
			}
		}
		t.Logf("%d days: %d pieces, %d records, %d of %d skills stand; forms %v; opening at most %v", days, s.pieces, len(all), stand, len(standings), s.forms, s.slowest)
	}
}

// A student is who plays, and what came of it.
type student struct {
	t       *testing.T
	store   *record.Store
	now     time.Time
	at      [2]int
	m       *Model
	pieces  int
	typed   int
	forms   map[string]int
	slowest time.Duration
}

// day is one day: the first entry of the list, to its end.
func (s *student) day(n int) {
	s.m = New(Options{Entries: fromShelf, Store: s.store, Clock: func() time.Time { return s.now }, Level: tutor.Gradual})
	if *weeks > 0 {
		s.m.o.Entries = Library
	}
	size(s.m, s.at[0], s.at[1])
	begun := time.Now()
	s.m.Update(s.m.Init()())
	s.slowest = max(s.slowest, time.Since(begun))
	s.see(n, "list")
	press(s.m, "enter")
	for turn := 0; s.m.view != choosing; turn++ {
		if turn > 400 {
			s.t.Fatalf("day %d comes to no end:\n%s", n, bare(s.m.View()))
		}
		s.turn(n)
	}
}

// turn does what comes next.
func (s *student) turn(n int) {
	s.now = s.now.Add(20 * time.Second)
	m := s.m
	switch {
	case m.view == telling: // a worked step comes first
		s.see(n, "worked first")
		press(m, "enter")
	case m.view == opening:
		s.begin(n, "a whole problem")
		press(m, "enter")
	case m.view == closing:
		s.see(n, "closing")
		press(m, "enter")
	case m.drill != nil && m.drill.done():
		s.see(n, m.drill.d.Form().String()+" done")
		press(m, "enter")
	case m.drill != nil:
		if at, _ := m.drill.d.Position(); at == 0 && len(m.drill.reply.Lines) == 0 {
			s.begin(n, m.drill.d.Form().String())
		}
		if m.drill.oneKey() {
			s.typed++
			press(m, fmt.Sprint(1+s.typed%9))
		} else {
			s.enter("tell")
		}
	case m.course.done():
		press(m, "enter")
	default:
		s.answer(n)
	}
	if fault := checkView(m.View(), s.at[0], s.at[1], false); fault != "" {
		s.t.Errorf("day %d: %s", n, fault)
	}
}

// answer answers the question in hand, every seventh time wrong at first.
func (s *student) answer(n int) {
	l := s.m.course.l
	if lines := s.m.course.reply.Lines; len(lines) == 1 && strings.Contains(lines[0], "What comes before it is worked") {
		s.begin(n, "a piece")
	}
	if _, open := tutor.AsideOf(l); open {
		press(s.m, "1")
		return
	}
	if q, _ := l.Now(); s.typed%7 == 3 && q.Kind != tutor.Reading && !q.Composing() && !q.Shape() {
		s.typed++
		s.enter("123.4")
		return
	}
	s.typed++
	s.enter(right(l))
}

// enter types a line.
func (s *student) enter(text string) {
	s.m.line().take()
	s.m.line().insert([]rune(text))
	press(s.m, "enter")
}

// begin counts a piece.
func (s *student) begin(n int, form string) {
	s.pieces++
	if s.forms == nil {
		s.forms = map[string]int{}
	}
	s.forms[form]++
	s.see(n, form)
}

// see writes the screen down, where that is asked for.
func (s *student) see(n int, what string) {
	if *pictures == "" {
		return
	}
	name := fmt.Sprintf("day-%02d-%02d-%s.txt", n, s.pieces, strings.ReplaceAll(what, " ", "-"))
	if err := os.WriteFile(filepath.Join(*pictures, name), []byte(bare(s.m.View())), 0o600); err != nil {
		s.t.Fatal(err)
	}
}
