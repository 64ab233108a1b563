package problems

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"unicode/utf8"

	"unpin/statics"
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
	r := newReader(name)
	tree, err := r.begin(data)
	if err != nil {
		return nil, err
	}
	r.problem.source = r.source
	if r.problem.tree = tree; tree != nil {
		r.read(tree)
	}
	if err := r.faults.err(); err != nil {
		return nil, err
	}
	return r.problem, nil
}

// begin reads the bytes of a file as a tree. Faults of its YAML are noted, and the tree may then be nil; what is no text at all
// is an error.
func (r *shapeReader) begin(data []byte) (*node, error) {
	if len(data) > maxBytes {
		r.source = &source{lines: []string{""}}
		r.fault(mark{1, 1, 1}, fmt.Sprintf("the file has more than %d MiB", maxBytes>>20), "A problem takes a few lines; see whether this is the file you meant.")
		return nil, r.faults.err()
	}
	src, unclean := newSource(data)
	if r.source = src; unclean != nil {
		r.faults.add(*unclean)
		return nil, r.faults.err()
	}
	tree, faults := parse(src)
	for _, f := range faults {
		r.faults.add(f)
	}
	return tree, nil
}

// Load reads the problem file at a path. What is wrong in it comes as a *Faults; a file that cannot be opened, as a
// plain error.
func Load(path string) (*Problem, error) {
	data, err := contentOf(path)
	if err != nil {
		return nil, err
	}
	return Read(path, data)
}

// contentOf is the file at a path, but no more of it than a problem or a set can have.
func contentOf(path string) ([]byte, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	defer file.Close()
	info, err := file.Stat()
	if err == nil && info.IsDir() {
		return nil, fmt.Errorf("%s is a folder: name a problem file in it", notation.Visible(path))
	}
	size := int64(0)
	if err == nil && info.Mode().IsRegular() {
		size = info.Size()
	}
	return bounded(path, file, size)
}

// bounded is what comes from a file that is called name, but no more of it than a problem or a set can have. Where its size is known, it is read
// at one go.
func bounded(name string, from io.Reader, size int64) ([]byte, error) {
	var data bytes.Buffer
	data.Grow(int(min(size, maxBytes)) + bytes.MinRead)
	if _, err := data.ReadFrom(io.LimitReader(from, maxBytes+1)); err != nil {
		return nil, unreadable(name, err)
	}
	return data.Bytes(), nil
}

// ReadFrom reads a problem file that is called name from where it comes, and no more of it than a problem can have.
func ReadFrom(name string, from io.Reader) (*Problem, error) {
	data, err := bounded(name, from, 0)
	if err != nil {
		return nil, err
	}
	return Read(name, data)
}

// unreadable is the error of a file that cannot be opened or read.
func unreadable(path string, err error) error {
	meant := NamedAlike(path)
	path = notation.Visible(path)
	switch e := (*fs.PathError)(nil); {
	case errors.Is(err, fs.ErrNotExist) && meant != "":
		return fmt.Errorf("there is no file %s: did you mean %s?", path, notation.Visible(meant))
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("there is no file %s", path)
	case errors.Is(err, fs.ErrPermission):
		return fmt.Errorf("%s may not be read by you", path)
	case errors.As(err, &e):
		err = e.Err
	}
	return fmt.Errorf("%s cannot be read: %w", path, err)
}

// NamedAlike is the problem file that is called as a path is but for its ending; empty where there is none.
func NamedAlike(path string) string {
	for _, ending := range []string{".yaml", ".yml", ".json"} {
		other := strings.TrimSuffix(path, filepath.Ext(path)) + ending
		if info, err := os.Stat(other); err == nil && info.Mode().IsRegular() && other != path {
			return other
		}
	}
	return ""
}

// stem is the name of a file without its folder and ending.
func stem(path string) string {
	base := filepath.Base(path)
	return strings.TrimSuffix(base, filepath.Ext(base))
}

// reader is the work of turning a tree into a problem. Each kind of thing in a file has a reader, which rests on those of
// what it is written with: shapes and words, numbers, the frame of joints and members, connections.
type reader struct {
	*pinReader
	conditions bool // those under where are read first, and nothing else if one does not hold
}

// newReader is a reader of the file that is called name, with nothing read yet.
func newReader(name string) *reader {
	shapes := &shapeReader{faults: Faults{File: name}, problem: &Problem{Name: stem(name)}}
	return &reader{pinReader: &pinReader{frameReader: &frameReader{numberReader: &numberReader{shapeReader: shapes}}}}
}

// read reads the whole file: names first, then what refers to them.
func (r *reader) read(tree *node) {
	if tree.shape != table {
		r.fault(tree.at, "the file is not a list of fields", "Begin with title: and the problem in a few words.")
		return
	}
	if n := tree.field("problems"); n != nil && tree.field("joints") == nil {
		r.fault(n.at, "this is a set of problems, not a problem", "Name one of its problems; practise, inspect, vary, sheet and mark take sets.")
		return
	}
	values := r.fields(tree, wholeFile, problemFields)
	r.describe(values)
	r.given(values["given"])
	if r.conditions {
		variationReader{r.numberReader}.vary(values["vary"])
		if slices.ContainsFunc(r.problem.Where, func(c Condition) bool { return !c.Holds }) {
			return
		}
	}
	r.readJoints(values["joints"])
	r.readMembers(values["members"])
	r.connections(values)
	supportReader{r.pinReader}.supports(values["supports"])
	loadReader{r.pinReader}.loads(values["loads"])
	if !r.conditions {
		variationReader{r.numberReader}.vary(values["vary"])
	}
	r.ask(values["ask"])
	r.templates(values)
	if len(r.faults.List) == 0 {
		r.warnForeign()
		warner{r.pinReader}.warnings()
		for _, name := range []string{"title", "text"} {
			if n := values[name]; n != nil {
				warner{r.pinReader}.warnText(n, name)
			}
		}
	}
}

// describe reads title, text, units, grade and skills.
func (r *numberReader) describe(values map[string]*node) {
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

// templates puts the given numbers where title and text name them.
func (r *numberReader) templates(values map[string]*node) {
	if n := values["title"]; n != nil {
		r.problem.title = r.template(n, r.problem.Title, "title")
	}
	if n := values["text"]; n != nil {
		r.problem.text = r.template(n, r.problem.Text, "text")
	}
	r.problem.fillTexts()
}

// The most characters of the title and of the scenario.
const (
	maxTitle = 200
	maxText  = 4000
)

// prose reads a text. A number or a word such as true is none unless it is quoted.
func (r *shapeReader) prose(n *node, what string, most int) string {
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
func (r *frameReader) frame() *statics.Frame { return &r.problem.Frame }
