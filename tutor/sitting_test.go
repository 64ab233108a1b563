package tutor

import (
	"bufio"
	"bytes"
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/tutor/marking"
	"unpin/tutor/record"
)

// A hall is where papers are sat in tests: one store, one clock.
type hall struct {
	t     *testing.T
	rules Rules
	store *record.Store
	now   time.Time
}

// newHall opens a hall with a paper of two problems at a level, ten minutes long.
func newHall(t *testing.T, level Level) *hall {
	t.Helper()
	h := &hall{t: t, store: record.At(filepath.Join(t.TempDir(), "practice.jsonl")), now: time.Date(2026, 12, 4, 9, 0, 0, 0, time.UTC)}
	h.rules = Rules{ID: "w5", Title: "Week 5", Level: level, Lasts: 10 * time.Minute}
	for _, name := range []string{"jetty-deck", "gravel-platform"} {
		h.rules.Tasks = append(h.rules.Tasks, aTask(t, name))
	}
	return h
}

// aTask is a problem of the library as a task of ten points.
func aTask(t *testing.T, name string) problems.Task {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("no problem %q", name)
	}
	task, err := problems.Alone(p)
	if err != nil {
		t.Fatal(err)
	}
	return task
}

// sit sits the paper, or comes back to it.
func (h *hall) sit() *Sitting {
	h.t.Helper()
	s, err := Sit(h.rules, h.store, func() time.Time { return h.now }, func(err error) { h.t.Error(err) })
	if err != nil {
		h.t.Fatal(err)
	}
	return s
}

// firstAnswer is an answer to the first question of a lesson that reads something into it.
func firstAnswer(l *Lesson) (Question, string) {
	q, _ := l.Now()
	switch {
	case q.Composing():
		return q, "whole x"
	case q.Kind == TermSign:
		return q, "-"
	}
	return q, "3"
}

// A paper goes on with the same clock and the same answers however often its student comes back, takes a line in the last minute and
// none after it, at every level; then it is handed in, for good.
func TestSittingKeepsItsClock(t *testing.T) {
	t.Parallel()
	for _, level := range []Level{Values, Terms, Plan, Blank} {
		h := newHall(t, level)
		l := h.sit().Lesson(1)
		first, answer := firstAnswer(l)
		if r := l.Type(answer); r.Kind != Noted {
			t.Errorf("%v: in time %+v", level, r)
		}
		h.now = h.now.Add(9*time.Minute + 30*time.Second)
		s := h.sit() // it was left, without a word
		l = s.Lesson(1)
		if r := l.Type("time"); r.Lines[0] != "1 minute left." {
			t.Errorf("%v: with half a minute to go %q", level, r.Lines)
		}
		if at, _ := l.Position(); at < 1 || !l.sheet.begun() {
			t.Errorf("%v: the answer is gone", level)
		}
		l.Type("back")
		h.now = h.now.Add(time.Minute)
		if r := l.Type("4"); r.Kind != HandedIn || !strings.Contains(strings.Join(r.Lines, " "), "too late") {
			t.Errorf("%v: after the time %q", level, r.Lines)
		}
		for _, line := range []string{"back", "4", "hand in"} {
			if r := l.Type(line); r.Kind != Unread {
				t.Errorf("%v: %s after the end: %+v", level, line, r)
			}
		}
		again := h.sit()
		if !again.Over() || !slices.Equal(again.Results(), s.Results()) || !slices.Equal(again.Whole(1), s.Whole(1)) {
			t.Errorf("%v: after the end\n%q\n%q\nand before\n%q\n%q", level, again.Results(), again.Whole(1), s.Results(), s.Whole(1))
		}
		if whole := strings.Join(s.Whole(1), "\n"); !first.Composing() && !strings.Contains(whole, first.Name+" typed "+answer+":") {
			t.Errorf("%v: the answer given in time is lost:\n%s", level, whole)
		}
		if err := again.Anew(); err == nil {
			t.Errorf("%v: an exam can be sat twice", level)
		}
	}
}

