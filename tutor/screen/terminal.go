package screen

import (
	"fmt"
	"io"
	"os"

	"github.com/charmbracelet/x/term"
)

// A terminal is where the program is shown. What is written to it asks it nothing, so that it may stay silent.
type terminal struct {
	in     io.Reader
	out    io.Writer
	before *term.State // of what is typed at, while it is held
}

// The control functions that take a terminal over and give it back: the alternate screen, empty, without a cursor, without
// the wrapping of long lines, with pasted text marked as such (modes 1049, 25, 7 and 2004).
const (
	takeOver = "\x1b[?1049h\x1b[2J\x1b[?25l\x1b[?7l\x1b[?2004h"
	giveBack = "\x1b[?2004l\x1b[?7h\x1b[?25h\x1b[?1049l"
)

// hold takes the terminal over: every key comes at once and by itself. What was typed before stays to be read.
func (t *terminal) hold() (err error) {
	if f, ok := t.in.(term.File); ok && term.IsTerminal(f.Fd()) {
		if t.before, err = term.MakeRaw(f.Fd()); err != nil {
			return fmt.Errorf("the terminal cannot be read key by key: %w", err)
		}
	}
	_, err = io.WriteString(t.out, takeOver)
	return err
}

// release leaves the terminal as hold found it.
func (t *terminal) release() {
	io.WriteString(t.out, giveBack)
	if f, ok := t.in.(term.File); ok && t.before != nil {
		term.Restore(f.Fd(), t.before)
	}
	t.before = nil
}

// Width is how many cells wide a terminal is that is written to; 0 where that cannot be told.
func Width(out io.Writer) int {
	w, _ := (&terminal{out: out}).size()
	return w
}

// size is how many cells wide and high the terminal is; zeros where it cannot tell.
func (t *terminal) size() (w, h int) {
	if f, ok := t.out.(term.File); ok {
		if w, h, err := term.GetSize(f.Fd()); err == nil {
			return w, h
		}
	}
	return 0, 0
}

// keys is what is typed. At its end, also where the terminal is gone, gone is called.
func (t *terminal) keys(gone func()) io.Reader {
	if f, ok := t.in.(*os.File); ok {
		return typedFile{f, gone}
	}
	return typedStream{t.in, gone}
}

// A typedFile is a file that tells of its end. It stays a file, so that waiting for it can be broken off.
type typedFile struct {
	*os.File
	gone func()
}

func (t typedFile) Read(b []byte) (int, error) { return told(t.gone)(t.File.Read(b)) }

// A typedStream is any other reader that tells of its end.
type typedStream struct {
	io.Reader
	gone func()
}

func (t typedStream) Read(b []byte) (int, error) { return told(t.gone)(t.Reader.Read(b)) }

// told passes on what was read, and every error as the end.
func told(gone func()) func(int, error) (int, error) {
	return func(n int, err error) (int, error) {
		if err == nil {
			return n, nil
		}
		gone()
		return n, io.EOF
	}
}
