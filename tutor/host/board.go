package host

import (
	"fmt"
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// A board shows an instructor who is where, and what goes wrong.
type board struct {
	host  *Host
	w, h  int
	list  []doing
	at    int      // the one in hand
	sheet []string // what the one in hand typed, while it is read; else nil
	top   int      // of the sheet
	typed *string  // the word to all that is being typed, or nil
	said  string   // what became of the last one
}

// beat is how often a board looks again.
const beat = time.Second

// looks is the message to look again.
type looks struct{}

// looking asks to look again after a while.
func looking() tea.Cmd { return tea.Tick(beat, func(time.Time) tea.Msg { return looks{} }) }

// Init looks for the first time.
func (b *board) Init() tea.Cmd {
	b.look()
	return looking()
}

// look takes what everybody does now, and keeps the one in hand.
func (b *board) look() {
	held := ""
	if b.at < len(b.list) {
		held = b.list[b.at].id
	}
	b.list = b.host.activity.all()
	b.at = min(b.at, max(len(b.list)-1, 0))
	for i, d := range b.list {
		if d.id == held {
			b.at = i
		}
	}
}

// Update takes a message.
func (b *board) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		b.w, b.h = min(max(msg.Width, 0), 500), min(max(msg.Height, 0), 200)
	case looks:
		b.look()
		return b, looking()
	case tea.KeyMsg:
		return b, b.key(msg)
	}
	return b, nil
}

// key takes a key message, which may hold several runes that were typed fast.
func (b *board) key(k tea.KeyMsg) tea.Cmd {
	if k.Type != tea.KeyRunes || k.Paste {
		return b.one(k)
	}
	var all []tea.Cmd
	for _, r := range k.Runes {
		all = append(all, b.one(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune{r}}))
	}
	return tea.Batch(all...)
}

// one takes one key: into the word that is being typed, or for what it is bound to.
func (b *board) one(k tea.KeyMsg) tea.Cmd {
	if b.typed != nil {
		return b.write(k)
	}
	return b.press(k.String())
}

// press does what a key is bound to.
func (b *board) press(key string) tea.Cmd {
	last := max(len(b.list)-1, 0)
	if b.sheet != nil {
		last = max(len(b.sheet)-1, 0)
	}
	to := &b.at
	if b.sheet != nil {
		to = &b.top
	}
	switch key {
	case "up":
		*to = max(*to-1, 0)
	case "down":
		*to = min(*to+1, last)
	case "pgup":
		*to = max(*to-b.rows(), 0)
	case "pgdown":
		*to = min(*to+b.rows(), last)
	case "enter":
		if b.sheet == nil && b.at < len(b.list) {
			b.read(b.list[b.at])
		}
	case "esc":
		b.sheet, b.top = nil, 0
	case "w":
		b.typed, b.said = new(string), ""
	case "ctrl+c", "q":
		return tea.Quit
	}
	return nil
}

// longestWord bounds a word to all, in runes.
const longestWord = 300

// write types the word to all.
func (b *board) write(k tea.KeyMsg) tea.Cmd {
	text := []rune(*b.typed)
	switch k.Type {
	case tea.KeyRunes, tea.KeySpace:
		text = append(text, k.Runes...)
	case tea.KeyBackspace:
		text = text[:max(len(text)-1, 0)]
	case tea.KeyEsc:
		b.typed = nil
		return nil
	case tea.KeyEnter:
		b.typed = nil
		if word := strings.TrimSpace(notation.Visible(string(text))); word != "" {
			b.said = "Told to " + wording.Counted(b.host.tellAll(word), "session") + ": " + word
		}
		return nil
	case tea.KeyCtrlC:
		return tea.Quit
	}
	*b.typed = string(text[:min(len(text), longestWord)])
	return nil
}

// read lists what a learner typed in the run in hand.
func (b *board) read(d doing) {
	b.sheet, b.top = []string{d.id + ": " + d.problem + ", at the level " + d.level}, 0
	past, err := b.host.store(d.id).Past()
	var all []record.Record
	if err == nil {
		all, err = past.Of(d.frame)
	}
	if err != nil {
		b.sheet = append(b.sheet, err.Error())
		return
	}
	for _, r := range all {
		if r.Run == d.run && r.Kind == "" {
			b.sheet = append(b.sheet, fmt.Sprintf("%s  %-20s %-24s %s", r.At.Format(time.TimeOnly), r.Question, r.Typed, outcomeText(r)))
		}
	}
}

