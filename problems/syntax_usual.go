package problems

import (
	"strings"
	"unicode/utf8"
)

// usual reads a file that is written as nearly all are: fields and lists in lines or in brackets, words and texts of one line, and
// folded text. It makes the tree that the YAML library would make (TestUsual), in a tenth of its time. At anything else it
// gives up, and above all at anything wrong, so that only the library's way tells of faults.
type usual struct {
	text   string
	at     int // the next byte
	line   int // its line, from 1
	begins int // where that line begins
	indent int // blanks before the content that comes next, where a line of a block begins; -1 at the end

	counted, column int // a byte of the line, and its column

	depth, keys int
	nodes       []node  // room for the next ones
	items       []*node // those of lists that are not closed yet
	entries     []entry // likewise of fields
}

// usualDepth is how deep the usual file nests; what is deeper the library refuses, or reads.
const usualDepth = 8

// usualTree is the tree of a file that is written in the usual way, or nil. A text of so many bytes has no more tokens, and is
// read in a time that grows with them.
func usualTree(text string) *node {
	if len(text) > maxTokens || strings.ContainsRune(text, '\t') {
		return nil
	}
	u := &usual{text: text, line: 1, column: 1}
	if u.nextLine(); u.indent != 0 {
		return nil
	}
	var tree *node
	if c := u.text[u.at]; c == '{' || c == '[' {
		if tree = u.brackets(-1); !u.ended() {
			return nil
		}
	} else {
		tree = u.block(0)
	}
	if u.indent >= 0 {
		return nil
	}
	return tree
}

// peek is the byte that comes next; at the end of the file it is the end of a line.
func (u *usual) peek() byte {
	if u.at < len(u.text) {
		return u.text[u.at]
	}
	return '\n'
}

// gap reports whether a blank or the end of the line stands some bytes ahead.
func (u *usual) gap(ahead int) bool {
	at := u.at + ahead
	return at >= len(u.text) || u.text[at] == ' ' || u.text[at] == '\n'
}

func (u *usual) blanks() {
	for u.at < len(u.text) && u.text[u.at] == ' ' {
		u.at++
	}
}

// comment passes over blanks and a comment, and reports whether the line ends there.
func (u *usual) comment() bool {
	if u.blanks(); u.peek() == '#' && (u.at == u.begins || u.text[u.at-1] == ' ') {
		if end := strings.IndexByte(u.text[u.at:], '\n'); end >= 0 {
			u.at += end
		} else {
			u.at = len(u.text)
		}
	}
	return u.peek() == '\n'
}

// newLine passes over the end of a line.
func (u *usual) newLine() {
	u.at++
	u.line++
	u.begins, u.counted, u.column = u.at, u.at, 1
}

// nextLine goes on to the next line that has content, from the beginning of one or the end of one.
func (u *usual) nextLine() {
	for u.comment() {
		if u.at >= len(u.text) {
			u.indent = -1
			return
		}
		u.newLine()
	}
	u.indent = u.at - u.begins
}

// ended goes on to the next line with content, if nothing more stands on this one.
func (u *usual) ended() bool {
	if !u.comment() {
		return false
	}
	u.nextLine()
	return true
}

// mark is the place of some bytes of the line.
func (u *usual) mark(from, to int) mark {
	if from < u.counted {
		u.counted, u.column = u.begins, 1
	}
	u.column += utf8.RuneCountInString(u.text[u.counted:from])
	u.counted = from
	return mark{u.line, u.column, utf8.RuneCountInString(u.text[from:to])}
}

// node is a new node at a place.
func (u *usual) node(s shape, at mark) *node {
	if len(u.nodes) == 0 {
		u.nodes = make([]node, 32)
	}
	n := &u.nodes[0]
	u.nodes = u.nodes[1:]
	n.shape, n.at = s, at
	return n
}

// block is the fields or the list that begin here, at a column.
func (u *usual) block(column int) (n *node) {
	if u.depth++; u.depth > usualDepth {
		return nil
	}
	if u.dash() {
		n = u.lines(column)
	} else {
		n = u.fields(column, u.key(false))
	}
	u.depth--
	return n
}

// dash reports whether an entry of a list begins here.
func (u *usual) dash() bool { return u.peek() == '-' && u.gap(1) }

// lines is a list whose entries begin with dashes at a column.
func (u *usual) lines(column int) *node {
	n, kept := u.node(list, u.mark(u.at, u.at+1)), len(u.items)
	for u.indent == column && u.dash() {
		u.at++
		item := u.entry(column)
		if item == nil || u.indent > column {
			return nil
		}
		u.items = append(u.items, item)
	}
	return u.listed(n, kept)
}

