package screen

import "strings"

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
