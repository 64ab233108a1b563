package problems

import (
	"fmt"
	"slices"
)

// The names of the fields of a set's file, and of one of its problems, in a sentence.
const (
	wholeSet = "a set"
	oneTask  = "an entry of problems"
	setAsk   = "the ask of a set"
)

// SetLevels are the words for how much of a step is left to the student.
var SetLevels = []string{"read", "values", "terms", "plan", "blank", "gradual"}

// setFields are the fields of a set.
var setFields = fields{
	{name: "id", shapes: oneScalar, need: true, also: []string{"name"}, like: "statics-w5", doc: "What the set is called in lists; the numbers of copies depend on it."},
	{name: "title", shapes: oneScalar, need: true, also: []string{"heading"}, like: "Statics, week 5", doc: "The title that is printed on the sheets."},
	{name: "course", shapes: oneScalar, like: "Structural mechanics 1", doc: "The course, printed as it stands."},
	{name: "seed", shapes: oneScalar, also: []string{"secret"}, like: "4711", doc: "A secret text, from which the numbers of copies are drawn; no student gets it."},
	{name: "ask", shapes: oneTable, of: setAskFields, like: "{moments: ccw, figures: 3}", doc: "The conventions of the course; what a problem's own file settles wins."},
	{name: "level", shapes: oneScalar, words: SetLevels, like: "values", doc: "How much of each step is left to the student."},
	{name: "same", shapes: oneScalar, words: []string{Student, Group}, like: "student", doc: "Who has the same numbers: each student has other ones, or each group."},
	{name: "opens", shapes: oneScalar, also: []string{"begins", "start", "from"}, like: "2026-12-04T10:00+01:00", doc: "When it may be begun, with the offset from universal time."},
	{name: "closes", shapes: oneScalar, also: []string{"ends", "end", "until"}, like: "2026-12-04T11:30+01:00", doc: "When it ends, with the offset from universal time."},
	{name: "minutes", shapes: oneScalar, also: []string{"time", "duration"}, like: "90", doc: "How long a student has from the start."},
	{name: "keep", shapes: oneScalar, like: "2027-06-30", doc: "The last day on which what students did is kept."},
	{name: "scheme", shapes: oneScalar, also: []string{"marks"}, like: "scheme.yaml", doc: "The file that says how marks are given."},
	{name: "problems", shapes: oneList, need: true, also: []string{"tasks"}, like: "[{problem: portal.yaml, points: 10}, {problem: riding-hall}]", doc: "The problems, in the order of the sheet."},
}

// taskFields are the fields of one problem of a set.
var taskFields = fields{
	{name: "problem", shapes: oneScalar, need: true, also: []string{"file", "name"}, like: "portal.yaml", doc: "A problem file, from the folder of the set, or a problem of the library."},
	{name: "points", shapes: oneScalar, also: []string{"marks"}, like: "10", doc: "The points that it is worth; 10 if absent."},
	{name: "find", shapes: oneList, also: []string{"asks"}, like: "[reactions, pins, M]", doc: "What is to be found: reactions, pins, N, V, M, diagrams, or names such as Cy and M(BC, 2.4); what the problem asks for if absent."},
}

// setAskFields are the fields of ask but what is to be found, which stands with each problem.
var setAskFields = slices.DeleteFunc(slices.Clone(askFields), func(f field) bool { return f.name == "find" })

// elsewhereInSet says where a field belongs that stands in the wrong group of a set, or nothing if no group has it.
func elsewhereInSet(name string) string {
	if f, ok := setFields.find(name); ok {
		return fmt.Sprintf("It belongs at the top of the file, as in %s: %s", f.name, f.like)
	}
	if f, ok := taskFields.find(name); ok {
		return fmt.Sprintf("It belongs with a problem, as in problems: [{problem: portal.yaml, %s: %s}]", f.name, f.like)
	}
	if f, ok := askFields.find(name); ok {
		return fmt.Sprintf("It belongs in ask, as in ask: {%s: %s}", f.name, f.like)
	}
	if _, ok := problemFields.find(name); ok {
		return "It belongs in the problem's own file, which the set names: problems: [{problem: portal.yaml}]"
	}
	return ""
}
