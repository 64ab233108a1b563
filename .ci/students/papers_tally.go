package main

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strings"
)

// What became of papers, held against what was done.

// marked is what `unpin mark --as json` says of a paper.
type marked struct {
	Student string
	Answers []struct {
		Name, Verdict, Slip string
		Note                string
		From, Or            []string
		Got, Of             float64
	}
	Unread []any
	Marks  struct{ Got, Of float64 }
}

// paperTally counts what came of papers.
type paperTally struct {
	papers, full               map[string]int
	found, carried, carriedOf  map[string]int
	all, named, namedOf, extra map[string]int
	each, foundOf              map[string]int // mistakes
	hidden, foundOthers        map[string]int // papers that honest work comes to as well, and of the others those found
	highest                    map[string]float64
	misses                     []string
}

func newPaperTally() *paperTally {
	m := func() map[string]int { return map[string]int{} }
	return &paperTally{
		papers: m(), full: m(), found: m(), carried: m(), carriedOf: m(), all: m(), named: m(), namedOf: m(), extra: m(), each: m(), foundOf: m(), hidden: m(), foundOthers: m(),
		highest: map[string]float64{},
	}
}

var atFault = []string{"slip", "wrong", "sense", "close", "unit"}

// note holds the marks of a paper against what was done.
func (ta *paperTally) note(path string, pa *paper, m marked) {
	kind := pa.kind + " " + pa.way
	ta.papers[kind]++
	share := m.Marks.Got / math.Max(m.Marks.Of, 1e-9)
	ta.highest[kind] = math.Max(ta.highest[kind], share)
	var faults []string
	or := map[string][]string{}
	for _, a := range m.Answers {
		if slices.Contains(atFault, a.Verdict) {
			faults = append(faults, a.Name)
			or[a.Name] = a.Or
		}
	}
	miss := func(what string) {
		ta.misses = append(ta.misses, fmt.Sprintf("%s %s (%s at %v): %s; faults %v %v", path, pa.id, strings.Join(pa.made, "; "), pa.faults, what, faults, or))
	}
	if share > 0.9999 {
		ta.full[kind]++
	}
	switch pa.kind {
	case "honest":
		if pa.way == "part" && len(faults) > 0 || pa.way != "part" && share < 0.9999 {
			miss("not full marks")
		} else if pa.way == "part" {
			ta.full[kind]++
		}
	case "random":
		for _, a := range m.Answers {
			if slices.Contains(atFault, a.Verdict) {
				ta.namedOf[kind]++
				if a.Verdict == "slip" || strings.Contains(a.Note, "?") {
					ta.named[kind]++
				}
			}
		}
	case "one", "two":
		ta.mistakes(kind, pa, m, faults, or, miss)
	}
}

// mistakes holds what is said of a paper with mistakes against them. A reading that is told as "or" and has the mistake counts.
func (ta *paperTally) mistakes(kind string, pa *paper, m marked, faults []string, or map[string][]string, miss func(string)) {
	of := func(n string) bool {
		return slices.ContainsFunc(pa.faults, func(f []string) bool {
			return slices.Contains(f, n) || slices.ContainsFunc(or[n], func(o string) bool { return slices.Contains(f, o) })
		})
	}
	found := 0
	for _, f := range pa.faults {
		if slices.ContainsFunc(faults, func(n string) bool {
			return slices.Contains(f, n) || slices.ContainsFunc(or[n], func(o string) bool { return slices.Contains(f, o) })
		}) {
			found++
		}
	}
	ta.foundOf[kind] += len(pa.faults)
	ta.each[kind] += found
	if pa.hidden > 0 {
		ta.hidden[kind]++
	}
	switch {
	case found < len(pa.faults):
		miss(fmt.Sprintf("mistake not found, of which honest work comes to %d", pa.hidden))
	case pa.hidden == 0:
		ta.foundOthers[kind]++
		fallthrough
	default:
		ta.found[kind]++
	}
	if len(faults) > len(pa.faults) {
		ta.extra[kind]++
		miss("more faults than mistakes")
	}
	if found == len(pa.faults) && len(faults) == len(pa.faults) {
		ta.all[kind]++
	}
	for _, a := range m.Answers {
		switch {
		case slices.Contains(faults, a.Name) && of(a.Name):
			ta.namedOf[kind]++
			if a.Verdict == "slip" || a.Verdict == "sense" || strings.Contains(a.Note, "?") {
				ta.named[kind]++
			} else {
				miss("no mistake named at " + a.Name + ", " + a.Verdict + ": " + a.Note)
			}
		case a.Verdict != "missing" && a.Verdict != "right" && a.Verdict != "rounded":
			ta.carriedOf[kind]++
			if a.Verdict == "carried" {
				ta.carried[kind]++
			}
		}
	}
}

// report writes the table.
func (ta *paperTally) report(w io.Writer) {
	fmt.Fprintf(w, "%-12s %7s %7s %8s %8s %9s %8s %8s %8s %8s %8s\n", "papers", "number", "full", "found", "hidden", "of others", "alone", "too many", "carried", "named", "highest")
	for _, k := range sorted(ta.papers) {
		pct := func(n, of int) string {
			if of == 0 {
				return "-"
			}
			return fmt.Sprintf("%.2f", 100*float64(n)/float64(of))
		}
		n := ta.papers[k]
		fmt.Fprintf(w, "%-12s %7d %7s %8s %8d %9s %8s %8s %8s %8s %8.1f\n", k, n, pct(ta.full[k], n), pct(ta.found[k], n), ta.hidden[k], pct(ta.foundOthers[k], n-ta.hidden[k]), pct(ta.all[k], n), pct(ta.extra[k], n),
			pct(ta.carried[k], ta.carriedOf[k]), pct(ta.named[k], ta.namedOf[k]), 100*ta.highest[k])
	}
	for _, m := range ta.misses {
		fmt.Fprintln(w, m)
	}
}