// A paper that nobody came back to is handed in at its end, with what was typed by then; one that a program with a wrong clock went on
// writing into keeps what came in time.
func TestSittingLeftAlone(t *testing.T) {
	t.Parallel()
	h := newHall(t, Values)
	l := h.sit().Lesson(0)
	l.Type("3")
	stray := h.sit()
	h.now = h.now.Add(20 * time.Minute)
	stray.clock = func() time.Time { return h.now.Add(-19 * time.Minute) }
	for _, l := range stray.lessons {
		l.keeper.now, l.Clock = stray.clock, stray.clock
	}
	s := h.sit()
	stray.Lesson(0).Type("5")
	if got := s.paper.Handed; !got.Equal(s.paper.Began.Add(10 * time.Minute)) {
		t.Errorf("begun %v and handed in %v", s.paper.Began, got)
	}
	for _, s := range []*Sitting{s, h.sit()} {
		whole := strings.Join(s.Whole(0), "\n")
		if !strings.Contains(whole, "typed 3") || strings.Contains(whole, "typed 5") {
			t.Errorf("the paper is\n%s", whole)
		}
	}
}

// What is kept of an exam before its end, which its student can read, tells nothing of what is right.
func TestSittingKeepsNoVerdict(t *testing.T) {
	t.Parallel()
	h := newHall(t, Blank)
	l := h.sit().Lesson(0)
	for _, line := range []string{"ABC M A: RB*8 + 20*2.5 - 12*9.5 = 0", "8", "ABC y: Ay + RB - 20 - 12 = 0", "24"} {
		l.Type(line)
	}
	all, _, err := h.store.Records()
	if err != nil || len(all) < 6 {
		t.Fatalf("%d records, %v", len(all), err)
	}
	for _, r := range all {
		if len(r.Slips) > 0 || len(r.Missed) > 0 || r.Outcome != record.Noted && r.Outcome != record.Begun {
			t.Errorf("%q is kept as %s, %q", r.Typed, r.Outcome, r.Slips)
		}
	}
}

// When a paper can be begun, when it is over, and when its marks are told, by what the set and the roster say.
func TestSittingTimes(t *testing.T) {
	t.Parallel()
	at := func(text string) time.Time {
		clock, err := time.Parse("15:04", text)
		if err != nil {
			t.Fatal(err)
		}
		return time.Date(2026, 12, 4, clock.Hour(), clock.Minute(), 0, 0, time.UTC)
	}
	for _, r := range []struct {
		now, opens, closes string
		minutes, extra     int
		end, fault         string
	}{
		{now: "09:00", minutes: 90, end: "10:30"},
		{now: "09:00", minutes: 90, extra: 25, end: "10:52"}, // and a half
		{now: "09:00"},
		{now: "09:00", closes: "09:20", end: "09:20"},
		{now: "09:00", closes: "10:00", minutes: 90, end: "10:00"},
		{now: "09:00", closes: "10:00", minutes: 90, extra: 100, end: "11:30"}, // min(start + 90, closes) + 90
		{now: "09:00", opens: "09:00", minutes: 10, end: "09:10"},
		{now: "09:00", opens: "09:01", fault: "w5 opens at 2026-12-04 09:01 +00:00"},
		{now: "09:00", closes: "09:00", fault: "w5 closed at 2026-12-04 09:00 +00:00"},
	} {
		h := newHall(t, Values)
		h.now, h.rules.Lasts, h.rules.Extra = at(r.now), time.Duration(r.minutes)*time.Minute, r.extra
		if r.opens != "" {
			h.rules.Opens = at(r.opens)
		}
		if r.closes != "" {
			h.rules.Closes = at(r.closes)
		}
		s, err := Sit(h.rules, h.store, func() time.Time { return h.now }, func(err error) { t.Error(err) })
		if err != nil {
			if err.Error() != r.fault {
				t.Errorf("%+v: %v", r, err)
			}
			continue
		}
		end, limited := s.End()
		if got := end.Format("15:04"); r.fault != "" || limited != (r.end != "") || limited && got != r.end {
			t.Errorf("%+v: ends %s, limited %v", r, got, limited)
		}
	}
	h := newHall(t, Values)
	h.rules.Marks = h.now.Add(time.Hour)
	s := h.sit()
	s.HandIn()
	if said := strings.Join(s.Results(), " "); !strings.Contains(said, "told from 2026-12-04 10:00") || s.Whole(0) != nil || strings.Contains(said, "points") {
		t.Errorf("before marks are told: %s %q", said, s.Whole(0))
	}
	h.now = h.now.Add(time.Hour)
	if len(s.Whole(0)) == 0 || !strings.Contains(strings.Join(s.Results(), " "), "In all 0 of 20 points.") {
		t.Errorf("after: %q %q", s.Results(), s.Whole(0))
	}
}

