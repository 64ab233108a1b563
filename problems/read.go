package problems

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"unicode/utf8"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// The most joints, members and loads of a problem.
const (
	maxJoints  = 2000
	maxMembers = 4000
	maxLoads   = 5000
)

// Read reads a problem file that is called name. The error is a *Faults with all that is wrong.
func Read(name string, data []byte) (*Problem, error) {
	r := &reader{faults: Faults{File: name}, problem: &Problem{Name: stem(name)}}
	if len(data) > maxBytes {
		r.source = &source{lines: []string{""}}
		r.fault(mark{1, 1, 1}, fmt.Sprintf("the file has more than %d MiB", maxBytes>>20), "A problem takes a few lines; see whether this is the file you meant.")
		return nil, r.faults.err()
	}
	src, unclean := newSource(data)
	r.source = src
	if unclean != nil {
		r.faults.add(*unclean)
		return nil, r.faults.err()
	}
	tree, faults := parse(src)
	for _, f := range faults {
		r.faults.add(f)
	}
	if tree != nil {
		r.read(tree)
	}
	if err := r.faults.err(); err != nil {
		return nil, err
	}
	return r.problem, nil
}

// Load reads the problem file at a path. What is wrong in it comes as a *Faults; a file that cannot be opened, as a
// plain error.
func Load(path string) (*Problem, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	defer file.Close()
	if info, err := file.Stat(); err == nil && info.IsDir() {
		return nil, fmt.Errorf("%s is a folder: name a problem file in it", path)
	}
	return ReadFrom(path, file)
}

// ReadFrom reads a problem file that is called name from where it comes, and no more of it than a problem can have.
func ReadFrom(name string, from io.Reader) (*Problem, error) {
	data, err := io.ReadAll(io.LimitReader(from, maxBytes+1))
	if err != nil {
		return nil, unreadable(name, err)
	}
	return Read(name, data)
}

// unreadable is the error of a file that cannot be opened or read.
func unreadable(path string, err error) error {
	switch e := (*fs.PathError)(nil); {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("there is no file %s", path)
	case errors.Is(err, fs.ErrPermission):
		return fmt.Errorf("%s may not be read by you", path)
	case errors.As(err, &e):
		err = e.Err
	}
	return fmt.Errorf("%s cannot be read: %w", path, err)
}

// stem is the name of a file without its folder and ending.
func stem(path string) string {
	base := filepath.Base(path)
	return strings.TrimSuffix(base, filepath.Ext(base))
}

// reader is the work of turning a tree into a problem. It goes on after a fault, and keeps note of what it could not
// read so that one mistake is told once.
type reader struct {
	*source
	faults  Faults
	problem *Problem

	numbers map[string]exact.Num // the given names
	spoiled map[string]bool      // given names whose value is at fault

	joints    map[string]int  // by name
	jointKeys []*node         // where each is listed
	unsure    map[int]bool    // joints whose place is at fault
	members   map[string]ref  // by name, both ways round
	absent    map[string]bool // member names at fault in the list of members
	meeting   [][]int         // members at each joint
	lengths   map[int]exact.Num

	connected map[int]*node // joints with a pin, slot or sleeve, and where that is written
	pinned    map[int]int   // connection at each joint
}

// fault notes a fault at a place.
func (r *reader) fault(at mark, problem, remedy string) {
	r.faults.add(r.source.fault(at, problem, remedy))
}

// maxWarnings bounds the warnings that are kept.
const maxWarnings = 50

// warn notes what is legal but likely a mistake. The last warning kept says that there are more.
func (r *reader) warn(format string, args ...any) {
	switch len(r.problem.Warnings) {
	case maxWarnings:
		return
	case maxWarnings - 1:
		format, args = "There is more of this kind, which is not listed.", nil
	}
	r.problem.Warnings = append(r.problem.Warnings, fmt.Sprintf(format, args...))
}

// warned reports whether no more warnings are kept.
func (r *reader) warned() bool { return len(r.problem.Warnings) == maxWarnings }

// read reads the whole file: names first, then what refers to them.
func (r *reader) read(tree *node) {
	if tree.shape != table {
		r.fault(tree.at, "the file is not a list of fields", "Begin with title: and the problem in a few words.")
		return
	}
	values := r.fields(tree, wholeFile, problemFields)
	r.about(values)
	r.given(values["given"])
	r.readJoints(values["joints"])
	r.readMembers(values["members"])
	r.connections(values)
	r.supports(values["supports"])
	r.loads(values["loads"])
	r.vary(values["vary"])
	r.ask(values["ask"])
	if len(r.faults.List) == 0 {
		r.warnings()
	}
}

// about reads title, text, units, grade and skills.
func (r *reader) about(values map[string]*node) {
	r.problem.Title = strings.Join(strings.Fields(r.prose(values["title"], "title", maxTitle)), " ")
	r.problem.Text = r.prose(values["text"], "text", maxText)
	if n := values["units"]; n != nil {
		u, err := notation.ParseUnits(n.text)
		if err != nil {
			r.readFault(n, err)
		}
		r.problem.Units = u
	}
	if n := values["grade"]; n != nil {
		r.problem.Grade = r.whole(n, "grade", 1, 6)
	}
	if n := values["skills"]; n != nil {
		r.problem.Skills = texts(n.items)
	}
}

// The most characters of the title and of the scenario.
const (
	maxTitle = 200
	maxText  = 4000
)

// prose reads a text. A number or a word such as true is none unless it is quoted.
func (r *reader) prose(n *node, what string, most int) string {
	switch {
	case n == nil:
		return ""
	case n.numeric:
		r.fault(n.at, what+" is a text", fmt.Sprintf("Put it in quotes: %s: %q.", what, n.text))
	case strings.TrimSpace(n.text) == "":
		r.fault(n.at, what+" is empty", "Write a few words, or take the name out.")
	case utf8.RuneCountInString(n.text) > most:
		r.fault(n.at, fmt.Sprintf("%s has more than %d characters", what, most), "Make it shorter.")
	}
	return strings.TrimSpace(n.text)
}

// texts is the text of each scalar.
func texts(nodes []*node) []string {
	var ts []string
	for _, n := range nodes {
		ts = append(ts, n.text)
	}
	return ts
}

// ref is a member as a name refers to it: the other way round where the name has its joints exchanged.
type ref struct {
	name     string
	member   int
	reversed bool
}

// frame is the frame being built.
func (r *reader) frame() *statics.Frame { return &r.problem.Frame }
