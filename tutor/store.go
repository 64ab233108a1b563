package tutor

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"unpin/statics/judging"
)

// A Record is one thing a student did, as the store keeps it: one line of JSON.
type Record struct {
	At       time.Time `json:"at"`
	Run      string    `json:"run"`     // one lesson from its opening to its end
	Problem  string    `json:"problem"` // its name
	Frame    string    `json:"frame"`   // its fingerprint: work on other numbers is not the same work
	Rung     string    `json:"rung"`    //
	Exam     bool      `json:"exam,omitempty"`
	Number   int       `json:"number"`   // of the question, from nought
	Question string    `json:"question"` // its name
	Typed    string    `json:"typed"`
	Outcome  string    `json:"outcome"`
}

// A Store is the append-only file of all practice. Each record is written whole in one go, so that a killed program
// loses nothing, and two programs at once do not mix their lines. A line that is broken all the same is passed over.
type Store struct {
	path string
	torn bool // the last line may lack its end
}

// OpenStore is the store in the user's state folder: $XDG_STATE_HOME/unpin, or .local/state/unpin in the home folder. The
// file is made when the first record is added.
func OpenStore() (*Store, error) {
	dir := os.Getenv("XDG_STATE_HOME")
	if !filepath.IsAbs(dir) { // as the XDG Base Directory Specification says: a relative path is invalid
		home, err := os.UserHomeDir()
		if err != nil {
			return nil, fmt.Errorf("progress cannot be kept: %w", err)
		}
		dir = filepath.Join(home, ".local", "state")
	}
	return StoreAt(filepath.Join(dir, "unpin", "practice.jsonl")), nil
}

// StoreAt is the store in a file.
func StoreAt(path string) *Store { return &Store{path: path, torn: true} }

// Add appends a record.
func (s *Store) Add(r Record) error {
	line, err := json.Marshal(r)
	if err != nil {
		return fmt.Errorf("progress cannot be kept: %w", err)
	}
	if err := os.MkdirAll(filepath.Dir(s.path), 0o700); err != nil {
		return fmt.Errorf("progress cannot be kept: %w", err)
	}
	f, err := os.OpenFile(s.path, os.O_RDWR|os.O_APPEND|os.O_CREATE, 0o600)
	if err != nil {
		return fmt.Errorf("progress cannot be kept: %w", err)
	}
	defer f.Close()
	if s.torn && !endsLine(f) {
		line = append([]byte("\n"), line...)
	}
	_, err = f.Write(append(line, '\n'))
	s.torn = err != nil
	if err != nil {
		return fmt.Errorf("progress cannot be kept: %w", err)
	}
	return nil
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

// Records lists all that is kept, oldest first. Where nothing was kept yet it is empty.
func (s *Store) Records() ([]Record, error) {
	data, err := os.ReadFile(s.path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("earlier progress cannot be read: %w", err)
	}
	var all []Record
	lines := bufio.NewScanner(bytes.NewReader(data))
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		var r Record
		if json.Unmarshal(lines.Bytes(), &r) == nil && r.Run != "" {
			all = append(all, r)
		}
	}
	return all, nil
}

// Keep tells a lesson of earlier work on the same frame at the same rung, and keeps what is done from now on. What goes
// wrong in keeping is told once to complain, and the lesson goes on without.
func (l *Lesson) Keep(s *Store, now func() time.Time, complain func(error)) {
	earlier, err := s.Records()
	if err != nil {
		complain(err)
		return
	}
	l.recall(earlier)
	start := now()
	base := Record{Run: start.UTC().Format(time.RFC3339Nano), Problem: l.Problem.Name, Exam: l.Exam}
	broken := false
	l.record = func(l *Lesson) func(Event) {
		r := base
		r.Frame, r.Rung = l.fingerprint(), l.Rung.String()
		return func(e Event) {
			r.At, r.Number, r.Question, r.Typed, r.Outcome = now(), e.Number, e.Question, e.Typed, e.Outcome
			if err := s.Add(r); err != nil && !broken {
				broken = true
				complain(err)
			}
		}
	}
	l.Heed = l.record(l)
}

// fingerprint stands for the frame: the same text for the same frame, another for another.
func (l *Lesson) fingerprint() string {
	sum := sha256.Sum256(fmt.Appendf(nil, "%v", l.Problem.Frame))
	return hex.EncodeToString(sum[:8])
}

// recall finds how the questions were settled in the latest run on the same frame at the same rung.
func (l *Lesson) recall(records []Record) {
	frame, run := l.fingerprint(), ""
	if l.Rung == Fading {
		l.fade(shown(records, frame))
		l.Questions, l.answers = nil, nil
		l.ask(l.script()...)
	}
	for _, r := range records {
		if r.Frame != frame || r.Rung != l.Rung.String() || r.Exam || l.Exam || l.Rung == Fading && !l.holds(r) {
			continue
		}
		if r.Run != run {
			run, l.earlier, l.lets = r.Run, map[int]string{}, map[int][]string{}
		}
		switch r.Outcome {
		case judging.Exact.String(), judging.Rounded.String():
			l.earlier[r.Number] = r.Typed
		case "let":
			l.lets[r.Number] = append(l.lets[r.Number], r.Typed)
		case "tell":
			l.earlier[r.Number] = "tell"
		}
	}
}

// holds reports whether a record is about a question of this lesson.
func (l *Lesson) holds(r Record) bool {
	return r.Number < len(l.Questions) && l.Questions[r.Number].Name == r.Question
}

// Earlier is how many questions from the first on were settled in earlier work that can be taken up again.
func (l *Lesson) Earlier() int {
	settled := 0
	for n := 0; l.earlier[n] != "" || n < len(l.Questions) && l.Questions[n].Kind == Reading; n++ {
		if l.earlier[n] != "" {
			settled = n + 1
		}
	}
	return settled
}

// begun reports whether anything was answered.
func (l *Lesson) begun() bool {
	for n := range l.at {
		if l.Questions[n].Kind != Reading {
			return true
		}
	}
	return false
}

// Resume takes up earlier work: it answers again what was settled then. It does nothing once something was answered.
func (l *Lesson) Resume() {
	if l.begun() {
		return
	}
	for n := l.Earlier(); ; {
		for _, let := range l.lets[l.at] {
			l.Type(let)
		}
		before := l.at
		if before >= n {
			return
		}
		l.Type(l.earlier[l.at])
		if l.at == before {
			return // what was right then is not now: go on from here
		}
	}
}
