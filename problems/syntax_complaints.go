package problems

import (
	"errors"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"
)

// telling is what is told of a fault: what is wrong, and what would be right.
type telling struct{ problem, remedy string }

// What is told in several places.
var (
	anAnchor       = telling{"an anchor (&) has no use in a problem file", "Take it out; give a number that is used several times a name under given. Text that begins with & goes in quotes."}
	anAlias        = telling{"an alias (*) has no use in a problem file", "Write the value itself; a number that is used several times can have a name under given. Text that begins with * goes in quotes."}
	aTag           = telling{"a tag (!) has no use in a problem file", "Take it out: what a value is follows from where it stands. Text that begins with ! goes in quotes."}
	aMergeKey      = telling{"a merge key (<<) has no use in a problem file", "Write the fields themselves."}
	aMarkedKey     = telling{"a key marked with ? has no use in a problem file", "Write name: value."}
	noName         = telling{"a list or a group of fields cannot be a name", "Write name: value."}
	aDirective     = telling{"a directive (%) has no use in a problem file", "Take the line out. Text that begins with % goes in quotes."}
	secondDocument = telling{"a second document begins here", "One file holds one problem: put the other in a file of its own."}
	afterValue     = telling{"something stands after a value that is complete", "Take it out, or put the whole text in quotes."}
	notIndented    = telling{"the line is not indented like those it belongs to", "Indent entries of one list, and fields of one group, by the same number of spaces."}
	neverClosed    = map[rune]telling{
		'[': {"the [ opened here is never closed", "Put a ] at the end of the list."},
		'{': {"the { opened here is never closed", "Put a } after the last field."},
	}
)

// complaints put those of the YAML library in the words of this project: the first of which all that is given is found.
var complaints = []complaint{
	{about: "unexpected end of stream", within: "quoted scalar", next: `"`, opened: true, telling: telling{"the quotes opened here are never closed", `Put a " at the end of the text.`}},
	{about: "end of stream", within: "quoted scalar", opened: true, telling: telling{"the quotes opened here are never closed", `Put a ' at the end of the text; inside it, '' stands for one '.`}},
	{about: "document indicator", within: "quoted scalar", opened: true, telling: telling{"the quotes opened here are never closed", "Put a quote at the end of the text."}},
	{within: "quoted scalar", telling: telling{"this is not a mark that may follow a backslash in double quotes", `Write \\ for a backslash, or use single quotes.`}},
	{about: "']'", next: "end", opened: true, telling: neverClosed['[']},
	{about: "'}'", next: "end", opened: true, telling: neverClosed['{']},
	{about: "',' or '}'", next: "]", telling: telling{"this ] closes nothing", "Take it out, or put a [ where the list begins."}},
	{about: "',' or ']'", telling: telling{"a comma or a ] is missing before this", "Put commas between the entries of the list and a ] at its end."}},
	{about: "',' or '}'", telling: telling{"a comma or a } is missing before this", "Put commas between the fields and a } after the last."}},
	{next: "\t", further: true, telling: telling{"a tab stands where only spaces may", "Indent with spaces."}},
	{next: "\t", telling: telling{"the line is indented with a tab", "Indent with spaces."}},
	{about: "tab", telling: telling{"a tab stands where only spaces may", "Indent with spaces."}},
	{about: "cannot start any token", telling: telling{"no value begins with this character", "Put the text in quotes."}},
	{about: "node content", next: ",", telling: telling{"there is nothing between this comma and what stands before it", "Take the comma out, or write what is missing."}},
	{next: "]", telling: telling{"this ] closes nothing", "Take it out, or put a [ where the list begins."}},
	{next: "}", telling: telling{"this } closes nothing", "Take it out, or put a { where the fields begin."}},
	{about: "node content", telling: telling{"something is missing before this", "Take out the extra comma or colon, or write what is missing."}},
	{about: "block sequence entries", telling: telling{"a list of lines that begin with - cannot begin here", "Put each - on a line of its own, or write the list in brackets: [1, 2]."}},
	{about: "mapping keys", telling: aMarkedKey},
	{about: "mapping values", telling: telling{"two names on one line, or a line indented too far", "Put each name: value on a line of its own, fields of one group indented alike; text with a colon goes in quotes."}},
	{about: "expected ':'", opened: true, telling: telling{"this is no name: value", "Write a colon and a space after the name, or indent the line if it goes on from the one above."}},
	{about: "unknown anchor", telling: anAlias},
	{next: "&", telling: anAnchor},
	{within: "anchor", telling: anAnchor},
	{within: "alias", telling: anAlias},
	{within: "tag", telling: aTag},
	{within: "block scalar", telling: telling{"the lines of this text are not indented alike", "Indent all lines of the text by the same number of spaces."}},
	{about: "expected key", further: true, telling: afterValue},
	{about: "expected '-'", further: true, telling: afterValue},
	{about: "expected key", telling: notIndented},
	{about: "expected '-'", telling: notIndented},
	{about: "comment without", telling: telling{"a comment begins here with no space before it", "Put a space before the #, or the text in quotes."}},
	{within: "directive", telling: aDirective},
	{within: "document-end", telling: secondDocument},
	{about: "document start", further: true, telling: afterValue},
	{about: "document start", telling: notIndented},
}

// A complaint is one of the YAML library, by what it is about, within what it came up, and what stands at its place, with the words for it.
type complaint struct {
	about, within string
	next          string // what stands there: a character, or the end of the file
	further       bool   // something stands before it on its line
	opened        bool   // it is told where what was not closed begins
	telling
}

