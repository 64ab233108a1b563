package worksheet

import (
	"encoding/json"
	"flag"
	"fmt"
	"maps"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
)

var update = flag.Bool("update", false, "rewrite the expected documents in testdata/solutions and in testdata of this package")

// own is the folder of documents, and of the problems that are only there for them.
var own = filepath.Join(testdata, "solutions")

// golden compares a document with a file, or rewrites the file.
func golden(t *testing.T, file, got string) {
	t.Helper()
	same(t, filepath.Join(own, file), got)
}

// TestText compares worked solutions with files that a person can read: the examples, problems of the library, frames
// with slots, letters, rings and inexact angles, and frames that cannot be solved.
func TestText(t *testing.T) {
	t.Parallel()
	for _, pattern := range []string{"solutions/*.yaml", "examples/*.yaml"} {
		for _, path := range glob(t, filepath.Join(testdata, pattern)) {
			p, s := solveFile(t, path)
			golden(t, p.Name+".txt", Text(One(p, s), Options{}))
			golden(t, p.Name+".inspect.txt", Inspect(p, s, Options{}))
		}
	}
	p, s := solveFile(t, filepath.Join(own, "sleeve.yaml"))
	golden(t, "sleeve.ascii.txt", Text(One(p, s), Options{Width: 70, ASCII: true}))
	for _, id := range []string{"TH01", "AF09", "CB06", "FB04", "TH06"} {
		p, s := solve(t, id, published(t)[id])
		golden(t, id+".txt", Text(One(p, s), Options{}))
	}
}

// TestJSON compares documents of which the examples have no like: rings, slots, inexact angles, no solution.
func TestJSON(t *testing.T) {
	for _, path := range glob(t, filepath.Join(own, "*.yaml")) {
		p, s := solveFile(t, path)
		golden(t, p.Name+".json", string(JSON(p, s)))
		golden(t, p.Name+".inspect.json", string(InspectJSON(p, s)))
	}
}

func glob(t testing.TB, pattern string) []string {
	t.Helper()
	paths, err := filepath.Glob(pattern)
	if err != nil || len(paths) == 0 {
		t.Fatalf("no file matches %s (%v)", pattern, err)
	}
	return paths
}

// published are the problems of the published cases, by their ids.
func published(t testing.TB) map[string][]byte {
	t.Helper()
	data := read(t, filepath.Join(testdata, "cases", "published.json"))
	var cases []struct {
		ID      string          `json:"id"`
		Problem json.RawMessage `json:"problem"`
	}
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(err)
	}
	byID := map[string][]byte{}
	for _, c := range cases {
		byID[c.ID] = c.Problem
	}
	return byID
}

// libraryFiles are the files of the library that a costly test goes over.
func libraryFiles(t testing.TB) []string {
	t.Helper()
	names := librarytest.Names()
	return slices.DeleteFunc(glob(t, filepath.Join("..", "library", "*.yaml")), func(path string) bool {
		_, name, _ := strings.Cut(strings.TrimSuffix(filepath.Base(path), ".yaml"), "-")
		return !slices.Contains(names, name)
	})
}

// every gives the problems at hand to a test: published, a sample of the library, examples and own. Under -short it is one
// in four.
func every(t *testing.T, test func(t *testing.T, p *problems.Problem, s *statics.Solution)) {
	t.Helper()
	n := 0
	passed := func() bool {
		n++
		return testing.Short() && n%4 > 0
	}
	all := published(t)
	for _, id := range slices.Sorted(maps.Keys(all)) {
		if passed() {
			continue
		}
		p, s := solve(t, id, all[id])
		t.Run(id, func(t *testing.T) { test(t, p, s) })
	}
	for _, path := range slices.Concat(libraryFiles(t), glob(t, testdata+"/examples/*.yaml"), glob(t, own+"/*.yaml")) {
		if passed() {
			continue
		}
		p, s := solveFile(t, path)
		t.Run(p.Name, func(t *testing.T) { test(t, p, s) })
	}
}

// TestLines holds every text to the layout: no line wider than asked for, none with blanks at its end, and no character
// beyond ASCII where that is asked for.
func TestLines(t *testing.T) {
	t.Parallel()
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		said := map[bool]inspection{false: inspected(p, s, false), true: inspected(p, s, true)}
		for _, o := range []Options{{}, {Width: 60}, {Width: 60, ASCII: true}, {ASCII: true}, {Width: 200}} {
			for _, text := range []string{Text(One(p, s), o), said[o.ASCII].asText(o)} {
				checkLines(t, text, o)
			}
		}
	})
}