// listed gives a list its items.
func (u *usual) listed(n *node, kept int) *node {
	n.items = append(make([]*node, 0, len(u.items)-kept), u.items[kept:]...)
	u.items = u.items[:kept]
	return n
}

// entry is what stands after a dash at a column.
func (u *usual) entry(column int) *node {
	u.blanks()
	if c := u.peek(); c == '{' || c == '[' || c == '\n' || c == '#' || u.dash() {
		return u.value(column, false)
	}
	inner, before := u.at-u.begins, u.at
	key := u.key(false)
	if key == nil {
		u.at = before
		return u.value(column, false)
	}
	if u.depth++; u.depth > usualDepth {
		return nil
	}
	u.indent = inner
	n := u.fields(inner, key)
	u.depth--
	return n
}

// fields is a group of fields in lines, from a column on. The first name has been read.
func (u *usual) fields(column int, key *node) *node {
	if key == nil {
		return nil
	}
	n, kept := u.node(table, key.at), len(u.entries)
	for {
		u.keys++
		value := u.value(column, true)
		if value == nil || u.indent > column || u.keys > maxKeys {
			return nil
		}
		u.entries = append(u.entries, entry{key, value})
		if u.indent < column || u.dash() {
			break
		}
		if key = u.key(false); key == nil {
			return nil
		}
	}
	return u.closed(n, kept)
}

// closed gives a table its fields; nil if a name is there twice.
func (u *usual) closed(n *node, kept int) *node {
	n.entries = append(make([]entry, 0, len(u.entries)-kept), u.entries[kept:]...)
	u.entries = u.entries[:kept]
	if differ(n.entries) {
		return n
	}
	return nil
}

// differ reports whether each of the fields has a name of its own.
func differ(entries []entry) bool {
	if len(entries) > 12 {
		names := make(map[string]bool, len(entries))
		for _, e := range entries {
			names[e.key.text] = true
		}
		return len(names) == len(entries)
	}
	for i, e := range entries {
		for _, earlier := range entries[:i] {
			if e.key.text == earlier.key.text {
				return false
			}
		}
	}
	return true
}

// value is what stands after a name or a dash in a block at a column: on the line, or below.
func (u *usual) value(column int, afterName bool) (n *node) {
	if u.comment() {
		u.nextLine()
		if u.indent > column || afterName && u.indent == column && u.dash() {
			return u.block(u.indent)
		}
		return nil
	}
	switch u.peek() {
	case '[', '{':
		n = u.brackets(column)
	case '>', '|':
		return u.folded(column)
	default:
		n = u.word(false)
	}
	if n == nil || !u.ended() {
		return nil
	}
	return n
}

// key is a name and the colon behind it.
func (u *usual) key(inBrackets bool) *node {
	n := u.word(inBrackets)
	if n == nil {
		return nil
	}
	if u.blanks(); u.peek() != ':' || !u.gap(1) {
		return nil
	}
	u.at++
	return n
}

// brackets is a list or a group of fields in brackets, in a block at a column.
func (u *usual) brackets(column int) *node {
	if u.depth++; u.depth > usualDepth {
		return nil
	}
	n, end := u.node(list, u.mark(u.at, u.at+1)), byte(']')
	if u.peek() == '{' {
		n.shape, end = table, '}'
	}
	keptItems, keptEntries := len(u.items), len(u.entries)
	if u.at++; !u.within(column) {
		return nil
	}
	for more := u.peek() != end; more; {
		if !u.inner(n.shape, column) || !u.within(column) {
			return nil
		}
		if more = u.peek() == ','; more {
			if u.at++; !u.within(column) {
				return nil
			}
		} else if u.peek() != end {
			return nil
		}
	}
	u.at++
	u.depth--
	if n.shape == table {
		return u.closed(n, keptEntries)
	}
	return u.listed(n, keptItems)
}

// inner reads one entry of a list or one field in brackets.
func (u *usual) inner(s shape, column int) bool {
	var key *node
	if s == table {
		if key = u.key(true); key == nil || !u.within(column) {
			return false
		}
	}
	var value *node
	if c := u.peek(); c == '[' || c == '{' {
		value = u.brackets(column)
	} else {
		value = u.word(true)
	}
	if s == table {
		u.entries = append(u.entries, entry{key, value})
	} else {
		u.items = append(u.items, value)
	}
	return value != nil
}

// within passes over blanks, comments and ends of lines in brackets. The lines go on to the right of the block's column.
func (u *usual) within(column int) bool {
	for u.comment() {
		if u.at >= len(u.text) {
			return false
		}
		u.newLine()
		u.blanks()
		if u.at-u.begins <= column && u.peek() != '\n' && u.peek() != '#' {
			return false
		}
	}
	return true
}
