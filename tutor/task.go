package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A Task is what a student is told of a problem before it is begun.
type Task struct {
	Title string
	Text  string // the scenario; may be empty
	Find  string // what is to be found, as a sentence; empty where the scenario says so
	Facts string // grade and units
}

// An askedThing is a word for what a problem asks for, and how one reads it.
type askedThing struct{ word, text string }

// of is how one reads it of a problem.
func (a askedThing) of(p *problems.Problem) string {
	if a.word == "pins" {
		return wording.PinForces(&p.Frame)
	}
	return a.text
}

// finds are what a problem may ask for, as one reads it.
var finds = []askedThing{
	{"reactions", "the support reactions"}, {"pins", "the pin forces"}, {"diagrams", "N, V and M along every member"},
	{"N", "N along every member"}, {"V", "V along every member"}, {"M", "M along every member"},
}

// findText is what a problem asks for, as a sentence: the kinds above, and answers by their names.
func findText(p *problems.Problem) string {
	var wanted []string
	for _, f := range finds[:3] {
		if there := f.word != "pins" || len(p.Frame.Connections) > 0; there && len(p.Find) == 0 {
			wanted = append(wanted, f.of(p))
		}
	}
	for _, word := range p.Find {
		at := slices.IndexFunc(finds, func(f askedThing) bool { return f.word == word })
		switch {
		case at < 0:
			wanted = append(wanted, word)
		case word != "pins" || len(p.Frame.Connections) > 0:
			wanted = append(wanted, finds[at].of(p))
		}
	}
	return "Find " + notation.List(wanted) + "."
}

// TaskOf is what there is to tell of a problem.
func TaskOf(p *problems.Problem) Task {
	t := Task{Title: p.Title, Text: p.Text}
	if !strings.Contains(p.Text, "Find ") {
		t.Find = findText(p)
	}
	t.Facts = "units " + strings.Join(strings.Fields(p.Units.Of(notation.Force)+" "+p.Units.Of(notation.Length)), ", ")
	if p.Grade > 0 {
		t.Facts = fmt.Sprintf("grade %d of 6, %s", p.Grade, t.Facts)
	}
	return t
}

// Task is what a student is told of the problem before it is begun.
func (v View) Task() Task {
	t := TaskOf(v.about.problem)
	if v.about.asked != nil { // whatever the text says
		t.Find = findText(v.about.problem)
	}
	return t
}

// Name is the problem's name: that of its file, or in the library.
func (v View) Name() string { return v.about.problem.Name }
