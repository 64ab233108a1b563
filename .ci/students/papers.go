package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// Papers are whole answers to a frame, worked to the end by a student who makes one mistake, two, or none, and carries on
// with three figures at every step. They are marked by `unpin mark`, and what it says is held against what was done.

// paper is one student's answers, and where the mistakes are.
type paper struct {
	id     string
	kind   string   // honest, one, two, zeros, same
	way    string   // plan, other
	made   []string // the kinds of the mistakes, and the sums
	faults [][]string
	hidden int             // of the mistakes, those that honest work comes to as well
	wrong  map[string]bool // forces that do not come out right
	values [][2]string     // name and value, in the order of working
	sums   []string        // as they stand on the page
}

// papersOf works papers on a frame.
type papersOf struct {
	t     *task
	r     *rand.Rand
	names []string // what is asked for
	own   map[string]float64
	carry string
}

// done is a step as a student takes it: sums, and the forces they give.
type done struct {
	es    []*equation
	gives []string
}

// planWay is unpin's plan.
func (p *papersOf) planWay() []done {
	var all []done
	for _, s := range p.t.unpin.Plan {
		if len(s.Gives) == 0 || len(s.Gives) != len(s.sums()) {
			continue
		}
		d := done{gives: s.Gives}
		for _, sum := range s.sums() {
			d.es = append(d.es, p.t.equation(sum))
		}
		all = append(all, d)
	}
	return all
}

// otherWay draws a valid order of its own: any sum of a part or of the whole, about any joint, with one unknown left; where
// there is none, the plan's step.
func (p *papersOf) otherWay() []done {
	known := map[string]bool{}
	var all []done
	for len(known) < len(p.t.values) {
		var free []done
		for _, e := range p.sums() {
			if left := e.left(known); len(left) == 1 {
				free = append(free, done{[]*equation{e}, left})
			}
		}
		if len(free) == 0 {
			for _, d := range p.planWay() {
				if !slices.ContainsFunc(d.gives, func(n string) bool { return known[n] }) && p.sound(d, known) {
					free = append(free, d)
					break
				}
			}
		}
		if len(free) == 0 {
			return p.planWay()
		}
		d := free[p.r.IntN(len(free))]
		all = append(all, d)
		for _, n := range d.gives {
			known[n] = true
		}
	}
	return all
}

func (p *papersOf) sound(d done, known map[string]bool) bool {
	for _, e := range d.es {
		for _, n := range e.left(known) {
			if !slices.Contains(d.gives, n) {
				return false
			}
		}
	}
	return true
}

// left lists the unknowns of a sum that are not known.
func (e *equation) left(known map[string]bool) []string {
	k := map[string]float64{}
	for _, t := range e.terms {
		if t.u != nil && !known[t.u.name] {
			k[t.u.name] += t.size()
		}
	}
	var all []string
	for _, n := range sorted(k) {
		if !zero(k[n]) {
			all = append(all, n)
		}
	}
	return all
}

// sums are those that a student may write.
func (p *papersOf) sums() []*equation {
	var all []*equation
	bodies := [][]int{}
	whole := []int{}
	for i := range p.t.frame.parts {
		bodies, whole = append(bodies, []int{i}), append(whole, i)
	}
	if len(whole) > 1 {
		bodies = append(bodies, whole)
	}
	for _, b := range bodies {
		make := func(e equation) {
			e.t, e.turn, e.parts = p.t, 1, map[int]bool{}
			for _, i := range b {
				e.parts[i] = true
			}
			e.fill()
			all = append(all, &e)
		}
		make(equation{along: vec{1, 0}})
		make(equation{along: vec{0, 1}})
		for _, j := range sorted(p.t.frame.joints) {
			on := slices.ContainsFunc(p.t.frame.members, func(m *member) bool { return (m.a == j || m.b == j) && slices.Contains(b, m.part) })
			if on {
				make(equation{moment: true, about: p.t.frame.joints[j]})
			}
		}
	}
	return all
}

