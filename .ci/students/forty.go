package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// Papers to be marked by people: worked in a free order, with one mistake, two or none, their sums written out, and no verdict.
// The folder gets a page for each frame (the statement, the true values, the papers) and, to be marked by the program, the
// frames and the answers alone.

// byHand writes so many papers into a folder.
func byHand(unpin, out string, seed uint64, papers int) error {
	n := 0
	for s := seed; n < papers; s++ {
		t, err := handTask(unpin, out, s)
		if err != nil || len(t.values) < 5 || len(t.values) > 9 {
			continue
		}
		p := &papersOf{t: t, r: rand.New(rand.NewPCG(s, 40))}
		var page, answers strings.Builder
		p.statement(&page, unpin)
		for k := 0; k < 4 && n < papers; {
			if pa := p.forHand(n); pa != nil {
				n, k = n+1, k+1
				pa.write(&page, &answers, fmt.Sprintf("p%02d", n))
			}
		}
		base := filepath.Join(out, fmt.Sprintf("f%d", s))
		if err := os.WriteFile(base+".page.txt", []byte(page.String()), 0o644); err != nil {
			return err
		}
		if err := os.WriteFile(base+".txt", []byte(answers.String()), 0o644); err != nil {
			return err
		}
	}
	return nil
}

func handTask(unpin, out string, seed uint64) (*task, error) {
	path := filepath.Join(out, fmt.Sprintf("f%d.yaml", seed))
	if err := os.WriteFile(path, []byte(newDraft(seed).text(fmt.Sprintf("frame %d", seed))), 0o644); err != nil {
		return nil, err
	}
	return newTask(unpin, path)
}

// statement is the problem with its true values.
func (p *papersOf) statement(page *strings.Builder, unpin string) {
	given, _ := exec.Command(unpin, "sheet", p.t.path, "--as", "text").Output()
	file, _ := os.ReadFile(p.t.path)
	words, _, _ := strings.Cut(string(given), "Give three figures")
	_, words, _ = strings.Cut(words, "licensed engineer.\n")
	fmt.Fprintf(page, "%s\n%s\nTRUE VALUES, a value with a minus is in the sense opposite to the one named:\n", words, file)
	for _, u := range p.t.frame.unknowns {
		sense := fmt.Sprintf("along (%.4g, %.4g)", u.dir.x, u.dir.y)
		if u.couple {
			sense = "counter-clockwise"
		}
		fmt.Fprintf(page, "  %-4s %10s  positive %s on part %s\n", u.name, figures(p.t.values[u.name], 4), sense, p.t.members(u.on))
	}
}

// members names a part by its members.
func (t *task) members(part int) string {
	var all []string
	for _, m := range t.frame.members {
		if m.part == part {
			all = append(all, m.name)
		}
	}
	return strings.Join(all, "+")
}

// forHand is a paper of a kind that is drawn; nil where none comes of it.
func (p *papersOf) forHand(n int) *paper {
	way := p.otherWay()
	var at []int
	switch n % 8 {
	case 0:
	case 1, 3, 5, 7:
		at = []int{p.r.IntN(len(way))}
	default:
		at = p.r.Perm(len(way))[:min(2, len(way))]
	}
	pa := p.work(way, at)
	if pa == nil || len(pa.faults) != len(at) {
		return nil
	}
	i := p.r.IntN(len(pa.values))
	switch v := &pa.values[i]; {
	case n%8 == 7: // given in the opposite sense at the last
		v[1] = strings.TrimPrefix("-"+v[1], "--")
	case n%8 == 5: // left out
		v[1] = ""
	}
	return pa
}

// write writes a paper for people, and its answers for the program.
func (pa *paper) write(page, answers *strings.Builder, id string) {
	fmt.Fprintf(page, "\nPAPER %s\n", id)
	for _, line := range pa.sums {
		fmt.Fprintln(page, "  "+line)
	}
	fmt.Fprintf(page, "  Answers:")
	fmt.Fprintf(answers, "student: %s\n", id)
	values := slices.Clone(pa.values)
	slices.SortFunc(values, func(a, b [2]string) int { return strings.Compare(a[0], b[0]) })
	for _, v := range values {
		if v[1] == "" {
			fmt.Fprintf(page, "  %s not given;", v[0])
			continue
		}
		fmt.Fprintf(page, "  %s = %s;", v[0], v[1])
		fmt.Fprintf(answers, "%s = %s\n", v[0], v[1])
	}
	fmt.Fprintln(page)
}

// written is a sum as it stands on the page of a student who knows some forces.
func (e *equation) written(known map[string]float64) string {
	var bodies []string
	for _, i := range sorted2(e.parts) {
		bodies = append(bodies, e.t.members(i))
	}
	title := fmt.Sprintf("ΣF along (%.4g, %.4g)", e.along.x, e.along.y)
	if e.moment {
		title = fmt.Sprintf("ΣM about (%.4g, %.4g), counter-clockwise +", e.about.x, e.about.y)
	}
	var text strings.Builder
	fmt.Fprintf(&text, "on %s, %s:  ", strings.Join(bodies, " and "), title)
	for i, t := range e.terms {
		size := t.size()
		sign := " + "
		if size < 0 {
			sign = " - "
		}
		if i == 0 {
			sign = strings.TrimSpace(strings.TrimPrefix(sign, " +"))
		}
		text.WriteString(sign + t.writtenProduct(known, e.moment))
	}
	return text.String() + " = 0"
}

func (t *term) writtenProduct(known map[string]float64, moment bool) string {
	part := short(math.Abs(t.part))
	if t.u != nil {
		name := t.u.name
		if v, ok := known[name]; ok {
			name = "(" + short(v) + ")"
		}
		if part = part + "*" + name; math.Abs(math.Abs(t.part)-1) < 1e-9 {
			part = name
		}
	}
	if !moment || t.axis == 'c' {
		return part
	}
	return part + "*" + short(math.Abs(t.arm))
}

// short is a number in up to four figures without zeros at its end.
func short(v float64) string {
	s := figures(v, 4)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

func sorted2(m map[int]bool) []int {
	var all []int
	for i := range m {
		all = append(all, i)
	}
	slices.Sort(all)
	return all
}
