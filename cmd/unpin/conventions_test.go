package main

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/tutor"
)

// conventionFrames are the problems on which all combinations of conventions are tried.
var conventionFrames = []string{"beam", "testdata/solutions/strut.yaml", "testdata/solutions/slot.yaml", "riding-hall"}

// beam has a shear that is told at once from its opposite.
const beam = `title: Beam
units: kN m
joints: {A: [0, 0], B: [8, 0]}
members: [AB]
supports: {A: pin, B: {roller: up}}
loads: [{point: 20, to: down, on: AB, at: 2}]
`

// allConventions are all combinations of conventions, with 3 and with 4 figures.
func allConventions() []notation.Conventions {
	all := []notation.Conventions{{Figures: 3}, {Figures: 4}}
	for _, name := range notation.ConventionNames()[1:] {
		words, _ := notation.ConventionWords(name)
		var more []notation.Conventions
		for _, c := range all {
			for _, word := range words {
				if err := c.Set(name, word); err != nil {
					panic(err)
				}
				more = append(more, c)
			}
		}
		all = more
	}
	return all
}

// The lesson accepts, in every combination of conventions, what the written solution of the problem prints: each value,
// each sign of a term, each N, V and M; and solution, figure and lesson say the same of the sense of V.
func TestLessonAndSolutionAgree(t *testing.T) {
	t.Parallel()
	if n := len(allConventions()); n != 64 {
		t.Fatalf("%d combinations", n)
	}
	for _, name := range conventionFrames {
		if testing.Short() && name != "beam" && name != conventionFrames[1] {
			continue
		}
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			p := conventionProblem(t, name)
			s, err := statics.Solve(p.Frame)
			if err != nil {
				t.Fatal(err)
			}
			for _, c := range allConventions() {
				checkAgreement(t, p.In(c), s)
			}
		})
	}
}

