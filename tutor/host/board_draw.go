package host

import (
	"strings"

	"unpin/statics/notation"
)

// The rows of a board that are not the leaf's: a blank one, one of the row in hand, two of mistakes, what the keys do.
const belowRows = 5

// room is how many rows there are for those of the leaf.
func (b *board) room() int { return max(b.h-len(b.leaf.head(b))-belowRows, 1) }

// top is the first row in sight.
func (b *board) top() int {
	if !b.leaf.chooses() {
		return b.at
	}
	return max(b.at-b.room()+1, 0)
}

// View draws the board.
func (b *board) View() string {
	if b.w < 20 || b.h < 8 {
		return ""
	}
	lines := b.leaf.head(b)
	first := len(lines)
	rows := b.leaf.rows(b)
	top := min(b.top(), max(len(rows)-1, 0))
	lines = append(lines, rows[top:min(top+b.room(), len(rows))]...)
	for len(lines) < b.h-belowRows+1 {
		lines = append(lines, "")
	}
	lines = append(append(append(lines, b.leaf.note(b)), b.moment()...), b.foot())
	for i, line := range lines {
		lines[i] = fitted(notation.Visible(line), b.w)
		if b.leaf.chooses() && i == first+b.at-top && len(rows) > 0 {
			lines[i] = "\x1b[0;7m" + lines[i] + "\x1b[0m"
		}
	}
	return strings.Join(lines[:b.h], "\n")
}

// foot says what keys do, or what is being typed, or what became of that.
func (b *board) foot() string {
	switch {
	case b.typed != nil:
		text := b.typed.label + string(b.typed.text) + "_"
		if r := []rune(text); len(r) > b.w { // its end is what is typed
			text = "…" + string(r[len(r)-b.w+1:])
		}
		return text
	case b.said != "":
		return b.said
	}
	return b.leaf.keys()
}

// short is a text in so many runes.
func short(text string, n int) string {
	if r := []rune(text); len(r) > n {
		return string(r[:max(n-1, 0)]) + "…"
	}
	return text
}

// fitted is a line in just so many cells.
func fitted(line string, w int) string {
	line = short(line, w)
	return line + strings.Repeat(" ", w-len([]rune(line)))
}
