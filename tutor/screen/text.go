package screen

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// A line is one row of text in spans of different ink.
type line []span

// A span is text in one ink.
type span struct {
	text string
	ink  ink
}

// say is a line in one ink.
func say(text string, k ink) line { return line{{text, k}} }

// fold breaks a text into lines of at most w cells, between words where it can. What follows the first line is set in by
// the given number of cells.
func fold(text string, w, in int) []string {
	in = min(in, w/2)
	var all []string
	row, used, room := "", 0, w
	push := func() {
		all = append(all, row)
		row, used, room = strings.Repeat(" ", in), 0, w-in
	}
	for _, word := range strings.Fields(text) {
		n := columns(word)
		if used > 0 && used+1+n > room {
			push()
		}
		for n > room {
			var head string
			head, word = cut(word, room)
			row += head
			push()
			n = columns(word)
		}
		if used > 0 {
			row, used = row+" ", used+1
		}
		row, used = row+word, used+n
	}
	if used > 0 || len(all) == 0 {
		all = append(all, row)
	}
	return all
}

// lit sets off the products that a name begins, in a row of a sum.
func lit(l line, name string) line {
	var all line
	for _, s := range l {
		rest := s.text
		for {
			from, until := productOf(rest, name)
			if from < 0 {
				break
			}
			all = append(all, span{rest[:from], s.ink}, span{rest[from:until], askedInk})
			rest = rest[until:]
		}
		all = append(all, span{rest, s.ink})
	}
	return all
}

// productOf is where in a sum a name stands as a whole, and where the product that it begins ends; −1 if it does not.
func productOf(text, name string) (from, until int) {
	for at := 0; ; {
		i := strings.Index(text[at:], name)
		if i < 0 {
			return -1, -1
		}
		from, at = at+i, at+i+len(name)
		before, _ := utf8.DecodeLastRuneInString(text[:from])
		after, _ := utf8.DecodeRuneInString(text[at:])
		if inName(before) || inName(after) {
			continue
		}
		if n := strings.IndexByte(text[at:], ' '); n >= 0 {
			return from, at + n
		}
		return from, len(text)
	}
}

// inName reports whether a rune can be part of a force's name.
func inName(r rune) bool {
	return r == '_' || r == '.' || r == '\'' || unicode.IsLetter(r) || unicode.IsDigit(r)
}

// cut parts a text after as many cells as there is room for, and after one rune at least.
func cut(text string, room int) (head, rest string) {
	n := 0
	for i, r := range text {
		n += width(r)
		if n > room && i > 0 {
			return text[:i], text[i:]
		}
	}
	return text, ""
}

// short is a text of at most w cells, with an ellipsis where something was left out.
func short(text string, w int) string {
	if columns(text) <= w {
		return text
	}
	if w < 1 {
		return ""
	}
	head, _ := cut(text, w-1)
	return strings.TrimRight(head, " ") + "…"
}

// folded is a text as lines in one ink.
func folded(text string, w, in int, k ink) []line {
	var all []line
	for _, row := range fold(text, w, in) {
		all = append(all, say(row, k))
	}
	return all
}
