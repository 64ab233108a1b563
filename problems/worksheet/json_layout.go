package worksheet

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"
)

// A field of an object: its name, and its value as JSON.
type field struct{ name, value string }

// JSON is laid out with outer objects and lists over several lines, one blank deeper each level, and inner ones on one
// line, so that a person can read the forces down a column and a comparison of two files shows the force that differs.

// object is an object with one field a line.
func object(depth int, fields []field) string {
	if len(fields) == 0 {
		return "{}"
	}
	end := lineEnd(depth)
	return pairs("{"+end+" ", ","+end+" ", end+"}", fields)
}

// inline is an object on one line.
func inline(fields ...field) string { return pairs("{", ", ", "}", fields) }

// pairs are names and values between brackets. No name has a sign that needs an escape.
func pairs(open, between, shut string, fields []field) string {
	size := len(open) + len(shut)
	for _, f := range fields {
		size += len(f.name) + len(f.value) + len(`"": `) + len(between)
	}
	var b strings.Builder
	b.Grow(size)
	b.WriteString(open)
	for i, f := range fields {
		if i > 0 {
			b.WriteString(between)
		}
		b.WriteByte('"')
		b.WriteString(f.name)
		b.WriteString(`": `)
		b.WriteString(f.value)
	}
	b.WriteString(shut)
	return b.String()
}

// list is a list with one element a line.
func list(depth int, elements []string) string {
	if len(elements) == 0 {
		return "[]"
	}
	end := lineEnd(depth)
	return "[" + end + " " + strings.Join(elements, ","+end+" ") + end + "]"
}

// lineEnd ends a line within brackets; the next is one blank deeper than these.
func lineEnd(depth int) string { return "\n" + strings.Repeat(" ", depth) }

// row is a list on one line.
func row(elements []string) string { return "[" + strings.Join(elements, ", ") + "]" }

// texts is a list of strings on one line.
func texts(all []string) string {
	if len(all) > 0 && !slices.ContainsFunc(all, needsEscape) {
		return `["` + strings.Join(all, `", "`) + `"]`
	}
	elements := make([]string, 0, len(all))
	for _, s := range all {
		elements = append(elements, quote(s))
	}
	return row(elements)
}

// quote is s as a JSON string. Signs such as < and & stand for themselves.
func quote(s string) string {
	if !needsEscape(s) {
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

// needsEscape reports whether a string may not stand between quotes as it is.
func needsEscape(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c > '~' || c == '"' || c == '\\' {
			return true
		}
	}
	return false
}

func number(n int) string { return strconv.Itoa(n) }
