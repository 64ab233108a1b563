package tutor

import (
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/slip"
	"unpin/tutor/record"
)

// TestSummary works a lesson with known mistakes, and holds what stands at its end against them.
func TestSummary(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Values)
	for _, line := range []string{"3", "0", "hint", "hint", "hint", "hint", "-20.5", "20.5", "11.5", "tell", "11.5", "example", "0", "28.8", "-8.5", "-18", "0", "12", "-18", "0", "0"} {
		l.Type(line)
	}
	if _, asking := l.Now(); asking {
		t.Fatal("the lesson is not at its end")
	}
	s := SummaryOf(l)
	if s.First != 10 || s.Of != 14 {
		t.Errorf("%d of %d at the first try", s.First, s.Of)
	}
	if want := []string{"3 hints", "1 example", "1 shown answer"}; !slices.Equal(s.Help, want) {
		t.Errorf("helped by %q", s.Help)
	}
	var at []string
	for _, m := range s.Mistakes {
		at = append(at, m.Question)
		if m.Wrong != 1 || m.Caught == "" || m.Where == "" {
			t.Errorf("%+v", m)
		}
	}
	if want := []string{"Ax", "RB"}; !slices.Equal(at, want) {
		t.Errorf("mistakes at %q", at)
	}
	for _, want := range []string{"Ax = 0 kN", "RB = 20.5 kN (up on ABC)", "largest V: V(BC, 0) = 12 kN", "largest M: M(AB, 2.5) = 28.75 kN.m"} {
		if !slices.Contains(s.Results, want) {
			t.Errorf("no %q in %q", want, s.Results)
		}
	}
	if len(s.Checks) != 1 || len(s.Next) != 2 {
		t.Errorf("checks %q, next %q", s.Checks, s.Next)
	}
	counts := map[string]record.Count{}
	for _, k := range s.Skills {
		counts[k.Kind] = k.Count
	}
	want := map[string]record.Count{"sums of forces": {Right: 1, Of: 2}, "sums of moments": {Right: 0, Of: 1}, "N, V and M along a member": {Right: 1, Of: 2}}
	for k, c := range want {
		if counts[k] != c {
			t.Errorf("%s: %+v, want %+v", k, counts[k], c)
		}
	}
}

// TestMistakesInWords holds what is told of mistakes to what was typed: a piece of a term, the term or the whole sum; to advice that fits what
// was asked, and that is given once.
func TestMistakesInWords(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Terms)
	wrong := map[string]string{
		"arm 1":    "RB*8 - 20*2.5 - 4*3*8 = 0",
		"force 2":  "-20*3",
		"sign 2":   "+",
		"arm 3":    "8",
		"V(AB, 0)": "-11.5",
	}
	for q, asking := l.Now(); asking; q, asking = l.Now() {
		if line, ok := wrong[q.Name]; ok && q.Step <= 1 {
			delete(wrong, q.Name)
			l.Type(line)
		}
		l.Type(answerExactly(l, q))
	}
	want := []string{
		"the whole sum (step 2, part ABC, sum of moments about A): ",
		"term of the 20 kN load on AB (step 2, part ABC, sum of moments about A): ",
		"sign of the 20 kN load on AB (step 2, part ABC, sum of moments about A): ",
		"arm of the uniform load 4 kN/m on BC (step 2, part ABC, sum of moments about A): ",
		"V(AB, 0) (member AB): ",
	}
	lines := SummaryOf(l).mistakes()
	if len(lines) != len(want) {
		t.Fatalf("%q", lines)
	}
	for i, w := range want {
		if !strings.HasPrefix(lines[i], w) {
			t.Errorf("%q, want %q", lines[i], w)
		}
	}
	all := strings.Join(lines, " ")
	for _, once := range []string{habits[slip.Moment], cutHabit, "It shows in the check, step 4."} {
		if strings.Count(all, once) != 1 {
			t.Errorf("%q is not said once in %q", once, lines)
		}
	}
}

