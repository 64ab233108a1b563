package problems

import (
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
	at    mark // where the text stands in the source
}

// note keeps a number of a role, where its text stands in the file as it is.
func (r *numberReader) note(n *node, role Role, name string, v exact.Num) {
	if !n.literal || n.text == "" || strings.Contains(n.text, "\n") {
		return
	}
	at := mark{n.at.line, n.at.column + n.quote, utf8.RuneCountInString(n.text)}
	r.problem.numbers = append(r.problem.numbers, Number{role, name, n.text, v, at})
}

// Numbers lists the numbers of the file that have a role, in the order in which they are read: given names, joints, loads.
func (p *Problem) Numbers() []Number { return slices.Clone(p.numbers) }

// Source is the text of the file, with line ends of one kind.
func (p *Problem) Source() string { return p.source }

// With is the problem whose file has other texts in place of some of its numbers, which are named by their places in
// Numbers. All else of the file stays as it is. The error is that of reading the file so made.
func (p *Problem) With(texts map[int]string) (*Problem, error) {
	lines := strings.Split(p.source, "\n")
	order := make([]int, 0, len(texts))
	for i := range texts {
		order = append(order, i)
	}
	slices.SortFunc(order, func(i, j int) int { return p.numbers[j].at.column - p.numbers[i].at.column }) // from the right
	for _, i := range order {
		at := p.numbers[i].at
		line := []rune(lines[at.line-1])
		lines[at.line-1] = string(line[:at.column-1]) + texts[i] + string(line[at.column-1+at.width:])
	}
	other, err := Read(p.Name+".yaml", []byte(strings.Join(lines, "\n")))
	if err != nil {
		return nil, err
	}
	other.Name, other.Conventions = p.Name, p.Conventions
	return other, nil
}
