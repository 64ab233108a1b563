package problems

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"unicode/utf8"

	"unpin/statics/exact"
)

// A Role says what a number of a problem file is there for.
type Role int

// The roles of numbers. A fraction of a length, a direction and an angle have none: they say how something lies.
const (
	GivenNumber Role = iota // of a name under given
	Abscissa                // the x of a joint
	Ordinate                // the y of a joint
	LoadSize                // a force, a couple, or an intensity
	Distance                // a distance along a member
)

// A Number is a number as it stands in a problem file, be it a decimal or arithmetic with names.
type Number struct {
	Role  Role
	Name  string // what it belongs to: a given name, a joint, or a kind of load
	Text  string // as written, without quotes
	Value exact.Num
	at    mark  // where the text stands in the source
	node  *node // in the tree
}

// note keeps a number of a role, where its text stands in the file as it is.
func (r *numberReader) note(n *node, role Role, name string, v exact.Num) {
	if !n.literal || n.text == "" || strings.Contains(n.text, "\n") {
		return
	}
	at := mark{n.at.line, n.at.column + n.quote, utf8.RuneCountInString(n.text)}
	r.problem.numbers = append(r.problem.numbers, Number{role, name, n.text, v, at, n})
}

// Numbers lists the numbers of the file that have a role, in the order in which they are read: given names, joints, loads.
func (p *Problem) Numbers() []Number { return slices.Clone(p.numbers) }

// Source is the text of the file, with line ends of one kind.
func (p *Problem) Source() string {
	if p.source == nil {
		return ""
	}
	return p.source.text
}

// With is the problem whose file has other texts in place of some of its numbers, which are named by their places in
// Numbers. All else of the file stays as it is. The error is that of reading the file so made.
func (p *Problem) With(texts map[int]string) (*Problem, error) {
	lines := strings.Split(p.source.text, "\n")
	order := slices.SortedFunc(maps.Keys(texts), func(i, j int) int { return p.numbers[j].at.column - p.numbers[i].at.column }) // from the right
	for _, i := range order {
		at := p.numbers[i].at
		line := []rune(lines[at.line-1])
		lines[at.line-1] = string(line[:at.column-1]) + texts[i] + string(line[at.column-1+at.width:])
	}
	other, err := Read(p.Name+".yaml", []byte(strings.Join(lines, "\n")))
	if err != nil {
		return nil, err
	}
	other.Name = p.Name
	return other.In(p.Conventions).Asking(p.Find), nil
}

// Trial is what With gives but for the file, which is not written: Source is that of p, and Numbers gives none. It takes a
// third of the time.
func (p *Problem) Trial(texts map[int]string) (*Problem, error) { return p.trial(texts, false) }

// Attempt is Trial, but where a condition of Where does not hold it reads no further: the problem has no frame.
func (p *Problem) Attempt(texts map[int]string) (*Problem, error) { return p.trial(texts, true) }

func (p *Problem) trial(texts map[int]string, conditions bool) (*Problem, error) {
	byNode := map[*node]string{}
	for i, text := range texts {
		byNode[p.numbers[i].node] = text
	}
	r := newReader(p.Name)
	r.conditions, r.source, r.problem.source = conditions, p.source, p.source
	r.read(p.tree.with(byNode))
	r.problem.Name, r.problem.numbers = p.Name, nil
	if err := r.faults.err(); err != nil {
		return nil, err
	}
	return r.problem.In(p.Conventions).Asking(p.Find), nil
}

// with is the tree with other texts at some of its nodes. What has none of them is the same as in the tree.
func (n *node) with(texts map[*node]string) *node {
	other := n
	own := func() *node {
		if other == n {
			copied := *n
			copied.items, copied.entries = slices.Clone(n.items), slices.Clone(n.entries)
			other = &copied
		}
		return other
	}
	if text, ok := texts[n]; ok {
		own().text, own().literal = text, false
	}
	for i, item := range n.items {
		if changed := item.with(texts); changed != item {
			own().items[i] = changed
		}
	}
	for i, e := range n.entries {
		if changed := e.value.with(texts); changed != e.value {
			own().entries[i].value = changed
		}
	}
	return other
}

// apart are the fields that change nothing of what is to be worked.
var apart = []string{"title", "text", "grade", "skills"}

// Content is the file's content in one form, whatever its layout, comments and order of fields: without title, text, grade
// and skills.
func (p *Problem) Content() string {
	var fields []string
	for _, e := range p.tree.entries {
		if !slices.Contains(apart, e.key.text) {
			fields = append(fields, fmt.Sprintf("%q: %s", e.key.text, e.value.content()))
		}
	}
	slices.Sort(fields)
	return strings.Join(fields, "\n") + "\n"
}

// content is a value in one form.
func (n *node) content() string {
	var all []string
	switch n.shape {
	case list:
		for _, item := range n.items {
			all = append(all, item.content())
		}
		return "[" + strings.Join(all, ", ") + "]"
	case table:
		for _, e := range n.entries {
			all = append(all, fmt.Sprintf("%q: %s", e.key.text, e.value.content()))
		}
		return "{" + strings.Join(all, ", ") + "}"
	}
	return fmt.Sprintf("%q", n.text)
}
