package screen

import (
	"slices"
	"unicode"

	tea "github.com/charmbracelet/bubbletea"
)

// longestAnswer is the most runes that a line may have.
const longestAnswer = 200

// An editor is a line of text with a cursor.
type editor struct {
	text []rune
	at   int  // the cursor stands before text[at]
	read bool // what stands was given and could not be read: what is typed next takes its place, unless it is mended first

	waits bool // what stands was given while no answer was taken: so too, but it can be given again as it is
}

// insert puts runes in at the cursor, each that can be shown; a line's end, as in what is pasted, becomes a blank.
func (e *editor) insert(runes []rune) {
	if e.read || e.waits {
		e.take()
	}
	for _, r := range runes {
		if r == '\n' || r == '\r' || r == '\t' {
			r = ' '
		}
		if !unicode.IsPrint(r) && r != ' ' || width(r) == 0 || len(e.text) >= longestAnswer {
			continue
		}
		e.text = slices.Insert(e.text, e.at, r)
		e.at++
	}
}

// key does what a key does to a line, and reports whether it does anything there.
func (e *editor) key(k tea.KeyMsg) bool {
	read, waits := e.read, e.waits
	e.read, e.waits = false, false
	switch k.Type {
	case tea.KeyLeft, tea.KeyCtrlB:
		e.at = max(e.at-1, 0)
	case tea.KeyRight:
		e.at = min(e.at+1, len(e.text))
	case tea.KeyHome, tea.KeyCtrlA:
		e.at = 0
	case tea.KeyEnd, tea.KeyCtrlE:
		e.at = len(e.text)
	case tea.KeyBackspace, tea.KeyCtrlH: // terminals differ in which they send
		e.remove(max(e.at-1, 0), e.at)
	case tea.KeyDelete, tea.KeyCtrlD:
		e.remove(e.at, min(e.at+1, len(e.text)))
	case tea.KeyCtrlU:
		if read {
			e.at = len(e.text)
		}
		e.remove(0, e.at)
	case tea.KeyCtrlK:
		e.remove(e.at, len(e.text))
	case tea.KeyCtrlW:
		e.remove(e.wordStart(), e.at)
	default:
		e.read, e.waits = read, waits
		return false
	}
	return true
}

// open reports whether what is typed next is the first of a line.
func (e *editor) open() bool { return len(e.text) == 0 || e.read || e.waits }

func (e *editor) remove(from, until int) {
	e.text = slices.Delete(e.text, from, until)
	e.at = from
}

// wordStart is where the word before the cursor begins.
func (e *editor) wordStart() int {
	at := e.at
	for at > 0 && e.text[at-1] == ' ' {
		at--
	}
	for at > 0 && e.text[at-1] != ' ' {
		at--
	}
	return at
}

// take empties the line and returns what stood in it.
func (e *editor) take() string {
	text := string(e.text)
	*e = editor{}
	return text
}

// draw writes the line from (x, y) on with its cursor, scrolled so that the cursor is in sight.
func (e *editor) draw(p *page, x, y, end int) {
	from := 0
	for from < e.at && columns(string(e.text[from:e.at])) >= end-x {
		from++
	}
	x = p.put(x, y, end, string(e.text[from:e.at]), strongInk)
	under, rest := " ", ""
	if e.at < len(e.text) {
		under, rest = string(e.text[e.at]), string(e.text[e.at+1:])
	}
	x = p.put(x, y, end, under, cursorInk)
	p.put(x, y, end, rest, strongInk)
}
