package problems

import (
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/lexer"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

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
		// The YAML library has crashed on odd input before; that input is the person's fault to mend, not ours to die of.
		if recover() != nil {
			tree, faults = nil, []Fault{s.syntaxFault("", nil)}
		}
	}()
	tokens := lexer.Tokenize(s.text)
	if faults = scan(s, tokens); faults != nil {
		return nil, faults
	}
	file, err := parser.Parse(tokens, 0, parser.AllowDuplicateMapKey())
	if err != nil {
		return nil, []Fault{s.parserFault(err)}
	}
	if len(file.Docs) == 0 || file.Docs[0].Body == nil {
		return nil, []Fault{s.fault(mark{1, 1, 1}, "the file is empty", "A problem needs at least a title, units, joints and members.")}
	}
	b := builder{source: s}
	tree = b.build(file.Docs[0].Body)
	return tree, b.faults
}

// parserFault is the fault of an error of the YAML library.
func (s *source) parserFault(err error) Fault {
	if e := (*yaml.SyntaxError)(nil); errors.As(err, &e) {
		return s.syntaxFault(e.Message, e.Token)
	}
	return s.syntaxFault("", nil)
}

// builder turns the library's tree into ours.
type builder struct {
	*source
	faults []Fault
}

func (b *builder) build(n ast.Node) *node {
	tk := n.GetToken()
	switch n := n.(type) {
	case *ast.MappingNode:
		return b.table(tk, n.Values)
	case *ast.MappingValueNode:
		return b.table(tk, []*ast.MappingValueNode{n})
	case *ast.SequenceNode:
		t := &node{shape: list, at: markOf(tk), items: make([]*node, 0, len(n.Values))}
		for _, v := range n.Values {
			t.items = append(t.items, b.build(v))
		}
		return t
	case *ast.LiteralNode:
		return b.seen(&node{shape: scalar, at: markOf(tk), text: strings.TrimSpace(n.Value.Value)})
	case *ast.NullNode:
		at := markOf(tk)
		if tk.Type == token.ImplicitNullType {
			at.width = 1
		}
		return &node{shape: blank, at: at}
	}
	return b.seen(scalarNode(tk))
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
	b.faults = append(b.faults, b.fault(n.at, "in this text "+hiddenProblem(c), "Take its escape out."))
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

// scalarNode is a word, text or number with its text as written.
func scalarNode(tk *token.Token) *node {
	n := &node{shape: scalar, text: tk.Value, at: markOf(tk)}
	origin := strings.TrimSpace(tk.Origin)
	switch tk.Type {
	case token.SingleQuoteType, token.DoubleQuoteType:
		n.quote = 1
		n.literal = len(origin) >= 2 && origin[1:len(origin)-1] == n.text
	case token.StringType:
		n.literal = origin == n.text
	default:
		n.literal = origin == n.text
		n.numeric = true
	}
	return n
}

// decimalComma reports whether a name is the rest of a number that was written with a decimal comma, as the 5 in at: 2,5.
// That is a fault; the number is put right, so that no other comes of it.
func (b *builder) decimalComma(t *node, key *node, v *ast.MappingValueNode) bool {
	if len(t.entries) == 0 || v.Value.Type() != ast.NullType || !decimals().MatchString(key.text) {
		return false
	}
	before := t.entries[len(t.entries)-1].value
	if !before.splitBy(key) {
		return false
	}
	written, meant := before.text+","+key.text, before.text+"."+key.text
	b.faults = append(b.faults, b.fault(before.upTo(key), written+" has a decimal comma, which parts two fields here", "Write a decimal point: "+meant+"."))
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

// table is the fields of a group, each name once.
func (b *builder) table(tk *token.Token, values []*ast.MappingValueNode) *node {
	t := &node{shape: table, at: markOf(tk), entries: make([]entry, 0, len(values))}
	first := make(map[string]*node, len(values))
	for _, v := range values {
		key := b.seen(scalarNode(v.Key.GetToken()))
		if b.decimalComma(t, key, v) {
			continue
		}
		if earlier, twice := first[key.text]; twice {
			b.faults = append(b.faults, b.fault(key.at, fmt.Sprintf("%s stands here a second time", quoted(key.text)),
				fmt.Sprintf("It stands on line %d already: keep one of the two.", earlier.at.line)))
			continue
		}
		first[key.text] = key
		t.entries = append(t.entries, entry{key, b.build(v.Value)})
	}
	if tk.Type != token.MappingStartType && len(t.entries) > 0 {
		t.at = t.entries[0].key.at
	}
	return t
}
