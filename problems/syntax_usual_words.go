package problems

import (
	"strings"

	"github.com/goccy/go-yaml/token"
)

// folded is text in lines of its own, further right than the block's column: after > with blanks in place of the ends of lines.
func (u *usual) folded(column int) *node {
	n, between := u.node(scalar, u.mark(u.at, u.at+1)), byte('\n')
	if u.peek() == '>' {
		between = ' '
	}
	if u.at++; u.peek() != '\n' || u.at >= len(u.text) {
		return nil
	}
	var text []byte
	indent, empty := 0, 0
	for u.at < len(u.text) {
		u.newLine()
		u.blanks()
		own := u.at - u.begins
		if own == 0 && u.peek() == '\n' {
			empty++
			continue
		}
		if own <= column || own < indent {
			break
		}
		line, _, _ := strings.Cut(u.text[u.at:], "\n")
		if indent == 0 && empty == 0 {
			indent = own
		}
		if own != indent || line == "" || line[len(line)-1] == ' ' {
			return nil
		}
		text = appendLine(text, line, between, empty)
		u.at += len(line)
		empty = 0
	}
	u.at = min(u.begins, len(u.text))
	u.nextLine()
	n.text = strings.TrimSpace(string(text))
	if n.text == "" || u.indent > column {
		return nil
	}
	return n
}

// appendLine adds a line to text of several, after some that were empty.
func appendLine(text []byte, line string, between byte, empty int) []byte {
	if len(text) == 0 {
		return append(text, line...)
	}
	if empty == 0 || between == '\n' {
		text = append(text, between)
	}
	for range empty {
		text = append(text, '\n')
	}
	return append(text, line...)
}

// word is a word, text or number on one line, in quotes or without.
func (u *usual) word(inBrackets bool) *node {
	if c := u.peek(); c == '"' || c == '\'' {
		return u.quotes()
	}
	length := u.plain(inBrackets)
	if length == 0 {
		return nil
	}
	text := u.text[u.at : u.at+length]
	numeric, sure := isNumeric(text)
	if !sure || strings.TrimSpace(text) != text {
		return nil
	}
	n := u.node(scalar, u.mark(u.at, u.at+length))
	n.text, n.literal, n.numeric = text, true, numeric
	u.at += length
	return n
}

// plain is how many bytes the word without quotes has that begins here; none, if it is no usual one. It ends at a comment, a
// colon with a gap behind it, or the end of the line; in brackets at a comma or a bracket too.
func (u *usual) plain(inBrackets bool) int {
	first := u.peek()
	if strings.IndexByte(",[]{}#&*!|>'\"%@`=<~?:\n ", first) >= 0 || first == '-' && (u.gap(1) || strings.HasPrefix(u.text[u.at:], "--")) {
		return 0
	}
	text := u.text[u.at:]
	end := len(text)
scan:
	for i := range len(text) {
		switch c := text[i]; c {
		case '\n':
			end = i
			break scan
		case '#':
			if text[i-1] == ' ' {
				end = i
				break scan
			}
		case ':':
			if u.gap(i + 1) {
				end = i
				break scan
			}
			if inBrackets { // the library ends some words there
				return 0
			}
		case ',', ']', '}':
			if inBrackets {
				end = i
				break scan
			}
		case '[', '{':
			if inBrackets {
				return 0
			}
		case '<':
			if strings.HasPrefix(text[i:], "<<") {
				return 0
			}
		}
	}
	return len(strings.TrimRight(text[:end], " "))
}

// quotes is a text in quotes, on one line and without escapes.
func (u *usual) quotes() *node {
	quote := u.peek()
	inner := u.text[u.at+1:]
	end := strings.IndexByte(inner, quote)
	if end < 0 || u.at+end+2 < len(u.text) && inner[end+1] == quote || strings.ContainsAny(inner[:end], "\\\n") {
		return nil
	}
	n := u.node(scalar, u.mark(u.at, u.at+end+2))
	n.text, n.literal, n.quote = inner[:end], true, 1
	u.at += end + 2
	return n
}

// isNumeric reports whether YAML takes a word without quotes for a number or a yes or no; sure is false where it takes it for
// nothing, or for a number that is none.
func isNumeric(word string) (numeric, sure bool) {
	switch c := word[0]; {
	case '1' <= c && c <= '9' || c == '-' || c == '+' || c == '0':
		return token.ToNumber(word) != nil, true
	case c == '.':
		return false, false
	}
	switch word {
	case "null", "Null", "NULL":
		return false, false
	case "true", "True", "TRUE", "false", "False", "FALSE":
		return true, true
	}
	return false, true
}
