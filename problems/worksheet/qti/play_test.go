package qti

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"io"
	"math/big"
	"strings"
	"testing"

	"unpin/statics/exact"
)

// A node is an element of a document as a platform reads it. Names are those of version 2.1.
type node struct {
	name       string
	attributes map[string]string
	own        strings.Builder // its text, without that of its children
	children   []*node
}

// readXML reads a document strictly.
func readXML(t testing.TB, data []byte) *node {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(data))
	root := &node{}
	open := []*node{root}
	for {
		token, err := d.Token()
		if err == io.EOF {
			return root.children[0]
		}
		if err != nil {
			t.Fatal(err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			n := &node{name: camel(strings.TrimPrefix(token.Name.Local, "qti-")), attributes: map[string]string{}}
			for _, a := range token.Attr {
				n.attributes[camel(a.Name.Local)] = a.Value
			}
			top := open[len(open)-1]
			top.children = append(top.children, n)
			open = append(open, n)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			open[len(open)-1].own.Write(token)
		}
	}
}

// camel is a name of version 3.0 as 2.1 spells it.
func camel(name string) string {
	words := strings.Split(name, "-")
	for i := 1; i < len(words); i++ {
		words[i] = strings.ToUpper(words[i][:1]) + words[i][1:]
	}
	return strings.Join(words, "")
}

// all lists the elements of a name within a node.
func (n *node) all(name string) []*node {
	var found []*node
	for _, c := range n.children {
		if c.name == name {
			found = append(found, c)
		}
		found = append(found, c.all(name)...)
	}
	return found
}

// text is all text within a node.
func (n *node) text() string {
	all := n.own.String()
	for _, c := range n.children {
		all += c.text()
	}
	return all
}

// A player judges answers to an item as the standard says, with exact numbers. It shares nothing with what writes items.
type player struct {
	t      testing.TB
	item   *node
	values map[string]string // of responses and outcomes; what is missing is NULL
}

// play judges the answers typed to an item.
func play(t testing.TB, item *node, typed map[string]string) map[string]string {
	p := player{t, item, map[string]string{}}
	for _, d := range item.all("outcomeDeclaration") {
		for _, v := range d.all("value") {
			p.values[d.attributes["identifier"]] = v.text()
		}
	}
	for id, v := range typed {
		p.values[id] = v
	}
	for _, rule := range item.all("responseProcessing")[0].children {
		p.rule(rule)
	}
	return p.values
}

func (p *player) rule(n *node) {
	switch n.name {
	case "setOutcomeValue":
		p.values[n.attributes["identifier"]] = p.value(n.children[0])
	case "responseCondition":
		for _, branch := range n.children {
			rest := branch.children
			if branch.name != "responseElse" {
				if p.value(rest[0]) != "true" {
					continue
				}
				rest = rest[1:]
			}
			for _, r := range rest {
				p.rule(r)
			}
			return
		}
	default:
		p.t.Fatalf("a rule %s", n.name)
	}
}

// value is what an expression comes to; "" is NULL.
func (p *player) value(n *node) string {
	number := func(i int) exact.Num { return exact.MustParse(p.value(n.children[i])) }
	boolean := map[bool]string{true: "true", false: "false"}
	switch n.name {
	case "variable":
		return p.values[n.attributes["identifier"]]
	case "baseValue":
		return n.text()
	case "isNull":
		return boolean[p.value(n.children[0]) == ""]
	case "and":
		return boolean[p.value(n.children[0]) == "true" && p.value(n.children[1]) == "true"]
	case "gte":
		return boolean[number(0).Cmp(number(1)) >= 0]
	case "lte":
		return boolean[number(0).Cmp(number(1)) <= 0]
	case "sum":
		return number(0).Add(number(1)).String()
	case "truncate":
		return exact.FromRat(new(big.Rat).SetInt(number(0).Floor())).String()
	case "product":
		return number(0).Mul(number(1)).String()
	case "divide":
		q, err := number(0).Quo(number(1))
		if err != nil {
			p.t.Fatal(err)
		}
		return q.String()
	}
	p.t.Fatalf("an expression %s", n.name)
	return ""
}

// shown is the text that is shown of an answer after playing; "" is none.
func shown(t testing.TB, item *node, values map[string]string, id string) string {
	var text []string
	for _, b := range item.all("feedbackBlock") {
		outcome := b.attributes["outcomeIdentifier"]
		if outcome == ofAnswer+id && b.attributes["showHide"] == "show" && b.attributes["identifier"] == values[outcome] {
			text = append(text, oneLine(b.text()))
		}
	}
	if len(text) > 1 {
		t.Errorf("of %s several texts are shown: %q", id, text)
	}
	return strings.Join(text, "")
}

// unzipped are the files of a package, by their names, and these in order.
func unzipped(t testing.TB, data []byte) (files map[string][]byte, names []string) {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	files = map[string][]byte{}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		if files[f.Name], err = io.ReadAll(r); err != nil {
			t.Fatal(err)
		}
		names = append(names, f.Name)
	}
	return files, names
}
