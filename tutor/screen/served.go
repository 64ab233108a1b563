package screen

import (
	"io"
	"os"

	tea "github.com/charmbracelet/bubbletea"
)

// A Far is a terminal at the other end of a connection.
type Far struct {
	In    io.Reader
	Out   io.Writer
	Sizes <-chan Size     // how large it is, at once and at every change
	End   <-chan struct{} // closed when the lesson has to stop
	News  <-chan tea.Msg  // what else the program is to hear of, as Said; may be nil
}

// Said is a message for the learner from outside of the lesson, shown in place of a notice.
type Said string

// A Size is how many cells wide and high a terminal is.
type Size struct{ W, H int }

// Serve shows the program on a terminal far away until the student leaves, nothing more comes from there, or End is closed. Signals
// of this process are none of its concern, and ctrl+z does nothing.
func Serve(o Options, far Far) error { return ServeProgram(New(o), far) }

// ServeProgram does the same for any program, which must be a pointer that its Update returns.
func ServeProgram(program tea.Model, far Far) error {
	s := &shown{program: program, terminal: &terminal{in: far.In, out: far.Out}}
	if err := s.terminal.hold(); err != nil {
		return err
	}
	defer s.terminal.release()
	return s.serve(far)
}

// serve carries messages to the program until it ends.
func (s *shown) serve(far Far) error {
	var p *tea.Program
	keys := s.terminal.keys(func() { p.Quit() })
	p = tea.NewProgram(s, tea.WithInput(keys), tea.WithOutput(far.Out), tea.WithoutRenderer(), tea.WithoutSignalHandler(),
		tea.WithoutCatchPanics(), tea.WithFilter(awake))
	ended := make(chan struct{})
	defer close(ended)
	go func() {
		for sizes := far.Sizes; ; {
			select {
			case size, more := <-sizes:
				if !more {
					sizes = nil
					continue
				}
				p.Send(tea.WindowSizeMsg{Width: size.W, Height: size.H})
			case news := <-far.News:
				p.Send(news)
			case <-far.End:
				p.Quit()
				return
			case <-ended:
				return
			}
		}
	}()
	if _, err := p.Run(); err != nil {
		return err
	}
	return s.err
}

// awake lets a program that serves others not rest for one of them.
func awake(_ tea.Model, msg tea.Msg) tea.Msg {
	switch msg.(type) {
	case tea.SuspendMsg, os.Signal:
		return nil
	}
	return msg
}
