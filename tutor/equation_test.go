package tutor

import (
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Rows: problem, choice, equation, and a part of what is said of it; nothing where it is true. The equations of
// quay-gantry and jetty-deck are read off their files.
func TestCheckEquation(t *testing.T) {
	t.Parallel()
	rows := []struct{ problem, choice, equation, says string }{
		{"jetty-deck", "M A", "RB*8 - 20*2.5 - 4*3*9.5 = 0", ""},
		{"jetty-deck", "M A", "20*2.5 + 12(9.5) = 8RB", ""},
		{"jetty-deck", "M A", "-8 RB + 50 + 114 = 0", ""},
		{"jetty-deck", "M A", "RB = (20*2.5 + 4*3*9.5)/8", ""},
		{"jetty-deck", "M A", "RB*8 - 20*2.5 - 4*3*9.5 - Ay*0 = 0", ""},
		{"jetty-deck", "M A", "ΣM_A = RB x 8 - 20 x 2.5 - 4*3*9.5 = 0", ""},
		{"jetty-deck", "M A", "ΣM A: R_B*8 - 20*2.5 - 4*3²*9.5/3", ""},
		{"quay-gantry", "CD x", "-Cx + Dx - 9 = 0", ""},
		{"quay-gantry", "CD x", "Cx.CD + Dx - 9 = 0", ""},
		{"quay-gantry", "CD x", "Cx.BC + Dx - 9 = 0", "Cx"},
		{"jetty-deck", "M A", "RB*8 - 20*2.5 = 0", ": does the uniform load 4 kN/m on BC count in this sum?"},
		{"jetty-deck", "M A", "RB*8 - 20*2.5 + 4*3*9.5 = 0", ": with what sense does the uniform load 4 kN/m on BC enter?"},
		{"jetty-deck", "M A", "RB*8 - 20*2.5 - 4*3*8 = 0", "not where the load begins: with what arm does the uniform load 4 kN/m on BC enter?"},
		{"jetty-deck", "M A", "RB*11 - 20*2.5 - 4*3*9.5 = 0", ": with what arm does RB enter?"},
		{"jetty-deck", "M A", "Ay*8 + RB*8 - 20*2.5 - 4*3*9.5 = 0", "whose line of action passes through the centre has no moment about it: does Ay count in this sum?"},
		{"jetty-deck", "M A", "20*2.5 + 4*3*9.5 = 0", "does RB count in this sum?"},
		{"jetty-deck", "y", "Ay + RB = 32", ""},
		{"jetty-deck", "y", "Ay - RB = 32", ": with what sense does RB enter?"},
		{"jetty-deck", "M A", "RB*8 - 20*2.5 - 4*3*9.1 = 0", "a distributed load counts as its resultant times the arm of its centroid"},
		{"jetty-deck", "M A", "RB*8 = 20*2.5 + 4*9.5", ": with what size does the uniform load 4 kN/m on BC enter?"},
		{"jetty-deck", "M A", "8 RB = 50 + 132", "not at its far end"},
		{"jetty-deck", "M A", "RB = (20*2.5 + 4*3*11)/8", "not at its far end"},
		{"jetty-deck", "M A", "8 RB = 182", "not at its far end"},
		{"jetty-deck", "y", "Ay + RB - 20 - 12 - 7 = 0", "stands for nothing here"},
	}
	for _, r := range rows {
		l := lesson(t, r.problem, Values)
		s, err := l.about.readChoice(r.choice)
		if err != nil {
			t.Fatal(err)
		}
		typed, err := notation.ReadSum(r.equation, l.about.problem.Units, l.about.namesForce)
		if err != nil {
			t.Fatalf("%s: %v", r.equation, err)
		}
		says := l.bench().judge().Sum(s, typed, func(int) (exact.Num, bool) { return exact.Num{}, false }).Says
		if r.says == "" && says != "" || !strings.Contains(says, r.says) {
			t.Errorf("%s: %q, want %q", r.equation, says, r.says)
		}
	}
}

// Every sum of every plan, written as the solution writes it, is true: with forces by name, and with known ones by value.
func TestPlansAreTrueEquations(t *testing.T) {
	t.Parallel()
	for _, name := range problems.Names() {
		l := lesson(t, name, Values)
		st := l.about.style()
		st.Figures = 6
		for i, step := range l.about.solution.Plan {
			known := l.about.solution.KnownBefore(i)
			for _, s := range step.Sums {
				for _, text := range []string{
					wording.New(l.about.solution.Assembly, st).Symbols(s), wording.New(l.about.solution.Assembly, st).Numbers(s, known),
				} {
					if text == "0 = 0" {
						continue
					}
					typed, err := notation.ReadSum(text, l.about.problem.Units, l.about.namesForce)
					if err != nil {
						t.Fatalf("%s: %s: %v", name, text, err)
					}
					if says := l.bench().judge().Sum(s, typed, known).Says; says != "" {
						t.Errorf("%s, step %d: %s: %s", name, i+1, text, says)
					}
				}
			}
		}
	}
}
