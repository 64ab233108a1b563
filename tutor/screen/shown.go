package screen

import (
	"fmt"
	"io"
	"os"
	"os/signal"

	_ "answered.unpin" // before bubbletea
	tea "github.com/charmbracelet/bubbletea"
)

// An Ended is the error of a program that a signal has ended.
type Ended struct{ Signal os.Signal }

// Error names the signal.
func (e Ended) Error() string { return "ended by the signal " + e.Signal.String() }

// Run shows the program on a terminal until the student leaves, or there is nothing more to read, and leaves the terminal
// as it found it, whatever ends it. A signal that ends it is told as the error Ended.
func Run(o Options, in io.Reader, out io.Writer) error {
	s := &shown{program: New(o), terminal: &terminal{in: in, out: out}, signals: make(chan os.Signal, 8)}
	s.notice()
	defer signal.Stop(s.signals)
	if err := s.terminal.hold(); err != nil {
		return err
	}
	defer s.terminal.release()
	s.resize()
	return s.run()
}

// A shown is the program with the terminal that it is painted on. It paints when a message has come and at no other time,
// so that a lesson at rest wakes nothing: bubbletea's own renderer looks sixty times a second whether there is something
// to paint.
type shown struct {
	program  tea.Model
	terminal *terminal
	painter  painter
	signals  chan os.Signal
	err      error // what ended it
}

// run carries messages to the program until it ends. A fault of the program goes up as a panic, past those who give the
// terminal back.
func (s *shown) run() error {
	var p *tea.Program
	keys := s.terminal.keys(func() { p.Quit() })
	p = tea.NewProgram(s, tea.WithInput(keys), tea.WithOutput(s.terminal.out), tea.WithoutRenderer(), tea.WithoutSignalHandler(),
		tea.WithoutCatchPanics(), tea.WithFilter(aside))
	defer s.pass(p)()
	if _, err := p.Run(); err != nil {
		return err
	}
	return s.err
}

// notice has signals kept for the program. Those that whoever started it has ignored stay ignored, as a hangup under nohup.
func (s *shown) notice() {
	for _, sig := range signals {
		if !signal.Ignored(sig) {
			signal.Notify(s.signals, sig)
		}
	}
}

// pass brings signals to the program as messages, until it is called off.
func (s *shown) pass(p *tea.Program) (off func()) {
	ended := make(chan struct{})
	go func() {
		for {
			select {
			case sig := <-s.signals:
				p.Send(sig)
			case <-ended:
				return
			}
		}
	}()
	return func() { close(ended) }
}

// aside has ctrl+z do what the signal does that a terminal sends for it.
func aside(_ tea.Model, msg tea.Msg) tea.Msg {
	if _, is := msg.(tea.SuspendMsg); is {
		suspendGroup()
		return nil
	}
	return msg
}

// Init is that of the program.
func (s *shown) Init() tea.Cmd { return guarded(s.program.Init()) }

// Update takes a message, and paints what came of it.
func (s *shown) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	switch m := msg.(type) {
	case os.Signal:
		return s, s.signalled(m)
	case fault:
		panic(m.what)
	case tea.KeyMsg:
		if m.Type == tea.KeyCtrlJ { // enter, typed before the terminal was taken over
			msg = tea.KeyMsg{Type: tea.KeyEnter}
		}
	case tea.WindowSizeMsg:
		s.painter.forget()
	}
	_, cmd := s.program.Update(msg)
	if err := s.paint(); err != nil {
		s.err = fmt.Errorf("the screen cannot be written: %w", err)
		return s, tea.Quit
	}
	return s, guarded(cmd)
}

// View is empty: Update has painted.
func (s *shown) View() string { return "" }

// paint brings what is to be seen onto the terminal, in one piece.
func (s *shown) paint() error {
	text := s.painter.paint(s.program.View())
	if text == "" {
		return nil
	}
	_, err := io.WriteString(s.terminal.out, text)
	return err
}

// signalled does what a signal asks for: another size, a rest, the end.
func (s *shown) signalled(sig os.Signal) tea.Cmd {
	switch sig {
	case resized:
		s.resize()
		return nil
	case suspended:
		s.terminal.release()
		rest()
		if err := s.terminal.hold(); err != nil {
			s.err = err
			return tea.Quit
		}
		s.resize()
		return nil
	}
	s.err = Ended{sig}
	return tea.Quit
}

// resize tells the program how large the terminal is now.
func (s *shown) resize() {
	if w, h := s.terminal.size(); w > 0 && h > 0 {
		s.Update(tea.WindowSizeMsg{Width: w, Height: h})
	}
}

// A fault is a panic of work in the background, as a message.
type fault struct{ what any }

// guarded has a fault of work in the background go the way of all others, so that it does not leave the terminal held.
func guarded(cmd tea.Cmd) tea.Cmd {
	if cmd == nil {
		return nil
	}
	return func() (msg tea.Msg) {
		defer func() {
			if what := recover(); what != nil {
				msg = fault{what}
			}
		}()
		return cmd()
	}
}
