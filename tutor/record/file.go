package record

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"syscall"
)

// File is the log in an append-only file; notes are files beside it.
func File(path string) Log { return file{path} }

// A file is such a log.
type file struct{ path string }

// Append writes a line at the end of the file in one go, on a line of its own even after one that lacks its end.
func (f file) Append(line []byte) error {
	if err := os.MkdirAll(filepath.Dir(f.path), 0o700); err != nil {
		return err
	}
	to, err := open(f.path, os.O_RDWR|os.O_APPEND|os.O_CREATE)
	if err != nil {
		return err
	}
	defer to.Close()
	if !endsLine(to) {
		line = append([]byte("\n"), line...)
	}
	_, err = to.Write(append(line, '\n'))
	return err
}

// open opens a file, which must be a regular one: anything else could wait for ever or never end.
func open(path string, flags int) (*os.File, error) {
	f, err := os.OpenFile(path, flags|syscall.O_NONBLOCK, 0o600)
	if err != nil {
		return nil, err
	}
	info, err := f.Stat()
	if err == nil && !info.Mode().IsRegular() {
		err = fmt.Errorf("%s is not a regular file", path)
	}
	if err != nil {
		f.Close()
		return nil, err
	}
	return f, nil
}

// endsLine reports whether a file is empty or ends with the end of a line.
func endsLine(f *os.File) bool {
	info, err := f.Stat()
	if err != nil || info.Size() == 0 {
		return true
	}
	last := make([]byte, 1)
	_, err = f.ReadAt(last, info.Size()-1)
	return err != nil || last[0] == '\n'
}

// Lines reads the file from a place on, which is a count of bytes.
func (f file) Lines(from int64) iter.Seq2[Line, error] {
	return func(yield func(Line, error) bool) {
		in, err := open(f.path, os.O_RDONLY)
		if errors.Is(err, fs.ErrNotExist) {
			return
		}
		if err == nil {
			defer in.Close()
			_, err = in.Seek(from, io.SeekStart)
		}
		if err == nil {
			err = eachLine(bufio.NewReaderSize(in, 64<<10), from, func(l Line) bool { return yield(l, nil) })
		}
		if err != nil {
			yield(Line{}, err)
		}
	}
}

// eachLine goes over the lines of a text that begins at a place, until no more are wanted.
func eachLine(in *bufio.Reader, at int64, wanted func(Line) bool) error {
	for {
		line, size, err := readLine(in)
		if size == 0 && errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil && !errors.Is(err, io.EOF) {
			return err
		}
		next := at + size
		if err != nil {
			next = at // it has no end yet
		}
		if !wanted(Line{Text: line, Long: size > longest, At: at, Next: next}) || err != nil {
			return nil
		}
		at = next
	}
}

// readLine reads a line, of one over the longest only its size in bytes. The last line comes with the error that ended it.
func readLine(in *bufio.Reader) (line []byte, size int64, err error) {
	for {
		var piece []byte
		piece, err = in.ReadSlice('\n')
		if size += int64(len(piece)); size > longest {
			line = nil
		} else {
			line = append(line, piece...)
		}
		if !errors.Is(err, bufio.ErrBufferFull) {
			return line, size, err
		}
	}
}

// Export copies the file as it is.
func (f file) Export(to io.Writer) error {
	in, err := open(f.path, os.O_RDONLY)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	defer in.Close()
	_, err = io.Copy(to, in)
	return err
}

// Erase removes the file.
func (f file) Erase() error { return remove(f.path) }

// Place is the path of a note.
func (f file) Place(name string) string { return filepath.Join(filepath.Dir(f.path), name) }

// longestNote bounds a note, in bytes.
const longestNote = 64 << 20

// Note reads a file beside the lines.
func (f file) Note(name string) ([]byte, error) {
	in, err := open(f.Place(name), os.O_RDONLY)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	defer in.Close()
	text, err := io.ReadAll(io.LimitReader(in, longestNote+1))
	if len(text) > longestNote {
		return nil, errors.New("it is too long")
	}
	return text, err
}

// SetNote writes a file beside the lines by way of another.
func (f file) SetNote(name string, text []byte) error {
	if text == nil {
		return remove(f.Place(name))
	}
	return replace(f.Place(name), text)
}

// remove removes a file, if it is there.
func remove(path string) error {
	if err := os.Remove(path); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return nil
}

// replace writes a file by way of another beside it.
func replace(path string, data []byte) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	f, err := os.CreateTemp(filepath.Dir(path), filepath.Base(path)+".*")
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err = errors.Join(err, f.Close()); err == nil {
		err = os.Rename(f.Name(), path)
	}
	if err != nil {
		os.Remove(f.Name())
	}
	return err
}