// TestEquationMissed holds that a wrong equation is told with its sum.
func TestEquationMissed(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Blank)
	for _, line := range []string{"whole M C", "ABC M A", "RB*8 - 20*2.5 - 4*3*8 = 0", "RB*8 - 20*2.5 - 4*3*9.5 = 0"} {
		l.Type(line)
	}
	lines := SummaryOf(l).mistakes()
	if len(lines) != 2 || !strings.HasPrefix(lines[0], "choice of a sum (the plan): 1 wrong answer. Count the unknowns") || !strings.HasPrefix(lines[1], "equation (part ABC, sum of moments about A): ") {
		t.Errorf("%q", lines)
	}
}

// TestSummaryOfAnExam holds that an exam's marks take the place of mistakes.
func TestSummaryOfAnExam(t *testing.T) {
	t.Parallel()
	l, err := New(lesson(t, "jetty-deck", Values).about.problem, Values, true)
	if err != nil {
		t.Fatal(err)
	}
	for range 14 {
		l.Type("1")
	}
	s, answers := SummaryOf(l), 0
	for _, line := range s.Marks {
		if strings.Contains(line, " typed 1: ") {
			answers++
		}
	}
	if answers != 14 || len(s.Mistakes) > 0 || len(s.Skills) > 0 {
		t.Errorf("%d answers in %q, mistakes %v, skills %v", answers, s.Marks, s.Mistakes, s.Skills)
	}
}

// TestHabits holds that there is something to say of every group of mistakes, each a sentence of its own.
func TestHabits(t *testing.T) {
	t.Parallel()
	m, seen := ending{lesson(t, "jetty-deck", Values)}, map[string]bool{}
	for _, s := range slip.Catalogue() {
		text := m.caught(Question{Step: statics.None, Member: statics.None}, []string{s.ID + "+other"})
		if text == "" || !strings.HasSuffix(text, ".") {
			t.Errorf("%s: %q", s.ID, text)
		}
		seen[text] = true
	}
	if len(seen) != len(habits) {
		t.Errorf("%d sentences for %d groups", len(seen), len(habits))
	}
}

// TestChecksOfOwnPlans holds that a plan of the student's own ends with a check too: a sum that the plan does not have.
func TestChecksOfOwnPlans(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"jetty-deck", "orchard-gate", "mill-bridge"} {
		l := lesson(t, name, Plan)
		for _, asking := l.Now(); asking; _, asking = l.Now() {
			l.Type("tell")
		}
		checks := SummaryOf(l).Checks
		if len(checks) != 1 {
			t.Errorf("%s: the checks are %q", name, checks)
			continue
		}
		for _, step := range l.about.solution.Plan {
			for _, s := range step.Sums {
				if strings.Contains(checks[0], l.about.words().BodyAndSum(s)) {
					t.Errorf("%s: %q is a step of the plan", name, checks[0])
				}
			}
		}
	}
}

// TestRenewed holds that a lesson with new numbers asks the same questions with other answers, five times over.
func TestRenewed(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"jetty-deck", "riding-hall", "stable-hoist"} {
		first := lesson(t, name, Values)
		titles, values := map[string]bool{}, map[string]bool{}
		for l, n := first, 0; n < len(shares); n++ {
			next, err := Renewed(l)
			if err != nil {
				t.Fatal(err)
			}
			if next.Level() != Values || next.Display(false).Steps() != first.Display(false).Steps() {
				t.Errorf("%s: %d steps at %s", name, next.Display(false).Steps(), next.Level())
			}
			var all []string
			for i := range next.Display(false).assembly().Forces {
				all = append(all, next.Solution().Values[i].Decimal(9))
			}
			titles[next.Display(false).Title()], values[strings.Join(all, " ")] = true, true
			l = next
		}
		if len(titles) != 1 || len(values) < 2 {
			t.Errorf("%s: titles %v, values %v", name, titles, values)
		}
	}
}

// TestTask tells what is to be found where the scenario does not.
func TestTask(t *testing.T) {
	t.Parallel()
	p := *lesson(t, "jetty-deck", Values).about.problem
	p.Text, p.Find = "", []string{"reactions", "diagrams"}
	if got := TaskOf(&p); got.Find != "Find the support reactions and N, V and M along every member." || got.Facts != "grade 1 of 6, units kN, m" {
		t.Errorf("%+v", got)
	}
	p.Text = "Find the reactions."
	if got := TaskOf(&p); got.Find != "" {
		t.Errorf("%+v", got)
	}
}
