package marking

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/wording"
)

// Changes are marks held against earlier ones: after an appeal, or with another scheme.
type Changes struct{ before, now map[string][]markRow }

// ReadChanges reads earlier marks that are called name, as CSV writes them.
func ReadChanges(name string, earlier io.Reader) (*Changes, error) {
	rows, err := readMarks(name, earlier)
	return &Changes{before: byPaper(rows), now: map[string][]markRow{}}, err
}

// Add adds a paper as it is marked now.
func (c *Changes) Add(r *Result) {
	for paper, rows := range byPaper(r.markRows()) {
		c.now[paper] = append(c.now[paper], rows...)
	}
}

func byPaper(rows []markRow) map[string][]markRow {
	all := map[string][]markRow{}
	for _, r := range rows {
		all[r.paper] = append(all[r.paper], r)
	}
	return all
}

// markRows are a result as lines of marks, as they would be read back.
func (r *Result) markRows() []markRow {
	var all []markRow
	for _, cells := range r.Rows() {
		got, _ := exact.Parse(cells[10])
		of, _ := exact.Parse(cells[11])
		all = append(all, markRow{paper: strings.Join(cells[:4], "\x00"), problem: cells[1], copyOf: cells[2], quantity: cells[4], given: cells[6], verdict: cells[7], slip: cells[8], got: got, of: of})
	}
	return all
}

// Text says in which papers and answers the marks differ.
func (c *Changes) Text() string {
	var papers []string
	for _, m := range []map[string][]markRow{c.before, c.now} {
		for p := range m {
			papers = append(papers, p)
		}
	}
	slices.Sort(papers)
	papers = slices.Compact(papers)
	var text strings.Builder
	changed := 0
	for _, p := range papers {
		if said := c.paper(p); said != "" {
			changed++
			text.WriteString(said)
		}
	}
	fmt.Fprintf(&text, "%d of %s changed.\n", changed, wording.Counted(len(papers), "paper"))
	return text.String()
}

// paper says what changed in a paper; nothing where all is as before.
func (c *Changes) paper(p string) string {
	cells := strings.Split(p, "\x00")
	name := strings.TrimSpace(strings.Join(cells[:3], " "))
	if cells[3] != "1" {
		name += ", attempt " + cells[3]
	}
	before, now := c.before[p], c.now[p]
	switch {
	case before == nil:
		return fmt.Sprintf("%s: %s now, not marked before\n", name, Points(total(now)))
	case now == nil:
		return fmt.Sprintf("%s: %s before, not marked now\n", name, Points(total(before)))
	}
	var lines []string
	for _, n := range now {
		i := slices.IndexFunc(before, func(b markRow) bool { return b.quantity == n.quantity })
		b := markRow{verdict: "not there"}
		if i >= 0 {
			b = before[i]
		}
		if n.verdict != b.verdict || n.got.Sub(b.got).Abs().Cmp(thousandth) > 0 {
			lines = append(lines, fmt.Sprintf("  %s: %s, %s before; %s, %s now\n", n.quantity, b.verdict, Points(b.got), n.verdict, Points(n.got)))
		}
	}
	for _, b := range before {
		if !slices.ContainsFunc(now, func(n markRow) bool { return b.quantity == n.quantity }) {
			lines = append(lines, fmt.Sprintf("  %s: %s, %s before; not there now\n", b.quantity, b.verdict, Points(b.got)))
		}
	}
	if len(lines) == 0 {
		return ""
	}
	return fmt.Sprintf("%s: %s before, %s now\n%s", name, Points(total(before)), Points(total(now)), strings.Join(lines, ""))
}

// total is what the answers of a paper get together, before rounding.
func total(rows []markRow) exact.Num {
	sum := exact.Num{}
	for _, r := range rows {
		sum = sum.Add(r.got)
	}
	return sum
}
