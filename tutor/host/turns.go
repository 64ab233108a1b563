package host

import (
	"io"
	"strings"
	"sync"

	"unpin/statics/notation"
)

// turns are lines that come to one terminal from two sides: what a lesson writes, and what is said beside it. What is said never comes in
// the middle of a line.
type turns struct {
	mutex   sync.Mutex
	to      io.Writer
	midLine bool
	waits   strings.Builder
}

// Write writes what the lesson says, and, once a line has ended, what had to wait for it.
func (t *turns) Write(b []byte) (int, error) {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	n, err := t.to.Write(b)
	if n > 0 {
		t.midLine = b[n-1] != '\n'
	}
	if err == nil && !t.midLine && t.waits.Len() > 0 {
		_, err = io.WriteString(t.to, t.waits.String())
		t.waits.Reset()
	}
	return n, err
}

// beside says a line for people beside the lesson: at once, or after the line in hand.
func (t *turns) beside(text string) {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	line := notation.VisibleLines(text) + "\n"
	if t.midLine {
		t.waits.WriteString(line)
		return
	}
	io.WriteString(t.to, line)
}

// sayTo says what is said to all, until the session ends.
func (s *seat) sayTo(to *turns) {
	for {
		select {
		case word := <-s.news:
			to.beside(word)
		case <-s.left:
			return
		}
	}
}
