package problems

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"

	"unpin/statics/notation"
)

// shape is what a value of the file looks like.
type shape int

const (
	blank  shape = iota // nothing is written
	scalar              // one word, text or number
	list
	table // fields: name: value
)

// node is a value of the file, with its place.
type node struct {
	shape   shape
	text    string // scalar
	at      mark
	literal bool // the text stands in the file letter for letter, from the mark's column plus quote on
	quote   int  // quotes before the text: 0 or 1
	numeric bool // an unquoted number or yes/no value
	items   []*node
	entries []entry
}

// entry is one field of a table.
type entry struct{ key, value *node }

// parse reads the text of a source as a tree. The faults are those of YAML itself; with faults the tree may be nil.
func parse(s *source) (tree *node, faults []Fault) {
	defer func() {
		// A YAML library may crash on odd input; that input is the person's fault to mend, not ours to die of.
		if recover() != nil {
			tree, faults = nil, []Fault{s.unknownFault(mark{1, 1, 1})}
		}
	}()
	if signs(s.text) > maxSigns {
		return nil, []Fault{s.fault(mark{1, 1, 1}, "the file is far larger than a problem",
			fmt.Sprintf("A problem has at most %d joints, %d members and %d loads.", maxJoints, maxMembers, maxLoads))}
	}
	if f := s.directive(); f != nil {
		return nil, []Fault{*f}
	}
	var document yaml.Node
	if err := yaml.Load([]byte(s.text), &document, yaml.WithPlugin(depth{})); err != nil {
		return nil, []Fault{s.syntaxFault(err)}
	}
	r := refused{cursor: cursor{source: s}}
	if r.in(&document); r.faults != nil {
		return nil, r.faults
	}
	root := document.Content[0]
	if nothing(root) {
		return nil, []Fault{s.empty()}
	}
	b := builder{cursor: cursor{source: s}}
	tree = b.build(root)
	return tree, b.faults
}

// nothing reports whether there is nothing where a value might be.
func nothing(n *yaml.Node) bool { return n.Tag == "!!null" && n.Value == "" }

// builder turns the library's tree into ours.
type builder struct {
	cursor
	faults []Fault
}

func (b *builder) build(n *yaml.Node) *node {
	at := mark{n.Line, n.Column, 1}
	switch {
	case n.Kind == yaml.MappingNode:
		return b.table(n)
	case n.Kind == yaml.SequenceNode:
		t := &node{shape: list, at: at, items: make([]*node, 0, len(n.Content))}
		for _, v := range n.Content {
			t.items = append(t.items, b.build(v))
		}
		return t
	case n.Tag == "!!null":
		at.width = max(1, len(n.Value))
		return &node{shape: blank, at: at}
	case n.Style&(yaml.LiteralStyle|yaml.FoldedStyle) != 0:
		return b.seen(&node{shape: scalar, at: at, text: strings.TrimSpace(n.Value)})
	}
	return b.seen(b.scalar(n))
}

// note notes a fault. Those that are only counted have no excerpt, which takes a while in a long line.
func (b *builder) note(at mark, w telling) {
	if len(b.faults) < maxFaults {
		b.faults = append(b.faults, b.told(at, w))
	} else {
		b.faults = append(b.faults, Fault{Line: at.line, Column: at.column, Problem: w.problem, Remedy: w.remedy})
	}
}

// seen refuses a text in which an escape has put what could not stand in the file itself: a character that steers what
// shows it. Only ends of lines and tabs may be written so. What is refused is taken out, so that no message has it.
func (b *builder) seen(n *node) *node {
	if n.literal { // it stands in the file, which has been seen
		return n
	}
	at := strings.IndexFunc(n.text, unseen)
	if at < 0 {
		return n
	}
	c, _ := utf8.DecodeRuneInString(n.text[at:])
	b.note(n.at, telling{"in this text " + hiddenProblem(c), "Take its escape out."})
	n.text = strings.Map(func(c rune) rune {
		if unseen(c) {
			return -1
		}
		return c
	}, n.text)
	n.literal = false
	return n
}

// unseen reports whether no text of a problem may have a character.
func unseen(c rune) bool { return notation.Hidden(c) && c != '\n' && c != '\t' }

// scalar is a word, text or number with its text as written.
func (b *builder) scalar(n *yaml.Node) *node {
	t := &node{shape: scalar, text: n.Value, at: mark{n.Line, n.Column, 1}}
	written := b.from(n.Line, n.Column)
	switch n.Style {
	case yaml.SingleQuotedStyle, yaml.DoubleQuotedStyle:
		t.quote = 1
		written = written[:quotedLength(written)]
		t.literal = len(written) == len(t.text)+2 && written[1:len(written)-1] == t.text
	default:
		t.numeric = n.Tag == "!!int" || n.Tag == "!!float" || n.Tag == "!!bool"
		if t.literal = strings.HasPrefix(written, t.text); t.literal {
			written = t.text
		}
	}
	t.at.width = max(1, utf8.RuneCountInString(strings.TrimSpace(written)))
	return t
}

