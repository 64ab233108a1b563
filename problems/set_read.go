package problems

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// listsProblems finds the list of problems in a file whose YAML cannot be read.
var listsProblems = notation.Pattern(`(?m)^["']?problems["']?[ \t]*:`)

// LoadSet reads the set at a path, and the problems that it names: files from its folder, or problems of the library. The
// error tells all that is wrong, with a *Faults for each file.
func LoadSet(path string) (*Set, error) {
	data, err := contentOf(path)
	if err != nil {
		return nil, err
	}
	return ReadSet(path, data, Beside(filepath.Dir(path)))
}

// Beside finds the problems that a set in a folder names.
func Beside(folder string) func(word string) (*Problem, error) {
	return func(word string) (*Problem, error) {
		if p, ok := Library(word); ok {
			return p, nil
		}
		path := word
		if !filepath.IsAbs(word) {
			path = filepath.Join(folder, word)
		}
		_, err := os.Stat(path)
		if meant := near(word, Names()); err != nil && meant != "" && filepath.Ext(word) == "" && NamedAlike(path) == "" {
			return nil, fmt.Errorf("there is no problem %s: did you mean %s?", quoted(word), meant)
		}
		return Load(path)
	}
}

// ReadSet reads the file of a set that is called name. The problems that it names are found by open. The error tells all
// that is wrong, with a *Faults for each file.
func ReadSet(name string, data []byte, open func(word string) (*Problem, error)) (*Set, error) {
	shapes := &shapeReader{faults: Faults{File: name}, problem: &Problem{}}
	r := setReader{numberReader: &numberReader{shapeReader: shapes}, set: &Set{Name: stem(name), Seed: "1", Same: Student}, open: open}
	tree, err := shapes.begin(data)
	if err != nil {
		return nil, err
	}
	if tree != nil {
		r.read(tree)
	}
	if err := errors.Join(append([]error{shapes.faults.err()}, r.broken...)...); err != nil {
		return nil, err
	}
	return r.set, nil
}

// A setReader reads sets.
type setReader struct {
	*numberReader
	set    *Set
	open   func(word string) (*Problem, error)
	broken []error // the faults of the problems' own files
}

// read reads the whole file.
func (r *setReader) read(tree *node) {
	if tree.shape != table {
		r.fault(tree.at, "the file is not a list of fields", "Begin with id: and what the set is called.")
		return
	}
	values := r.fields(tree, wholeSet, setFields)
	r.describe(values)
	r.times(values)
	if n := values["ask"]; n != nil {
		r.set.Ask = r.conventions(r.fields(n, setAsk, setAskFields))
	}
	if n := values["problems"]; n != nil {
		r.tasks(n)
	}
}

// describe reads what the set is called and how it is worked.
func (r *setReader) describe(values map[string]*node) {
	if n := values["id"]; n != nil {
		r.set.ID = r.id(n)
	}
	line := func(name string) string {
		return strings.Join(strings.Fields(r.prose(values[name], name, maxTitle)), " ")
	}
	r.set.Title, r.set.Course = line("title"), line("course")
	if n := values["seed"]; n != nil {
		r.set.Seed = r.line(n, "seed")
	} else {
		r.set.Warnings = append(r.set.Warnings, "The set has no seed: whoever knows its id can draw the numbers of every copy.")
	}
	if n := values["scheme"]; n != nil {
		r.set.Scheme = r.line(n, "scheme")
	}
	if n := values["level"]; n != nil {
		r.set.Level = n.text
	}
	if n := values["same"]; n != nil {
		r.set.Same = n.text
	}
}

// maxID is the most characters of a set's id, which stands in lists.
const maxID = 64

// id reads what the set is called in lists: letters, digits and the signs that stand in names of files.
func (r *setReader) id(n *node) string {
	odd := strings.IndexFunc(n.text, func(c rune) bool {
		return !unicode.IsLetter(c) && !unicode.IsDigit(c) && !strings.ContainsRune("-_.", c)
	})
	switch {
	case n.text == "":
		r.fault(n.at, "id is empty", "Write a short name: id: statics-w5.")
	case odd >= 0:
		r.fault(n.at, "id is one word: letters, digits, dots, - and _", "Write it like this: id: statics-w5")
	case utf8.RuneCountInString(n.text) > maxID:
		r.fault(n.at, fmt.Sprintf("id has more than %d characters", maxID), "Make it shorter.")
	}
	return n.text
}

