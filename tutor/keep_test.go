package tutor

import (
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/judging"
	"unpin/tutor/record"
)

// clock gives a later time at each call.
func clock() func() time.Time {
	t := time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC)
	return func() time.Time { t = t.Add(time.Second); return t }
}

// backwards gives an earlier time at each call.
func backwards() func() time.Time {
	t := time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC)
	return func() time.Time { t = t.Add(-time.Hour); return t }
}

func noComplaint(t *testing.T) func(error) {
	return func(err error) { t.Helper(); t.Error(err) }
}

// store is an empty store.
func store(t *testing.T) *record.Store {
	return record.At(filepath.Join(t.TempDir(), "unpin", "practice.jsonl"))
}

// kept begins a lesson whose work is kept.
func kept(t *testing.T, s *record.Store, name string, level Level, now func() time.Time) *Lesson {
	t.Helper()
	l := lesson(t, name, level)
	l.Keep(s, now, noComplaint(t))
	return l
}

// typeAll types lines.
func typeAll(l *Lesson, lines ...string) {
	for _, line := range lines {
		l.Type(line)
	}
}

func TestResume(t *testing.T) {
	t.Parallel()
	for what, now := range map[string]func() time.Time{"as ever": clock(), "a clock that runs backwards": backwards()} {
		s, name := store(t), problems.Names()[0]
		first := kept(t, s, name, Values, now)
		typeAll(first, "7", "0", "tell", "hint", "nonsense", "11.5")
		at, _ := first.Position()

		again := kept(t, s, name, Values, now)
		if n := again.Earlier(); n != at || n != 3 {
			t.Fatalf("%s: %d questions are settled in earlier work, want %d", what, n, at)
		}
		if r := again.Type("resume"); r.Kind != Resumed {
			t.Fatalf("%s: resume: %v", what, r)
		}
		if got, _ := again.Position(); got != at {
			t.Errorf("%s: taken up at %d, want %d", what, got, at)
		}
		if _, _, told, _ := again.Standing(1); !told {
			t.Errorf("%s: what was told is not marked so after resuming", what)
		}
		if first, _ := again.Score(); first != 0 {
			t.Errorf("%s: %d of three questions with a wrong try, told and with a hint count as right at the first try", what, first)
		}
		for other, l := range map[string]*Lesson{"another level": kept(t, s, name, Terms, now), "another problem": kept(t, s, problems.Names()[1], Values, now)} {
			if n := l.Earlier(); n != 0 {
				t.Errorf("%s: %s takes up %d questions", what, other, n)
			}
		}
	}
}

// answerRight answers so many questions.
func answerRight(l *Lesson, n int) {
	for range n {
		q, _ := l.Now()
		l.Type(answerExactly(l, q))
	}
}

// Two windows in turn: what either settled can be taken up.
func TestTwoWindows(t *testing.T) {
	t.Parallel()
	s, now := store(t), clock()
	one, two := kept(t, s, "jetty-deck", Values, now), kept(t, s, "jetty-deck", Values, now)
	for range 8 {
		answerRight(one, 1)
		answerRight(two, 1)
	}
	if n := kept(t, s, "jetty-deck", Values, now).Earlier(); n != 8 {
		t.Errorf("%d questions can be taken up, want 8", n)
	}
}

// Five windows at once, on three problems at two levels, each with a clock that jumps by years either way, typing right and wrong in
// any turn: what was settled furthest of each can be taken up, whatever the clocks said, and nothing of another.
func TestFiveWindowsAndJumpingClocks(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(5, 7))
	jumping := func() time.Time {
		return time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC).AddDate(random.IntN(60)-30, 0, random.IntN(365))
	}
	rounds := 200
	if testing.Short() {
		rounds = 20
	}
	for range rounds {
		s := store(t)
		type window struct {
			name  string
			level Level
		}
		var windows []window
		var lessons []*Lesson
		for range 5 {
			w := window{problems.Names()[random.IntN(3)], []Level{Values, Terms}[random.IntN(2)]}
			windows, lessons = append(windows, w), append(lessons, kept(t, s, w.name, w.level, jumping))
		}
		furthest := map[window]int{}
		for range 25 {
			i := random.IntN(5)
			l := lessons[i]
			if random.IntN(4) == 0 {
				l.Type("0.123")
			}
			answerRight(l, 1)
			at, _ := l.Position()
			furthest[windows[i]] = max(furthest[windows[i]], at)
		}
		for w, n := range furthest {
			if again := kept(t, s, w.name, w.level, jumping).Earlier(); again != n {
				t.Fatalf("%s at %v: %d questions can be taken up, %d were settled", w.name, w.level, again, n)
			}
		}
	}
}

