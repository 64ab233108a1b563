package tutor

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A tally is what became of the slips of one kind that students made.
type tally struct {
	hidden int // the slip gives the right number
	named  int
	asked  int // several slips fit, this one among them
	missed int // no slip was spoken of
	wrong  int // another slip was named
}

func (t tally) seen() int { return t.named + t.asked + t.missed + t.wrong }

func (t *tally) add(u tally) {
	t.hidden += u.hidden
	t.named += u.named
	t.asked += u.asked
	t.missed += u.missed
	t.wrong += u.wrong
}

// practiceProblems are the library and the published cases.
func practiceProblems(t testing.TB) []*problems.Problem {
	t.Helper()
	data, err := os.ReadFile("../testdata/cases/published.json")
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(err)
	}
	var all []*problems.Problem
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		all = append(all, p)
	}
	for _, c := range cases {
		p, err := problems.Read(c.ID, c.Problem)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, p)
	}
	return all
}

// eachQuestion plays a lesson on every problem and gives every question that asks for a value to a test; in a short run,
// of every fifth problem. The student's own values are rounded to that many figures; 0 stands for exact values.
func eachQuestion(t testing.TB, figures int, test func(l *Lesson, q Question)) {
	for i, p := range practiceProblems(t) {
		if (testing.Short() || raced) && i%5 != 0 {
			continue
		}
		l, err := New(p, Values, false)
		if err != nil {
			t.Fatal(err)
		}
		for {
			q, asking := l.Now()
			if !asking {
				break
			}
			test(l, q)
			line := q.truth.Decimal(40)
			if figures > 0 {
				line = ownValue(l, q).Figures(figures)
			}
			if r := l.Type(line); !r.Verdict.Right() {
				l.Type("tell")
			}
		}
	}
}

// ownValue is what the student's own values give in the right sum.
func ownValue(l *Lesson, q Question) exact.Num {
	switch {
	case q.Kind == SectionPart:
		return l.section(q, l.own()).Value()
	case q.Kind != ForceValue || len(l.Solution.Plan[q.Step].Sums) > 1:
		return q.truth
	}
	if b, ok := sumBalance(l.Solution.Plan[q.Step].Sums[0], q.Force, l.own()); ok {
		if v, err := b.Rest.Neg().Quo(b.Factor); err == nil {
			return v
		}
	}
	return q.truth
}

// outcome is what the lesson makes of a slip whose value is typed with some figures.
func outcome(t testing.TB, l *Lesson, q Question, c slip.Candidate, figures int, lists [][]slip.Candidate, balances []Balance) tally {
	text := c.Value.Figures(figures)
	if c.Value.Abs().Cmp(powerOfTen(-9)) < 0 {
		text = "0" // what is left of an angle that is held to 34 figures
	}
	v, err := l.read(q, text)
	if err != nil {
		t.Fatalf("%s: %s: %v", q.Name, c.Value, err)
	}
	verdict := Judge(v, q.truth, balances)
	if verdict.Exactly() {
		return tally{hidden: 1}
	}
	if verdict.Right() {
		return tally{missed: 1}
	}
	d := slip.Diagnose(v.places(), lists...)
	switch named := d.Named(); {
	case len(d.Matches) == 0:
		return tally{missed: 1}
	case named == c.Slip:
		return tally{named: 1}
	case named != nil:
		return tally{wrong: 1}
	}
	for _, m := range d.Matches {
		if m.Slip == c.Slip {
			return tally{asked: 1}
		}
	}
	return tally{wrong: 1}
}

// bySlip is what became of the slips that students made, each at one step of a lesson, typing only the value: with exact
// values found before or with their own of some figures; where the terms were not asked for, and where they were.
func bySlip(t testing.TB, own, figures int) map[*slip.Slip]*tally {
	by := map[*slip.Slip]*tally{}
	for _, s := range slip.Catalogue() {
		by[s] = &tally{}
	}
	eachQuestion(t, own, func(l *Lesson, q Question) {
		right := ownValue(l, q)
		for _, l.Rung = range []Rung{Terms, Values} {
			lists := l.allCandidates(q)
			if len(lists) == 0 || l.Rung == Terms && q.Kind != ForceValue {
				continue
			}
			balances := l.balances(q)
			for i := range balances {
				balances[i].Slips = func() []exact.Num { return slipValues(lists) }
			}
			for _, c := range lists[len(lists)-1] {
				if c.Value.Equal(right) {
					by[c.Slip].hidden++
					continue
				}
				by[c.Slip].add(outcome(t, l, q, c, figures, lists, balances))
			}
		}
	})
	return by
}