// work works a paper; mistakes lists at which steps one is made. It is nil where no mistake shows.
func (p *papersOf) work(way []done, mistakes []int) *paper {
	p.own = map[string]float64{}
	pa := &paper{wrong: map[string]bool{}}
	for i, d := range way {
		es := slices.Clone(d.es)
		k, rest, scale := rows(p.carried(es, d.gives), d.gives, p.own)
		right, ok := settle(k, rest)
		if !ok {
			return nil
		}
		values := right
		if slices.Contains(mistakes, i) {
			at := p.r.IntN(len(es))
			var kinds []alteration
			for _, a := range es[at].alterations(p.own) {
				altered := slices.Clone(es)
				altered[at] = es[at].apply(a)
				k, rest, _ := rows(altered, d.gives, p.own)
				v, ok := settle(k, rest)
				if ok && p.shows(es, d.gives, v) && math.Abs(v[0]) < 50*scale {
					kinds = append(kinds, a)
				}
			}
			if len(kinds) == 0 {
				return nil
			}
			a := p.oneOf(kinds)
			es[at] = es[at].apply(a)
			k, rest, _ := rows(p.carried(es, d.gives), d.gives, p.own)
			values, _ = settle(k, rest)
			if !p.true(d.gives, values) {
				pa.faults = append(pa.faults, d.gives)
				pa.made = append(pa.made, a.kind+" in "+es[at].written(p.own))
			}
		}
		for _, e := range es {
			pa.sums = append(pa.sums, e.written(p.own))
		}
		for n, name := range d.gives {
			pa.sums = append(pa.sums, "    "+name+" = "+figures(values[n], 3))
			p.keep(name, values[n])
			pa.wrong[name] = math.Abs(p.own[name]-p.t.values[name]) > 0.02*math.Max(math.Abs(p.t.values[name]), 1e-6)
			pa.values = append(pa.values, [2]string{name, figures(values[n], 3)})
		}
	}
	return pa
}

// oneOf draws a kind of mistake, each as often as any other, and of these one.
func (p *papersOf) oneOf(all []alteration) alteration {
	byKind := map[string][]alteration{}
	for _, a := range all {
		byKind[a.kind] = append(byKind[a.kind], a)
	}
	kinds := sorted(byKind)
	these := byKind[kinds[p.r.IntN(len(kinds))]]
	return these[p.r.IntN(len(these))]
}

// true reports whether all values of a step are the true ones to three figures: then there is no mistake to be found, though
// one was made that makes good another.
func (p *papersOf) true(gives []string, values []float64) bool {
	for i, n := range gives {
		if rounded(values[i], 3) != rounded(p.t.values[n], 3) {
			return false
		}
	}
	return true
}

// shows reports whether wrong values violate a sum of the step by more than rounding comes to.
func (p *papersOf) shows(es []*equation, gives []string, v []float64) bool {
	known := map[string]float64{}
	for n, x := range p.own {
		known[n] = x
	}
	for i, n := range gives {
		known[n] = v[i]
	}
	for _, e := range es {
		scale := 0.0
		for _, t := range e.terms {
			scale = math.Max(scale, math.Abs(t.worth(known)))
		}
		if math.Abs(e.total(known)) > 0.02*scale {
			return true
		}
	}
	return false
}

// along adds N, V and M as they follow from the student's own forces, by pieces from either end.
func (p *papersOf) along(pa *paper) {
	places := map[string]float64{}
	for _, name := range p.names {
		if rest, ok := strings.CutPrefix(name, "x of V = 0 in "); ok {
			f := strings.Fields(rest) // BC from 0 to 12.5
			lo, hi := fraction(f[2]), fraction(f[4])
			x, ok := p.zero(p.t.frame.member(f[0]), lo, hi)
			if !ok {
				delete(places, f[0])
				continue
			}
			x = rounded(x, 3)
			places[f[0]] = x
			pa.values = append(pa.values, [2]string{name, strconv.FormatFloat(x, 'f', -1, 64)})
			continue
		}
		q, rest, ok := strings.Cut(strings.TrimSuffix(name, ")"), "(")
		if !ok {
			continue
		}
		f := strings.Fields(strings.Replace(rest, ",", " ", 1))
		m := p.t.frame.member(f[0])
		x, peak := 0.0, q == "max M"
		if peak {
			q = "M"
		} else {
			x = fraction(f[1])
		}
		if own, ok := places[f[0]]; peak && ok {
			x = own
		} else if peak {
			continue
		} else if len(f) > 2 && f[2] == "before" || math.Abs(x-m.length) < 1e-4 {
			x = math.Min(x, m.length) - 1e-5 // the name has six figures of the place
		} else {
			x += 1e-5
		}
		e := p.t.cut(m, x, q, p.r.IntN(2) == 0)
		v, scale := e.total(p.own), 0.0
		for _, t := range e.terms {
			scale = math.Max(scale, math.Abs(t.worth(p.own)))
		}
		drift, lost := 0.0, 0.0 // of the little that the place is off, and of the figures lost in the forces
		for _, own := range p.own {
			drift = math.Max(drift, 3e-5*math.Abs(own))
		}
		for _, t := range e.terms {
			if t.u != nil {
				lost += math.Abs(t.size()) * 0.5 * math.Pow(10, math.Floor(math.Log10(math.Max(math.Abs(p.own[t.u.name]), 1e-9)))-2)
			}
		}
		if truth := e.total(p.t.values); math.Abs(v) < drift || math.Abs(truth) < drift && math.Abs(v) < math.Max(0.03*scale, lost) {
			v = 0 // a student knows what must be zero
		}
		pa.values = append(pa.values, [2]string{name, figures(v, 3)})
	}
}