// A run that did less hides nothing of one that did more.
func TestShorterRunAfter(t *testing.T) {
	t.Parallel()
	s, now := store(t), clock()
	answerRight(kept(t, s, "jetty-deck", Values, now), 6)
	answerRight(kept(t, s, "jetty-deck", Values, now), 1)
	l := kept(t, s, "jetty-deck", Values, now)
	if n := l.Earlier(); n != 6 {
		t.Errorf("%d questions can be taken up, want 6", n)
	}
	l.Type("resume")
	answerRight(l, 2)
	if n := kept(t, s, "jetty-deck", Values, now).Earlier(); n != 8 {
		t.Errorf("after resuming, %d questions can be taken up, want 8", n)
	}
}

// Leaving and resuming changes no mark: neither at questions that are settled nor at the one in hand.
func TestMistakesStay(t *testing.T) {
	t.Parallel()
	finish := func(l *Lesson) (first, of int) {
		for _, asking := l.Now(); asking; _, asking = l.Now() {
			answerRight(l, 1)
		}
		return l.Score()
	}
	mistakes := []string{"7", "0", "hint", "hint", "-20.5", "14.25", "16.25"}
	through := lesson(t, "jetty-deck", Values)
	typeAll(through, mistakes...)
	wantFirst, wantOf := finish(through)
	if !slices.ContainsFunc(through.sheet.answers, func(a answer) bool { return len(a.slips) > 0 }) {
		t.Fatal("no mistake was traced")
	}

	s, now := store(t), clock()
	typeAll(kept(t, s, "jetty-deck", Values, now), mistakes...)
	l := kept(t, s, "jetty-deck", Values, now)
	l.Type("resume")
	for n, a := range l.sheet.answers {
		if !slices.Equal(a.slips, through.sheet.answers[n].slips) {
			t.Errorf("question %d has the mistakes %v after resuming, %v in one sitting", n, a.slips, through.sheet.answers[n].slips)
		}
	}
	if first, of := finish(l); first != wantFirst || of != wantOf || first == of {
		t.Errorf("%d of %d after resuming, %d of %d in one sitting", first, of, wantFirst, wantOf)
	}
	done := kept(t, s, "jetty-deck", Values, now)
	done.Type("resume")
	if first, _ := done.Score(); first != wantFirst {
		t.Errorf("%d at the first try when taken up once more, want %d", first, wantFirst)
	}
}

// Taking up earlier work writes nothing but that it was done, so no step counts twice.
func TestResumingEarnsNothing(t *testing.T) {
	t.Parallel()
	s, now := store(t), clock()
	answerRight(kept(t, s, "jetty-deck", Values, now), 6)
	before, _, _ := s.Records()
	for range 3 {
		kept(t, s, "jetty-deck", Values, now).Type("resume")
	}
	after, _, _ := s.Records()
	if len(after) != len(before)+3 {
		t.Errorf("%d lines were written, want 3", len(after)-len(before))
	}
	if x, y := record.Earned(before, nil), record.Earned(after, nil); x[record.Forces] != y[record.Forces] || x[record.Forces] == 0 {
		t.Errorf("earned %v, after resuming %v", x, y)
	}
}

