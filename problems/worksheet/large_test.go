package worksheet

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
)

// chained is a beam of so many parts with pins between them, the first fixed, each further one on a roller.
func chained(t *testing.T, parts int) Solved {
	joints, members, pins, supports := "P0: [0, 0]", []string{}, []string{}, "P0: fixed"
	for i := range parts {
		joints += fmt.Sprintf(", R%d: [%d, 0], P%d: [%d, 0]", i, 4*i+2, i+1, 4*i+4)
		members = append(members, fmt.Sprintf("P%dR%d, R%dP%d", i, i, i, i+1))
		if i > 0 {
			pins = append(pins, fmt.Sprintf("P%d", i))
			supports += fmt.Sprintf(", R%d: {roller: up}", i)
		}
	}
	p, err := problems.Read("beam.yaml", []byte(fmt.Sprintf("title: beam\nunits: kN m\njoints: {%s}\nmembers: [%s]\npins: [%s]\nsupports: {%s}\nloads: [{point: 6, to: down, on: P0R0, at: 1}]\n",
		joints, strings.Join(members, ", "), strings.Join(pins, ", "), supports)))
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	return Solved{Problem: p, Solution: s}
}

// TestLargeFrames: beyond so many parts a document has no figures and says so; single figures are still drawn, but all parts
// apart are not.
func TestLargeFrames(t *testing.T) {
	t.Parallel()
	const said = "a document has no figures"
	for parts, large := range map[int]bool{mostDrawn: false, mostDrawn + 1: true} {
		one := chained(t, parts)
		html := HTML([]Solved{one}, Options{})
		if strings.Contains(html, "<figure>") == large || strings.Contains(html, said) != large {
			t.Errorf("%d parts: a document with figures: %v, says that it has none: %v", parts, strings.Contains(html, "<figure>"), strings.Contains(html, said))
		}
		if strings.Contains(Text([]Solved{one}, Options{}), said) {
			t.Errorf("%d parts: a text never has figures, and says that it has none", parts)
		}
	}
	one := chained(t, mostDrawn+1)
	for _, name := range []string{"bodies", "forces"} {
		if _, err := SVG(one.Problem, one.Solution, name); !errors.Is(err, ErrNoFigure) || !strings.Contains(err.Error(), "--step") {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := SVG(one.Problem, one.Solution, "M"); err != nil {
		t.Error(err)
	}
	if _, err := StepSVG(one.Problem, one.Solution, len(one.Solution.Plan)); err != nil {
		t.Error(err)
	}
}
