package main

import (
	"bytes"
	"io"
	"strings"
	"unicode/utf8"

	"unpin/tutor/screen"
)

// wrapped breaks the lines that are written to a terminal between words, where it would break them within one. What is written
// elsewhere stays as it is: there one fact is one line. Each write holds whole lines.
func wrapped(out io.Writer) io.Writer {
	if !isTerminal(out) {
		return out
	}
	return &wrapper{out, func() int { return screen.Width(out) }}
}

type wrapper struct {
	out   io.Writer
	width func() int // in cells, now; 0 where it is not known
}

// Write writes p with its long lines broken.
func (w *wrapper) Write(p []byte) (int, error) {
	var b bytes.Buffer
	width := w.width()
	for line := range strings.Lines(string(p)) {
		text, end := strings.CutSuffix(line, "\n")
		b.WriteString(strings.Join(brokenLine(text, width), "\n"))
		if end {
			b.WriteByte('\n')
		}
	}
	if _, err := w.out.Write(b.Bytes()); err != nil {
		return 0, err
	}
	return len(p), nil
}

// narrowest is how narrow a terminal must not be for lines to be broken between words.
const narrowest = 20

// brokenLine breaks a line at blanks into lines of a width at most, those after the first two cells in from where it begins. A
// word that fits in no line stays whole.
func brokenLine(line string, width int) []string {
	if width < narrowest || utf8.RuneCountInString(line) <= width {
		return []string{line}
	}
	text := strings.TrimLeft(line, " ")
	margin := line[:len(line)-len(text)]
	var all []string
	now := margin
	for i, word := range strings.Split(text, " ") {
		switch {
		case i == 0:
			now += word
		case utf8.RuneCountInString(now)+1+utf8.RuneCountInString(word) <= width:
			now += " " + word
		default:
			all = append(all, now)
			now = margin + "  " + word
		}
	}
	return append(all, now)
}
