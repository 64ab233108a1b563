package problems

import (
	"strings"

	"github.com/goccy/go-yaml/token"
)

// syntax puts the complaints of the YAML library in the words of this project: the first whose `about` is found in the
// complaint.
var syntax = []struct{ about, problem, remedy string }{
	{"double-quoted text", "the quotes opened here are never closed", `Put a " at the end of the text.`},
	{"single-quoted text", "the quotes opened here are never closed", `Put a ' at the end of the text; inside it, '' stands for one '.`},
	{"escape character", "this is not a mark that may follow a backslash in double quotes", `Write \\ for a backslash, or use single quotes.`},
	{"character corresponding to ']'", "this ] closes nothing", "Take it out, or put a [ where the list begins."},
	{"character corresponding to '}'", "this } closes nothing", "Take it out, or put a { where the fields begin."},
	{"end token ']' not found", "the [ opened here is never closed", "Put a ] at the end of the list."},
	{"end token '}'", "the { opened here is never closed", "Put a } after the last field."},
	{"',' or ']' must", "a comma or a ] is missing before this", "Put commas between the entries of the list and a ] at its end."},
	{"',' or '}' must", "a comma or a } is missing before this", "Put commas between the fields and a } after the last."},
	{"found ','", "there is nothing between this comma and what stands before it", "Take the comma out, or write what is missing."},
	{"'\t'", "the line is indented with a tab", "Indent with spaces."},
	{"tab character", "a tab stands where only spaces may", "Indent with spaces."},
	{"reserved character", "no value begins with this character", "Put the text in quotes."},
	{"block sequence entries", "a list of lines that begin with - cannot begin here", "Put each - on a line of its own, or write the list in brackets: [1, 2]."},
	{"invalid key", "a list or a group of fields cannot be a name", "Write name: value."},
	{"mapping value is not allowed", "two names on one line, or a line indented too far", "Put each name: value on a line of its own, fields of one group indented alike; text with a colon goes in quotes."},
	{"pre-defined", "something stands after a value that is complete", "Take it out, or put the whole text in quotes."},
	{"non-map value", "this is no name: value", "Write a colon and a space after the name, or indent the line if it goes on from the one above."},
	{"unexpected key name", "a colon is missing, or stands on the next line", "Write name: value on one line, with a space after the colon."},
	{"implicit line break", "a colon is missing, or stands on the next line", "Write name: value on one line, with a space after the colon."},
	{"indent", "the lines of this text are not indented alike", "Indent all lines of the text by the same number of spaces."},
	{"scalar value type", "something is missing before this", "Take out the extra comma or colon, or write what is missing."},
	{"not allowed in this context", "the line is not indented like those it belongs to", "Indent entries of one list, and fields of one group, by the same number of spaces."},
}

// syntaxFault is the fault of a complaint of the YAML library about a token.
func (s *source) syntaxFault(complaint string, tk *token.Token) Fault {
	at := mark{1, 1, 1}
	if tk != nil && tk.Position != nil {
		at = mark{tk.Position.Line, tk.Position.Column, 1}
	}
	for _, words := range syntax {
		if strings.Contains(complaint, words.about) {
			return s.fault(at, words.problem, words.remedy)
		}
	}
	return s.fault(at, "this cannot be read: a name, colon, comma, bracket or quote is out of place near here",
		"Write name: value, lists as [1, 2] and groups of fields as {name: value, name: value}.")
}