func checkLines(t *testing.T, text string, o Options) {
	t.Helper()
	widest := o.Width
	if widest == 0 {
		widest = 80
	}
	for i, line := range strings.Split(strings.TrimSuffix(text, "\n"), "\n") {
		switch {
		case utf8.RuneCountInString(line) > widest:
			t.Errorf("line %d is wider than %d: %q", i+1, widest, line)
		case strings.TrimRight(line, " ") != line:
			t.Errorf("line %d ends in blanks: %q", i+1, line)
		case strings.ContainsRune(line, bound):
			t.Errorf("line %d has a bound blank: %q", i+1, line)
		case o.ASCII && strings.IndexFunc(line, func(r rune) bool { return r > 126 }) >= 0:
			t.Errorf("line %d is not ASCII: %q", i+1, line)
		}
	}
}

// TestLongNames holds the layout for a part whose name alone is wider than the page.
func TestLongNames(t *testing.T) {
	t.Parallel()
	var joints, members []string
	for i := range 60 {
		joints = append(joints, fmt.Sprintf("K%d: [%d, %d]", i, i, i*i%7))
		if i > 0 {
			members = append(members, fmt.Sprintf("K%dK%d", i-1, i))
		}
	}
	problem := fmt.Sprintf("title: %s\nunits: lb in\njoints: {%s}\nmembers: [%s]\nsupports: {K0: pin, K59: {roller: up}}\nloads: [{point: 100, to: right, joint: K30}]",
		strings.Repeat("Long", 50), strings.Join(joints, ", "), strings.Join(members, ", "))
	p, s := solve(t, "long", []byte(problem))
	for _, o := range []Options{{}, {Width: 60, ASCII: true}} {
		checkLines(t, Text(One(p, s), o), o)
		checkLines(t, Inspect(p, s, o), o)
	}
}

// TestHugeNumbers holds the layout for numbers as long as a file may give them, and for their products.
func TestHugeNumbers(t *testing.T) {
	for _, size := range []string{strings.Repeat("9", 39), "0." + strings.Repeat("0", 37) + "1", "0." + strings.Repeat("3", 39)} {
		problem := fmt.Sprintf("title: Big\nunits: kN m\njoints: {A: [0, 0], B: [%[1]s, 0]}\nmembers: [AB]\nsupports: {A: fixed}\nloads: [{uniform: %[1]s, to: down, on: AB}]", size)
		p, s := solve(t, "big", []byte(problem))
		for _, o := range []Options{{}, {Width: 60, ASCII: true}} {
			checkLines(t, Text(One(p, s), o), o)
		}
		if !json.Valid(JSON(p, s)) {
			t.Error("the document is no JSON")
		}
	}
}

// TestManyMotions inspects a chain of a thousand bars that hangs by one end: what is told stays short.
func TestManyMotions(t *testing.T) {
	t.Parallel()
	var joints, members, pins []string
	for i := range 1000 {
		joints = append(joints, fmt.Sprintf("J%d: [%d, 0]", i, i))
		if i > 0 {
			members = append(members, fmt.Sprintf("J%dJ%d", i-1, i))
			pins = append(pins, fmt.Sprintf("J%d", i))
		}
	}
	text := fmt.Sprintf("title: Chain\nunits: kN m\njoints: {%s}\nmembers: [%s]\npins: [%s]\nsupports: {J0: pin}\nloads: []",
		strings.Join(joints, ", "), strings.Join(members, ", "), strings.Join(pins[:len(pins)-1], ", "))
	p, s := solve(t, "chain", []byte(text))
	got := Inspect(p, s, Options{})
	if s.Count.Motions() != 999 || !strings.Contains(got, "And 987 more.") {
		t.Errorf("%d motions:\n%.3000s", s.Count.Motions(), got)
	}
	if at := strings.Index(got, "Why it cannot be solved"); len(got)-at > 5000 {
		t.Errorf("%d bytes tell why", len(got)-at)
	}
}

// TestFiguresOfALine: in a line with a rounded number a long decimal that came out is rounded too; where all numbers end, they
// stand in full, and the line adds up.
func TestFiguresOfALine(t *testing.T) {
	p, s := solveFile(t, filepath.Join("..", "..", "statics", "figure", "testdata", "frames", "us-units.yaml"))
	text := Text(One(p, s), Options{})
	for _, line := range []string{"(−5.159)·20 + 14.96·15 − 0.6·15·7.5", "−4.44125 − 5.15875 + 9.6 = 0: the check holds.", "M = 4.44125x − 0.4x²"} {
		if !strings.Contains(text, line) {
			t.Errorf("nowhere stands %s", line)
		}
	}
}
