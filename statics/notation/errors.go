package notation

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// A ReadError says where a text cannot be read, what is wrong there and what would be right.
type ReadError struct {
	Start, End int    // bytes of the text, 0 ≤ Start ≤ End ≤ len(text)
	Problem    string // what is wrong
	Remedy     string // what would be right; may be empty
	Mismatch   bool   // the text is well formed, but its unit does not measure what was asked for
}

// Error is the fault as one sentence without a full stop.
func (e *ReadError) Error() string {
	if e.Remedy == "" {
		return e.Problem
	}
	return e.Problem + ": " + e.Remedy
}

// excerpt is the most runes of a text that Caret shows.
const excerpt = 72

// Caret is the line of text and, beneath the place of the fault, a line of carets. A long line is cut to the
// neighbourhood of the fault.
func (e *ReadError) Caret(text string) string {
	line := []rune(text)
	start := utf8.RuneCountInString(text[:min(max(e.Start, 0), len(text))])
	end := max(utf8.RuneCountInString(text[:min(max(e.End, 0), len(text))]), start+1)
	if first := start - excerpt/2; len(line) > excerpt && first > 0 {
		line, start, end = line[first:], start-first, end-first
	}
	line = line[:min(len(line), excerpt)]
	for i, r := range line {
		if !unicode.IsPrint(r) {
			line[i] = ' '
		}
	}
	end = min(end, max(len(line), start+1))
	return string(line) + "\n" + strings.Repeat(" ", start) + strings.Repeat("^", end-start)
}

// faultAt is the error of the bytes from start to end.
func faultAt(start, end int, problem, remedy string) *ReadError {
	return &ReadError{Start: start, End: end, Problem: problem, Remedy: remedy}
}

// shown is s as it stands in a sentence: cut short when long, and with single blanks.
func shown(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	if r := []rune(s); len(r) > 24 {
		s = string(r[:24]) + "…"
	}
	return s
}

// quoted is s as shown, in quotes.
func quoted(s string) string { return fmt.Sprintf("%q", shown(s)) }
