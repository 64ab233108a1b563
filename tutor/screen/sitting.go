package screen

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics/wording"
	"unpin/tutor"
)

// An exam over a set has a list of its own problems, and beneath them what ends it. Its clock moves once a minute and at its end; an exam
// without a limit wakes nothing.

// paperEntries are the problems of a paper, then an entry that hands it in, or after that begins another.
func paperEntries(s *tutor.Sitting) []Entry {
	var all []Entry
	for i, t := range s.Tasks {
		all = append(all, Entry{Name: t.Name, Problem: t.Problem, task: i + 1})
	}
	switch {
	case !s.Over():
		all = append(all, Entry{Name: "Hand in the paper", Fault: "Enter, twice, hands the paper in as it stands. After it nothing can be typed.", act: handIn})
	default:
		all = append(all, Entry{Name: "The marks", Fault: "Enter shows the marks of the whole paper; each problem has its own.", act: showMarks})
		if s.Practice {
			all = append(all, Entry{Name: "Another paper, for practice", Fault: "Enter begins this set anew; the paper that was handed in stays what it is.", act: anotherPaper})
		}
	}
	return all
}

// The entries of a paper that are no problems.
func handIn(m *Model) tea.Cmd {
	if why := m.o.Sitting.Held(); why != "" {
		m.notice = why
		return nil
	}
	m.chooser.clear() // what was typed to find this entry may be typed again
	return m.sat(m.o.Sitting.AskHandIn(tutor.AgainByEnter))
}

func showMarks(m *Model) tea.Cmd {
	m.view, m.reader = marking, reader{under: choosing}
	return nil
}

func anotherPaper(m *Model) tea.Cmd {
	m.notice = ""
	if err := m.o.Sitting.Anew(); err != nil {
		m.notice = wording.Sentence(err.Error())
	}
	return tea.Batch(list(m.o), m.minute())
}

// sat shows what the paper says to a word about it: that it is handed in, or what is still open.
func (m *Model) sat(r tutor.Reply) tea.Cmd {
	if r.Kind != tutor.HandedIn {
		m.notice = r.Lines[0]
		return nil
	}
	return m.handedIn(r.Lines[0])
}

// handedIn shows the marks of a paper that was handed in just now.
func (m *Model) handedIn(says string) tea.Cmd {
	m.course, m.notice = nil, says
	m.view, m.reader = marking, reader{under: choosing}
	return list(m.o)
}

// results are the marks of the paper, as they are read.
func (m *Model) results(w int) []line {
	var all []line
	for _, text := range append([]string{m.notice}, m.o.Sitting.Results()...) {
		if text != "" {
			all = append(all, folded(text, w, 2, plainInk)...)
		}
	}
	if m.o.Sitting.Whole(0) == nil { // marks are not told yet
		return all
	}
	return append(append(all, nil), folded("Each problem of the list has its whole paper: each answer with its marks.", w, 0, noteInk)...)
}

// enterTask opens a problem of the paper, or after its end what became of it.
func (m *Model) enterTask(i int) {
	s := m.o.Sitting
	answered := s.Standing(i) != ""
	l := s.Reopened(i)
	_, asking := l.Now()
	switch {
	case s.Over() && s.Whole(i) == nil:
		m.notice = "The marks are not told yet."
	case !s.Over() && !asking:
		m.notice = "All of it is answered, and its last equation is finished."
	default:
		m.notice = ""
		m.enter(l)
		m.course.summary = tutor.SummaryOf(l)
		switch {
		case s.Over():
			m.view, m.reader = closing, reader{under: working}
		case !answered:
			m.view, m.reader = opening, reader{}
		}
	}
}

// pastAnswer follows an answer in a paper: to the list where the problem has no more questions, to the marks where it is handed in.
func (m *Model) pastAnswer(r tutor.Reply) tea.Cmd {
	_, asking := m.course.l.Now()
	switch {
	case r.Kind == tutor.HandedIn:
		return m.handedIn(r.Lines[0])
	case r.Kind == tutor.ToList:
		return m.toChooser()
	case !asking && !m.o.Sitting.Over():
		cmd := m.toChooser()
		m.notice = "All of it is answered; enter on it leads back to an answer, to change it."
		return cmd
	}
	return nil
}

// A minuteGone is the message that another minute of a paper has gone; of several that were waited for only the last counts.
type minuteGone struct{ n int }

// Changed is a message from outside: the times of the paper, or what there is to choose, may be otherwise.
type Changed struct{}

// lookAgain looks again at the time, or at what there is to choose.
func lookAgain(m *Model) tea.Cmd {
	if m.o.Sitting == nil && m.view == choosing {
		return list(m.o)
	}
	return m.tick()
}

// minute waits for the end of the minute in hand, where the paper has a limit.
func (m *Model) minute() tea.Cmd {
	if m.o.Sitting == nil {
		return nil
	}
	left, limited := m.o.Sitting.Left()
	if !limited {
		return nil
	}
	wait := left % time.Minute
	if wait <= 0 {
		wait = time.Minute
	}
	m.minutes++
	n := m.minutes
	return tea.Tick(max(min(wait, left), 0), func(time.Time) tea.Msg { return minuteGone{n} })
}

// tick shows that a minute has gone, and hands the paper in once the last has.
func (m *Model) tick() tea.Cmd {
	s := m.o.Sitting
	if s == nil || s.Over() {
		return nil
	}
	left, limited := s.Left()
	if limited && left <= 0 {
		s.HandIn()
		return m.handedIn(s.TimeOver())
	}
	return m.minute()
}

// enterExam opens the exam of a heading, once that was asked for twice where it is not begun yet.
func enterExam(m *Model, e *SetEntry) tea.Cmd {
	if e.Exam == nil {
		return nil
	}
	if e.Exam.Asks != "" && m.asked != e.Title {
		m.asked, m.notice = e.Title, "Enter once more "+e.Exam.Asks
		return nil
	}
	m.asked = ""
	s, err := e.Exam.Sit()
	if err != nil {
		m.notice = wording.Sentence(err.Error())
		return list(m.o)
	}
	m.notice = ""
	return listPaper(m, s)
}

// listPaper lists the problems of a paper in place of all, or with nil all again.
func listPaper(m *Model, s *tutor.Sitting) tea.Cmd {
	level := m.chooser.level
	if m.o.Sitting = s; s == nil {
		level = m.o.Level
	}
	m.chooser = chooser{ascii: m.o.ASCII, exam: m.o.Exam, level: level, sitting: s}
	m.view = choosing
	if s != nil {
		takePaper(m, s)
	}
	return tea.Batch(list(m.o), m.minute())
}

// takePaper has the list be that of a paper, and one that is over show its marks.
func takePaper(m *Model, s *tutor.Sitting) {
	m.chooser.sitting, m.chooser.level, m.chooser.exam = s, s.Level, true
	if s.Over() {
		m.view, m.reader = marking, reader{under: choosing}
	}
}

// leavePaper leads from a paper that is over to the list of all problems, where there is one.
func leavePaper(m *Model) tea.Cmd {
	if s := m.o.Sitting; s != nil && s.Over() && m.o.Entries != nil {
		return listPaper(m, nil)
	}
	m.chooser.clear()
	return nil
}
