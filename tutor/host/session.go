package host

import (
	"bufio"
	"context"
	"fmt"
	"io"
	"runtime/debug"
	"strings"
	"time"

	"github.com/charmbracelet/ssh"

	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor"
	"unpin/tutor/screen"
)

// session serves one session from its beginning to its end, whatever happens in it.
func (h *Host) session(far ssh.Session) {
	arrived(far.Context())
	s := hear(far)
	log := h.o.Log.With("from", s.RemoteAddr().String())
	defer func() {
		if what := recover(); what != nil {
			h.figures.faults.Add(1)
			log.Error("a session failed", "fault", fmt.Sprint(what), "stack", string(debug.Stack()))
			say(s.Stderr(), "Something went wrong on the host, and has been noted there. What you have done is kept: log in again.")
			s.Exit(1)
		}
	}()
	if h.instructs(s) {
		log.Info("an instructor in")
		left := make(chan struct{})
		defer close(left)
		go s.watch(h.o.pulse, left, func(string) { s.Close() }, func() { s.Close() })
		s.Exit(h.board(s))
		return
	}
	id, err := h.enter(s)
	if err != nil {
		h.figures.refused.Add(1)
		log.Info("not let in", "reason", err.Error())
		say(s.Stderr(), err.Error())
		s.Exit(1)
		return
	}
	if h.reads(s, id) {
		return
	}
	mine := h.seats.take(id, func() { s.Close() })
	if mine == nil {
		say(s.Stderr(), "There is no place on this host now: try again in a minute.")
		s.Exit(1)
		return
	}
	defer h.seats.leave(id, mine)
	defer h.keep.Remember(id)()
	h.hub.sit(s.Context(), id, mine)
	defer h.hub.leave(context.WithoutCancel(s.Context()), mine)
	log = log.With("id", id)
	log.Info("in", "words", strings.Join(s.Command(), " "))
	h.figures.in.Add(1)
	begun := time.Now()
	go s.watch(h.o.pulse, mine.left, mine.stop, mine.cut)
	code := h.serve(s, id, mine)
	if why := mine.told(); why != "" {
		say(s, why)
	}
	log.Info("out", "code", code, "why", mine.told(), "for", time.Since(begun).Round(time.Second).String())
	s.Exit(code)
}

// say writes a line for people to a session; what is hidden in it stays visible.
func say(to io.Writer, text string) { io.WriteString(to, notation.VisibleLines(text)+"\n") }

// refusal is why somebody is not let in, as they are told.
type refusal string

// Error is the reason.
func (r refusal) Error() string { return string(r) }

// mostCodes is how often a code is asked for in one session.
const mostCodes = 3

// enter finds out who is there: from the login, or by a code that binds the key which was proven at the login.
func (h *Host) enter(s ssh.Session) (string, error) {
	id, key, err := h.identity(s)
	switch {
	case err != nil:
		h.o.Log.Error("keys cannot be read", "error", err.Error())
		return "", refusal(noLogin)
	case id != "":
		return id, nil
	case key == "":
		return "", refusal("This key was not proven at the login.")
	}
	from, lines := addressOf(s.RemoteAddr()), &typed{in: s, echo: func() io.Writer { return nil }}
	say(s, "Your key is new here. Type your personal code to bind it to you; from then on it opens your lesson by itself.")
	for range mostCodes {
		if h.guesses.tooMany(from) {
			return "", refusal("There were too many wrong codes. Wait a minute, then log in again.")
		}
		io.WriteString(s, "Your personal code: ")
		code, err := lines.line()
		say(s, "")
		if err != nil {
			return "", refusal("No code was typed.")
		}
		if id, ok := h.heard(code, from); ok {
			if err := h.people.bind(key, id); err != nil {
				h.o.Log.Error("a key cannot be kept", "error", err.Error())
				say(s, "Your key cannot be kept now: the code will be asked for again.")
			}
			return id, nil
		}
		say(s, "That is not a code of this class. It has ten letters and digits; ask whoever teaches it for yours.")
	}
	return "", refusal("Log in again when you have your code.")
}

// serve does what a session asks for: the screen, or what its words say. It returns the exit code.
func (h *Host) serve(s ssh.Session, id string, mine *seat) int {
	if len(s.Command()) > 0 {
		return h.words(s, id, mine)
	}
	pty, changes, onTerminal := s.Pty()
	if !onTerminal {
		return h.plain(s, id, mine, nil)
	}
	far := screen.Far{In: s, Out: s, Sizes: sizes(pty, changes), End: mine.end, News: mine.said()}
	o := screen.Options{Entries: h.entriesFor(id, mine), Store: h.store(id), Level: tutor.Gradual, Notice: keepingOf(h).greet(id), Colour: coloured(s), Clock: h.o.Clock}
	if exam, err := examsOf(h).writes(id); exam != nil || err != nil {
		if err == nil {
			o.Sitting, err = examsOf(h).sit(exam, id, mine, examsOf(h).complain(id))
		}
		if err != nil {
			say(s.Stderr(), wording.Sentence(err.Error()))
			return 1
		}
	}
	err := screen.Serve(o, far)
	if err != nil && mine.told() == "" {
		h.o.Log.Info("a screen ended", "id", id, "error", err.Error())
		return 1
	}
	return 0
}

