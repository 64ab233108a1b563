package record

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
)

// A Store keeps all practice of one learner, in a log. It may be used by several programs at once, and by several goroutines.
type Store struct {
	log   Log
	often int // see often; tests set it lower
}

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
func At(path string) *Store { return On(file{path}) }

// On is the store in a log.
func On(log Log) *Store { return &Store{log, often} }

// Add appends a record, as version 2.
func (s *Store) Add(r Record) error {
	r.Version = version
	line, err := json.Marshal(r)
	if err == nil && len(line) >= longest {
		err = errors.New("what was typed is too long")
	}
	if err == nil {
		err = s.log.Append(line)
	}
	if err != nil {
		return fmt.Errorf("progress cannot be kept: %w", err)
	}
	return nil
}

// Passed counts the lines that were passed over.
type Passed struct {
	Torn  int `json:"torn"`  // not one whole record
	Long  int `json:"long"`  // over 1 MiB
	Newer int `json:"newer"` // of a later version of the program
}

// count counts what a line is passed over for.
func (p *Passed) count(why fault) {
	switch why {
	case torn:
		p.Torn++
	case long:
		p.Long++
	case newer:
		p.Newer++
	}
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
	if err := s.log.Export(to); err != nil {
		return fmt.Errorf("earlier progress cannot be read: %w", err)
	}
	return nil
}

// Erase removes all that is kept, for good.
func (s *Store) Erase() error {
	if err := errors.Join(s.log.Erase(), s.log.SetNote(latelyName, nil)); err != nil {
		return fmt.Errorf("progress cannot be erased: %w", err)
	}
	return nil
}

// Records lists all that is kept, oldest first, and counts what was passed over. Where nothing was kept yet it is empty. What
// takes long to read is for reports; see Lately.
func (s *Store) Records() ([]Record, Passed, error) {
	var all []Record
	var passed Passed
	for line, err := range s.log.Lines(0) {
		if err != nil {
			return nil, Passed{}, fmt.Errorf("earlier progress cannot be read: %w", err)
		}
		r, why := line.parse()
		if passed.count(why); why == sound {
			all = append(all, r)
		}
	}
	return all, passed, nil
}
