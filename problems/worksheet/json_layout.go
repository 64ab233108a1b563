package worksheet

import (
	"encoding/json"
	"strconv"
	"strings"
)

// A field of an object: its name, and its value as JSON.
type field struct{ name, value string }

// JSON is laid out with outer objects and lists over several lines, one blank deeper each level, and inner ones on one
// line, so that a person can read the forces down a column and a comparison of two files shows the force that differs.

// object is an object over several lines; depth is that of the line on which it begins.
func object(depth int, fields []field) string {
	lines := make([]string, 0, len(fields))
	for _, f := range fields {
		lines = append(lines, quote(f.name)+": "+f.value)
	}
	return block("{", "}", depth, lines)
}

// list is a list with one element a line.
func list(depth int, elements []string) string { return block("[", "]", depth, elements) }

// block is lines within brackets, one blank deeper than these.
func block(open, shut string, depth int, lines []string) string {
	if len(lines) == 0 {
		return open + shut
	}
	end := "\n" + strings.Repeat(" ", depth)
	return open + end + " " + strings.Join(lines, ","+end+" ") + end + shut
}

// inline is an object on one line.
func inline(fields ...field) string {
	all := make([]string, 0, len(fields))
	for _, f := range fields {
		all = append(all, quote(f.name)+": "+f.value)
	}
	return "{" + strings.Join(all, ", ") + "}"
}

// row is a list on one line.
func row(elements []string) string { return "[" + strings.Join(elements, ", ") + "]" }

// texts is a list of strings on one line.
func texts(all []string) string {
	elements := make([]string, 0, len(all))
	for _, s := range all {
		elements = append(elements, quote(s))
	}
	return row(elements)
}

// quote is s as a JSON string. Signs such as < and & stand for themselves.
func quote(s string) string {
	if !strings.ContainsFunc(s, marked) {
		return `"` + s + `"`
	}
	var b strings.Builder
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(s); err != nil {
		panic("internal error: a string that is no JSON") // Encode replaces bad UTF-8, so any string will do
	}
	return strings.TrimSuffix(b.String(), "\n")
}

// marked reports whether a character may need an escape in a JSON string.
func marked(c rune) bool { return c < ' ' || c > '~' || c == '"' || c == '\\' }

func number(n int) string { return strconv.Itoa(n) }