// On one's own computer a paper that was handed in may be followed by another, which is told to be practice.
func TestSittingAnew(t *testing.T) {
	t.Parallel()
	h := newHall(t, Values)
	h.rules.Practice, h.rules.Closes = true, h.now.Add(5*time.Minute)
	s := h.sit()
	s.Lesson(0).Type("3")
	s.HandIn()
	h.now = h.now.Add(time.Hour)
	if err := s.Anew(); err != nil {
		t.Fatal(err)
	}
	if end, _ := s.End(); !end.Equal(h.now.Add(10 * time.Minute)) {
		t.Errorf("after it closed, a paper for practice ends %v", end)
	}
	for _, s := range []*Sitting{s, h.sit()} {
		if at, _ := s.Lesson(0).Position(); at != 0 || s.Over() || !strings.Contains(strings.Join(s.Terms(), " "), "paper 2") {
			t.Errorf("the second paper begins at question %d: %q", at, s.Terms())
		}
	}
}

// What is asked is what the set says: M alone asks no N and no V, one reaction no more than leads to it.
func TestSittingAsks(t *testing.T) {
	t.Parallel()
	for _, r := range []struct {
		level Level
		find  []string
		want  string
	}{
		{Values, []string{"RB"}, "RB"},
		{Values, []string{"Ay"}, "RB Ay"},
		{Values, []string{"M(AB, 2)"}, "Ax RB Ay M(AB, 2)"},
	} {
		h := newHall(t, r.level)
		h.rules.Tasks = h.rules.Tasks[:1]
		h.rules.Tasks[0].Problem = h.rules.Tasks[0].Asking(r.find)
		var names []string
		for _, q := range h.sit().Lesson(0).Asked() {
			names = append(names, q.Name)
		}
		if got := strings.Join(names, " "); got != strings.ReplaceAll(r.want, "AB", "ABC") && got != r.want {
			t.Errorf("%v asks %s, not %s", r.find, got, r.want)
		}
	}
	for _, level := range []Level{Values, Plan} {
		h := newHall(t, level)
		h.rules.Tasks = h.rules.Tasks[:1]
		h.rules.Tasks[0].Problem = h.rules.Tasks[0].Asking([]string{"M"})
		l := h.sit().Lesson(0)
		for _, q := range l.about.script().sections() {
			if q.Quantity != statics.BendingMoment && !q.Shape() {
				t.Errorf("at the level %v %s is asked", level, q.Name)
			}
		}
	}
}

// A student types what is true, or now and then something else, and an equation of a sum that is chosen as the program writes it.
func sloppy(l *Lesson, r *rand.Rand) string {
	q, _ := l.Now()
	if word, worded := inWords(q); worded {
		return word
	}
	switch {
	case r.IntN(12) == 0:
		return "tell"
	case q.Kind == CheckSum:
		return "whole M (7, 3) = 0"
	case q.Kind == ChooseSum:
		step := l.route.expertStep()
		if len(step.Sums) == 0 {
			return "tell"
		}
		return choiceText(l, step.Sums[0])
	case q.Kind == TypeSum:
		text := l.about.words().Symbols(l.route.chosen)
		if r.IntN(4) == 0 {
			return strings.Replace(text, " - ", " + ", 1)
		}
		return text
	case r.IntN(4) == 0:
		return l.about.asShown(q, q.truth).Add(exact.Int(int64(1 + r.IntN(9)))).Decimal(3)
	}
	return l.about.asShown(q, q.truth).Decimal(4)
}

