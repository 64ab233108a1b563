package qti

import (
	"fmt"
	"strconv"
	"strings"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics/exact"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// A Question is a problem with what is asked of it. The problem must be determinate.
type Question struct {
	problems.Solved
	Items  []problems.Item // at least one
	Points exact.Num       // for all answers right
	// Weights are what of the points each item is worth, of 1 together; without them all are worth the same.
	Weights []exact.Num
	// Scheme says what of its points an answer earns that is not right, what is right besides, and how the total is rounded;
	// without it only right answers earn, and nothing is rounded.
	Scheme *problems.Scheme
	Number int    // of the problem on the paper, from 1; 0 where it is the only one
	Code   string // of the copy; may be empty
}

// An Item is a question as it stands in a package.
type Item struct {
	// Remark is for whoever sets the question: which mistakes lead to a value that passes for right. It may be empty.
	Remark       string
	id           string
	data, figure []byte
}

// NewItem works a question out.
func NewItem(q Question, v Version) (*Item, error) {
	i, err := newItem(q, v)
	if err != nil {
		return nil, err
	}
	svg, err := worksheet.SVG(q.Problem, q.Solution, "given")
	return &Item{Remark: i.remark(), id: i.id, data: v.document(i.element()), figure: svg}, err
}

// document and picture are the names of an item's files in the package.
func (i *Item) document() string { return "items/" + i.id + ".xml" }
func (i *Item) picture() string  { return "items/" + i.id + ".svg" }

// An item is one question in the making.
type item struct {
	Question
	id      string
	version Version
	say     wording.Speaker
	answers []answer
}

// newItem works out the answers of a question.
func newItem(q Question, v Version) (*item, error) {
	if q.Values == nil || len(q.Items) == 0 {
		return nil, fmt.Errorf("%s asks for nothing that can be answered", q.Problem.Name)
	}
	i := &item{Question: q, id: q.id(), version: v, say: wording.New(q.Assembly, q.Problem.Style(false))}
	used := map[string]bool{}
	for n, one := range q.Items {
		a := newAnswer(q, one, i.say)
		a.id, a.points = unique(used, a.id), i.pointsOf(n)
		i.answers = append(i.answers, a)
	}
	return i, nil
}

// id is the identifier of a question: no other of its paper has it. A code tells the place on the paper too.
func (q Question) id() string {
	switch {
	case q.Code != "":
		return identifier(q.Problem.Name + "-" + q.Code)
	case q.Number > 0:
		return identifier(q.Problem.Name + "-" + strconv.Itoa(q.Number))
	}
	return identifier(q.Problem.Name)
}

// element is the item as an element.
func (i *item) element() *element {
	return el("assessmentItem", i.version.namespaces(asItem), at("identifier", i.id), at("title", oneLine(i.Problem.Title)),
		at("adaptive", "false"), at("timeDependent", "false"), at("xml:lang", "en"), at("toolName", "unpin"),
		i.responses(), i.outcomes(), el("itemBody", i.statement(), i.entries()), i.processing())
}

// remark says which mistakes lead to a value that passes for right; empty if none does.
func (i *item) remark() string {
	var all []string
	for n, a := range i.answers {
		if len(a.hidden) > 0 {
			var names []string
			for _, id := range a.hidden {
				names = append(names, slip.ByID(id).Kind())
			}
			all = append(all, i.Items[n].Name+" ("+strings.Join(names, ", ")+")")
		}
	}
	if len(all) == 0 {
		return ""
	}
	return "some mistakes lead to a value that passes for right: " + strings.Join(all, "; ")
}

// oneLine is a text with single blanks and no ends of lines.
func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// pointsOf are those for answer n.
func (q Question) pointsOf(n int) exact.Num {
	if q.Weights != nil {
		return q.Points.Mul(q.Weights[n])
	}
	each, _ := q.Points.Quo(exact.Int(int64(len(q.Items)))) // there is one at least
	return each
}

// responses declare the answers with the right values.
func (i *item) responses() []*element {
	var all []*element
	for _, a := range i.answers {
		all = append(all, el("responseDeclaration", at("identifier", a.id), at("cardinality", "single"), at("baseType", "float"),
			el("correctResponse", el("value", number(a.value)))))
	}
	return all
}

// number is a number as platforms read it: with a point, and twelve figures where it does not end.
func number(x exact.Num) string { return x.Decimal(12) }

// The outcomes of an item.
const (
	score    = "SCORE"
	maxScore = "MAXSCORE"
	charged  = "CHARGED_"  // 1 if points were taken for the verdict that follows, which takes them once
	ofAnswer = "FEEDBACK_" // what is told of the answer whose identifier follows
)

// outcomes declare what comes of the answers.
func (i *item) outcomes() []*element {
	declare := func(id, kind string, more ...any) *element {
		e := el("outcomeDeclaration", at("identifier", id), at("cardinality", "single"), at("baseType", kind))
		e.add(more...)
		return e
	}
	initial := func(value string) *element { return el("defaultValue", el("value", value)) }
	most := number(i.Points)
	all := []*element{
		declare(score, "float", at("normalMaximum", most), initial("0")),
		declare(maxScore, "float", initial(most)),
	}
	for _, verdict := range i.once() {
		all = append(all, declare(charged+verdict, "integer", initial("0")))
	}
	for _, a := range i.answers {
		all = append(all, declare(ofAnswer+a.id, "identifier"))
	}
	return all
}