// Of the slips that students make at one step and type only the value of, nearly all are named or asked about, and
// hardly any is taken for another.
func TestSlipsByValue(t *testing.T) {
	for _, r := range []struct{ own, figures int }{{0, 4}, {3, 4}} {
		var all tally
		by := bySlip(t, r.own, r.figures)
		for _, of := range by {
			all.add(*of)
		}
		t.Logf("own values of %d figures (0: exact), typed with %d: %+v", r.own, r.figures, all)
		if found := all.named + all.asked; found*100 < all.seen()*95 {
			t.Errorf("%d of %d found, want 95 %%", found, all.seen())
		}
		if all.wrong*100 > all.seen() {
			t.Errorf("%d of %d taken for another, want at most 1 %%", all.wrong, all.seen())
		}
		if r.own == 0 && r.figures == 4 && !testing.Short() && !raced {
			slipTable(t, by)
		}
	}
}

// slipTable holds the table in DEVELOPERS.md to what became of the slips, and the catalogue to sixty rows that occur.
func slipTable(t *testing.T, by map[*slip.Slip]*tally) {
	const name, begin, end = "../DEVELOPERS.md", "<!-- table of slips -->\n", "<!-- end of the table of slips -->\n"
	var table strings.Builder
	table.WriteString("| slip | kind | source | named | asked | missed | taken for another | hidden |\n|---|---|---|--:|--:|--:|--:|--:|\n")
	var all tally
	live := 0
	for _, s := range slip.Catalogue() {
		of := by[s]
		all.add(*of)
		if of.named+of.asked > 0 {
			live++
		}
		fmt.Fprintf(&table, "| %s | %s | %s | %d | %d | %d | %d | %d |\n", s.ID, s.Group, s.Source, of.named, of.asked, of.missed, of.wrong, of.hidden)
	}
	fmt.Fprintf(&table, "| all: %d, of which %d occur | | | %d | %d | %d | %d | %d |\n", len(by), live, all.named, all.asked, all.missed, all.wrong, all.hidden)
	if live < 60 {
		t.Errorf("%d slips occur, want 60", live)
	}
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, _ := strings.Cut(string(text), begin)
	old, after, found := strings.Cut(rest, end)
	switch {
	case !found:
		t.Fatalf("%s has no place for the table of slips", name)
	case *update:
		if err := os.WriteFile(name, []byte(before+begin+table.String()+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
	case old != table.String():
		t.Errorf("the table of slips in %s is out of date: go test ./tutor -run TestSlipsByValue -update", name)
	}
}

// A student who makes no slip and rounds every result to three figures, going on with these, is right: forces, and N, V
// and M from them.
func TestRoundedEveryStep(t *testing.T) {
	right, answers := 0, 0
	eachQuestion(t, 3, func(l *Lesson, q Question) {
		v, err := l.read(q, ownValue(l, q).Figures(3))
		if err != nil {
			t.Fatal(err)
		}
		answers++
		if Judge(v, q.truth, l.balances(q)).Right() {
			right++
		}
	})
	t.Logf("%d of %d right", right, answers)
	if (answers-right)*1000 > answers {
		t.Errorf("%d of %d are right, want 99.9 %%", right, answers)
	}
}

// A number that no slip leads to is not given one: of numbers drawn log-uniformly with five figures, hardly any.
func TestWrongNumbersGetNoStory(t *testing.T) {
	random := rand.New(rand.NewPCG(6, 3))
	stories, numbers := 0, 0
	eachQuestion(t, 0, func(l *Lesson, q Question) {
		lists := l.allCandidates(q) // one, as all values are exact
		for range 20 {
			line := strconv.FormatFloat(math.Pow(10, random.Float64()*5-2), 'g', 5, 64)
			if random.IntN(2) == 0 {
				line = "-" + line
			}
			v, err := l.read(q, line)
			if err != nil {
				t.Fatal(err)
			}
			numbers++
			for _, list := range lists {
				if len(slip.Diagnose(v.places(), list).Matches)+len(slip.Pairs(v.places(), q.truth, list)) > 0 {
					stories++
				}
			}
		}
	})
	t.Logf("%d stories for %d numbers", stories, numbers)
	if stories*100 > numbers {
		t.Errorf("%d of %d numbers are given a story, want at most 1 %%", stories, numbers)
	}
}

// Two slips at once are asked about as a possibility, or nothing is said of them; more seldom they come to the value of
// a single one, which is the simpler story.
func TestPairsOfSlips(t *testing.T) {
	asked, silent, single, questions := 0, 0, 0, 0
	eachQuestion(t, 0, func(l *Lesson, q Question) {
		if questions++; questions%10 != 0 {
			return
		}
		for _, target := range l.targets(q) {
			candidates := target.Candidates()
			for _, both := range pairValues(q.truth, candidates) {
				v, err := l.read(q, both.Figures(5))
				if err != nil {
					t.Fatal(err)
				}
				switch pairs := slip.Pairs(v.places(), q.truth, candidates); {
				case len(slip.Diagnose(v.places(), candidates).Matches) > 0:
					single++
				case len(l.pairAsks(pairs)) == 1:
					asked++
				default:
					silent++
				}
			}
		}
	})
	t.Logf("%d asked about, %d passed over, %d come to a single slip", asked, silent, single)
	if all := asked + silent + single; asked*2 < all || single*4 > all {
		t.Errorf("%d asked about, %d passed over, %d come to a single slip: want half, and at most a quarter", asked, silent, single)
	}
}

// pairValues lists the wrong values to which two of the candidates lead together, those that are tried in pairs.
func pairValues(right exact.Num, candidates []slip.Candidate) []exact.Num {
	var all []exact.Num
	for i, c := range candidates {
		for _, d := range candidates[i+1:] {
			both := c.Value.Add(d.Value).Sub(right)
			alone := slip.Typed{Value: both, Figures: slip.AllFigures}
			nothing := both.Abs().Cmp(powerOfTen(-9)) < 0 || both.Sub(right).Abs().Cmp(powerOfTen(-9)) < 0
			if !nothing && len(slip.Pairs([]slip.Typed{alone}, right, []slip.Candidate{c, d})) > 0 {
				all = append(all, both)
			}
		}
	}
	return all
}

// Where the terms are typed, a slip shows in the size, arm or sign of one: it is named, or asked about where another
// makes the very same entry.
func TestSlipsByTerm(t *testing.T) {
	var all tally
	for i, p := range practiceProblems(t) {
		if (testing.Short() || raced) && i%5 != 0 {
			continue
		}
		l, err := New(p, Terms, false)
		if err != nil {
			t.Fatal(err)
		}
		for _, q := range l.Questions {
			for _, a := range alteredTerms(l, q) {
				if typed := typedTerm(l, q, a.Term); !typed.Value.Equal(q.truth) { // else another question shows it
					all.add(termOutcome(l, q, a.Slip, typed))
				}
			}
		}
	}
	t.Logf("%+v", all)
	if found := all.named + all.asked; found*1000 < all.seen()*995 || found == 0 {
		t.Errorf("%d of %d found, want 99.5 %%", found, all.seen())
	}
}

// termOutcome is what the lesson makes of a slip in one term.
func termOutcome(l *Lesson, q Question, made *slip.Slip, typed Typed) tally {
	slips := l.slipsOfTerm(q, typed)
	switch {
	case len(slips) == 0:
		return tally{missed: 1}
	case !slices.Contains(slips, made):
		return tally{wrong: 1}
	case len(slips) > 1:
		return tally{asked: 1}
	}
	return tally{named: 1}
}

// alteredTerms is what slips make of the term that a question asks about.
func alteredTerms(l *Lesson, q Question) []slip.Altered {
	switch q.Kind {
	case TermSize, TermArm, TermSign:
		return l.slipQuestion(q, l.Solution.Values).OfTerm(q.Sum, q.Term)
	}
	return nil
}

// typedTerm is the answer to a question about a term, when the student has it so.
func typedTerm(l *Lesson, q Question, term statics.Term) Typed {
	value := term.Size
	switch q.Kind {
	case TermArm:
		value = term.Arm
	case TermSign:
		value = exact.Int(int64(l.shownSign(l.Solution.Plan[q.Step].Sums[q.Sum], term)))
	}
	return Typed{Value: value, Written: value, Unit: exact.Int(1)}
}