// A paper that was exported is marked elsewhere as in the exam: the same points, the same marks for bodies, methods and accuracy, and
// the same checks, at every level.
func TestSittingMarkedElsewhere(t *testing.T) {
	t.Parallel()
	for seed, level := range []Level{Values, Terms, Plan, Blank, Blank, Plan} {
		h := newHall(t, level)
		h.rules.Lasts = 0
		if level == Plan {
			h.rules.Tasks[1] = aTask(t, "riding-hall")
			h.rules.Tasks[1].Problem = h.rules.Tasks[1].Asking([]string{"reactions", "pins"})
		}
		if seed%2 == 1 {
			h.rules.Tasks[0].Problem = h.rules.Tasks[0].Asking([]string{"reactions"})
		}
		s, r := h.sit(), rand.New(rand.NewPCG(uint64(seed), 5))
		for i := range h.rules.Tasks {
			l := s.Lesson(i)
			for _, asking := l.Now(); asking; _, asking = l.Now() {
				if reply := l.Type(sloppy(l, r)); reply.Kind == Unread {
					q, _ := l.Now()
					t.Fatalf("%v: %s: %q", level, q.Name, reply.Lines)
				}
			}
		}
		s.HandIn()
		text, over := PaperOfSitting(s)
		answers, err := marking.ReadAnswers("paper.txt", strings.NewReader(text))
		if !over || err != nil || len(answers.Faults) > 0 || len(answers.Papers) != 2 {
			t.Fatalf("%v %v %+v\n%s", over, err, answers, text)
		}
		for i, task := range h.rules.Tasks {
			m, err := marking.New(task.Solved, task.Problem.Find)
			if err != nil {
				t.Fatal(err)
			}
			at := slices.IndexFunc(answers.Papers, func(p *marking.Paper) bool { return p.Problem == task.Name })
			result := MarkPaper(m, answers.Papers[at], marking.DefaultScheme(), task.Points, true)
			s.Lesson(i).UseSigns() // as marks are written
			here := examined(s.Lesson(i))
			if !result.Got.Equal(here.result.Got) || !slices.Equal(result.Working, here.sums) || string(result.CSV()) != string(here.result.CSV()) {
				t.Errorf("%v, %s: elsewhere %s\n%s\n%s\nhere %s\n%s\n%s\n%s", level, task.Name, result.Got, strings.Join(result.Working, "\n"), result.CSV(), here.result.Got, strings.Join(here.sums, "\n"), here.result.CSV(), text)
			}
			if has := len(result.Parts) > 0; has != (level != Values) {
				t.Errorf("%v, %s: marks of the working: %v", level, task.Name, has)
			}
		}
	}
}

// By line a paper is worked in any order; what is typed after it was handed in changes nothing.
func TestSitPlain(t *testing.T) {
	t.Parallel()
	h := newHall(t, Values)
	typed := "2\n4\nproblems\njetty-deck\n0\nback\n\nproblems\nhand in\nhand in\n1\n7\n"
	var said bytes.Buffer
	if err := SitPlain(h.sit(), bufio.NewReader(strings.NewReader(typed)), &said); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"You have 10 minutes, until 2026-12-04 09:10 +00:00.", "1: jetty-deck: Jetty deck with an overhang\n", "stands: 0\n",
		"2: gravel-platform: Gravel platform on a guide (1 of ", "Type hand in once more", "Ax typed 0: right", "In all ",
	} {
		if !strings.Contains(said.String(), want) {
			t.Errorf("not said: %q", want)
		}
	}
	if strings.Contains(said.String(), "typed 7") {
		t.Error("a line after the end is taken")
	}
	if t.Failed() {
		t.Log(said.String())
	}
}

// A line that does not come keeps nobody from the end: the paper is handed in when its time is over, though nothing is typed.
func TestSitPlainEndsByItself(t *testing.T) {
	t.Parallel()
	for _, in := range []string{"", "1\n"} { // in the list, and in a problem
		h := newHall(t, Values)
		h.now = time.Now()
		h.rules.Lasts = 200 * time.Millisecond
		s, err := Sit(h.rules, h.store, time.Now, func(err error) { t.Error(err) })
		if err != nil {
			t.Fatal(err)
		}
		var said bytes.Buffer
		if err := SitPlain(s, bufio.NewReader(&waiting{text: []byte(in)}), &said); err != nil || !s.Over() || !strings.Contains(said.String(), "In all 0 of 20 points.") {
			t.Errorf("%v %v\n%s", err, s.Over(), said.String())
		}
	}
}

// A waiting reader gives its text and then nothing, for ever.
type waiting struct{ text []byte }

func (w *waiting) Read(b []byte) (int, error) {
	if len(w.text) == 0 {
		select {}
	}
	n := copy(b, w.text)
	w.text = w.text[n:]
	return n, nil
}