// zero is where the student's own shear is zero.
func (p *papersOf) zero(m *member, lo, hi float64) (float64, bool) {
	v := func(x float64) float64 { return p.t.cut(m, x, "V", true).total(p.own) }
	a, b := lo+1e-5, hi-1e-5 // the name has six figures of the place, and a load may stand there
	if v(a)*v(b) >= 0 {
		return 0, false
	}
	for range 60 {
		c := (a + b) / 2
		if v(a)*v(c) <= 0 {
			b = c
		} else {
			a = c
		}
	}
	return (a + b) / 2, true
}

// frame works papers on one frame and marks them.
func (ta *paperTally) frame(unpin, out, carry string, seed uint64, per int) error {
	path := filepath.Join(out, fmt.Sprintf("f%d.yaml", seed))
	if err := os.WriteFile(path, []byte(newDraft(seed).text(fmt.Sprintf("frame %d", seed))), 0o644); err != nil {
		return err
	}
	t, err := newTask(unpin, path)
	if err != nil {
		return err
	}
	p := &papersOf{t: t, r: rand.New(rand.NewPCG(seed, 16)), carry: carry}
	blank, err := exec.Command(unpin, "mark", path, "--blank").Output()
	if err != nil {
		return fmt.Errorf("--blank: %w", err)
	}
	p.names = blankNames(string(blank))
	papers := p.draw(per)
	var text bytes.Buffer
	for _, pa := range papers {
		fmt.Fprintf(&text, "student: %s\n", pa.id)
		for _, v := range pa.values {
			fmt.Fprintf(&text, "%s = %s\n", v[0], v[1])
		}
	}
	answers := filepath.Join(out, fmt.Sprintf("f%d.txt", seed))
	if err := os.WriteFile(answers, text.Bytes(), 0o644); err != nil {
		return err
	}
	marks, err := exec.Command(unpin, "mark", path, answers, "--as", "json").Output()
	if err != nil {
		return fmt.Errorf("mark: %w", err)
	}
	var all []marked
	if err := json.Unmarshal(marks, &all); err != nil {
		return err
	}
	byID := map[string]marked{}
	for _, m := range all {
		byID[m.Student] = m
	}
	for _, pa := range papers {
		pa.hidden = len(p.hidden(pa))
		ta.note(path, pa, byID[pa.id])
	}
	return nil
}

// blankNames are the names in the table of answers.
func blankNames(table string) []string {
	var all []string
	for _, line := range strings.Split(table, "\n")[1:] {
		if f := strings.SplitN(line, ",", 3); len(f) == 3 {
			all = append(all, strings.Trim(strings.TrimSuffix(f[2], ","), `"`))
		}
	}
	return all
}

// draw works the papers of a frame.
func (p *papersOf) draw(per int) []*paper {
	var all []*paper
	add := func(pa *paper, kind, way string) {
		if pa != nil {
			p.along(pa)
			if way == "part" {
				pa.values = slices.DeleteFunc(pa.values, func([2]string) bool { return p.r.IntN(3) == 0 })
			}
			pa.kind, pa.way, pa.id = kind, way, fmt.Sprintf("%s-%s-%d", kind, way, len(all))
			all = append(all, pa)
		}
	}
	for range per {
		plan, other := p.planWay(), p.otherWay()
		add(p.work(plan, nil), "honest", "plan")
		add(p.work(other, nil), "honest", "other")
		add(p.work(other, nil), "honest", "part")
		p.mistaken(plan, 1, "plan", add)
		p.mistaken(other, 1, "other", add)
		if len(plan) > 2 {
			p.mistaken(plan, 2, "plan", add)
			p.mistaken(other, 2, "other", add)
		}
	}
	for _, same := range []string{"0", "5", "12.5"} {
		pa := &paper{kind: "same", way: same, id: "same-" + same}
		for _, n := range p.names {
			pa.values = append(pa.values, [2]string{n, same})
		}
		all = append(all, pa)
	}
	pa := &paper{kind: "random", way: "any", id: "random"}
	for _, n := range p.names {
		pa.values = append(pa.values, [2]string{n, figures(p.r.Float64()*40-20, 3)})
	}
	return append(all, pa)
}

// mistaken adds a paper with so many mistakes that are to be found.
func (p *papersOf) mistaken(way []done, n int, name string, add func(pa *paper, kind, way string)) {
	if len(way) < n {
		return
	}
	if pa := p.work(way, p.r.Perm(len(way))[:n]); pa != nil && len(pa.faults) == n {
		add(pa, []string{"", "one", "two"}[n], name)
	}
}

// papers works papers on frames and reports.
func papers(unpin, out, carry string, seed uint64, frames, per int) error {
	ta := newPaperTally()
	for s := seed; s < seed+uint64(frames); s++ {
		if err := ta.frame(unpin, out, carry, s, per); err != nil {
			fmt.Printf("frame %d: %v\n", s, err)
		}
	}
	ta.report(os.Stdout)
	return nil
}
