package record

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
)

// A Store is the append-only file of all practice. It may be used by several programs at once, and by several goroutines.
type Store struct{ path string }

// Open is the store in the user's state folder: $XDG_STATE_HOME/unpin, or .local/state/unpin in the home folder. The file
// is made when the first record is added.
func Open() (*Store, error) {
	dir := os.Getenv("XDG_STATE_HOME")
	if !filepath.IsAbs(dir) { // as the XDG Base Directory Specification says: a relative path is invalid
		home, err := os.UserHomeDir()
		if err != nil {
			return nil, fmt.Errorf("progress cannot be kept: %w", err)
		}
		dir = filepath.Join(home, ".local", "state")
	}
	return At(filepath.Join(dir, "unpin", "practice.jsonl")), nil
}

// At is the store in a file.
func At(path string) *Store { return &Store{path: path} }

// longest bounds a line, in bytes.
const longest = 1 << 20

// Add appends a record, as version 2.
func (s *Store) Add(r Record) error {
	r.Version = version
	line, err := json.Marshal(r)
	if err == nil && len(line) >= longest {
		err = errors.New("what was typed is too long")
	}
	if err == nil {
		err = os.MkdirAll(filepath.Dir(s.path), 0o700)
	}
	if err == nil {
		err = s.append(line)
	}
	if err != nil {
		return fmt.Errorf("progress cannot be kept: %w", err)
	}
	return nil
}

// append writes a line at the end of the file in one go, on a line of its own even after one that lacks its end.
func (s *Store) append(line []byte) error {
	f, err := open(s.path, os.O_RDWR|os.O_APPEND|os.O_CREATE)
	if err != nil {
		return err
	}
	defer f.Close()
	if !endsLine(f) {
		line = append([]byte("\n"), line...)
	}
	_, err = f.Write(append(line, '\n'))
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

// Passed counts the lines that were passed over.
type Passed struct {
	Torn  int // not one whole record
	Long  int // over 1 MiB
	Newer int // of a later version of the program
}

// String says in one sentence what was passed over, or nothing.
func (p Passed) String() string {
	var parts []string
	for _, part := range []struct {
		n    int
		what string
	}{{p.Torn, "torn"}, {p.Long, "too long"}, {p.Newer, "from a newer version of unpin"}} {
		if part.n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", part.n, part.what))
		}
	}
	if parts == nil {
		return ""
	}
	return "lines of earlier progress that cannot be read were passed over: " + strings.Join(parts, ", ")
}

// Export copies every line as it is kept. Where nothing was kept yet it writes nothing.
func (s *Store) Export(to io.Writer) error {
	f, err := open(s.path, os.O_RDONLY)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return fmt.Errorf("earlier progress cannot be read: %w", err)
	}
	defer f.Close()
	_, err = io.Copy(to, f)
	return err
}

// Erase removes all that is kept, for good.
func (s *Store) Erase() error {
	if err := os.Remove(s.path); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("progress cannot be erased: %w", err)
	}
	return nil
}

// Records lists all that is kept, oldest first, and counts what was passed over. Where nothing was kept yet it is empty.
func (s *Store) Records() ([]Record, Passed, error) {
	f, err := open(s.path, os.O_RDONLY)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, Passed{}, nil
	}
	if err == nil {
		defer f.Close()
		var all []Record
		var passed Passed
		if all, passed, err = read(f); err == nil {
			return all, passed, nil
		}
	}
	return nil, Passed{}, fmt.Errorf("earlier progress cannot be read: %w", err)
}

// read reads the lines of a file.
func read(from io.Reader) (all []Record, passed Passed, err error) {
	in := bufio.NewReaderSize(from, 64<<10)
	for err == nil {
		var line []byte
		var whole bool
		if line, whole, err = readLine(in); !whole {
			passed.Long++
			continue
		}
		r, why := parse(line)
		switch why {
		case sound:
			all = append(all, r)
		case torn:
			passed.Torn++
		case newer:
			passed.Newer++
		}
	}
	if errors.Is(err, io.EOF) {
		err = nil
	}
	return all, passed, err
}

// readLine reads a line without its end, and of one over the longest only that it is not whole. The last line comes with
// the error that ended it.
func readLine(in *bufio.Reader) (line []byte, whole bool, err error) {
	whole = true
	for {
		var piece []byte
		piece, err = in.ReadSlice('\n')
		if len(line)+len(piece) > longest {
			line, whole = nil, false
		}
		if whole {
			line = append(line, piece...)
		}
		if !errors.Is(err, bufio.ErrBufferFull) {
			return line, whole, err
		}
	}
}
