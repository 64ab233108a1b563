package main

import (
	"io"
	"strings"
	"testing"

	"unpin/problems"
)

// TestAskedOnATerminal types answers as they are asked for: one that cannot be read is asked for again, one that names what it is
// of is taken for that in place of an earlier one, and what was given is not asked for.
func TestAskedOnATerminal(t *testing.T) {
	t.Parallel()
	p, _ := problems.Library("jetty-deck")
	m, err := markerOf(p)
	if err != nil {
		t.Fatal(err)
	}
	d := &desk{tasks: []*task{{problem: p, marker: m}}}
	var shown strings.Builder
	typed, err := io.ReadAll(d.ask(strings.NewReader("0\nabc\nay = 11.6\n20,5 kN up\nAy = 11.5\nmax M(AB) = 28.8 at 2.5\n\nend\n5\n"), &shown))
	if want := "# answers\nAx = 0\nAy = 11.5\nRB = 20,5 kN up\nmax M(AB) = 28.8 at 2.5\n"; err != nil || string(typed) != want {
		t.Errorf("%v, %q, not %q", err, typed, want)
	}
	for _, want := range []string{"RB on part ABC, up positive [kN] = That cannot be read: RB: \"abc\" is not a number", "N(AB, 0) [kN] = N(AB, 0) [kN] = N(AB, 0) [kN] = V(AB, 0) [kN] = ",
		"Member AB, 8 m, measured from A. N: tension positive. V: positive when the forces on A's side push up. M: positive when the bottom is stretched.\n"} {
		if !strings.Contains(shown.String(), want) {
			t.Errorf("nothing is said like %q in\n%s", want, shown.String())
		}
	}
	if strings.Count(shown.String(), "Ay on part") != 0 {
		t.Errorf("Ay was given and is asked for:\n%s", shown.String())
	}
}

// TestAskedForASet types answers to the problems of a set one after the other; the word next leaves the rest of a problem out.
func TestAskedForASet(t *testing.T) {
	t.Parallel()
	d := &desk{}
	for _, name := range []string{"jetty-deck", "mill-bridge"} {
		p, _ := problems.Library(name)
		m, err := markerOf(p)
		if err != nil {
			t.Fatal(err)
		}
		d.tasks = append(d.tasks, &task{problem: p, marker: m})
	}
	var shown strings.Builder
	typed, err := io.ReadAll(d.ask(strings.NewReader("0\nnext\nRC = 11 up\nend\n"), &shown))
	if want := "# answers\nproblem: jetty-deck\nAx = 0\nproblem: mill-bridge\nRC = 11 up\n"; err != nil || string(typed) != want {
		t.Errorf("%v, %q, not %q", err, typed, want)
	}
	if want := "mill-bridge: Mill bridge with a hinge"; !strings.Contains(shown.String(), want) {
		t.Errorf("nothing is said like %q in\n%s", want, shown.String())
	}
}