// line reads a text of one line that is not empty, whatever it looks like.
func (r *setReader) line(n *node, what string) string {
	switch {
	case strings.TrimSpace(n.text) == "":
		r.fault(n.at, what+" is empty", "Write it, or take the name out.")
	case utf8.RuneCountInString(n.text) > maxTitle:
		r.fault(n.at, fmt.Sprintf("%s has more than %d characters", what, maxTitle), "Make it shorter.")
	case strings.Contains(n.text, "\n"):
		r.fault(n.at, what+" is one line", "Write it in one line.")
	}
	return n.text
}

// tasks reads the problems.
func (r *setReader) tasks(n *node) {
	if len(n.items) == 0 {
		r.fault(n.at, "the set has no problems", "Write it like this: problems: [{problem: portal.yaml, points: 10}]")
	}
	if len(n.items) > mostTasks {
		r.fault(n.items[mostTasks].at, fmt.Sprintf("a set has at most %d problems, not %d", mostTasks, len(n.items)), "Make two sets of it.")
		return
	}
	places := map[string]int{} // the line of each problem, by name
	var without []string
	for _, item := range n.items {
		if !r.shaped(item, oneTask, taskLike(item), table) {
			continue
		}
		values := r.fields(item, oneTask, taskFields)
		t, ok := r.task(values)
		if !ok {
			continue
		}
		if line, twice := places[t.Name]; twice {
			r.fault(values["problem"].at, fmt.Sprintf("a problem called %s stands on line %d already", t.Name, line), "Marks are told by the problem's name: name the file of one of the two differently.")
		}
		places[t.Name] = values["problem"].at.line
		r.set.Tasks = append(r.set.Tasks, t)
		if values["points"] == nil {
			without = append(without, t.Name)
		}
	}
	if len(without) > 0 && len(without) < len(r.set.Tasks) {
		r.set.Warnings = append(r.set.Warnings, fmt.Sprintf("%s has no points, and others have: it is worth %s.", without[0], UsualPoints))
	}
}

// taskLike shows how an entry is written that is no group of fields: with its own word, if it is one.
func taskLike(item *node) string {
	word := strings.TrimSpace(strings.TrimPrefix(item.text, "problem "))
	if item.shape == scalar && word != "" && !strings.ContainsAny(word, " ,:{}[]\"'") {
		return fmt.Sprintf("{problem: %s, points: 10}", word)
	}
	return "{problem: portal.yaml, points: 10}"
}

// task reads one problem of the set.
func (r *setReader) task(values map[string]*node) (t Task, ok bool) {
	t.Points = UsualPoints
	if n := values["points"]; n != nil {
		t.Points = r.points(n)
	}
	n := values["problem"]
	if n == nil {
		return t, false
	}
	t.Word = n.text
	p, err := r.open(t.Word)
	if own := (*Faults)(nil); errors.As(err, &own) {
		r.broken = append(r.broken, own)
		return t, false
	} else if err != nil {
		r.fault(n.at, err.Error(), "Name a file, from the folder of the set, or a problem of the library.")
		return t, false
	}
	t.Problem = p.Under(r.set.Ask)
	t.Solution, err = statics.Solve(p.Frame)
	if err != nil || t.Count.Determinacy() != statics.Determinate {
		r.fault(n.at, "the frame of "+quoted(t.Word)+" is not determinate", "See unpin inspect on it, which says why and what would mend it.")
		return t, false
	}
	for _, w := range p.Warnings {
		r.set.Warnings = append(r.set.Warnings, p.Name+": "+w)
	}
	if find := values["find"]; find != nil {
		t.Problem = t.Asking(r.find(find, t.Solved))
	}
	return t, true
}

// mostPoints bounds the points of a problem.
const mostPoints = 1000

// points reads what a problem is worth.
func (r *setReader) points(n *node) exact.Num {
	v, ok := r.counted(n, "points", "10")
	if ok && (v.Sign() <= 0 || v.Cmp(exact.Int(mostPoints)) > 0) {
		r.fault(n.at, fmt.Sprintf("points are more than 0 and at most %d, not %s", mostPoints, quoted(n.text)), "Write it like this: points: 10")
	}
	return v
}
