package main

import (
	"io"
	"strings"
	"unicode/utf8"

	"unpin/tutor/screen"
)

// helpWidth is the width for which the help is written, and wrappedFrom how long a line of prose is at least that goes on in the next.
const (
	helpWidth   = 120
	wrappedFrom = 95
)

// forTerminal is a text of the help for where it goes: on a terminal that is narrower than it is written for, its lines are broken anew.
func forTerminal(out io.Writer, text string) string {
	if !isTerminal(out) {
		return text
	}
	return fitted(text, screen.Width(out))
}

// fitted breaks the lines of a text anew for a width: paragraphs flow, and what stands behind a name in a column stays in it.
func fitted(text string, width int) string {
	if width < narrowest || width >= helpWidth {
		return text
	}
	var all []string
	for _, line := range strings.Split(text, "\n") {
		if n := len(all); n > 0 && flowsOn(all[n-1], line) {
			all[n-1] += " " + line
			continue
		}
		all = append(all, line)
	}
	var b strings.Builder
	for i, line := range all {
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(strings.Join(inColumn(line, width), "\n"))
	}
	return b.String()
}

// flowsOn reports whether a line goes on in the next: both stand at the margin, and the first is full.
func flowsOn(line, next string) bool {
	return utf8.RuneCountInString(line) >= wrappedFrom && line[0] != ' ' && next != "" && next[0] != ' '
}

// inColumn breaks a line of a name and what is said of it, which stands behind two blanks at least: what does not fit goes on in its
// column, or where that is too far to the right, beneath the name.
func inColumn(line string, width int) []string {
	name := strings.TrimLeft(line, " ")
	margin := len(line) - len(name)
	gap := strings.Index(name, "  ")
	switch {
	case utf8.RuneCountInString(line) <= width:
		return []string{line}
	case margin == 0:
		return hung(brokenLine(line, width), "", 0) // prose
	case gap < 0:
		return brokenLine(line, width)
	}
	says := strings.TrimLeft(name[gap:], " ")
	column := utf8.RuneCountInString(line) - utf8.RuneCountInString(says)
	if column <= width/2 {
		all := brokenLine(strings.Repeat(" ", column-2)+"  "+says, width)
		return hung(all, line[:len(line)-len(says)], column)
	}
	column = margin + 8
	return append(brokenLine(line[:margin+gap], width), hung(brokenLine(strings.Repeat(" ", column)+says, width), strings.Repeat(" ", column), column)...)
}

// hung puts lines under each other in a column, the first behind what stands before it.
func hung(lines []string, before string, column int) []string {
	for i, line := range lines {
		if lines[i] = strings.Repeat(" ", column) + strings.TrimLeft(line, " "); i == 0 {
			lines[i] = before + strings.TrimLeft(line, " ")
		}
	}
	return lines
}
