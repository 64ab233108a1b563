package figure_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
)

var update = flag.Bool("update", false, "rewrite the drawings in testdata")

// divider parts what a test file asks for from what it expects.
const divider = "\n----\n"

// drawingFiles are the test files of drawings.
func drawingFiles(t testing.TB) []string {
	files, err := filepath.Glob(filepath.Join("testdata", "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatal("no drawings in testdata")
	}
	return files
}

// load reads the frame of a test file, and what the file expects.
func load(t testing.TB, file string) (d *drawing, source, want string) {
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	source, want, _ = strings.Cut(string(data), divider)
	d, err = readDrawing(source)
	if err != nil {
		t.Fatalf("%s: %v", file, err)
	}
	return d, source, want
}

// TestDrawings draws what each file in testdata asks for. The drawings were looked at one by one; a change to them must
// be looked at too.
func TestDrawings(t *testing.T) {
	motions, err := filepath.Glob(filepath.Join("testdata", "motions", "*.txt"))
	if err != nil || len(motions) == 0 {
		t.Fatal("no motions in testdata")
	}
	for _, file := range append(drawingFiles(t), motions...) {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) {
			d, source, want := load(t, file)
			got := d.all(t)
			if *update {
				if err := os.WriteFile(file, []byte(strings.TrimRight(source, "\n")+divider+got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			if got != want {
				t.Errorf("%s draws otherwise:\n%s", file, got)
			}
		})
	}
}

// all is everything the file asks for, one under the other.
func (d *drawing) all(t *testing.T) string {
	var b strings.Builder
	for _, words := range d.draws {
		fmt.Fprintf(&b, "== %s\n", strings.Join(words, " "))
		if words[0] == "words" {
			b.WriteString(strings.Join(d.words(t, words[1:]), "\n") + "\n")
			continue
		}
		b.WriteString(d.draw(t, words[1:]))
	}
	return b.String()
}

// words are the sentences about a scene: of nothing, the frame; of sum 3; of N, V or M.
func (d *drawing) words(t *testing.T, of []string) []string {
	o := figure.Options{Style: d.style}
	switch {
	case len(of) == 0:
		return figure.Describe(d.cut(t), o)
	case of[0] == "sum":
		s := d.solution(t)
		return figure.DescribeSum(s.Assembly, s.Plan[atoi(of[1])-1].Sums[0], d.before(t, atoi(of[1])), o)
	}
	return figure.DescribeInternal(d.solution(t), quantity(of[0]), o)
}

func (d *drawing) cut(t testing.TB) *statics.Assembly {
	a, err := statics.Cut(d.frame)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

func (d *drawing) solution(t testing.TB) *statics.Solution {
	s, err := statics.Solve(d.frame)
	if err != nil || s.Values == nil {
		t.Fatal(d.frame.Joints, "the frame is not determinate:", s.Count, err)
	}
	return s
}

// values are the forces of a frame, by index.
func (d *drawing) values(t testing.TB) map[int]exact.Num {
	known := map[int]exact.Num{}
	for i, v := range d.solution(t).Values {
		known[i] = v
	}
	return known
}

// draw draws what one line asks for: its words are the scene, perhaps a body, the size, perhaps ascii.
func (d *drawing) draw(t *testing.T, words []string) string {
	ascii := words[len(words)-1] == "ascii"
	if ascii {
		words = words[:len(words)-1]
	}
	n := len(words)
	s := d.scene(t, words[:n-2], ascii)
	g := figure.Cells(s, atoi(words[n-2]), atoi(words[n-1]), ascii)
	if err := g.Check(); err != nil {
		t.Error(err)
	}
	var b strings.Builder
	for _, line := range strings.Split(g.Text(), "\n") {
		b.WriteString(strings.TrimRight(line, " ") + "\n")
	}
	for _, dropped := range g.Dropped {
		b.WriteString("left out: " + dropped + "\n")
	}
	return b.String()
}

// internal is the scene of an internal force.
func (d *drawing) internal(t testing.TB, letter string, o figure.Options) figure.Scene {
	return figure.Internal(d.solution(t), quantity(letter), nil, o)
}

// quantity is the internal force of that letter.
func quantity(letter string) figure.Quantity { return figure.Quantity(strings.Index("NVM", letter)) }

// before are the forces that are known before a step of the plan.
func (d *drawing) before(t testing.TB, step int) map[int]exact.Num {
	s, known := d.solution(t), map[int]exact.Num{}
	for _, earlier := range s.Plan[:step-1] {
		for _, i := range earlier.Gives {
			known[i] = s.Values[i]
		}
	}
	return known
}

// sum is the scene of the first sum of a step of the plan, with all values known that come out before it.
func (d *drawing) sum(t testing.TB, step int, o figure.Options) figure.Scene {
	s := d.solution(t)
	known := d.before(t, step)
	o.LitForces = s.Plan[step-1].Gives
	return figure.OfSum(s.Assembly, s.Plan[step-1].Sums[0], known, o)
}

// scene is the scene that words ask for: given, whole, solved whole, body BC, solved BC, apart, N, V, M, sum 3.
func (d *drawing) scene(t *testing.T, words []string, ascii bool) figure.Scene {
	o := figure.Options{Style: d.style}
	o.Style.ASCII = ascii
	switch words[0] {
	case "given":
		return figure.Given(&d.frame, o)
	case "N", "V", "M":
		return d.internal(t, words[0], o)
	case "apart":
		return figure.Exploded(d.cut(t), nil, o)
	case "motion":
		a := d.cut(t)
		return figure.Motion(a, a.Motions()[atoi(words[1])-1], o)
	case "sum":
		return d.sum(t, atoi(words[1]), o)
	}
	a := d.cut(t)
	var known map[int]exact.Num
	if words[0] == "solved" {
		known = d.values(t)
	}
	name := strings.Join(words[1:], " ")
	if name == "" || name == "whole" {
		return figure.FreeBody(a, a.Whole(), known, o)
	}
	bodies := make([]string, a.Bodies())
	for i := range bodies {
		bodies[i] = a.BodyName(i)
	}
	i := slices.Index(bodies, name)
	if i < 0 {
		t.Fatalf("no body %q among %q", name, bodies)
	}
	return figure.FreeBody(a, statics.FreeBody{i}, known, o)
}
