package marking

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"strconv"
	"strings"
	"unicode/utf8"

	"unpin/statics/notation"
)

// The bounds of a file of answers.
const (
	mostLine    = 4096
	mostAnswers = 64 << 20
	mostName    = 64
)

// ReadAnswers reads a file of answers that is called name: lines, or CSV if its first line names the columns quantity and
// value. What cannot be read is told with its line and the rest is kept; the error is one of reading the file.
func ReadAnswers(name string, from io.Reader) (*Answers, error) {
	lines, err := linesOf(name, from)
	if err != nil {
		return nil, err
	}
	all := &Answers{}
	var r interface{ read(number int, line string) }
	if first := firstLine(lines); strings.EqualFold(filepath.Ext(name), ".csv") || isHeader(first) {
		r = &tableReader{answers: all, comma: separator(first)}
	} else {
		r = &lineReader{answers: all}
	}
	for i, line := range lines {
		if why := unfit(line); why != "" {
			all.fault(i+1, line, "%s", why)
			continue
		}
		r.read(i+1, line)
	}
	all.checkSeal(name, lines)
	all.gather(lines)
	return all, nil
}

// linesOf are the lines of a file, without their ends.
func linesOf(name string, from io.Reader) ([]string, error) {
	data, err := io.ReadAll(io.LimitReader(bufio.NewReader(from), mostAnswers+1))
	if err != nil {
		return nil, fmt.Errorf("%s cannot be read: %w", notation.Visible(name), err)
	}
	if len(data) > mostAnswers {
		return nil, fmt.Errorf("%s has more than %d MiB: see whether this is the file you meant", notation.Visible(name), mostAnswers>>20)
	}
	text := strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.TrimPrefix(string(data), "\ufeff"))
	if strings.TrimSpace(text) == "" {
		return nil, fmt.Errorf("%s is empty: write one answer a line, such as Cy = 9.5 kN up", notation.Visible(name))
	}
	return strings.Split(strings.TrimSuffix(text, "\n"), "\n"), nil
}

// firstLine is the first line with something to read on it.
func firstLine(lines []string) string {
	for _, line := range lines {
		if withoutComment(line) != "" {
			return line
		}
	}
	return ""
}

// unfit says why a line is not to be read at all; empty if it is.
func unfit(line string) string {
	switch {
	case !utf8.ValidString(line):
		return "this is no UTF-8 text: save the file in UTF-8"
	case len(line) > mostLine:
		return fmt.Sprintf("the line has more than %d bytes: write one answer a line", mostLine)
	case strings.ContainsFunc(strings.ReplaceAll(line, "\t", " "), notation.Hidden):
		return "a character stands here that is not seen: type the line anew"
	}
	return ""
}

// fault notes a line that belongs to no paper.
func (a *Answers) fault(line int, text, format string, args ...any) {
	a.Faults = append(a.Faults, Unread{Lines: []int{line}, Text: shortened(text), Why: fmt.Sprintf(format, args...)})
}

// shortened is a text cut to what can be shown of it.
func shortened(text string) string {
	const most = 60
	text = notation.Visible(strings.TrimSpace(strings.ToValidUTF8(text, "\ufffd")))
	if runes := []rune(text); len(runes) > most {
		return string(runes[:most]) + "…"
	}
	return text
}

// withoutComment is a line without what stands from a # on that begins it or follows a blank.
func withoutComment(line string) string {
	for i, c := range line {
		if c == '#' && (i == 0 || line[i-1] == ' ' || line[i-1] == '\t') {
			line = line[:i]
			break
		}
	}
	return strings.TrimSpace(line)
}

// readID reads what a student or a problem is called.
func readID(to *string, what, text string) error {
	switch {
	case text == "":
		return fmt.Errorf("no %s is named", what)
	case utf8.RuneCountInString(text) > mostName:
		return fmt.Errorf("the %s's name has more than %d characters", what, mostName)
	}
	*to = text
	return nil
}

// readAttempt reads which attempt a paper is.
func readAttempt(to *int, text string) error {
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 || n > 1000 {
		return errors.New("attempt is a whole number from 1 to 1000")
	}
	*to = n
	return nil
}
