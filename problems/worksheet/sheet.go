package worksheet

import (
	"fmt"
	"strings"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A Paper is the problems that one student is set, as a question sheet or as the key to it.
type Paper struct {
	Heading
	Tasks []Task
	Size  PaperSize // of a PDF; none is A4
	Large bool      // large print, of about 18 points, in a PDF and on a page for a browser
}

// A Heading is what stands at the head of every page. Its texts come from people; what would not be seen is shown.
type Heading struct {
	Title   string // of the set; where there is none, that of the only problem
	Course  string // may be empty
	Student string // the student's id; empty leaves room to write it
	Name    string // likewise
	Caution string // at the foot of every page; empty is the usual one
}

// A Task is one problem of a paper.
type Task struct {
	problems.Solved
	Items  []problems.Item // what is asked; all that can be asked where there are none
	Number int             // of the problem on the paper, from 1; 0 prints none
	Points string          // as they are printed; may be empty
	Code   string          // of the copy; may be empty
	Level  Level
}

// A Level is how much of each step a sheet prints, as the lesson's level of that name does.
type Level int

// The levels, from the most help to the least.
const (
	ValuesLevel Level = iota // free body and sum are printed; values are left to find
	TermsLevel               // free body, sum and centre are named; size, arm and sign of every term are left
	PlanLevel                // outlines of the parts, and as many empty steps as the plan has
	BlankLevel               // room to work
)

// Levels are the names of the levels, in order.
var Levels = []string{"values", "terms", "plan", "blank"}

// String is the level's name.
func (v Level) String() string { return Levels[v] }

// ParseLevel reads the name of a level.
func ParseLevel(name string) (Level, error) {
	for i, n := range Levels {
		if n == name {
			return Level(i), nil
		}
	}
	return 0, fmt.Errorf("there is no level %q of a sheet; the levels are %s", name, strings.Join(Levels, ", "))
}

// PaperOptions say how papers are written. Which of them a format heeds stands with it.
type PaperOptions struct {
	Key    bool // the keys, not the sheets
	Full   bool // keys with the whole solution
	Duplex bool // every paper of a PDF has an even number of pages, so that none begins on the back of another
}

// settled is the paper as it is written: without hidden characters, and with what stands where nothing was said.
func (p Paper) settled() Paper {
	for _, text := range []*string{&p.Title, &p.Course, &p.Student, &p.Name, &p.Caution} {
		*text = oneLine(notation.VisibleLines(*text))
	}
	if p.Title == "" && len(p.Tasks) == 1 {
		p.Title = oneLine(seen(p.Tasks[0].Problem).Title)
	}
	if p.Caution == "" {
		p.Caution = wording.Caution
	}
	if p.Size == (PaperSize{}) {
		p.Size = A4
	}
	tasks := make([]Task, len(p.Tasks))
	for i, t := range p.Tasks {
		t.Points, t.Code = oneLine(notation.VisibleLines(t.Points)), oneLine(notation.VisibleLines(t.Code))
		if t.Items == nil && t.Values != nil {
			t.Items = t.Solved.Items()
		}
		tasks[i] = t
	}
	p.Tasks = tasks
	return p
}

// name is what the task is called on its paper: "Problem 2, 15 points"; empty for a problem by itself.
func (t Task) name() string {
	var parts []string
	if t.Number > 0 {
		parts = append(parts, fmt.Sprintf("Problem %d", t.Number))
	}
	switch t.Points {
	case "":
	case "1":
		parts = append(parts, "1 point")
	default:
		parts = append(parts, t.Points+" points")
	}
	return strings.Join(parts, ", ")
}

// code is the code of the copy as it is printed.
func (t Task) code() string {
	if t.Code == "" {
		return ""
	}
	return "Code " + t.Code
}

// who is the student's name and id, or blanks for them; a key has none.
func (p Paper) who(o PaperOptions) string {
	name, id := p.Name, p.Student
	if o.Key {
		return strings.TrimSpace(id + "   " + name)
	}
	if name == "" {
		name = longBlank + longBlank
		if p.Large {
			name = longBlank
		}
	}
	if id == "" {
		id = shortBlank
	}
	return "Id " + id + "   Name " + name
}

// A medium says what a format can show of a paper.
type medium struct {
	pictures bool
	lists    bool // what is given stands in words, besides any figure
}

// documentOf is the document of a task: its questions, or the key to it.
func documentOf(t Task, o PaperOptions, m medium) *document {
	switch {
	case o.Key && o.Full:
		return newFullKey(t, m)
	case o.Key:
		return newKey(t, m)
	}
	return newSheet(t, m)
}
