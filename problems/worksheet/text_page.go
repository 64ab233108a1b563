package worksheet

import (
	"strings"
	"unicode/utf8"
)

// A page is a text in the making, no line of which is wider than width.
type page struct {
	strings.Builder
	width int
	ascii bool
	units []string // words that stay with the number before them
}

// set sets one passage; there are no pictures.
func (p *page) set(b passage) {
	switch b.kind {
	case titlePassage:
		p.heading(b.text, "=")
	case sectionPassage:
		p.blank()
		p.heading(b.text, "-")
	case gapPassage:
		p.blank()
	case tablePassage:
		p.table(b.indent, b.table)
	case picturePassage:
	default:
		p.put(b.label, b.text)
	}
}

// bound is a blank at which no line is broken.
const bound = '\u00a0'

// ascii are the signs of a text in plain ASCII.
var ascii = strings.NewReplacer("−", "-", "·", "*", "×", "x", "≤", "<=", "≥", ">=", "²", "^2", "³", "^3", "°", " deg")

// dress prepares a text of ours for the page.
func (p *page) dress(text string) string {
	if p.ascii {
		text = ascii.Replace(text)
	}
	return p.bind(text)
}

// blank leaves a line free.
func (p *page) blank() { p.WriteString("\n") }

// put writes a paragraph after a label. What does not fit on its first line stands beneath, indented as far as the
// label goes.
func (p *page) put(label, text string) {
	label = p.dress(label)
	indent := min(runes(label), p.width/2)
	for i, line := range fold(p.dress(text), p.width-indent) {
		before := strings.Repeat(" ", indent)
		if i == 0 {
			if runes(label) > indent {
				p.write(strings.Join(fold(label, p.width), "\n"))
			} else {
				before = label
			}
		}
		p.write(before + line)
	}
}

// write ends the line, without blanks at its end.
func (p *page) write(line string) {
	line = strings.ReplaceAll(line, string(bound), " ")
	p.WriteString(strings.TrimRight(line, " ") + "\n")
}

// heading is a line of its own, underlined.
func (p *page) heading(text, rule string) {
	widest := 0
	for _, line := range fold(p.dress(text), p.width) {
		p.write(line)
		widest = max(widest, runes(line))
	}
	p.write(strings.Repeat(rule, widest))
}

func runes(s string) int { return utf8.RuneCountInString(s) }

// leading are signs that stay with the word after them.
var leading = map[string]bool{"+": true, "−": true, "-": true, "=": true, "×": true, "x": true, "<=": true, "≤": true}

// bind makes blanks unbreakable between a number and its unit, and between a sign and what follows it.
func (p *page) bind(text string) string {
	words := strings.Split(text, " ")
	var b strings.Builder
	for i, w := range words {
		if i > 0 {
			b.WriteRune(p.gap(words[i-1], w))
		}
		b.WriteString(w)
	}
	return b.String()
}

// gap is the blank between two words.
func (p *page) gap(before, after string) rune {
	last, _ := utf8.DecodeLastRuneInString(before)
	unit := strings.TrimRight(after, ".,;:)")
	if before != "" && leading[before] {
		return bound
	}
	if last >= '0' && last <= '9' {
		for _, u := range p.units {
			if unit == u || strings.HasPrefix(unit, u+")") {
				return bound
			}
		}
	}
	return ' '
}

// fold breaks a text into lines of at most so many characters, at blanks where it can. It has at least one line.
func fold(text string, width int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Split(text, " ") {
		switch {
		case line == "":
			line = word
		case runes(line)+1+runes(word) <= width:
			line += " " + word
		default:
			lines = append(lines, line)
			line = word
		}
		for runes(line) > width {
			cut := cutAt(line, width)
			lines = append(lines, line[:cut])
			line = strings.TrimLeft(line[cut:], string(bound))
		}
	}
	return append(lines, line)
}

// cutAt is where a word that is too long is broken: after a bound blank if it has one, else anywhere.
func cutAt(word string, width int) int {
	cut, at := 0, 0
	for i, r := range word {
		if at == width {
			if cut == 0 {
				cut = i
			}
			break
		}
		if r == bound {
			cut = i
		}
		at++
	}
	return cut
}
