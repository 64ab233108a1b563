package wording

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/frametest"
	"unpin/statics/notation"
)

var update = flag.Bool("update", false, "rewrite the expected output in testdata")

// TestSaid compares what is said of frames, in all forms, with the files in testdata: a frame and what to say of it, a line
// of dashes, and what is said.
func TestSaid(t *testing.T) {
	paths, err := filepath.Glob("testdata/*.txt")
	if err != nil || len(paths) == 0 {
		t.Fatal("no files", err)
	}
	for _, path := range paths {
		t.Run(strings.TrimSuffix(filepath.Base(path), ".txt"), func(t *testing.T) {
			t.Parallel()
			said(t, path)
		})
	}
}

const dashes = "----\n"

func said(t *testing.T, path string) {
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	input, want, _ := strings.Cut(string(data), dashes)
	x, err := frametest.Read(input)
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(x.Frame)
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	for _, what := range x.Asks {
		if what[0] != "say" {
			t.Fatalf("%s: no item %q", path, what[0])
		}
		what = what[1:]
		fmt.Fprintf(&b, "== %s\n", strings.Join(what, " "))
		st := x.Style
		for _, convention := range what[1:] {
			name, word, _ := strings.Cut(convention, "=")
			if err := st.Set(name, word); err != nil {
				t.Fatal(err)
			}
		}
		inForms(&b, s, st, what[0])
	}
	if *update {
		if err := os.WriteFile(path, []byte(input+dashes+b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	wants := strings.Split(want, "\n")
	for i, line := range strings.Split(b.String(), "\n") {
		if i >= len(wants) || line != wants[i] {
			t.Fatalf("%s: line %d of what is said is\n%s\nnot\n%s", path, i+1, line, strings.Join(wants[min(i, len(wants)):min(i+1, len(wants))], ""))
		}
	}
	if b.String() != want {
		t.Fatalf("%s: more is expected than is said", path)
	}
}

// inForms writes what is said in the three forms: with signs, after A in ASCII and after S as it is spoken where these
// differ from the form before.
func inForms(b *strings.Builder, s *statics.Solution, st notation.Style, what string) {
	ascii := st
	ascii.ASCII = true
	of := sayings[what]
	signs, plain, spoken := of(s, New(s.Assembly, st)), of(s, New(s.Assembly, ascii)), of(s, New(s.Assembly, ascii).Spoken())
	for i, line := range signs {
		fmt.Fprintln(b, line)
		if plain[i] != line {
			fmt.Fprintln(b, "  A", plain[i])
		}
		if spoken[i] != plain[i] {
			fmt.Fprintln(b, "  S", spoken[i])
		}
	}
}

// sayings are the lines that are said, in all forms as many.
var sayings = map[string]func(*statics.Solution, Speaker) []string{
	"page":     func(_ *statics.Solution, w Speaker) []string { return []string{w.Conventions(), w.Units()} },
	"given":    sayGiven,
	"bodies":   sayBodies,
	"plan":     sayPlan,
	"results":  sayResults,
	"sections": saySections,
}

func sayGiven(s *statics.Solution, w Speaker) []string {
	var all []string
	for i := range s.Parts {
		all = append(all, w.Part(i))
	}
	for _, c := range s.Frame.Connections {
		all = append(all, w.Connection(c))
	}
	for _, x := range s.Frame.Supports {
		all = append(all, w.Support(x))
	}
	for _, l := range s.Frame.Loads {
		all = append(all, w.Load(l))
	}
	return append(all, "together: "+strings.Join(w.Loads(), " & "))
}

func sayBodies(s *statics.Solution, w Speaker) []string {
	var all []string
	for b := range s.Bodies() {
		body := statics.FreeBody{b}
		all = append(all, w.BodyName(b))
		for _, m := range w.Meetings(b) {
			all = append(all, m[0]+" | "+m[1])
		}
		all = append(all, "loads: "+strings.Join(w.LoadsOn(body), " & "))
		for _, i := range s.ActionsOn(body) {
			all = append(all, w.Action(i), w.Resultant(i))
			if whole := w.Whole(s.Actions[i].Load); whole != w.Action(i) {
				all = append(all, whole)
			}
		}
		for _, i := range s.ForcesOn(body) {
			sign, _ := s.Facing(body, i)
			all = append(all, w.OnBody(body, i, sign, nil), w.OnBody(body, i, sign, &s.Values[i]))
		}
	}
	for i := range s.Forces {
		all = append(all, w.Unknown(i))
	}
	return all
}

func sayPlan(s *statics.Solution, w Speaker) []string {
	var all []string
	for n, step := range s.Plan {
		value := s.KnownBefore(n)
		all = append(all, sayStep(s, w, step, value)...)
		known := make([]bool, len(s.Forces))
		for i := range known {
			_, known[i] = value(i)
		}
		if round := s.Split(&step, known); round != nil {
			all = append(all, "", "or, way round the two:")
			around := w
			around.a = round.Assembly
			for _, one := range round.Steps {
				all = append(all, sayStep(&statics.Solution{Assembly: round.Assembly, Values: round.Values}, around, one, value)...)
			}
		}
	}
	return all
}

// sayStep is what is said of one step.
func sayStep(s *statics.Solution, w Speaker, step statics.Step, value func(int) (exact.Num, bool)) []string {
	known := func(i int) bool { _, ok := value(i); return ok }
	all := []string{"", w.Because(step, known)}
	for _, sum := range step.Sums {
		all = append(all, w.BodyAndSum(sum), w.Symbols(sum), w.Numbers(sum, value), w.Added(sum, s.Values))
		if len(step.Gives) > 0 {
			all = append(all, w.Gathered(sum, step.Gives, s.Values))
		}
		for _, t := range sum.Terms() {
			all = append(all, "- "+w.Term(sum, t))
			if t.Why == statics.Counts {
				all = append(all, "  "+w.TermActs(sum, t, value))
			}
		}
		all = append(all, "absent: "+w.Absent(sum))
	}
	return all
}

func sayResults(s *statics.Solution, w Speaker) []string {
	var all []string
	for i, v := range s.Values {
		all = append(all, w.Found(i, v))
	}
	return all
}

func saySections(s *statics.Solution, w Speaker) []string {
	var all []string
	for _, d := range s.Diagrams {
		all = append(all, "", w.Member(d.Member), w.SectionSigns(d.Member))
		for _, x := range d.Stations() {
			all = append(all, strings.Join([]string{w.Along(d.Member, x.At), w.Cell(x.N), w.Cell(x.V), w.Cell(x.M), w.TensionSide(d.Member, x.M)}, " | "))
		}
		for _, p := range d.Stretches {
			for _, f := range []exact.Poly{p.N, p.V, p.M} {
				all = append(all, w.InFull(p.From)+" to "+w.InFull(p.Until)+": "+w.Function(f))
			}
		}
	}
	return all
}
