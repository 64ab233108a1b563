package main

import (
	"encoding/json"
	"fmt"
	"math"
	"os/exec"
	"slices"
	"strconv"
	"strings"
)

// solved is what `unpin solve --as json` says that a lesson needs: the plan, and the pieces of N, V and M.
type solved struct {
	Forces []struct {
		Name, Value string
	}
	Parts []struct {
		Name    string
		Members []string
	}
	Plan    []planStep
	Members []struct {
		Name   string
		Pieces []piece
	}
}

// planStep is one entry of the plan; a sum that stands alone is written into the entry itself.
type planStep struct {
	planSum
	Together []planSum `json:"sums"`
	Gives    []string
	Check    bool
}

func (s planStep) sums() []planSum {
	if len(s.Together) > 0 {
		return s.Together
	}
	return []planSum{s.planSum}
}

type planSum struct {
	Parts        []string
	Sum          string
	About, Along []string
}

type piece struct {
	From, Until string
	N, V, M     []string
}

// task is a frame with all that is known of it: where its file is, its unknowns' true values, and unpin's own plan.
type task struct {
	path   string
	frame  *frame
	values map[string]float64
	unpin  *solved
	partOf map[string]int // unpin's name of a part → ours
}

// fraction reads a decimal or a fraction.
func fraction(s string) float64 {
	a, b, ok := strings.Cut(s, "/")
	x, err := strconv.ParseFloat(a, 64)
	if err != nil {
		panic(err)
	}
	if !ok {
		return x
	}
	y, _ := strconv.ParseFloat(b, 64)
	return x / y
}

// newTask reads the file, solves it in fractions, and holds unpin's solution against that: forces, and N, V and M.
func newTask(unpin, path string) (*task, error) {
	p, err := readProblem(path)
	if err != nil {
		return nil, err
	}
	f := newFrame(p)
	out, err := exec.Command(unpin, "solve", path, "--as", "json").Output()
	if err != nil {
		return nil, errRefused
	}
	t := &task{path: path, frame: f, values: map[string]float64{}, unpin: new(solved), partOf: map[string]int{}}
	if err := json.Unmarshal(out, t.unpin); err != nil {
		return nil, err
	}
	exact, err := solveExactly(p, f)
	if err != nil {
		return nil, err
	}
	for i, u := range f.unknowns {
		t.values[u.name], _ = exact[i].Float64()
	}
	for _, part := range t.unpin.Parts {
		t.partOf[part.Name] = f.member(part.Members[0]).part
	}
	return t, t.compare()
}

var errRefused = fmt.Errorf("refused")

// compare tells where unpin's values differ from our own.
func (t *task) compare() error {
	scale := 1.0
	for _, v := range t.values {
		scale = math.Max(scale, math.Abs(v))
	}
	if len(t.unpin.Forces) != len(t.values) {
		return fmt.Errorf("%d forces, not %d", len(t.unpin.Forces), len(t.values))
	}
	for _, force := range t.unpin.Forces {
		v, ok := t.values[force.Name]
		if !ok || !near(fraction(force.Value), v, scale) {
			return fmt.Errorf("%s: unpin %s, elimination %g", force.Name, force.Value, v)
		}
	}
	for _, m := range t.unpin.Members {
		length := t.frame.member(m.Name).length
		for _, p := range m.Pieces {
			lo, hi := fraction(p.From), fraction(p.Until)
			for _, x := range []float64{lo + 1e-7*(hi-lo), (lo + hi) / 2, hi - 1e-7*(hi-lo)} {
				for q, poly := range map[string][]string{"N": p.N, "V": p.V, "M": p.M} {
					own := t.cut(t.frame.member(m.Name), x, q, true).total(t.values)
					if math.Abs(horner(poly, x)-own) > 1e-6*scale*math.Max(length, 1) {
						return fmt.Errorf("%s(%s, %g): unpin %g, own sum %g", q, m.Name, x, horner(poly, x), own)
					}
				}
			}
		}
	}
	return nil
}

func horner(poly []string, x float64) float64 {
	v := 0.0
	for _, c := range slices.Backward(poly) {
		v = v*x + fraction(c)
	}
	return v
}
