package problems

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"
)

// The limits of a file, far above any problem that a person works, keep the reading of a file of another kind short.
const (
	maxBytes = 1 << 20
	maxSigns = 100_000
	maxDepth = 10   // a problem nests 5 deep
	maxKeys  = 5000 // in one block
)

// signs counts the signs of YAML that begin or end something. A tree has no more than three nodes for each.
func signs(text string) int {
	n := strings.Count(text, "- ") + strings.Count(text, "-\n")
	for i := range len(text) {
		switch text[i] {
		case '[', ']', '{', '}', ',', ':', '?', '&', '*', '!':
			n++
		}
	}
	return n
}

// depth bounds how deep the library reads.
type depth struct{}

// errTooDeep is the error of a file that nests deeper.
var errTooDeep = fmt.Errorf("nested deeper than %d", maxDepth)

func (depth) CheckDepth(depth int, _ *yaml.DepthContext) error {
	if depth > maxDepth {
		return errTooDeep
	}
	return nil
}

func (depth) CheckAlias(int, int) error { return nil }

// refused are the faults of what a tree has that a problem file does without.
type refused struct {
	cursor
	faults []Fault
}

// in looks through a node and all in it.
func (r *refused) in(n *yaml.Node) {
	switch {
	case n.Kind == yaml.AliasNode:
		r.add(r.word(n), anAlias)
		return // what it stands for is elsewhere
	case n.Anchor != "":
		r.add(r.word(n), anAnchor)
	case n.Style&yaml.TaggedStyle != 0:
		r.add(r.word(n), aTag)
	}
	for i, inner := range n.Content {
		if len(r.faults) >= maxFaults {
			return
		}
		if key := n.Kind == yaml.MappingNode && i%2 == 0; key {
			r.key(inner)
		}
		r.in(inner)
	}
}

// key looks at the name of a field.
func (r *refused) key(n *yaml.Node) {
	before := strings.TrimRight(r.before(n.Line, n.Column), " ")
	switch {
	case n.Tag == "!!merge":
		r.add(r.word(n), aMergeKey)
	case strings.HasSuffix(before, "?"):
		r.add(mark{n.Line, utf8.RuneCountInString(before), 1}, aMarkedKey)
	case n.Kind == yaml.MappingNode || n.Kind == yaml.SequenceNode:
		r.add(r.word(n), noName)
	}
}

// word is the place of a node's first word.
func (r *refused) word(n *yaml.Node) mark {
	word, _, _ := strings.Cut(r.from(n.Line, n.Column), " ")
	return mark{n.Line, n.Column, utf8.RuneCountInString(strings.TrimRight(word, ",:]}"))}
}

func (r *refused) add(at mark, w telling) {
	r.faults = append(r.faults, r.told(at, w))
}
