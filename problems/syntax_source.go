package problems

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics/notation"
)

// A mark is a stretch of one line of the file: line and column from 1, width in characters.
type mark struct{ line, column, width int }

// source is the text of a file, to show excerpts of.
type source struct {
	text  string
	lines []string
}

// excerptWidth is the most characters of a line that are shown.
const excerptWidth = 76

// newSource takes the text of a file with line ends of any kind. If it is not clean UTF-8 text, the fault says where;
// the source then still serves to show it.
func newSource(data []byte) (*source, *Fault) {
	text := strings.TrimPrefix(string(data), "\ufeff")
	if strings.Contains(text, "\r") {
		text = strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text)
	}
	s := &source{text: text, lines: strings.Split(text, "\n")}
	if notation.VisibleLines(text) == text { // as nearly always; it is quick to tell
		return s, nil
	}
	for i, line := range s.lines {
		if f := s.unclean(i+1, line); f != nil {
			return s, f
		}
	}
	return s, nil
}

// unclean is the fault of the first character of a line that is not text, or nil.
func (s *source) unclean(number int, line string) *Fault {
	column := 1
	for i, c := range line {
		if c == utf8.RuneError {
			if _, size := utf8.DecodeRuneInString(line[i:]); size == 1 {
				f := s.fault(mark{number, column, 1}, fmt.Sprintf("the byte %#02x is not UTF-8 text", line[i]), "Save the file as plain text in UTF-8.")
				return &f
			}
		}
		if notation.Hidden(c) && c != '\t' {
			f := s.fault(mark{number, column, 1}, hiddenProblem(c), "Take it out, or save the file as plain text in UTF-8.")
			return &f
		}
		column++
	}
	return nil
}

// hiddenProblem says what is wrong with a character that steers what shows a text.
func hiddenProblem(c rune) string {
	kind := "a control character"
	switch {
	case c == '\ufeff' || c >= '\u200b' && c <= '\u200d' || c == '\u2060' || c == '\u00ad':
		kind = "a character that is not seen"
	case !unicode.IsControl(c):
		kind = "a character that changes how the text is laid out"
	}
	return fmt.Sprintf("%s (U+%04X) stands here", kind, c)
}

// fault is a fault at the mark, with its excerpt.
func (s *source) fault(at mark, problem, remedy string) Fault {
	at = s.within(at)
	return Fault{Line: at.line, Column: at.column, Excerpt: s.excerpt(at), Problem: problem, Remedy: remedy}
}

// within moves a mark that lies past the end of the file or of its line to the nearest place inside.
func (s *source) within(at mark) mark {
	at.line = min(max(at.line, 1), len(s.lines))
	at.column = min(max(at.column, 1), utf8.RuneCountInString(s.lines[at.line-1])+1)
	return at
}

// ends reports whether nothing stands below a line but comments.
func (s *source) ends(line int) bool {
	return !slices.ContainsFunc(s.lines[min(line, len(s.lines)):], func(text string) bool { return !saysNothing(text) })
}

// saysNothing reports whether a line is blank or a comment.
func saysNothing(line string) bool {
	text := strings.TrimSpace(line)
	return text == "" || text[0] == '#'
}

// from is a line from a column on, before what stands before it.
func (s *source) from(line, column int) string {
	return (&cursor{source: s}).from(line, column)
}

func (s *source) before(line, column int) string {
	return (&cursor{source: s}).before(line, column)
}

// cursor finds places of a file one after the other: in a long line it goes on from the last.
type cursor struct {
	*source
	line, column, at int
}

func (p *cursor) from(line, column int) string {
	before := p.before(line, column)
	return p.lines[p.line-1][len(before):]
}

func (p *cursor) before(line, column int) string {
	line = min(max(line, 1), len(p.lines))
	if line != p.line || column < p.column {
		p.line, p.column, p.at = line, 1, 0
	}
	text := p.lines[line-1]
	for ; p.column < column && p.at < len(text); p.column++ {
		_, size := utf8.DecodeRuneInString(text[p.at:])
		p.at += size
	}
	return text[:p.at]
}

// excerpt is the marked line and carets beneath the mark; of a long line only the stretch around the mark.
func (s *source) excerpt(at mark) string {
	line := []rune(s.lines[at.line-1])
	if strings.TrimSpace(string(line)) == "" {
		return ""
	}
	start, end := 0, len(line)
	before, after := "", ""
	if end > excerptWidth {
		start = max(0, min(at.column-1-excerptWidth/2, end-excerptWidth))
		end = min(end, start+excerptWidth)
	}
	if start > 0 {
		before = "…"
	}
	if end < len(line) {
		after = "…"
	}
	shown := before + printable(line[start:end]) + after
	blank := len([]rune(before)) + at.column - 1 - start
	carets := max(1, min(at.width, end-at.column+1))
	return shown + "\n" + strings.Repeat(" ", blank) + strings.Repeat("^", carets)
}

// printable is the characters with each that takes no place, or an unsure one, replaced by a blank.
func printable(line []rune) string {
	return strings.Map(func(c rune) rune {
		if !unicode.IsPrint(c) || unicode.Is(unicode.Mn, c) {
			return ' '
		}
		return c
	}, string(line))
}
