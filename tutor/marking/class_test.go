package marking

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

var classIn = flag.String("class", "", "a folder to write a set and the answers of 300 students to it into")

// classOf are ten problems of the library, easy ones and hard ones, for the class of the measurements.
var classOf = []string{"jetty-deck", "mill-bridge", "tram-girder", "quay-gantry", "riding-hall", "market-hall", "butterfly-roof", "step-ladders", "grain-chute", "net-loft"}

// classMate answers all that a problem asks for: every value follows from the student's own before it, rounded to three figures;
// some steps come to something else, and some values are left out.
func classMate(r *rand.Rand, m *Marker, mistakes int) *Paper {
	own := m.truths()
	steps := slices.DeleteFunc(slices.Clone(m.Plan), func(s statics.Step) bool { return len(s.Gives) != 1 || s.Relation || s.Check })
	at := r.Perm(len(steps))[:min(mistakes, len(steps))]
	for n, step := range steps {
		i := m.ofForce(step.Gives[0])
		forces := make([]exact.Num, len(m.Forces))
		for f := range m.Forces {
			forces[f] = own[m.ofForce(f)]
		}
		forces[step.Gives[0]] = exact.Num{}
		v, err := step.Sums[0].Residual(forces).Neg().Quo(step.Sums[0].Factor(step.Gives[0]))
		if err != nil {
			continue
		}
		terms := slices.DeleteFunc(slices.Clone(step.Sums[0].Terms()), func(t statics.Term) bool { return t.Amount(forces).IsZero() })
		for _, k := range at {
			if k == n && len(terms) > 0 {
				t := terms[r.IntN(len(terms))]
				if w, err := t.Amount(forces).Quo(step.Sums[0].Factor(step.Gives[0])); err == nil {
					v = v.Add(w.Mul(altering(r)))
				}
			}
		}
		own[i] = v.Rounded(3)
	}
	for k := range m.innerRow {
		r := &m.innerRow[k]
		if r.inner.kind != "kept" || r.off != nil || r.inner.side != statics.FromStart {
			continue
		}
		rest := exact.Num{}
		for c, item := range r.items[1:] {
			rest = rest.Add(r.factors[c+1].Mul(own[item]))
		}
		for _, t := range r.rests {
			rest = rest.Add(t)
		}
		if v, err := rest.Neg().Quo(r.factors[0]); err == nil {
			own[r.items[0]] = v.Rounded(3)
		}
	}
	p := &Paper{Problem: m.Name, Attempt: 1}
	for i, item := range m.Items {
		if r.IntN(20) > 0 {
			p.Entries = append(p.Entries, Entry{Line: i + 1, Quantity: item.Name, Value: own[i].Decimal(12)})
		}
	}
	return p
}

// altering is by how many times itself a term is off: turned, left out, halved, doubled, or as often with an arm of anybody's own.
func altering(r *rand.Rand) exact.Num {
	if r.IntN(2) == 0 {
		return exact.MustParse([]string{"2", "1", "0.5", "-1"}[r.IntN(4)])
	}
	return exact.Int(int64(r.IntN(400) - 200)).Mul(exact.MustParse("0.01"))
}

// class are the papers of so many students to one problem: a third of them without a mistake, half with one, the rest with two.
func class(r *rand.Rand, m *Marker, students int) []*Paper {
	var all []*Paper
	for n := range students {
		p := classMate(r, m, []int{0, 0, 1, 1, 1, 2}[n%6])
		p.Student = fmt.Sprintf("s%03d", n)
		all = append(all, p)
	}
	return all
}

// BenchmarkClass marks a class of 300 students with ten problems on all cores, again and again with markers of its own.
func BenchmarkClass(b *testing.B) {
	r := rand.New(rand.NewPCG(16, 3))
	var papers [][]*Paper
	for _, name := range classOf {
		papers = append(papers, class(r, markerOf(b, name), 300))
	}
	if *classIn != "" {
		writeClass(b, papers)
	}
	for b.Loop() {
		for k, name := range classOf {
			m := markerOf(b, name)
			next := make(chan *Paper)
			var group sync.WaitGroup
			for range runtime.GOMAXPROCS(0) {
				group.Go(func() {
					for p := range next {
						m.Mark(p, DefaultScheme(), ten)
					}
				})
			}
			for _, p := range papers[k] {
				next <- p
			}
			close(next)
			group.Wait()
		}
	}
}

// writeClass writes the class for the command.
func writeClass(b *testing.B, papers [][]*Paper) {
	set := "id: class\ntitle: Class\nseed: s\nproblems:\n"
	var csv strings.Builder
	csv.WriteString("student,problem,quantity,value\n")
	for k, name := range classOf {
		set += "  - {problem: " + name + ", points: 10}\n"
		for _, p := range papers[k] {
			for _, e := range p.Entries {
				fmt.Fprintf(&csv, "%s,%s,%q,%s\n", p.Student, p.Problem, e.Quantity, e.Value)
			}
		}
	}
	for name, text := range map[string]string{"set.yaml": set, "answers.csv": csv.String()} {
		if err := os.WriteFile(filepath.Join(*classIn, name), []byte(text), 0o666); err != nil {
			b.Fatal(err)
		}
	}
}
