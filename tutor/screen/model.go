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
	tasking              // the task
	opening              // the task, before a lesson
	closing              // what a lesson came to
	drilling             // a short exercise
	marking              // the marks of a paper that was handed in
)

// Options say how a screen is run.
type Options struct {
	Entries func() []Entry // lists the problems to choose from; called once, when they are first shown
	Lesson  *tutor.Lesson  // the lesson to begin with, or nil to choose one
	Drill   *tutor.Drill   // the exercise to begin with, or nil
	Sitting *tutor.Sitting // the exam over a set, whose problems are those to choose; or nil
	Portion []tutor.Offer  // the pieces to begin with, or none
	Store   *record.Store  // where progress is kept, or nil
	Notice  string         // something to say at the start, or nothing
	Level   tutor.Level    // for the lessons chosen
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
	Offer   *tutor.Offer         // where it is offered for today, and not because it is there
	Set     *SetEntry            // the set that it is of, or nil; without a problem it is the heading of that set
	task    int                  // which problem of a paper it is, from 1; 0 for none
	act     func(*Model) tea.Cmd // where it is no problem but something to do
	Portion []tutor.Offer        // where it is about ten minutes of practice; Problem is that of the first piece
}

// A SetEntry is a set among the problems to choose from.
type SetEntry struct {
	Title string
	Says  []string     // what there is to know of it, a paragraph each
	Level *tutor.Level // at which its problems are worked, or nil
	Exam  *ExamEntry   // where it is an exam that can be begun, gone on with, or looked at; or nil
}

// An ExamEntry is how an exam is opened from the list.
type ExamEntry struct {
	Says string // what enter does with it
	Asks string // said before it is begun by a second enter; empty where one is enough
	Sit  func() (*tutor.Sitting, error)
}

// heads reports whether an entry is the heading of a set.
func (e Entry) heads() bool { return e.Set != nil && e.Problem == nil }

// A Model is the whole program on the screen. Update translates messages into what a student does; View draws what
// there is.
type Model struct {
	o       Options
	theme   theme
	w, h    int // of the terminal; zero until it has told
	view    view
	chooser chooser
	course  *course       // the lesson in hand, or nil
	drill   *drill        // the exercise in hand, or nil
	portion []tutor.Offer // the pieces that follow the one in hand
	total   int           // how many pieces the portion in hand has
	piece   string        // of a portion, which piece is in hand
	reader  reader
	notice  string    // said in place of the last reply
	from    string    // the entry of a set that the lesson in hand is of, or empty
	minutes int       // of a paper that were waited for
	digit   time.Time // when a digit last answered by itself
	asked   string    // the set whose exam is begun by one more enter
}

// New is the program before it has a size.
func New(o Options) *Model {
	m := &Model{o: o, theme: themeFor(o.Colour), notice: o.Notice}
	m.chooser.level, m.chooser.exam, m.chooser.ascii = o.Level, o.Exam, o.ASCII
	if o.Clock == nil {
		m.o.Clock = time.Now
	}
	if o.Sitting != nil {
		takePaper(m, o.Sitting)
	}
	if o.Lesson != nil {
		m.keep(o.Lesson)
		m.enter(o.Lesson)
		m.view = opening
	}
	if o.Drill != nil {
		m.beginDrill(o.Drill, nil)
	}
	if len(o.Portion) > 0 {
		m.beginPortion(o.Portion)
	}
	return m
}

// Init lists the problems, unless there is a lesson to begin with.
func (m *Model) Init() tea.Cmd {
	if m.course != nil || m.drill != nil {
		return nil
	}
	return tea.Batch(list(m.o), m.minute())
}

// Update takes one message.
func (m *Model) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	var cmd tea.Cmd
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.w, m.h = min(max(msg.Width, 0), mostWidth), min(max(msg.Height, 0), mostHeight)
	case tea.KeyMsg:
		cmd = m.key(msg)
	case minuteGone:
		if msg.n == m.minutes {
			cmd = m.tick()
		}
	case Changed:
		cmd = lookAgain(m)
	case Said:
		m.notice = string(msg)
	case listed:
		m.chooser.take(msg)
		if msg.warning != "" {
			m.notice = "warning: " + msg.warning
		}
	}
	m.arrange()
	return m, cmd
}

// arrange prepares what the view in hand needs for the size of the screen.
func (m *Model) arrange() {
	switch {
	case m.w < leastWidth || m.h < leastHeight:
		return
	case m.view == choosing:
		m.chooser.arrange(m.w, m.h)
		return
	case m.drill != nil:
		m.drill.arrange(m.w, m.h)
	}
	if m.course != nil {
		m.course.arrange(m.w, m.h, m.view)
	}
	m.fillReader()
}

// fillReader puts what is read in the view in hand into the reader.
func (m *Model) fillReader() {
	c, r := m.course, &m.reader
	r.places, r.figure = placeReader(m.w, m.h), nil
	body := r.places.body
	switch {
	case m.view == marking:
		r.fill("The marks: "+m.o.Sitting.Title, m.results(body.w), body.h)
	case m.view == reading:
		r.fill("Sheet: "+c.shows().Title(), c.sheet.lines, body.h)
	case m.view == telling:
		r.fill("What was said", m.talk().said(body.w), body.h)
	case m.view == helping:
		r.fill("Help", helpPage(r.under, body.w), body.h)
	case m.view == drawing:
		r.fill(c.largeTitle(), nil, body.h)
	case m.view == tasking && r.under == choosing:
		r.fillLeaf(m.chooser.task(), m.w, m.h, &m.chooser.gallery, m.o.ASCII)
	case m.view == tasking:
		r.fillLeaf(c.task(), m.w, m.h, &c.gallery, m.o.ASCII)
	case m.view == opening:
		r.fillLeaf(c.opening(), m.w, m.h, &c.gallery, m.o.ASCII)
	case m.view == closing:
		r.fillLeaf(c.closing(), m.w, m.h, &c.gallery, m.o.ASCII)
	}
}

// View is the screen: h lines, none wider than w, or nothing before the terminal has told its size.
func (m *Model) View() string {
	if m.w == 0 || m.h == 0 {
		return ""
	}
	p := newPage(m.w, m.h, m.o.ASCII)
	if m.w < leastWidth || m.h < leastHeight {
		p.lines(rect{0, 0, m.w, m.h}, folded(tooSmall, m.w, 0, plainInk))
		return p.text(m.theme)
	}
	switch m.view {
	case choosing:
		m.chooser.draw(p, m.notice)
	case working:
		m.drawLesson(p)
	case drilling:
		m.drawDrill(p)
	default:
		m.reader.put(p)
		if m.view == drawing {
			m.course.drawScenes(p, m.reader.places.head)
			m.course.figure.put(p, m.reader.places.body)
		}
	}
	p.line(rect{1, m.h - 1, m.w - 2, 1}, 0, m.helpLine(m.w-2))
	return p.text(m.theme)
}

// drawLesson draws the lesson.
func (m *Model) drawLesson(p *page) {
	l := m.course.places(m.w, m.h)
	m.course.drawHead(p, l.head, m.piece)
	m.course.put(p, l)
	m.course.drawStep(p, l.step)
	m.talk().draw(p, l.talk)
}

// talk is what the lesson and the student say to each other.
func (m *Model) talk() talk { return talk{m.course, m.notice} }