// quotedLength is how many bytes of a line the quoted text has with which it begins.
func quotedLength(line string) int {
	quote := line[0]
	for i := 1; i < len(line); i++ {
		switch {
		case quote == '"' && line[i] == '\\':
			i++
		case line[i] != quote:
		case quote == '\'' && i+1 < len(line) && line[i+1] == quote:
			i++
		default:
			return i + 1
		}
	}
	return len(line)
}

// decimalComma reports whether a name is the rest of a number that was written with a decimal comma, as the 5 in at: 2,5.
// That is a fault; the number is put right, so that no other comes of it.
func (b *builder) decimalComma(t *node, key *node, value *yaml.Node) bool {
	if len(t.entries) == 0 || value.Tag != "!!null" || !decimals().MatchString(key.text) {
		return false
	}
	before := t.entries[len(t.entries)-1].value
	if !before.splitBy(key) {
		return false
	}
	written, meant := before.text+","+key.text, before.text+"."+key.text
	b.note(before.upTo(key), telling{written + " has a decimal comma, which parts two fields here", "Write a decimal point: " + meant + "."})
	before.text, before.literal = meant, false
	return true
}

var (
	wholePart = notation.Pattern(`^[-−]?[0-9]+$`)
	decimals  = notation.Pattern(`^[0-9]+( ?[A-Za-z][A-Za-z0-9/·]*)?$`) // with a unit perhaps
)

// splitBy reports whether a comma without a blank, with digits on both sides, is all that parts n from the next value.
func (n *node) splitBy(next *node) bool {
	return n.shape == scalar && wholePart().MatchString(n.text) && decimals().MatchString(next.text) && n.literal && n.quote == 0 &&
		n.at.line == next.at.line && n.at.column+n.at.width+1 == next.at.column
}

// upTo is the mark from the beginning of n to the end of a value behind it on the line.
func (n *node) upTo(last *node) mark {
	return mark{n.at.line, n.at.column, last.at.column + last.at.width - n.at.column}
}

// behind is the place behind a name and its colon, or the name where there is no colon.
func (b *builder) behind(key *node) mark {
	at := key.at.column + key.at.width
	if strings.HasPrefix(b.from(key.at.line, at), ":") {
		return mark{key.at.line, at + 1, 1}
	}
	return mark{key.at.line, key.at.column, 1}
}

// apart parts a name from its value where no space stands after the colon, as in point:5. That is a fault; it is put right, so that
// no other comes of it. Elsewhere the value is nil.
func (b *builder) apart(key *node, value *yaml.Node) *node {
	name, rest, found := strings.Cut(key.text, ":")
	if !found || name == "" || !key.literal || key.quote > 0 || value.Tag != "!!null" {
		return nil
	}
	colon := key.at.column + utf8.RuneCountInString(name)
	b.note(mark{key.at.line, colon, 1}, noSpace(name+": "+rest))
	given := &node{shape: scalar, text: rest, at: mark{key.at.line, colon + 1, utf8.RuneCountInString(rest)}, literal: true}
	key.text, key.at.width = name, utf8.RuneCountInString(name)
	return given
}

// table is the fields of a group, each name once.
func (b *builder) table(n *yaml.Node) *node {
	t := &node{shape: table, at: mark{n.Line, n.Column, 1}, entries: make([]entry, 0, len(n.Content)/2)}
	inLines := n.Style&yaml.FlowStyle == 0
	if inLines && len(n.Content) > 2*maxKeys {
		b.note(mark{1, 1, 1}, telling{fmt.Sprintf("more than %d entries stand in one block", maxKeys), fmt.Sprintf("A problem has at most %d joints.", maxJoints)})
		return t
	}
	first := make(map[string]*node, len(n.Content)/2)
	for i := 0; i < len(n.Content); i += 2 {
		key, value := b.seen(b.scalar(n.Content[i])), n.Content[i+1]
		if b.decimalComma(t, key, value) {
			continue
		}
		given := b.apart(key, value)
		if given == nil && nothing(value) {
			given = &node{shape: blank, at: b.behind(key)}
		}
		if earlier, twice := first[key.text]; twice {
			b.note(key.at, telling{fmt.Sprintf("%s stands here a second time", quoted(key.text)),
				fmt.Sprintf("It stands on line %d already: keep one of the two.", earlier.at.line)})
			continue
		}
		first[key.text] = key
		if given == nil {
			given = b.build(value)
		}
		t.entries = append(t.entries, entry{key, given})
	}
	if inLines && len(t.entries) > 0 {
		t.at = t.entries[0].key.at
	}
	return t
}
