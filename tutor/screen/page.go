package screen

import (
	"strings"
	"unicode"

	"github.com/charmbracelet/lipgloss"

	"unpin/statics/notation"
)

// A page is a screen in the making: exactly h rows of w cells.
type page struct {
	w, h  int
	ascii bool
	cells []cell
}

// A cell is one place of a page. A rune that is two cells wide is followed by a cell with the rune 0.
type cell struct {
	r   rune
	ink ink
}

// A rect is a place on a page; x and y count from the top left corner.
type rect struct{ x, y, w, h int }

func newPage(w, h int, ascii bool) *page {
	p := &page{w: w, h: h, ascii: ascii, cells: make([]cell, w*h)}
	for i := range p.cells {
		p.cells[i].r = ' '
	}
	return p
}

// put writes text from (x, y) on, cut off at the column end, and returns the column after it.
func (p *page) put(x, y, end int, text string, k ink) int {
	if p.ascii {
		text = ascii(text)
	}
	end = min(end, p.w)
	for _, r := range text {
		n := width(r)
		if x+n > end || y < 0 || y >= p.h || x < 0 {
			break
		}
		for i := range n {
			p.cells[y*p.w+x+i] = cell{map[bool]rune{true: r}[i == 0], k}
		}
		x += n
	}
	return x
}

// line writes a line of spans into row y of a place.
func (p *page) line(in rect, y int, l line) {
	if y < 0 || y >= in.h {
		return
	}
	x := in.x
	for _, s := range l {
		x = p.put(x, in.y+y, in.x+in.w, s.text, s.ink)
	}
}

// lines writes as many lines as a place has rows.
func (p *page) lines(in rect, all []line) {
	for y, l := range all {
		p.line(in, y, l)
	}
}

// fill repeats one sign over a place.
func (p *page) fill(in rect, sign string, k ink) {
	for y := range in.h {
		p.put(in.x, in.y+y, in.x+in.w, strings.Repeat(sign, in.w), k)
	}
}

// text is the page as the terminal takes it, h lines, dressed by a theme.
func (p *page) text(t theme) string {
	var b strings.Builder
	b.Grow(len(p.cells) * 2)
	for y := range p.h {
		if y > 0 {
			b.WriteByte('\n')
		}
		p.row(&b, p.cells[y*p.w:(y+1)*p.w], t)
	}
	return b.String()
}

// row writes one row, each run of like ink dressed by itself.
func (p *page) row(b *strings.Builder, cells []cell, t theme) {
	dressed := ""
	for _, c := range cells {
		if c.r == 0 {
			continue
		}
		if code := t.code(c.ink); code != dressed {
			b.WriteString(change(dressed, code))
			dressed = code
		}
		b.WriteRune(c.r)
	}
	b.WriteString(change(dressed, ""))
}

// change is the control sequence from one dress to another.
func change(from, to string) string {
	switch {
	case from == to:
		return ""
	case to == "":
		return "\x1b[0m"
	}
	return "\x1b[0;" + to + "m"
}

// width is how many cells a rune takes: 0 for one that is not to be shown.
func width(r rune) int {
	switch {
	case r >= ' ' && r < 0x7f:
		return 1
	case unicode.IsControl(r) || unicode.Is(unicode.Cf, r):
		return 0
	case r >= 0x2500 && r < 0x2900 && (r < 0x2600 || r >= 0x2800): // the lines, signs and dots of figures
		return 1
	}
	return lipgloss.Width(string(r))
}

// columns is how many cells a text takes.
func columns(text string) int {
	n := 0
	for _, r := range text {
		n += width(r)
	}
	return n
}

// signs are what is drawn in ASCII in place of what notation does not know.
var signs = strings.NewReplacer("─", "-", "│", "|", "┌", "+", "┐", "+", "└", "+", "┘", "+", "▸", ">", "…", "...", "•", "*",
	"←", "<-", "→", "->", "↑", "^", "↓", "v", "┄", "-")

// ascii is a text with no rune beyond ASCII.
func ascii(text string) string {
	for i := range len(text) {
		if text[i] >= 0x7f {
			return strings.Map(func(r rune) rune {
				if r >= 0x7f {
					return '?'
				}
				return r
			}, signs.Replace(notation.ASCII(text)))
		}
	}
	return text
}