// sizes are those of a terminal; of a flood of changes only the latest.
func sizes(pty ssh.Pty, changes <-chan ssh.Window) <-chan screen.Size {
	latest := make(chan screen.Size, 1)
	latest <- screen.Size{W: pty.Window.Width, H: pty.Window.Height}
	go func() {
		for change := range changes {
			select {
			case <-latest:
			default:
			}
			latest <- screen.Size{W: change.Width, H: change.Height}
		}
	}()
	return latest
}

// coloured reports whether colours may be used, by what the client sent of its environment (https://no-color.org).
func coloured(s ssh.Session) bool {
	for _, one := range s.Environ() {
		if name, value, _ := strings.Cut(one, "="); name == "NO_COLOR" && value != "" {
			return false
		}
	}
	return true
}

// lines are what is typed in a session, line by line, until it has to stop.
func (h *Host) lines(s ssh.Session, mine *seat) *bufio.Reader {
	return bufio.NewReader(ending{&typed{in: s, echo: func() io.Writer {
		if _, _, onTerminal := s.Pty(); onTerminal {
			return s
		}
		return nil
	}}, mine.end})
}

// plain is the lesson by line, for who has no terminal or asks for it.
func (h *Host) plain(s ssh.Session, id string, mine *seat, words []string) int {
	in, out := h.lines(s, mine), &turns{to: s}
	go mine.sayTo(out)
	if text := keepingOf(h).greet(id); text != "" {
		say(out, text)
	}
	exam, err := examsOf(h).writes(id)
	if exam != nil || err != nil {
		return h.plainExam(s, in, out, id, mine, exam, err)
	}
	chosen, err := h.chosen(in, out, id, mine, words)
	if chosen == nil {
		if err != nil {
			say(s.Stderr(), err.Error())
			return 2
		}
		return 0
	}
	if chosen.Problem == nil {
		return h.plainBegin(s, in, out, id, mine, chosen)
	}
	level := tutor.Values
	if chosen.Set != nil && chosen.Set.Level != nil {
		level = *chosen.Set.Level
	}
	lesson, err := tutor.NewPlain(chosen.Problem, level, false)
	if err != nil {
		say(s.Stderr(), err.Error())
		return 1
	}
	lesson.Clock = h.o.Clock
	lesson.Keep(h.store(id), h.o.Clock, func(err error) { out.beside("warning: " + err.Error()) })
	if err := tutor.Plain(lesson, in, out); err != nil && mine.told() == "" {
		h.o.Log.Info("a plain lesson ended", "id", id, "error", err.Error())
		return 1
	}
	return 0
}

// plainBegin begins the exam of an entry by line, or goes on with it, once that was said.
func (h *Host) plainBegin(s ssh.Session, in *bufio.Reader, out *turns, id string, mine *seat, chosen *screen.Entry) int {
	for _, text := range append([]string{chosen.Set.Title}, chosen.Set.Says...) {
		say(out, text)
	}
	exam := chosen.Set.Exam
	if exam == nil {
		return 0
	}
	if exam.Asks != "" {
		say(out, "The word begin "+exam.Asks)
		say(out, "? begin or quit")
		if line, err := in.ReadString('\n'); err != nil || strings.TrimSpace(strings.ToLower(line)) != "begin" {
			say(out, "It is not begun.")
			return 0
		}
	}
	return h.plainExam(s, in, out, id, mine, examsOf(h).examNamed(chosen.Name), nil)
}

// plainExam is the exam by line.
func (h *Host) plainExam(s ssh.Session, in *bufio.Reader, out *turns, id string, mine *seat, exam *set, err error) int {
	var sitting *tutor.Sitting
	if err == nil {
		sitting, err = examsOf(h).sit(exam, id, mine, examsOf(h).complain(id))
	}
	if err != nil {
		say(s.Stderr(), wording.Sentence(err.Error()))
		return 1
	}
	if err := tutor.SitPlain(sitting, in, out); err != nil && mine.told() == "" {
		h.o.Log.Info("a plain exam ended", "id", id, "error", err.Error())
		return 1
	}
	return 0
}
