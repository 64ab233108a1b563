package host

import (
	"errors"
	"io"
	"unicode/utf8"
)

// typed reads lines that are typed on a terminal far away, which neither shows them nor lets them be mended, or that come from a
// program.
type typed struct {
	in   io.Reader
	echo func() io.Writer // where what is typed is shown, or nil
	rest []byte           // of the line in hand, to be read
	skip bool             // a line feed that ends the line before
}

// longestLine bounds what is typed, in bytes; what goes beyond it is not taken.
const longestLine = 64 << 10

// errLeft is that ctrl+c or ctrl+d was typed.
var errLeft = errors.New("left")

// line reads one line without its end. What was typed before the input ended is a line too.
func (t *typed) line() (string, error) {
	var line []byte
	one := make([]byte, 1)
	for {
		n, err := t.in.Read(one)
		if n == 0 && err != nil {
			if len(line) > 0 {
				return string(line), nil
			}
			return "", err
		}
		if n == 0 {
			continue
		}
		after := t.skip
		t.skip = false
		switch c := one[0]; {
		case c == '\n' && after:
		case c == '\r', c == '\n':
			t.skip = c == '\r'
			t.show("\n")
			return string(line), nil
		case c == 3, c == 4 && len(line) == 0:
			return "", errLeft
		case c == 8, c == 127:
			if len(line) > 0 {
				_, size := utf8.DecodeLastRune(line)
				line = line[:len(line)-size]
				t.show("\b \b")
			}
		case c >= ' ' && len(line) < longestLine:
			line = append(line, c)
			t.show(string(one))
		}
	}
}

// show shows what is typed, where it is to be seen.
func (t *typed) show(text string) {
	if to := t.echo(); to != nil {
		io.WriteString(to, text)
	}
}

// Read gives lines to who reads bytes.
func (t *typed) Read(b []byte) (int, error) {
	if len(t.rest) == 0 {
		line, err := t.line()
		if err != nil {
			return 0, io.EOF
		}
		t.rest = append([]byte(line), '\n')
	}
	n := copy(b, t.rest)
	t.rest = t.rest[n:]
	return n, nil
}

// ending reads until there is nothing more, or the session has to stop.
type ending struct {
	in  io.Reader
	end <-chan struct{}
}

// Read waits for what is typed no longer than for the end.
func (e ending) Read(b []byte) (int, error) {
	type read struct {
		text []byte
		err  error
	}
	done := make(chan read, 1)
	go func() {
		text := make([]byte, len(b))
		n, err := e.in.Read(text)
		done <- read{text[:n], err}
	}()
	select {
	case r := <-done:
		return copy(b, r.text), r.err
	case <-e.end:
		return 0, io.EOF
	}
}
