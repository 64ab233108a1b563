package tutor

import (
	"math/rand/v2"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/tutor/marking"
)

// An exam on one problem, sat on the screen or line by line under any convention of the student's own, is marked elsewhere, where nobody
// knows of that convention, with the same verdicts and marks.
func TestExamMarkedElsewhere(t *testing.T) {
	t.Parallel()
	n := 0
	for _, name := range notation.ConventionNames() {
		words, _ := notation.ConventionWords(name)
		for _, word := range words {
			for _, p := range []string{"jetty-deck", "kiosk-canopy"} {
				for _, begin := range []func(*problems.Problem, Level, bool) (*Lesson, error){New, NewPlain} {
					n++
					markedElsewhere(t, p, name+"="+word, []Level{Values, Terms, Plan, Blank}[n%4], begin, uint64(n))
				}
			}
		}
	}
}

func markedElsewhere(t *testing.T, name, own string, level Level, begin func(*problems.Problem, Level, bool) (*Lesson, error), seed uint64) {
	t.Helper()
	p, _ := problems.Library(name)
	course, err := notation.ReadPreferences(own)
	if err != nil {
		t.Fatal(err)
	}
	l, err := begin(p.In(course.Over(p.Conventions)), level, true)
	if err != nil {
		t.Fatal(err)
	}
	r := rand.New(rand.NewPCG(seed, 6))
	for _, asking := l.Now(); asking; _, asking = l.Now() {
		if reply := l.Type(sloppy(l, r)); reply.Kind == Unread {
			q, _ := l.Now()
			t.Fatalf("%s, %s, %v: %s: %q", name, own, level, q.Name, reply.Lines)
		}
	}
	handIn(l)
	l.UseSigns() // as marks are written
	here := examined(l)
	text, _ := PaperOf(l)
	answers, err := marking.ReadAnswers("paper.txt", strings.NewReader(text))
	if err != nil || len(answers.Faults) > 0 || len(answers.Papers) != 1 {
		t.Fatalf("%v %+v\n%s", err, answers, text)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	m, err := marking.New(problems.Solved{Problem: p, Solution: s}, p.Find)
	if err != nil {
		t.Fatal(err)
	}
	there := MarkPaper(m, answers.Papers[0], marking.DefaultScheme(), here.result.Of, false)
	if a, b := string(here.result.CSV()), string(there.CSV()); a != b || len(there.Unread) > 0 {
		t.Errorf("%s, %s, %v: here\n%s\nthere\n%s\n%s", name, own, level, a, b, text)
	}
}

// Whatever stands in the working of a paper, it is marked: what its parts and values are worth comes to the points of the problem, and
// nothing gets more than it is worth.
func TestOddWorking(t *testing.T) {
	t.Parallel()
	p, _ := problems.Library("jetty-deck")
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	m, err := marking.New(problems.Solved{Problem: p, Solution: s}, []string{"reactions"})
	if err != nil {
		t.Fatal(err)
	}
	lines := []string{"ABC M A", "ABC y", "ABC x", "whole M B", "whole M B = 0", "ABC M A: RB*8 - 20*2.5 - 12*9.5 = 0", "RB*8 - 20*2.5 - 12*9 = 0", "Ay + RB - 32 = 0",
		"Ax = 0", "let Ay down", "tell", "back", "20.5", "-11.5", "0", "+", "-", "8", "hand in", "Q = 3", "", "ABC M (9/0, 1)", "whole F along [0, 0]"}
	rapid.Check(t, func(t *rapid.T) {
		paper := &marking.Paper{Problem: p.Name, Attempt: 1, Level: rapid.SampledFrom([]string{"terms", "plan", "blank"}).Draw(t, "level"),
			Work:    rapid.SliceOfN(rapid.SampledFrom(lines), 1, 25).Draw(t, "work"),
			Entries: []marking.Entry{{Line: 1, Quantity: "RB", Value: rapid.SampledFrom([]string{"20.5", "19.75", "3"}).Draw(t, "RB")}}}
		r := MarkPaper(m, paper, marking.DefaultScheme(), exact.Int(10), true)
		var of, got exact.Num
		for _, a := range r.Answers {
			of, got = of.Add(a.Of), got.Add(a.Got)
		}
		for _, part := range r.Parts {
			of, got = of.Add(part.Of), got.Add(part.Got)
			if part.Got.Cmp(part.Of) > 0 || part.Got.Sign() < 0 || part.Right > part.Asked {
				t.Errorf("%+v", part)
			}
		}
		if !of.Equal(exact.Int(10)) || got.Cmp(of) > 0 {
			t.Errorf("%s of %s points, not of 10", got, of)
		}
	})
}
