package figuretest

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
)

// A Named scene is a scene with the name of its problem.
type Named struct {
	Name  string
	Scene figure.Scene
}

// OfProblems are the scenes of the library, and of problem files, or of lists of problems in JSON: as given, whole, each body, all apart, each sum of the
// plan, before and after it is solved, N, V and M, and one piece kept on each side of the middle of each member.
func OfProblems(t testing.TB, ascii bool, files ...string) []Named {
	var all []Named
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		all = append(all, ofProblem(t, p, ascii)...)
	}
	for _, pattern := range files {
		list, err := filepath.Glob(pattern)
		if err != nil || len(list) == 0 {
			t.Fatal("no problems at", pattern)
		}
		for _, file := range list {
			for _, p := range load(t, file) {
				all = append(all, ofProblem(t, p, ascii)...)
			}
		}
	}
	return all
}

// ApartOfLibrary are the parts of each problem of the library apart, with nothing known yet.
func ApartOfLibrary(t testing.TB) []Named {
	var all []Named
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		a, err := statics.Cut(p.Frame)
		if err != nil {
			t.Fatal(name, err)
		}
		if k := figure.OfParts(a, nil, figure.Options{Style: p.Style(false)}); k.IsApart() {
			all = append(all, Named{name, k})
		}
	}
	return all
}

// Given is a frame of the library as given.
func Given(t testing.TB, name string) figure.Scene {
	p, _ := solvedOf(t, name)
	return figure.OfFrame(&p.Frame, figure.Options{Style: p.Style(false)})
}

// Diagram is an internal force of a frame of the library.
func Diagram(t testing.TB, name string, q figure.InternalForce) figure.Scene {
	p, s := solvedOf(t, name)
	return figure.OfDiagram(s, q, nil, figure.Options{Style: p.Style(false)})
}

// solvedOf is a problem of the library with its solution.
func solvedOf(t testing.TB, name string) (*problems.Problem, *statics.Solution) {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatal("no problem", name)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(name, err)
	}
	return p, s
}

// load reads a problem file, or all cases of a list.
func load(t testing.TB, file string) []*problems.Problem {
	if filepath.Ext(file) != ".json" {
		p, err := problems.Load(file)
		if err != nil {
			t.Fatal(file, err)
		}
		return []*problems.Problem{p}
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(file, err)
	}
	var all []*problems.Problem
	for _, c := range cases {
		p, err := problems.Read(c.ID, c.Problem)
		if err != nil {
			t.Fatal(c.ID, err)
		}
		all = append(all, p)
	}
	return all
}

// ofProblem are the scenes of one problem.
func ofProblem(t testing.TB, p *problems.Problem, ascii bool) []Named {
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(p.Name, err)
	}
	o := figure.Options{Style: p.Style(ascii)}
	var list []Named
	add := func(name string, k figure.Scene) { list = append(list, Named{p.Name + ", " + name, k}) }
	known := map[int]exact.Num{}
	for i, v := range s.Values {
		known[i] = v
	}
	add("given", figure.OfFrame(&s.Frame, o))
	for word, values := range map[string]map[int]exact.Num{"": nil, "solved ": known} {
		add(word+"whole", figure.OfBody(s.Assembly, s.Whole(), values, o))
		add(word+"apart", figure.OfParts(s.Assembly, values, o))
		for i := range s.Bodies() {
			add(word+"body "+s.BodyName(i), figure.OfBody(s.Assembly, statics.FreeBody{i}, values, o))
		}
	}
	if s.Values == nil {
		return list
	}
	for n, step := range s.Plan {
		add("sum "+strconv.Itoa(n+1), figure.OfSum(s.Assembly, step.Sums[0], known, o))
	}
	for _, g := range s.Diagrams {
		stations := g.Stations()
		if g.Withheld || len(stations) == 0 {
			continue
		}
		k := statics.Kept{Solution: s, Member: g.Member, At: stations[len(stations)/2]}
		for side, word := range map[statics.KeptSide]string{statics.FromStart: "start", statics.ToEnd: "end"} {
			k.Side = side
			add("kept "+s.Frame.Members[g.Member].Name+" "+word, figure.OfKept(figure.Section{Kept: k}, known, o))
		}
	}
	return list
}