// syntaxFault is the fault of an error of the YAML library.
func (s *source) syntaxFault(err error) Fault {
	e := (*yaml.LoadError)(nil)
	switch {
	case strings.Contains(err.Error(), "no documents"):
		return s.empty()
	case strings.Contains(err.Error(), "found multiple"):
		return s.told(s.secondDocument(), secondDocument)
	case !errors.As(err, &e):
		return s.unknownFault(mark{1, 1, 1})
	case errors.Is(err, errTooDeep) || strings.Contains(e.Message, errTooDeep.Error()):
		return s.fault(markOf(e.Mark), "this is nested deeper than anything in a problem", "Check the brackets and the indentation.")
	case strings.Contains(e.Message, "mapping values") && s.colonMissing(e.Mark.Line) > 0:
		return s.fault(mark{s.colonMissing(e.Mark.Line), 1, 1}, "a colon is missing, or stands on the next line", "Write name: value on one line, with a space after the colon.")
	}
	if strings.Contains(e.Message, "node content") {
		if opened, bracket := s.unclosed(e.Mark.Line); bracket != 0 {
			return s.told(opened, neverClosed[bracket])
		}
	}
	at := s.nearest(markOf(e.Mark))
	if before := s.before(at.line, at.column); strings.HasSuffix(before, ":") && strings.Contains(e.Message, "',' or") {
		return s.told(mark{at.line, at.column - 1, 1}, noSpace("A: [0, 0]"))
	}
	for _, c := range complaints {
		if c.fits(s, e, at) {
			if c.opened && e.ContextMark.Line > 0 {
				at = markOf(e.ContextMark)
			}
			return s.told(at, c.telling)
		}
	}
	return s.unknownFault(at)
}

// told is a fault in words at a place.
func (s *source) told(at mark, w telling) Fault { return s.fault(at, w.problem, w.remedy) }

// empty is the fault of a file with nothing in it.
func (s *source) empty() Fault {
	return s.fault(mark{1, 1, 1}, "the file is empty", "A problem needs at least a title, units, joints and members.")
}

// noSpace is what is told of a colon with nothing between it and the value.
func noSpace(right string) telling {
	return telling{"a space is missing after the colon", "Write it like this: " + right}
}

// unknownFault is a fault of which nothing is known but its place.
func (s *source) unknownFault(at mark) Fault {
	return s.fault(at, "this cannot be read: a name, colon, comma, bracket or quote is out of place near here",
		"Write name: value, lists as [1, 2] and groups of fields as {name: value, name: value}.")
}

// fits reports whether a complaint is the error, which came up at a place.
func (c *complaint) fits(s *source, e *yaml.LoadError, at mark) bool {
	if !strings.Contains(e.Message, c.about) || !strings.Contains(e.ContextMsg, c.within) || c.further && strings.TrimSpace(s.before(at.line, at.column)) == "" {
		return false
	}
	rest := s.from(at.line, at.column)
	switch c.next {
	case "":
		return true
	case "end":
		return rest == "" && s.ends(at.line)
	case `"`:
		return strings.HasPrefix(s.from(e.ContextMark.Line, e.ContextMark.Column), c.next)
	}
	return strings.HasPrefix(rest, c.next)
}

func markOf(m yaml.Mark) mark { return mark{m.Line, m.Column, 1} }

// nearest is a place, or where the blanks end that stand there, or where the name begins that stands before a colon there.
func (s *source) nearest(at mark) mark {
	if at.line > len(s.lines) {
		at = mark{len(s.lines), maxBytes, 1}
	}
	at = s.within(at)
	rest := s.from(at.line, at.column)
	if strings.HasPrefix(rest, ":") {
		before := s.before(at.line, at.column)
		at.column = 1 + utf8.RuneCountInString(before[:1+strings.LastIndexAny(before, " ,[{")])
		return at
	}
	at.column += len(rest) - len(strings.TrimLeft(rest, " "))
	return at
}

// unclosed is the last bracket that is open at a line, if that ends the file; of what stands in quotes there is no telling.
func (s *source) unclosed(line int) (at mark, bracket rune) {
	if !s.ends(line) {
		return at, 0
	}
	var open []mark
	for n, text := range s.lines {
		before := ' '
		column := 0
		for _, c := range text {
			if column++; c == '#' && before == ' ' {
				break
			}
			switch {
			case c == '[' || c == '{':
				open = append(open, mark{n + 1, column, 1})
			case (c == ']' || c == '}') && len(open) > 0:
				open = open[:len(open)-1]
			}
			before = c
		}
	}
	if len(open) == 0 {
		return at, 0
	}
	at = open[len(open)-1]
	bracket, _ = utf8.DecodeRuneInString(s.from(at.line, at.column))
	return at, bracket
}

// colonMissing is the line of a name without a colon above one in which a colon was not looked for, or 0.
func (s *source) colonMissing(line int) int {
	indent := func(text string) int { return len(text) - len(strings.TrimLeft(text, " ")) }
	for n := line - 1; n >= 1; n-- {
		above := s.lines[n-1]
		if saysNothing(above) {
			continue
		}
		if indent(above) == indent(s.lines[line-1]) && !strings.Contains(above+" ", ": ") {
			return n
		}
		return 0
	}
	return 0
}

// directive is the fault of a line that would set how the rest is read, or nil.
func (s *source) directive() *Fault {
	for n, line := range s.lines {
		if saysNothing(line) {
			continue
		}
		if line[0] == '%' {
			f := s.told(mark{n + 1, 1, utf8.RuneCountInString(line)}, aDirective)
			return &f
		}
		return nil
	}
	return nil
}

// secondDocument is where the second document of a file begins.
func (s *source) secondDocument() mark {
	begun := false
	for n, line := range s.lines {
		switch {
		case begun && (strings.HasPrefix(line, "---") || strings.HasPrefix(line, "...")):
			return mark{n + 1, 1, 3}
		case !saysNothing(line):
			begun = true
		}
	}
	return mark{1, 1, 1}
}