// A plan of one's own is taken up as one run left it, since choices of two runs cannot be mixed.
func TestOwnPlansAreNotMixed(t *testing.T) {
	t.Parallel()
	s, now := store(t), clock()
	typeAll(kept(t, s, "jetty-deck", Blank, now), "ABC M A: 8RB = 50 + 12*9.5", "20.5", "y")
	typeAll(kept(t, s, "jetty-deck", Blank, now), "x", "Ax = 0", "0", "ABC M A", "8RB = 50", "8RB = 50 + 12*9.5", "20.5")
	typeAll(kept(t, s, "jetty-deck", Blank, now), "x")
	l := kept(t, s, "jetty-deck", Blank, now)
	l.Type("resume")
	if at, _ := l.Position(); at != 6 || l.about.solution.Plan[0].Sums[0].Moment || len(l.about.solution.Plan) != 2 {
		t.Errorf("taken up at question %d with %d steps", at, len(l.about.solution.Plan))
	}
	l.Type("y")
	third := kept(t, s, "jetty-deck", Blank, now)
	third.Type("resume")
	if q, _ := third.Now(); q.Kind != TypeSum || third.Display(false).chosen().Moment {
		t.Errorf("what was added after resuming is not taken up: %s is asked", q.Name)
	}
}

// A choice that was taken back is not what the lesson goes on from.
func TestChoiceTakenBack(t *testing.T) {
	t.Parallel()
	s, now := store(t), clock()
	typeAll(kept(t, s, "jetty-deck", Blank, now), "x", "back", "ABC M A", "8RB = 50 + 12*9.5")
	l := kept(t, s, "jetty-deck", Blank, now)
	l.Type("resume")
	if q, _ := l.Now(); q.Name != "RB" {
		t.Errorf("%s is asked, want RB", q.Name)
	}
}

