package record

import (
	"io"
	"iter"
)

// A Log keeps the lines of one learner in the order in which they were added, and a few short texts beside them. Several programs
// and goroutines may use it at once; one that is killed loses at most the line that it was adding, and leaves nothing locked.
type Log interface {
	// Append adds a line, which has no line end in it.
	Append(line []byte) error
	// Lines goes over the lines from a place on; 0 is the first. After an error it ends. Where nothing was kept yet there are none.
	Lines(from int64) iter.Seq2[Line, error]
	// Note is the text that is kept under a name, nil where there is none.
	Note(name string) ([]byte, error)
	// SetNote keeps a text under a name in place of an earlier one, whole or not at all; nil removes it.
	SetNote(name string, text []byte) error
	// Place says for people where a note is kept.
	Place(name string) string
	// Export copies every line as it is kept.
	Export(to io.Writer) error
	// Erase removes all lines for good; notes stay.
	Erase() error
}

// A Line is one of a log.
type Line struct {
	Text []byte // nothing where it is over 1 MiB
	Long bool   // over 1 MiB
	At   int64  // its place, which grows from line to line
	Next int64  // the place to go on from; its own where more of it may still come
}

// longest bounds a line, in bytes.
const longest = 1 << 20
