package screen

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/problems"
	"unpin/tutor"
	"unpin/tutor/record"
)

// A view is what the screen shows.
type view int

// The views.
const (
	choosing view = iota // a problem
	working              // the lesson
	reading              // the whole sheet
	drawing              // the figure, large
	telling              // a text that is too long for its place
	helping              // what the keys do
)

// Options say how a screen is run.
type Options struct {
	Entries func() []Entry // lists the problems to choose from; called once, when they are first shown
	Lesson  *tutor.Lesson  // the lesson to begin with, or nil to choose one
	Store   *record.Store  // where progress is kept, or nil
	Notice  string         // something to say at the start, or nothing
	Rung    tutor.Rung     // for the lessons chosen
	Exam    bool
	ASCII   bool             // no sign beyond ASCII
	Colour  bool             // colours may be used
	Clock   func() time.Time // what time it is; nil for that of the machine
}

// An Entry is a problem to choose, or a file that cannot be used with the reason.
type Entry struct {
	Name    string
	Problem *problems.Problem // nil if it cannot be used
	Fault   string
}

// A Model is the whole program on the screen. Update translates messages into what a student does; View draws what
// there is.
type Model struct {
	o       Options
	theme   theme
	w, h    int // of the terminal; nought until it has told
	view    view
	under   view // what a reader was opened over
	scroll  int  // of the reader, in lines from the top
	chooser chooser
	course  *course // the lesson in hand, or nil
	notice  string  // said in place of the last reply
}

// New is the program before it has a size.
func New(o Options) *Model {
	m := &Model{o: o, theme: themeFor(o.Colour), notice: o.Notice}
	m.chooser.rung = o.Rung
	if o.Clock == nil {
		m.o.Clock = time.Now
	}
	if o.Lesson != nil {
		m.keep(o.Lesson)
		m.enter(o.Lesson)
		m.course.greet()
	}
	return m
}

// Init lists the problems, unless there is a lesson to begin with.
func (m *Model) Init() tea.Cmd {
	if m.course != nil {
		return nil
	}
	return m.list()
}

// Update takes one message.
func (m *Model) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.w, m.h = max(msg.Width, 0), max(msg.Height, 0)
	case tea.KeyMsg:
		cmd := m.key(msg)
		m.arrange()
		return m, cmd
	case listed:
		m.chooser.take(msg)
		if msg.warning != "" {
			m.notice = "warning: " + msg.warning
		}
	}
	m.arrange()
	return m, nil
}

// key takes one key message, which may hold several runes that were typed fast or pasted.
func (m *Model) key(k tea.KeyMsg) tea.Cmd {
	if k.Type != tea.KeyRunes || k.Alt {
		if cmd, bound := m.press(k.String()); bound {
			return cmd
		}
		if k.Type == tea.KeySpace {
			m.write(k.Runes, false)
			return nil
		}
		if e := m.line(); e != nil && !k.Alt {
			e.key(k)
			m.retyped()
		}
		return nil
	}
	return m.write(k.Runes, k.Paste)
}

// write takes runes. A rune that is bound to something does it where it cannot be part of what is typed: in a reader,
// and on an empty line.
func (m *Model) write(runes []rune, pasted bool) tea.Cmd {
	var cmds []tea.Cmd
	for _, r := range runes {
		e := m.line()
		if !pasted && (e == nil || len(e.text) == 0) {
			if cmd, bound := m.press(string(r)); bound {
				cmds = append(cmds, cmd)
				continue
			}
		}
		if e != nil {
			e.insert([]rune{r})
			m.retyped()
		}
	}
	return tea.Batch(cmds...)
}

// line is the line that is typed into, or nil.
func (m *Model) line() *editor {
	switch m.view {
	case choosing:
		return &m.chooser.filter
	case working:
		return &m.course.answerLine
	}
	return nil
}

// retyped follows a change of the line.
func (m *Model) retyped() {
	if m.view == choosing {
		m.chooser.at, m.chooser.top = 0, 0
	}
}

// enter shows a lesson.
func (m *Model) enter(l *tutor.Lesson) {
	l.Clock = m.o.Clock
	m.course = newCourse(l, m.o.ASCII)
	m.view = working
}

// keep has the progress of a lesson kept. That writes to a file while a key is worked on: what was judged is safe before
// the student sees it.
func (m *Model) keep(l *tutor.Lesson) {
	if m.o.Store != nil {
		l.Keep(m.o.Store, m.o.Clock, func(err error) { m.notice = "warning: " + err.Error() })
	}
}

// open shows a reader over the view in hand.
func (m *Model) open(v view) tea.Cmd {
	m.under, m.view, m.scroll = m.view, v, 0
	if v == reading {
		m.scroll = 1 << 20 // its end; arrange brings it in
	}
	return nil
}

// close returns from a reader.
func (m *Model) close() tea.Cmd {
	m.view = m.under
	return nil
}

// View is the screen: h lines, none wider than w, or nothing before the terminal has told its size.
func (m *Model) View() string {
	if m.w == 0 || m.h == 0 {
		return ""
	}
	p := newPage(m.w, m.h, m.o.ASCII)
	switch {
	case m.w < leastWidth || m.h < leastHeight:
		p.lines(rect{0, 0, m.w, m.h}, folded(tooSmall, m.w, 0, plainInk))
	case m.view == choosing:
		m.drawChooser(p)
	case m.view == working:
		m.drawLesson(p)
	default:
		m.drawReader(p)
	}
	return p.text(m.theme)
}
