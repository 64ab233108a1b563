package qti

import (
	"bytes"
	"encoding/xml"
	"strings"
	"unicode"

	"unpin/statics/notation"
)

// An element is one of a document, by its name and the names of its attributes in version 2.1. Texts and elements may stand
// within it in any order.
type element struct {
	name       string
	attributes []attribute
	content    []any // string or *element
}

type attribute struct{ name, value string }

// el is an element with what stands in it: attributes, texts, elements, and lists of attributes and elements.
func el(name string, content ...any) *element {
	e := &element{name: name}
	e.add(content...)
	return e
}

// add puts more into an element.
func (e *element) add(content ...any) {
	for _, c := range content {
		switch c := c.(type) {
		case attribute:
			e.attributes = append(e.attributes, c)
		case []attribute:
			e.attributes = append(e.attributes, c...)
		case []*element:
			for _, one := range c {
				e.content = append(e.content, one)
			}
		default:
			e.content = append(e.content, c)
		}
	}
}

// at is an attribute.
func at(name, value string) attribute { return attribute{name, value} }

// plain are the elements of a page, and of a manifest, which have the same name in all versions.
var plain = wordSet("p div ul li h3 h4 img strong small " +
	"manifest metadata schema schemaversion organizations resources resource file dependency")

func wordSet(words string) map[string]bool {
	all := map[string]bool{}
	for _, w := range strings.Fields(words) {
		all[w] = true
	}
	return all
}

// tag is an element's name in a version.
func (v Version) tag(name string) string {
	if v == V21 || plain[name] {
		return name
	}
	return "qti-" + kebab(name)
}

// attributeName is the name of an element's attribute in a version.
func (v Version) attributeName(e *element, name string) string {
	if v == V21 || plain[e.name] || strings.Contains(name, ":") {
		return name
	}
	return kebab(name)
}

// kebab is a name of several words as version 3.0 spells it: base-value for baseValue.
func kebab(name string) string {
	var b strings.Builder
	for _, r := range name {
		if unicode.IsUpper(r) {
			b.WriteByte('-')
		}
		b.WriteRune(unicode.ToLower(r))
	}
	return b.String()
}

// document is an XML document with a root.
func (v Version) document(root *element) []byte {
	w := writer{version: v}
	w.WriteString(xml.Header)
	w.element(root, "\n")
	w.WriteByte('\n')
	return w.Bytes()
}

// A writer is a document in the writing.
type writer struct {
	bytes.Buffer
	version Version
}

// element writes an element; one without a text of its own has each element in it on a line.
func (w *writer) element(e *element, line string) {
	tag := w.version.tag(e.name)
	w.WriteString("<" + tag)
	for _, a := range e.attributes {
		w.WriteString(" " + w.version.attributeName(e, a.name) + `="`)
		w.text(a.value)
		w.WriteByte('"')
	}
	if len(e.content) == 0 {
		w.WriteString("/>")
		return
	}
	w.WriteByte('>')
	lines := !e.mixed()
	for _, c := range e.content {
		if lines {
			w.WriteString(line + "  ")
		}
		if text, ok := c.(string); ok {
			w.text(text)
		} else {
			w.element(c.(*element), line+"  ")
		}
	}
	if lines {
		w.WriteString(line)
	}
	w.WriteString("</" + tag + ">")
}

// mixed reports whether text stands in an element.
func (e *element) mixed() bool {
	for _, c := range e.content {
		if _, ok := c.(string); ok {
			return true
		}
	}
	return false
}

// text writes a text of one line, escaped, with nothing hidden in it.
func (w *writer) text(s string) {
	_ = xml.EscapeText(w, []byte(notation.Visible(s))) // a Buffer takes everything
}
