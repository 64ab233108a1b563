package marking

import (
	"cmp"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"unpin/problems/variant"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// A Report is what a class got wrong, by the marks that CSV writes.
type Report struct {
	Papers    int
	Got, Of   exact.Num
	Items     []ItemReport // by problem, then as marked
	Steps     []StepReport // by problem, then as marked
	Mistakes  []Mistake    // the commonest first
	Topics    []Topic      // what to teach again, the most needed first
	Suspects  []Suspect    // items whose true value looks wrong
	Few       []string     // problems with so few papers that nothing is told of them
	Students  []Standing   // who got what; none where no names are to be told
	anonymous bool
	Unread    int // answers of which nothing was made
	byProblem map[string]*sums
	places    places
}

// An ItemReport is what became of one value in a class.
type ItemReport struct {
	Problem, Quantity             string
	Papers                        int
	Right, Carried, Begins, Blank int // begins: the trouble began there
}

// A Mistake is one slip in one problem.
type Mistake struct {
	Slip       *slip.Slip
	Problem    string
	Steps      []string       // at which it was made
	At         map[string]int // how many papers have it at each
	Papers, Of int
	Example    Example // the commonest of the wrong values
	examples   map[string]*Example
}

// An Example is a wrong value of the class, and what comes of it.
type Example struct {
	Quantity, Given string
	Papers          int
	Leaves          string // the sum that it violates, and what that comes to; empty where that is not in the marks
	Symbols         string // that sum written out, and with the student's numbers; empty likewise
	Numbers         string
}

// A Standing is what one student got for one problem, and in which values the trouble began.
type Standing struct {
	Student, Problem string
	Got, Of          exact.Num
	Begins           []string
}

// A Topic is a group of slips, with how many papers have one.
type Topic struct {
	Name          string
	Papers, Times int
	Says          string // the principle that its commonest mistake goes against
}

// Few is how many papers the least group has of which anything is told.
const Few = 5

// mostMarks bounds a file of marks.
const mostMarks = 256 << 20

type sums struct {
	papers int
	got    exact.Num
	of     exact.Num
}

// markRow is a line of marks.
type markRow struct {
	paper                                                     string // what tells papers apart
	problem, quantity, expected, given, verdict, slip, copyOf string
	student, note, from                                       string
	value                                                     string // the quantity by a name that all papers share
	got, of                                                   exact.Num
}

// ReadReport reads marks that are called name, as CSV writes them, and counts. Anonymous names no student, and tells nothing of
// problems with fewer than Few papers.
func ReadReport(name string, from io.Reader, anonymous bool) (*Report, error) {
	rows, err := readMarks(name, from)
	if err != nil {
		return nil, err
	}
	return newReport(rows, anonymous), nil
}

func readMarks(name string, from io.Reader) ([]markRow, error) {
	lines := csv.NewReader(io.LimitReader(from, mostMarks))
	lines.FieldsPerRecord = -1
	lines.ReuseRecord = true
	at := func(line int, format string, args ...any) error {
		return fmt.Errorf("%s:%d: %s", notation.Visible(name), line, fmt.Sprintf(format, args...))
	}
	head, err := lines.Read()
	if err != nil || !slices.Equal(head, Columns) {
		return nil, at(1, "these are no marks: they begin with the line %s, as unpin mark --as csv writes it", strings.Join(Columns, ","))
	}
	var rows []markRow
	for {
		cells, err := lines.Read()
		var syntax *csv.ParseError
		switch {
		case errors.Is(err, io.EOF):
			return rows, nil
		case errors.As(err, &syntax):
			return nil, at(syntax.StartLine, "a quotation mark is not where a cell begins and ends")
		case err != nil:
			return nil, fmt.Errorf("%s cannot be read: %w", notation.Visible(name), err)
		}
		line, _ := lines.FieldPos(0)
		switch {
		case len(cells) != len(Columns):
			return nil, at(line, "there are %d cells and %d columns", len(cells), len(Columns))
		}
		for i := range cells {
			cells[i] = variant.BareCell(cells[i])
		}
		r := markRow{paper: strings.Join(cells[:4], "\x00"), problem: cells[1], copyOf: cells[2], quantity: strings.Clone(cells[4]), expected: strings.Clone(cells[5]),
			given: strings.Clone(cells[6]), verdict: strings.Clone(cells[7]), slip: strings.Clone(cells[8])}
		r.problem, r.copyOf = strings.Clone(r.problem), strings.Clone(r.copyOf)
		r.student, r.note, r.from = strings.Clone(cells[0]), strings.Clone(cells[12]), strings.Clone(cells[9])
		var errGot, errOf error
		r.got, errGot = exact.Parse(cells[10])
		r.of, errOf = exact.Parse(cells[11])
		if errGot != nil || errOf != nil {
			return nil, at(line, "got and of are numbers, not %q and %q", cells[10], cells[11])
		}
		rows = append(rows, r)
	}
}

// counting is the work of counting marks.
type counting struct {
	*Report
	items    map[[2]string]*ItemReport
	mistakes map[[2]string]*Mistake
	made     map[[4]string]bool // a mistake counts once a paper, and once at each step
	topics   map[slip.Group]map[string]int
	papers   map[string]*sums
	slips    map[string]*slip.Slip
	steps    map[stepKey]*standing
	known    map[[2]string]bool // steps by problem and name
	unnamed  map[doubted][]markRow
}

func newReport(rows []markRow, anonymous bool) *Report {
	c := counting{Report: &Report{anonymous: anonymous, byProblem: map[string]*sums{}}, items: map[[2]string]*ItemReport{}, mistakes: map[[2]string]*Mistake{}, made: map[[4]string]bool{},
		topics: map[slip.Group]map[string]int{}, papers: map[string]*sums{}, slips: map[string]*slip.Slip{},
		steps: map[stepKey]*standing{}, known: map[[2]string]bool{}, unnamed: map[doubted][]markRow{}}
	for _, s := range slip.Catalogue() {
		c.slips[s.ID] = s
	}
	c.places = placesOf(rows)
	for i, r := range rows {
		rows[i].value = c.places.name(r)
		c.row(rows[i])
	}
	c.finish(rows)
	return c.Report
}

func (c *counting) row(r markRow) {
	if c.papers[r.paper] == nil {
		c.papers[r.paper] = &sums{}
		if c.byProblem[r.problem] == nil {
			c.byProblem[r.problem] = &sums{}
		}
		c.byProblem[r.problem].papers++
		c.Papers++
	}
	c.Got, c.Of = c.Got.Add(r.got), c.Of.Add(r.of)
	for _, s := range []*sums{c.papers[r.paper], c.byProblem[r.problem]} {
		s.got, s.of = s.got.Add(r.got), s.of.Add(r.of)
	}
	if r.verdict == "unread" {
		c.Unread++
		return
	}
	c.step(r)
	if s := c.slipOf(r); s == nil {
		c.noteUnnamed(r)
	} else {
		c.mistake(r, s)
		if c.topics[s.Group] == nil {
			c.topics[s.Group] = map[string]int{}
		}
		c.topics[s.Group][r.paper]++
	}
	if _, _, part := partOf(r.quantity); part {
		return
	}
	key := [2]string{r.problem, r.value}
	item := c.items[key]
	if item == nil {
		item = &ItemReport{Problem: r.problem, Quantity: r.value}
		c.items[key] = item
	}
	item.Papers++
	switch r.verdict {
	case Right, Rounded:
		item.Right++
	case Carried:
		item.Carried++
	case Missing:
		item.Blank++
	default:
		item.Begins++
	}
}

// mistake counts a slip.
func (c *counting) mistake(r markRow, s *slip.Slip) {
	m := c.mistakes[[2]string{r.problem, s.ID}]
	if m == nil {
		m = &Mistake{Slip: s, Problem: r.problem, At: map[string]int{}, examples: map[string]*Example{}}
		c.mistakes[[2]string{r.problem, s.ID}] = m
	}
	step := stepOfRow(r.quantity)
	if key := [4]string{r.paper, r.problem, s.ID, step}; !c.made[key] {
		c.made[key] = true
		if m.At[step]++; m.At[step] == 1 {
			m.Steps = append(m.Steps, step)
		}
	}
	m.exemplify(r)
	if key := [4]string{r.paper, r.problem, s.ID}; !c.made[key] {
		c.made[key] = true
		m.Papers++
	}
}

// finish puts what was counted in order. Of a problem with few papers nothing is told.
func (c *counting) finish(rows []markRow) {
	c.countSteps()
	c.countUnnamed()
	for problem := range c.byProblem {
		if c.few(problem) {
			c.Few = append(c.Few, problem)
		}
	}
	slices.Sort(c.Few)
	for _, r := range rows {
		if item := c.items[[2]string{r.problem, r.value}]; item != nil && !c.few(r.problem) {
			c.Items = append(c.Items, *item)
			delete(c.items, [2]string{r.problem, r.value})
		}
	}
	slices.SortStableFunc(c.Items, func(a, b ItemReport) int { return cmp.Compare(a.Problem, b.Problem) })
	for _, m := range c.mistakes {
		if m.Of = c.byProblem[m.Problem].papers; !c.few(m.Problem) && !c.hidden(m.Papers) {
			slices.Sort(m.Steps)
			m.Example = commonest(m.examples)
			if c.hidden(m.Example.Papers) {
				m.Example = Example{}
			}
			c.Mistakes = append(c.Mistakes, *m)
		}
	}
	slices.SortFunc(c.Mistakes, func(a, b Mistake) int {
		return cmp.Or(b.Papers-a.Papers, cmp.Compare(a.Problem, b.Problem), cmp.Compare(a.Slip.ID, b.Slip.ID))
	})
	for group, papers := range c.topics {
		times := 0
		for _, n := range papers {
			times += n
		}
		if !c.hidden(len(papers)) {
			t := Topic{Name: group.String(), Papers: len(papers), Times: times}
			if i := slices.IndexFunc(c.Mistakes, func(m Mistake) bool { return m.Slip.Group == group && m.Slip != alikeWrong }); i >= 0 {
				t.Says = c.Mistakes[i].Slip.Says
			}
			c.Topics = append(c.Topics, t)
		}
	}
	slices.SortFunc(c.Topics, func(a, b Topic) int { return cmp.Or(b.Papers-a.Papers, cmp.Compare(a.Name, b.Name)) })
	c.suspects(rows)
	if !c.anonymous {
		c.standings(rows)
	}
}

// percentOf is a share in whole per cent, half up; some are never none.
func percentOf(n, of int) string {
	switch {
	case of == 0:
		return "-"
	case n > 0 && 200*n < of:
		return "< 1 %"
	}
	return strconv.Itoa((200*n+of)/(2*of)) + " %"
}
