package variant

import (
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
)

const ropeStore = `title: Rope store
units: kip ft
given: {h: 10, a: 6, b: 10, w: 1.5, P: 6, d: 4, Q: 3, e: 4}
joints: {A: [0, 0], B: [0, h], C: [a, h], D: [a + b, h], E: [a + b, 0]}
members: [AB, BC, CD, DE]
pins: [C]
supports: {A: pin, E: pin}
loads: [{uniform: w, to: down, on: BC}, {point: P, to: down, on: CD, at: d}, {point: Q, to: left, on: AB, at: e}]
vary: {h: [8, 10, 12.5], w: 0.8..2.4 by 0.1, P: 4..12 by 0.5}
`

func solvedText(t *testing.T, text string) problems.Solved {
	t.Helper()
	p, err := problems.Read("test.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	return problems.Solved{Problem: p, Solution: s}
}

// What is told makes a problem tidy when it is typed into the file, with what may vary said or found; a tidy one needs nothing.
func TestTidy(t *testing.T) {
	t.Parallel()
	for _, r := range []struct{ was, file, told string }{
		{"as it is", ropeStore, "w 1.6"},
		{"two numbers", strings.Replace(ropeStore, "h: 10, a: 6, b: 10, w: 1.5", "h: 8, a: 5, b: 10, w: 1.1", 1), "h 10, w 0.9"},
	} {
		var told []string
		file := r.file
		for _, step := range Tidy(solvedText(t, r.file)) {
			told = append(told, step.Name+" "+step.To)
			file = retyped(file, step)
		}
		if got := strings.Join(told, ", "); got != r.told {
			t.Errorf("%s: %q is told, want %q", r.was, got, r.told)
		}
		tidy := solvedText(t, file)
		if len(tidy.Shortcomings()) > 0 {
			t.Errorf("%s: %v", r.was, tidy.Shortcomings())
		}
		if more := Tidy(tidy); more != nil {
			t.Errorf("%s: %v for a tidy problem", r.was, more)
		}
	}
	found, _, _ := strings.Cut(ropeStore, "vary:")
	if len(Tidy(solvedText(t, found))) == 0 {
		t.Error("nothing is found where the file does not say what may vary")
	}
}

// retyped is a file with another value for one given name.
func retyped(file string, step Step) string {
	before, after, _ := strings.Cut(file, step.Name+": ")
	return before + step.Name + ": " + step.To + after[strings.IndexAny(after, ",}"):]
}