// conventionProblem reads a problem of the list.
func conventionProblem(t *testing.T, name string) *problems.Problem {
	t.Helper()
	var p *problems.Problem
	var err error
	switch {
	case name == "beam":
		p, err = problems.Read("beam.yaml", []byte(beam))
	case strings.Contains(name, "/"):
		p, err = problems.Load("../../" + name)
	default:
		p, _ = problems.Library(name)
	}
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// checkAgreement answers a lesson from the written solution.
func checkAgreement(t *testing.T, p *problems.Problem, s *statics.Solution) {
	t.Helper()
	text := worksheet.Text(worksheet.One(p, s), worksheet.Options{Width: 400})
	w := written{solution: s, text: text, rows: map[string][][]string{}}
	w.read()
	l, err := tutor.New(p, tutor.Terms, false)
	if err != nil {
		t.Fatal(err)
	}
	l.UseSigns()
	answered := 0
	for q, asking := l.Now(); asking; q, asking = l.Now() {
		answer := w.answer(l, q)
		if answer == "" {
			l.Type("tell")
			continue
		}
		answered++
		if r := l.Type(answer); r.Kind != tutor.Judged || !r.Verdict.Right() {
			t.Errorf("%s: the solution prints %s = %s, the lesson says %v", p.Conventions, q.Name, answer, r.Lines)
			return
		}
	}
	if answered < 6 {
		t.Errorf("%s: only %d answers are found in the solution", p.Conventions, answered)
	}
	checkShear(t, p, s, l, text)
}

// checkShear holds what solution, lesson and figure say of the sense of V against each other.
func checkShear(t *testing.T, p *problems.Problem, s *statics.Solution, l *tutor.Lesson, text string) {
	t.Helper()
	turn, push, slope := "clockwise", "push up", "dM/dx = V."
	if p.Conventions.Shear == notation.CounterClockwiseShear {
		turn, push, slope = "counter-clockwise", "push down", "dM/dx = −V."
	}
	if flat := strings.Join(strings.Fields(text), " "); !strings.Contains(flat, push) || !strings.Contains(flat, slope) {
		t.Errorf("%s: the solution does not say %q and %q", p.Conventions, push, slope)
	}
	legend := figure.OfDiagram(s, figure.ShearForce, nil, figure.Options{Style: p.Style(false)}).Legend
	if !strings.Contains(strings.Join(legend, "\n"), "turns a piece "+turn) {
		t.Errorf("%s: the figure of V says %q", p.Conventions, legend)
	}
	for m := range s.Frame.Members {
		up := s.Frame.Span(m).Left().Dot(l.Display(false).ShearDirection(m)).Sign() > 0
		if up != (turn == "clockwise") {
			t.Errorf("%s: V of member %d is positive along %v", p.Conventions, m, l.Display(false).ShearDirection(m))
		}
	}
}

// written is what a solution prints, found in its text.
type written struct {
	solution *statics.Solution
	text     string
	values   map[string]string     // of forces, by name
	rows     map[string][][]string // N, V and M at the critical points of each member, in order
	sums     map[string]string     // the first equation of each step, by its number
}

var (
	memberTitle = regexp.MustCompile(`^Member (\S+), from .*?(: N = V = M = 0 all along)?\.?$`)
	stationRow  = regexp.MustCompile(`^  +\S+  (?:at \S+|before|after)? +(\S+) +(\S+) +(\S+)(?:  |$)`)
	stepTitle   = regexp.MustCompile(`^(\d+)\.  `)
)

// read takes the text apart.
func (w *written) read() {
	w.values, w.sums = map[string]string{}, map[string]string{}
	member, step, results := "", "", false
	for _, line := range strings.Split(w.text, "\n") {
		words := strings.Fields(line)
		switch m := memberTitle.FindStringSubmatch(line); {
		case line == "Results" || line == "N, V and M":
			results, step = line == "Results", ""
		case m != nil:
			member = m[1]
			if m[2] != "" {
				w.rows[member] = [][]string{}
			}
		case results && len(words) > 1 && words[0] != "force":
			w.values[words[0]] = words[1]
		case stepTitle.MatchString(line):
			step = stepTitle.FindStringSubmatch(line)[1]
		case step != "" && w.sums[step] == "" && strings.HasSuffix(line, " = 0"):
			w.sums[step] = strings.TrimSpace(strings.TrimSuffix(line, " = 0"))
		case member != "" && !strings.Contains(line, "≤"):
			if row := stationRow.FindStringSubmatch(line); row != nil {
				w.rows[member] = append(w.rows[member], row[1:])
			}
		}
	}
}

// answer is what the solution prints for a question; empty where it does not print just that.
func (w *written) answer(l *tutor.Lesson, q tutor.Question) string {
	switch q.Kind {
	case tutor.ForceValue:
		return strings.TrimSuffix(w.values[q.Name], "~")
	case tutor.SectionPart:
		rows, ok := w.rows[w.solution.Frame.Members[q.Member].Name]
		for i, st := range w.solution.Diagrams[q.Member].Stations() {
			if st.At.Equal(q.Station.At) && st.Side == q.Station.Side && i < len(rows) {
				return strings.TrimSuffix(rows[i][q.Quantity], "~")
			}
		}
		if ok && len(rows) == 0 {
			return "0"
		}
	case tutor.TermSize, tutor.TermArm:
		_, text, _ := strings.Cut(l.Display(false).Answer(q), " = ")
		return text
	case tutor.TermSign:
		return w.sign(q)
	}
	return ""
}

// sign is the sign that a term has in the equation of its step, where that is of one sum.
func (w *written) sign(q tutor.Question) string {
	sum, n := w.sums[fmt.Sprint(q.Step+1)], 0
	fmt.Sscanf(q.Name, "sign %d", &n)
	signs := []string{"+"}
	if strings.HasPrefix(sum, "−") {
		signs[0] = "−"
	}
	for _, word := range strings.Fields(sum) {
		if word == "+" || word == "−" {
			signs = append(signs, word)
		}
	}
	if q.Sum > 0 || n > len(signs) {
		return ""
	}
	return signs[n-1]
}