// outcomeText is what became of what was typed.
func outcomeText(r record.Record) string {
	text := string(r.Outcome)
	switch {
	case r.Outcome.Right():
		text = "right"
	case r.Outcome == record.Sense:
		text = "opposite sense"
	}
	if len(r.Slips) == 1 {
		if s := slip.ByID(r.Slips[0]); s != nil {
			text += ": " + s.Principle()
		}
	}
	return text
}

// rows is how many lines there are for the list or the sheet.
func (b *board) rows() int { return max(b.h-8, 1) }

// View draws the board.
func (b *board) View() string {
	if b.w < 20 || b.h < 8 {
		return ""
	}
	lines := []string{b.head(), ""}
	if b.sheet != nil {
		lines = append(lines, b.sheet[b.top:min(b.top+b.rows()+1, len(b.sheet))]...)
	} else {
		lines = append(lines, b.table()...)
	}
	for len(lines) < b.h-5 {
		lines = append(lines, "")
	}
	lines = append(lines[:b.h-5], "")
	lines = append(lines, b.moment()...)
	lines = append(lines, b.foot())
	for i, line := range lines {
		lines[i] = fitted(notation.Visible(line), b.w)
		if b.sheet == nil && i == 3+b.at-b.first() && len(b.list) > 0 {
			lines[i] = "\x1b[0;7m" + lines[i] + "\x1b[0m"
		}
	}
	return strings.Join(lines[:b.h], "\n")
}

// first is the first of the list in sight.
func (b *board) first() int { return max(b.at-b.rows()+2, 0) }

// head says how many are there.
func (b *board) head() string {
	return fmt.Sprintf("%s: %s here, %s today", b.host.o.Title, wording.Counted(b.host.present(), "learner"), wording.Counted(len(b.list), "learner")) + b.host.storeText()
}

// table is a line a learner.
func (b *board) table() []string {
	lines := []string{fmt.Sprintf("   %-10s %-16s %-14s %6s %5s %5s  %s", "who", "problem", "question", "for", "wrong", "first", "mistake")}
	now := b.host.o.Clock()
	for _, d := range b.list[b.first():] {
		mark, mistake := " ", ""
		if at, here := b.host.where(d.id); here {
			mark = "*"
			if at != "" {
				mistake = "(at " + at + ") "
			}
		}
		if s := slip.ByID(d.slip); s != nil {
			mistake += s.Principle()
		}
		lines = append(lines, fmt.Sprintf(" %s %-10s %-16s %-14s %6s %5d %5s  %s", mark, short(d.id, 10), short(d.problem, 16), short(d.question, 14),
			inWords(now.Sub(d.since)), d.wrong, fmt.Sprintf("%d/%d", d.first.Right, d.first.Of), mistake))
	}
	if len(b.list) == 0 {
		lines = append(lines, "   Nobody has begun anything yet.")
	}
	return lines
}

// inWords is a time in minutes, short ones in seconds.
func inWords(d time.Duration) string {
	if d < 2*time.Minute {
		return fmt.Sprintf("%d s", int(max(d, 0)/time.Second))
	}
	return fmt.Sprintf("%d min", int(d/time.Minute))
}

// moment says which mistakes are made most now, in two lines.
func (b *board) moment() []string {
	lines := []string{"", ""}
	for i, m := range b.host.activity.frequent(b.host.o.Clock()) {
		if s := slip.ByID(m.ID); s != nil && i < len(lines) {
			lines[i] = fmt.Sprintf("%d times in the last quarter of an hour: %s", m.Times, s.Principle())
		}
	}
	return lines
}

// foot says what keys do, or what is being typed.
func (b *board) foot() string {
	switch {
	case b.typed != nil:
		return "a word to all, enter sends it: " + *b.typed + "_"
	case b.said != "":
		return b.said
	case b.sheet != nil:
		return "up, down read   esc back   w word to all   ctrl+c leave"
	}
	return "* here   up, down choose   enter read what was typed   w word to all   ctrl+c leave"
}

// short is a text in so many runes.
func short(text string, n int) string {
	if r := []rune(text); len(r) > n {
		return string(r[:n-1]) + "…"
	}
	return text
}

// fitted is a line in just so many cells.
func fitted(line string, w int) string {
	line = short(line, w)
	return line + strings.Repeat(" ", w-len([]rune(line)))
}
