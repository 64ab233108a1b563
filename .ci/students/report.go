package main

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"
)

// row counts the outcomes of one kind at one level.
type row struct {
	kind  string
	typed int
	of    [passed + 1]int // by outcome
}

func (r row) found() float64 {
	met := r.typed - r.of[passed]
	if met == 0 {
		return 100
	}
	return 100 * float64(r.of[named]+r.of[questioned]) / float64(met)
}

// foundOrAlike counts those as well where what was said gives the same number.
func (r row) foundOrAlike() float64 {
	met := r.typed - r.of[passed]
	if met == 0 {
		return 100
	}
	return 100 * float64(r.of[named]+r.of[questioned]+r.of[alike]) / float64(met)
}

// measure is what kinds of mistakes are, for the sums of a table.
func group(level, kind string) string {
	switch {
	case kind == "random number" || kind == "beyond rounding":
		return kind
	case strings.HasPrefix(kind, sectionHead):
		return "N V M"
	case level != "values":
		return level
	case handlingKind(kind):
		return "values, handling"
	}
	return "values, set-up"
}

var handlingKinds = []string{"sign of the answer", "place of the decimal point", "figures of the answer exchanged", "figures of a number exchanged", "one figure of a number miscopied", "product left out", "product moved with its sign", "minus of a known force lost", "arithmetic of a product", "factor left out", "value of another force put in", "not divided", "divided by another number"}

func handlingKind(kind string) bool { return slices.Contains(handlingKinds, kind) }

// report writes a table of all groups, then one of the kinds in each.
func (t *tally) report(w io.Writer) {
	tables := t.tables()
	fmt.Fprintf(w, "%d frames; true values typed %d, refused %d; N V M accepted beyond rounding %d of %d\n", t.frames, t.honests, len(t.refused), len(t.accepted), t.typed("values", "beyond rounding"))
	head(w, "all kinds")
	for _, g := range sorted(tables) {
		all := tables[g]["all"]
		line(w, &row{kind: g, typed: all.typed, of: all.of})
	}
	for _, g := range sorted(tables) {
		if strings.HasPrefix(g, "random") {
			continue
		}
		head(w, g)
		var rows []*row
		for _, r := range tables[g] {
			rows = append(rows, r)
		}
		slices.SortFunc(rows, func(a, b *row) int { return cmp.Or(cmp.Compare(a.found(), b.found()), cmp.Compare(a.kind, b.kind)) })
		for _, r := range rows {
			line(w, r)
		}
	}
}

// tables counts tries by group and kind, with a row for all kinds of a group.
func (t *tally) tables() map[string]map[string]*row {
	tables := map[string]map[string]*row{}
	for _, tr := range t.tries {
		if tr.kind == "beyond rounding" {
			continue
		}
		g := group(tr.level, tr.kind)
		switch {
		case g == "random number" && readQuestion(tr.question).section:
			g += ", N V M"
		case g == "random number":
			g += ", " + tr.level
		case g == "N V M" && tr.side != "":
			g += ", the piece at the " + tr.side
		}
		if tables[g] == nil {
			tables[g] = map[string]*row{}
		}
		for _, k := range []string{tr.kind, "all"} {
			if tables[g][k] == nil {
				tables[g][k] = &row{kind: k}
			}
			tables[g][k].typed++
			tables[g][k].of[judge(tr)]++
		}
	}
	return tables
}

func head(w io.Writer, title string) {
	fmt.Fprintf(w, "\n### %s\n\n| kind | typed | found %% | or alike %% | %s |\n|---|--:|--:|--:|%s\n", title, strings.Join(outcomes, " | "), strings.Repeat("--:|", len(outcomes)))
}

func line(w io.Writer, r *row) {
	fmt.Fprintf(w, "| %s | %d | %.1f | %.1f |", strings.TrimPrefix(r.kind, sectionHead), r.typed, r.found(), r.foundOrAlike())
	for _, n := range r.of {
		fmt.Fprintf(w, " %d |", n)
	}
	fmt.Fprintln(w)
}
