package problems

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/token"
)

// The limits of a file, far above any problem that a person works, keep the reading of a file of another kind short.
const (
	maxBytes  = 1 << 20
	maxTokens = 200_000
	maxDepth  = 10   // a problem nests 5 deep
	maxKeys   = 5000 // in one block
)

// scan looks through the tokens of a file for what a problem file does not use, and for nesting or size that no
// problem has. It is done before the tree is built, so that the tree stays small.
func scan(s *source, tokens token.Tokens) []Fault {
	if len(tokens) > maxTokens {
		return []Fault{s.fault(mark{1, 1, 1}, "the file is far larger than a problem",
			fmt.Sprintf("A problem has at most %d joints, %d members and %d loads.", maxJoints, maxMembers, maxLoads))}
	}
	n := nesting{source: s}
	for _, tk := range tokens {
		n.take(tk)
		n.refuse(tk)
		if n.stop {
			break
		}
	}
	return n.faults
}

// nesting follows how deep the tokens nest.
type nesting struct {
	*source
	faults []Fault
	stop   bool
	flow   int     // open brackets and braces
	blocks []block // open blocks, by rising column
	begun  bool    // something stood before
}

// block is an open block of keys or list entries that start at a column.
type block struct{ column, keys int }

// take opens and closes what the token opens and closes.
func (n *nesting) take(tk *token.Token) {
	switch tk.Type {
	case token.SequenceStartType, token.MappingStartType:
		n.flow++
	case token.SequenceEndType, token.MappingEndType:
		n.flow--
	case token.SequenceEntryType:
		n.open(tk.Position.Column, 0)
	case token.MappingValueType:
		if tk.Prev != nil && n.flow == 0 {
			n.open(tk.Prev.Position.Column, 1)
		}
	}
	if n.flow+len(n.blocks) > maxDepth {
		n.add(tk, "this is nested deeper than anything in a problem", "Check the brackets and the indentation.")
		n.stop = true
	}
}

// open notes a key or list entry at a column, which closes all blocks further right.
func (n *nesting) open(column, keys int) {
	for len(n.blocks) > 0 && n.blocks[len(n.blocks)-1].column > column {
		n.blocks = n.blocks[:len(n.blocks)-1]
	}
	if len(n.blocks) == 0 || n.blocks[len(n.blocks)-1].column < column {
		n.blocks = append(n.blocks, block{column: column})
	}
	top := &n.blocks[len(n.blocks)-1]
	if top.keys += keys; top.keys > maxKeys {
		n.faults = append(n.faults, n.fault(mark{1, 1, 1}, fmt.Sprintf("more than %d entries stand in one block", maxKeys),
			fmt.Sprintf("A problem has at most %d joints.", maxJoints)))
		n.stop = true
	}
}

// refusals are the parts of YAML that a problem file does without, each with the words for it.
var refusals = map[token.Type]struct{ problem, remedy string }{
	token.AnchorType:     {"an anchor (&) has no use in a problem file", "Take it out; give a number that is used several times a name under given. Text that begins with & goes in quotes."},
	token.AliasType:      {"an alias (*) has no use in a problem file", "Write the value itself; a number that is used several times can have a name under given. Text that begins with * goes in quotes."},
	token.TagType:        {"a tag (!) has no use in a problem file", "Take it out: what a value is follows from where it stands. Text that begins with ! goes in quotes."},
	token.MergeKeyType:   {"a merge key (<<) has no use in a problem file", "Write the fields themselves."},
	token.MappingKeyType: {"a key marked with ? has no use in a problem file", "Write name: value."},
	token.DirectiveType:  {"a directive (%) has no use in a problem file", "Take the line out. Text that begins with % goes in quotes."},
}

// refuse notes a token that a problem file does not use.
func (n *nesting) refuse(tk *token.Token) {
	if words, ok := refusals[tk.Type]; ok {
		n.add(tk, words.problem, words.remedy)
		n.stop = tk.Type == token.DirectiveType // the words after it are part of it
	}
	switch tk.Type {
	case token.DocumentHeaderType, token.DocumentEndType:
		if n.begun {
			n.add(tk, "a second document begins here", "One file holds one problem: put the other in a file of its own.")
			n.stop = true
		}
	case token.InvalidType:
		f := n.syntaxFault(tk.Error, tk)
		n.faults = append(n.faults, f)
		n.stop = true
	}
	n.begun = n.begun || tk.Type != token.CommentType
}

func (n *nesting) add(tk *token.Token, problem, remedy string) {
	if len(n.faults) < maxFaults {
		n.faults = append(n.faults, n.fault(markOf(tk), problem, remedy))
	}
}

// markOf is where a token stands: its first line, without surrounding blanks.
func markOf(tk *token.Token) mark {
	text, _, _ := strings.Cut(strings.TrimSpace(tk.Origin), "\n")
	return mark{tk.Position.Line, tk.Position.Column, max(1, utf8.RuneCountInString(text))}
}
