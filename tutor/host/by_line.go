package host

import (
	"bufio"
	"io"
	"slices"
	"strings"

	"github.com/charmbracelet/ssh"

	"unpin/statics/wording"
	"unpin/tutor"
	"unpin/tutor/screen"
)

// linesOf are what is typed in a session, line by line, until it has to stop.
func linesOf(s ssh.Session, mine *seat) *bufio.Reader {
	return bufio.NewReader(ending{&typed{in: s, echo: func() io.Writer {
		if _, _, onTerminal := s.Pty(); onTerminal {
			return s
		}
		return nil
	}}, mine.end})
}

// byLine is a session by line, for who has no terminal or asks for it: a lesson, or an exam.
type byLine struct {
	*Host
	s    ssh.Session
	id   string
	mine *seat
	in   *bufio.Reader
	out  *turns
}

// run has something chosen, by words or by line, and worked; it returns the exit code.
func (l byLine) run(words []string) int {
	l.in, l.out = linesOf(l.s, l.mine), &turns{to: l.s}
	go l.mine.sayTo(l.out)
	if text := keepingOf(l.Host).greet(l.id); text != "" {
		say(l.out, text)
	}
	exam, err := examsOf(l.Host).writes(l.id)
	if exam != nil || err != nil {
		return l.sit(exam, err)
	}
	chosen, err := l.chosen(words)
	switch {
	case err != nil:
		say(l.s.Stderr(), err.Error())
		return 2
	case chosen == nil:
		return 0
	case chosen.Problem == nil:
		return l.begin(chosen)
	}
	return l.work(chosen)
}

// work is the lesson of an entry.
func (l byLine) work(chosen *screen.Entry) int {
	level := tutor.Values
	if chosen.Set != nil && chosen.Set.Level != nil {
		level = *chosen.Set.Level
	}
	lesson, err := tutor.NewPlain(chosen.Problem, level, false)
	if err != nil {
		say(l.s.Stderr(), err.Error())
		return 1
	}
	lesson.Clock = l.o.Clock
	lesson.Keep(l.store(l.id), l.o.Clock, func(err error) { l.out.beside("warning: " + err.Error()) })
	if err := tutor.Plain(lesson, l.in, l.out); err != nil && l.mine.told() == "" {
		l.o.Log.Info("a plain lesson ended", "id", l.id, "error", err.Error())
		return 1
	}
	return 0
}

// begin begins the exam of an entry, or goes on with it, once that was said.
func (l byLine) begin(chosen *screen.Entry) int {
	for _, text := range append([]string{chosen.Set.Title}, chosen.Set.Says...) {
		say(l.out, text)
	}
	exam := chosen.Set.Exam
	if exam == nil {
		return 0
	}
	if exam.Asks != "" {
		say(l.out, "The word begin "+exam.Asks)
		say(l.out, "? begin or quit")
		if line, err := l.in.ReadString('\n'); err != nil || strings.TrimSpace(strings.ToLower(line)) != "begin" {
			say(l.out, "It is not begun.")
			return 0
		}
	}
	return l.sit(examsOf(l.Host).examNamed(chosen.Name), nil)
}

// sit is an exam that was begun, or the error that it cannot be known which.
func (l byLine) sit(exam *set, err error) int {
	var sitting *tutor.Sitting
	if err == nil {
		sitting, err = examsOf(l.Host).sit(exam, l.id, l.mine, examsOf(l.Host).complain(l.id))
	}
	if err != nil {
		say(l.s.Stderr(), wording.Sentence(err.Error()))
		return 1
	}
	if err := tutor.SitPlain(sitting, l.in, l.out); err != nil && l.mine.told() == "" {
		l.o.Log.Info("a plain exam ended", "id", l.id, "error", err.Error())
		return 1
	}
	return 0
}

// chosen is the entry that words name, or else one that is asked for; none where the learner leaves.
func (l byLine) chosen(words []string) (*screen.Entry, error) {
	var all []screen.Entry
	var list []tutor.Choice
	for _, e := range l.entriesFor(l.id, l.mine)() {
		switch {
		case e.Problem != nil:
			all, list = append(all, e), append(list, tutor.Choice{Name: e.Name, Problem: e.Problem})
		case e.Set.Exam != nil:
			all, list = append(all, e), append(list, tutor.Choice{Name: e.Name, Title: "exam: " + e.Set.Title})
		}
	}
	if len(words) > 1 {
		return nil, refusal("plain takes the name of one problem or exam")
	}
	if len(words) == 1 {
		at := slices.IndexFunc(all, func(e screen.Entry) bool { return e.Name == words[0] })
		if at < 0 {
			return nil, refusal("there is no problem " + words[0] + " here; plain alone lists them")
		}
		return &all[at], nil
	}
	at, err := tutor.ChooseByLine(l.in, l.out, list)
	if at < 0 {
		return nil, err
	}
	return &all[at], nil
}
