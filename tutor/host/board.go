package host

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"
)

// A board shows an instructor who is where and what goes wrong, and opens and closes sets. It is one leaf at a time.
type board struct {
	host  *Host
	by    string // the fingerprint of the instructor's key
	w, h  int
	leaf  leaf
	back  []leaf  // those that esc returns to, the last first
	at    int     // the row in hand
	typed *prompt // what is being typed, or nil
	said  string  // what became of the last one
}

// A leaf is one view of the board.
type leaf interface {
	look(b *board)              // takes what there is now, and keeps the row in hand
	head(b *board) []string     // what stands above the rows: a title, and the names of columns
	rows(b *board) []string     // all of them
	note(b *board) string       // what more there is to know of the row in hand, or nothing
	chooses() bool              // a row is in hand
	press(b *board, key string) // does what a key is bound to here
	keys() string               // says what the keys do
}

// beat is how often a board looks again.
const beat = time.Second

// looks is the message to look again.
type looks struct{}

// looking asks to look again after a while.
func looking() tea.Cmd { return tea.Tick(beat, func(time.Time) tea.Msg { return looks{} }) }

// newBoard is the board of an instructor, with the learners.
func newBoard(h *Host, by string) *board { return &board{host: h, by: by, leaf: &learners{}} }

// Init looks for the first time.
func (b *board) Init() tea.Cmd {
	b.leaf.look(b)
	return looking()
}

// Update takes a message.
func (b *board) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		b.w, b.h = min(max(msg.Width, 0), 500), min(max(msg.Height, 0), 200)
	case looks:
		b.leaf.look(b)
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

// one takes one key: into what is being typed, or for what it is bound to.
func (b *board) one(k tea.KeyMsg) tea.Cmd {
	if b.typed != nil {
		return b.write(k)
	}
	b.said = ""
	last := max(len(b.leaf.rows(b))-1, 0)
	switch key := k.String(); key {
	case "up":
		b.at = max(b.at-1, 0)
	case "down":
		b.at = min(b.at+1, last)
	case "pgup":
		b.at = max(b.at-b.room(), 0)
	case "pgdown":
		b.at = min(b.at+b.room(), last)
	case "esc":
		b.toLast()
	case "w":
		b.ask("a word to all, enter sends it: ", b.tell)
	case "ctrl+c", "q":
		return tea.Quit
	default:
		b.leaf.press(b, key)
	}
	return nil
}

// open shows a leaf over the one in hand.
func (b *board) open(l leaf) {
	b.back, b.leaf, b.at = append(b.back, b.leaf), l, 0
	l.look(b)
}

// toLast shows the leaf before.
func (b *board) toLast() {
	if n := len(b.back); n > 0 {
		b.leaf, b.back, b.at = b.back[n-1], b.back[:n-1], 0
		b.leaf.look(b)
	}
}
