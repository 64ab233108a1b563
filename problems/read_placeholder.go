package problems

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A template is a text in which {w} stands for the given number w, and {{ for a brace.
type template []piece

// piece is a stretch of plain text, and the name of the number that follows it, if one does.
type piece struct{ text, name string }

// template reads a text with names in braces.
func (r *numberReader) template(n *node, text, what string) template {
	var t template
	plain := strings.Builder{}
	for rest := text; rest != ""; {
		before, after, found := strings.Cut(rest, "{")
		plain.WriteString(before)
		if rest = after; !found {
			break
		}
		if strings.HasPrefix(rest, "{") {
			plain.WriteString("{")
			rest = rest[1:]
			continue
		}
		name, after, closed := strings.Cut(rest, "}")
		if name = strings.TrimSpace(name); !closed {
			r.fault(n.at, "a brace of "+what+" is not closed", "Write {h} for the value of a given number h, and {{ for a brace.")
			return nil
		}
		if _, known := r.numbers[name]; !known && !r.spoiled[name] {
			r.fault(n.at, fmt.Sprintf("{%s} in %s names no given number", name, what), r.placeholderRemedy(name))
			return nil
		}
		t = append(t, piece{plain.String(), name})
		plain.Reset()
		rest = after
	}
	return append(t, piece{text: plain.String()})
}

func (r *numberReader) placeholderRemedy(name string) string {
	var names []string
	for _, g := range r.problem.Given {
		names = append(names, g.Name)
	}
	if meant := near(name, names); meant != "" {
		return fmt.Sprintf("Did you mean {%s}?", meant)
	}
	if len(names) == 0 {
		return "Write the number itself, or give it a name under given; a brace is written {{."
	}
	return onlyOnes("given number", names) + " A brace is written {{."
}

// fill is the text with the numbers in place of their names.
func (t template) fill(given []Given, sign notation.DecimalSign) string {
	var text strings.Builder
	for _, p := range t {
		text.WriteString(p.text)
		if at := slices.IndexFunc(given, func(g Given) bool { return g.Name == p.name }); at >= 0 {
			text.WriteString(sign.In(plainNumber(given[at].Value)))
		}
	}
	return text.String()
}

var wholeNumber = notation.Pattern(`[0-9]+([.,/][0-9]+)*`)

// PlainNumber is the first number that stands in title or text as it is, not as the name of a given number; or nothing.
func (p *Problem) PlainNumber() string {
	for _, t := range []template{p.title, p.text} {
		for _, piece := range t {
			if n := wholeNumber().FindString(piece.text); n != "" {
				return n
			}
		}
	}
	return ""
}

// plainNumber is a number as it is printed in a text: in full where it ends, else to six figures.
func plainNumber(v exact.Num) string { return notation.Pretty(v.Decimal(6)) }

// fillTexts puts the given numbers into title and text.
func (p *Problem) fillTexts() {
	p.Title = p.title.fill(p.Given, p.Conventions.Decimal)
	p.Text = p.text.fill(p.Given, p.Conventions.Decimal)
}
