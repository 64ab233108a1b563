package worksheet

import (
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
)

// An Answer is one answer of a task, for marking by hand.
type Answer struct {
	Name  string // Cy, M(BC, 2.4), as problems.Item has it
	Unit  string
	Right string // by the signs and figures of the problem
	Acts  string // the sense of a force, or the side that a moment stretches; empty where there is none
	Wrong []WrongAnswer
}

// A WrongAnswer is a value to which mistakes lead.
type WrongAnswer struct {
	Value string
	Slips []string // the mistakes, by their IDs in package slip; two that only together lead to it as "one+other"
}

// MostWrong is how many wrong values are told of each answer.
const MostWrong = 3

// Answers lists the answers of a task, each with the wrong values that are likeliest where no sum stands on the page.
func Answers(t Task) []Answer {
	d := newDocument(t.Problem, t.Solution, false)
	items := t.Items
	if items == nil {
		items = t.Solved.Items()
	}
	var all []Answer
	for _, item := range items {
		a := Answer{Name: item.Name, Unit: d.st.UnitOf(item.Dim), Right: d.answerText(item, item), Acts: d.acting(item)}
		for _, w := range Judged(t.Solved, item).LikelyWrong(MostWrong) {
			wrong := item
			wrong.Value = w.Value
			a.Wrong = append(a.Wrong, WrongAnswer{d.answerText(item, wrong), w.Slips})
		}
		all = append(all, a)
	}
	return all
}

// answerText is the value of an item, by the signs of the problem's conventions.
func (d *document) answerText(item, with problems.Item) string {
	value := with.Value
	if item.Force == statics.None && !item.Place && item.Quantity == statics.ShearForce {
		value = d.st.Shear.Value(value)
	}
	return d.say.Cell(value)
}

// acting is the sense of a force's value, or the side that a moment stretches.
func (d *document) acting(item problems.Item) string {
	switch {
	case item.Value.IsZero() || item.Place:
		return ""
	case item.Force != statics.None:
		return notation.SenseOf(d.Forces[item.Force], item.Value)
	case item.Quantity == statics.BendingMoment:
		return d.say.TensionSide(item.Member, item.Value)
	}
	return ""
}

// A CopyAnswers is the answers of one copy of a problem, with whose it is.
type CopyAnswers struct {
	Student string
	Problem string
	Code    string
	Answers []Answer
}

// AnswersHead are the columns of the table of answers as CSV.
var AnswersHead = []string{"student", "problem", "code", "quantity", "unit", "expected", "acts", "wrong 1", "mistake 1", "wrong 2", "mistake 2", "wrong 3", "mistake 3"}

// Rows are the lines of the table of answers as CSV, one for each answer, with decimal points and plain signs.
func (c CopyAnswers) Rows() [][]string {
	var rows [][]string
	for _, a := range c.Answers {
		row := []string{notation.Visible(c.Student), notation.Visible(c.Problem), c.Code, a.Name, notation.ASCII(a.Unit), plainCell(a.Right), a.Acts}
		for i := range MostWrong {
			if i < len(a.Wrong) {
				row = append(row, plainCell(a.Wrong[i].Value), mistakeNames(a.Wrong[i].Slips))
			} else {
				row = append(row, "", "")
			}
		}
		rows = append(rows, row)
	}
	return rows
}

// mistakeNames names the mistakes that lead to one value.
func mistakeNames(ids []string) string {
	var names []string
	for _, id := range ids {
		names = append(names, mistakeName(id))
	}
	return strings.Join(names, "; ")
}

// plainCell is a value as programs read it.
func plainCell(text string) string { return strings.ReplaceAll(notation.ASCII(text), ",", ".") }
