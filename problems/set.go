package problems

import (
	"bytes"
	"os"
	"time"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Set is the problems of one paper, as its file names them, checked. It is not changed after reading.
type Set struct {
	Name     string // the file's name without folder and ending
	ID       string // what it is called in lists; the numbers of copies depend on it
	Title    string
	Course   string
	Seed     string               // a secret, from which the numbers of copies are drawn; "1" where the file does not say
	Ask      notation.Preferences // the conventions of the course
	Level    string               // one of SetLevels, or empty where the file does not say
	Same     string               // Student or Group: who has numbers of their own
	Opens    time.Time            // zero where the file does not say, like Closes and Keep
	Closes   time.Time
	Minutes  int       // from the start of each student; 0 where the file does not say
	Keep     time.Time // the last day, at midnight of universal time
	Scheme   string    // the file with the scheme of marks, as written; may be empty
	Tasks    []Task    // in the order of the sheet
	Warnings []string  // what is legal but likely a mistake, a sentence each
}

// Who has numbers of their own.
const (
	Student = "student"
	Group   = "group"
)

// A Task is one problem of a set, in the conventions that hold there, and with what is to be found there as its Find.
type Task struct {
	Solved
	Word   string    // as the set's file names it
	Points exact.Num // UsualPoints where the file does not say
}

// UsualPoints are those of a problem of which nothing is said, in a set or by itself.
var UsualPoints = exact.Int(10)

// mostTasks is how many problems a set can have: a copy's place in the set is one sign of its code.
const mostTasks = 31

// Points are those of all problems together.
func (s *Set) Points() exact.Num {
	sum := exact.Num{}
	for _, t := range s.Tasks {
		sum = sum.Add(t.Points)
	}
	return sum
}

// Holds reports whether the text of a file is that of a set: whether it lists problems.
func Holds(data []byte) bool {
	if len(data) > maxBytes || !bytes.Contains(data, []byte("problems")) {
		return false
	}
	src, unclean := newSource(data)
	if unclean != nil {
		return false
	}
	tree, _ := parse(src)
	if tree == nil {
		return listsProblems().MatchString(src.text)
	}
	return tree.field("problems") != nil
}

// IsSet reports whether the file at a path can be read and is a set.
func IsSet(path string) bool {
	_, set := Peek(path)
	return set
}

// Peek is the text of the file at a path and whether it is a set. Of what cannot be read, or is no plain file, the text is nil.
func Peek(path string) (text []byte, set bool) {
	if info, err := os.Stat(path); err != nil || !info.Mode().IsRegular() {
		return nil, false
	}
	text, err := contentOf(path)
	if err != nil {
		return nil, false
	}
	return text, Holds(text)
}

// field is the value of a field of a table, or nil.
func (n *node) field(name string) *node {
	for _, e := range n.entries {
		if e.key.text == name {
			return e.value
		}
	}
	return nil
}
