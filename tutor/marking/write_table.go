package marking

import (
	"encoding/json"
	"fmt"
	"strings"

	"unpin/problems/variant"
)

// Columns are those of marks as CSV.
var Columns = []string{"student", "problem", "code", "attempt", "quantity", "expected", "given", "verdict", "slip", "from", "got", "of", "note"}

// Rows are a result as rows of CSV, one for each answer, one for each part of the working, and one for each that nothing is made of.
func (r *Result) Rows() [][]string {
	var all [][]string
	p := r.Paper
	row := func(cells ...string) {
		all = append(all, append([]string{p.Student, r.Marker.Name, p.Code, fmt.Sprint(p.Attempt)}, cells...))
	}
	for _, a := range r.Answers {
		row(a.Name, r.expected(a), a.Given, a.Verdict, a.Slip, strings.Join(a.From, " "), inTable(a.Got), inTable(a.Of), r.note(a))
	}
	for _, w := range r.Parts {
		row(w.Name(), "", w.Given, w.Verdict(), w.Slip, "", inTable(w.Got), inTable(w.Of), w.note())
	}
	for _, u := range r.Unread {
		row(u.Text, "", "", "unread", "", "", "0", "0", Lines(u.Lines)+": "+u.Why)
	}
	return all
}

// Head is the first line of marks as CSV.
func Head() []byte { return variant.WriteCSV([][]string{Columns}) }

// CSV is a result as lines of a table.
func (r *Result) CSV() []byte { return variant.WriteCSV(r.Rows()) }

// expected is the true value as a decimal, in the conventions of the problem.
func (r *Result) expected(a Answer) string {
	if a.Name == "" || a.Item.Dim == 0 && a.Item.Value.IsZero() {
		return ""
	}
	return r.Marker.shownValue(a).Decimal(6)
}

// note is the reason for a verdict, in one cell.
func (r *Result) note(a Answer) string {
	var parts []string
	if a.Says != "" && a.Verdict != Carried {
		parts = append(parts, a.Says)
	}
	if a.Verdict == Carried {
		parts = append(parts, "follows by "+a.Follows)
	}
	if len(a.Or) > 0 {
		parts = append(parts, "or in "+strings.Join(a.Or, ", "))
	}
	if len(a.Violates) > 0 {
		v := a.Violates[0]
		parts = append(parts, violates+v.Name+comesTo+r.comesTo(v))
		if s, ok := r.sumOf(a); ok {
			parts = append(parts, written+s.symbols+theirs+s.numbers)
		}
	}
	if a.Remark != "" {
		parts = append(parts, a.Remark)
	}
	return strings.Join(parts, "; ")
}

type (
	jsonAnswer struct {
		Name     string      `json:"name"`
		Given    string      `json:"given"`
		Expected string      `json:"expected"`
		Verdict  string      `json:"verdict"`
		Slip     string      `json:"slip"`
		From     []string    `json:"from"`
		Or       []string    `json:"or,omitempty"`
		Violates []string    `json:"violates"`
		Got      json.Number `json:"got"`
		Of       json.Number `json:"of"`
		Note     string      `json:"note,omitempty"`
	}
	jsonUnread struct {
		Lines []int  `json:"lines"`
		Text  string `json:"text"`
		Why   string `json:"why"`
	}
	jsonMarks struct {
		Got json.Number `json:"got"`
		Of  json.Number `json:"of"`
	}
	jsonPaper struct {
		Student string       `json:"student"`
		Problem string       `json:"problem"`
		Code    string       `json:"code"`
		Attempt int          `json:"attempt"`
		Scheme  string       `json:"scheme"`
		Answers []jsonAnswer `json:"answers"`
		Unread  []jsonUnread `json:"unread"`
		Working []string     `json:"working,omitempty"`
		Marks   jsonMarks    `json:"marks"`
	}
)

// JSON is a result as one object; scheme is the digest of the scheme.
func (r *Result) JSON(scheme string) ([]byte, error) {
	p := jsonPaper{Student: r.Paper.Student, Problem: r.Marker.Name, Code: r.Paper.Code, Attempt: r.Paper.Attempt, Scheme: scheme,
		Answers: []jsonAnswer{}, Unread: []jsonUnread{}, Working: r.Working, Marks: jsonMarks{json.Number(Points(r.Got)), json.Number(Points(r.Of))}}
	for _, a := range r.Answers {
		j := jsonAnswer{Name: a.Name, Given: a.Given, Expected: r.expected(a), Verdict: a.Verdict, Slip: a.Slip, From: append([]string{}, a.From...),
			Or: a.Or, Violates: []string{}, Got: json.Number(Points(a.Got)), Of: json.Number(Points(a.Of)), Note: r.note(a)}
		for _, v := range a.Violates {
			j.Violates = append(j.Violates, v.Name)
		}
		p.Answers = append(p.Answers, j)
	}
	for _, w := range r.Parts {
		p.Answers = append(p.Answers, jsonAnswer{Name: w.Name(), Given: w.Given, Verdict: w.Verdict(), Slip: w.Slip, From: []string{}, Violates: []string{},
			Got: json.Number(Points(w.Got)), Of: json.Number(Points(w.Of)), Note: w.note()})
	}
	for _, u := range r.Unread {
		p.Unread = append(p.Unread, jsonUnread(u))
	}
	return json.Marshal(p)
}
