package host

import (
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
	if h.door.instructs(s) {
		log.Info("an instructor in")
		left := make(chan struct{})
		defer close(left)
		go s.watch(h.o.pulse, left, func(string) { s.Close() }, func() { s.Close() })
		s.Exit(h.board(s))
		return
	}
	id, err := h.door.enter(s)
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

// serve does what a session asks for: the screen, or what its words say. It returns the exit code.
func (h *Host) serve(s ssh.Session, id string, mine *seat) int {
	if len(s.Command()) > 0 {
		return h.words(s, id, mine)
	}
	pty, changes, onTerminal := s.Pty()
	if !onTerminal {
		return byLine{Host: h, s: s, id: id, mine: mine}.run(nil)
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