// Work kept by version 1, at each kind of level, is taken up.
func TestVersion1TakenUp(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile("record/testdata/version1.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "practice.jsonl")
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
	for _, want := range []struct {
		name    string
		level   Level
		settled int
		asked   string // once it is taken up
	}{
		{"jetty-deck", Values, 3, "N(AB, 0)"}, {"quay-gantry", Plan, 4, "force 2"}, {"jetty-deck", Gradual, 9, ""}, {"quay-gantry", Gradual, 17, ""},
	} {
		l := kept(t, record.At(path), want.name, want.level, clock())
		if n := l.Earlier(); n != want.settled {
			t.Errorf("%s, %v: %d are settled, want %d", want.name, want.level, n, want.settled)
		}
		l.Type("resume")
		if q, _ := l.Now(); q.Name != want.asked {
			t.Errorf("%s, %v: %q is asked, want %q", want.name, want.level, q.Name, want.asked)
		}
		if want.level == Values && (l.sheet.answers[0].tries != 2 || l.sheet.answers[2].hints != 1 || l.sheet.answers[3].tries != 1 || l.sheet.answers[3].hints != 1) {
			t.Errorf("tries and hints are %+v", l.sheet.answers[:4])
		}
	}
}

// Lines of no use are told of, and the others count.
func TestBrokenLinesAreTold(t *testing.T) {
	t.Parallel()
	path := filepath.Join(t.TempDir(), "practice.jsonl")
	s := record.At(path)
	answerRight(kept(t, s, "jetty-deck", Values, clock()), 2)
	good, _ := os.ReadFile(path)
	if err := os.WriteFile(path, append([]byte("{\"v\":9}\n"+strings.Repeat("x", 2<<20)+"\n"), good...), 0o600); err != nil {
		t.Fatal(err)
	}
	var told []string
	l := lesson(t, "jetty-deck", Values)
	l.Keep(s, clock(), func(err error) { told = append(told, err.Error()) })
	if n := l.Earlier(); n != 2 || len(told) != 1 || !strings.Contains(told[0], "1 too long, 1 from a newer version") {
		t.Errorf("%d are settled; told: %q", n, told)
	}
}

// Where nothing can be kept the lesson says so once and goes on.
func TestNothingCanBeKept(t *testing.T) {
	t.Parallel()
	inTheWay := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(inTheWay, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	complaints := 0
	l := lesson(t, problems.Names()[0], Values)
	l.Keep(record.At(filepath.Join(inTheWay, "practice.jsonl")), clock(), func(error) { complaints++ })
	typeAll(l, "0", "tell")
	if at, _ := l.Position(); at != 2 || complaints != 1 {
		t.Errorf("at question %d with %d complaints", at, complaints)
	}
}

// The codes of verdicts and of levels in records never change.
func TestCodes(t *testing.T) {
	t.Parallel()
	for v, want := range []record.Outcome{"exact", "figures", "rounded", "sense", "close", "wrong"} {
		if got := record.Outcome(judging.Verdict(v).Code()); got != want || got.Right() != judging.Verdict(v).Right() {
			t.Errorf("verdict %d is kept as %s, want %s", v, got, want)
		}
	}
	for r, want := range []string{"read", "values", "terms", "plan", "blank", "gradual"} {
		if got := Level(r).code(); got != want {
			t.Errorf("level %d is kept as %s, want %s", r, got, want)
		}
	}
	q := Question{Kind: TermArm, Name: "arm 3", Step: 1, Sum: 0, Member: statics.None}
	if q.key() != "2.1 arm 3" {
		t.Errorf("a term's key is %q", q.key())
	}
}

// What is set aside by a restart is not offered again, neither then nor later; what was learned stays.
func TestRestart(t *testing.T) {
	t.Parallel()
	for _, level := range []Level{Values, Terms, Plan, Gradual} {
		s := store(t)
		l := kept(t, s, "jetty-deck", level, clock())
		if r := l.Type("restart"); r.Kind != Unread {
			t.Errorf("%s: a lesson that has not begun is begun anew: %v", level, r.Lines)
		}
		typeAll(l, "", "", "tell", "tell", "tell")
		before, _ := l.Position()
		if r := l.Type("restart"); r.Kind != Restarted {
			t.Fatalf("%s: %v", level, r.Lines)
		}
		if at, _ := l.Position(); at != 0 || l.sheet.begun() || before == 0 {
			t.Errorf("%s: after the restart question %d is in hand, before it %d", level, at, before)
		}
		if n := kept(t, s, "jetty-deck", level, clock()).Earlier(); n != 0 {
			t.Errorf("%s: %d questions are offered that were set aside", level, n)
		}
		typeAll(l, "", "", "tell")
		again := kept(t, s, "jetty-deck", level, clock())
		if again.Earlier() == 0 {
			t.Errorf("%s: what was done after the restart is lost", level)
		}
		again.Type("restart") // before anything is answered, earlier work is set aside
		if n := kept(t, s, "jetty-deck", level, clock()).Earlier(); n != 0 {
			t.Errorf("%s: %d questions are offered that were set aside at once", level, n)
		}
	}
}

// An exam that was left goes on where it was, with the answers given last; one that was finished is over.
func TestExamResumed(t *testing.T) {
	t.Parallel()
	exam := func(s *record.Store) *Lesson {
		p, _ := problems.Library("jetty-deck")
		l, err := New(p, Values, true)
		if err != nil {
			t.Fatal(err)
		}
		l.Keep(s, clock(), noComplaint(t))
		return l
	}
	s := store(t)
	first := exam(s)
	typeAll(first, "1", "back", "20.5", "tell", "3", "back", "9")
	again := exam(s)
	if n := again.Earlier(); n != 3 {
		t.Fatalf("%d questions are answered, want 3", n)
	}
	if r := again.Type("resume"); r.Kind != Resumed || !slices.Equal(again.Marks(), first.Marks()) {
		t.Errorf("%v\n%s\nin place of\n%s", r.Lines, strings.Join(again.Marks(), "\n"), strings.Join(first.Marks(), "\n"))
	}
	for asking := true; asking; _, asking = again.Now() {
		again.Type("1")
	}
	if n := exam(s).Earlier(); n != 0 {
		t.Errorf("of an exam that is over %d answers are offered again", n)
	}
	if kept(t, s, "jetty-deck", Values, clock()).Earlier() != 0 {
		t.Error("what was answered in an exam counts in a lesson")
	}
}
