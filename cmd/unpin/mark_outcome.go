package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"strings"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/tutor/marking"
)

// An outcome is what becomes of marked papers, student by student.
type outcome struct {
	mark
	of        *marking.Scheme
	decisions []marking.Override
	fits      []bool   // of each decision: there is a paper for it
	faults    []string // of decisions
	lost      bool     // some marks
	papers    int
	single    []string // the papers of the first student, as they are read
	students  int
	class     marking.ClassList
	table     bytes.Buffer
	objects   []json.RawMessage
	changes   *marking.Changes
	pages     map[string]string // of each file that was written, the student
}

// newOutcome reads what the marks are decided by and compared with.
func (m mark) newOutcome(scheme *marking.Scheme) (*outcome, error) {
	o := &outcome{mark: m, of: scheme, objects: []json.RawMessage{}, pages: map[string]string{}}
	o.table.Write(marking.Head())
	if m.override != "" {
		file, err := os.Open(m.override)
		if err != nil {
			return nil, fmt.Errorf("unpin: %s cannot be read: %w", m.override, plainReason(err))
		}
		defer file.Close()
		if o.decisions, err = marking.ReadOverrides(m.override, file); err != nil {
			return nil, err
		}
		o.fits = make([]bool, len(o.decisions))
	}
	if m.compare != "" {
		file, err := os.Open(m.compare)
		if err != nil {
			return nil, fmt.Errorf("unpin: %s cannot be read: %w", m.compare, plainReason(err))
		}
		defer file.Close()
		if o.changes, err = marking.ReadChanges(m.compare, file); err != nil {
			return nil, err
		}
	}
	return o, nil
}

// take takes up the results of one student.
func (o *outcome) take(results []*marking.Result) error {
	results = o.of.Counting(results)
	o.override(results)
	for _, r := range results {
		o.papers++
		o.lost = o.lost || r.Got.Cmp(r.Of) < 0 || len(r.Unread) > 0
		switch {
		case o.changes != nil:
			o.changes.Add(r)
		case o.format == "csv":
			o.table.Write(r.CSV())
		case o.format == "json":
			one, err := r.JSON((*problems.Scheme)(o.of).Digest())
			if err != nil {
				return err
			}
			o.objects = append(o.objects, one)
		default:
			o.class.Add(r)
			if o.students == 0 {
				o.single = append(o.single, r.Text(o.tell))
			}
		}
	}
	if len(results) > 0 {
		o.class.AddTotal(results)
		o.students++
	}
	if o.feedback != "" && len(results) > 0 {
		return o.givePage(results)
	}
	return nil
}

// document is the marks in the format chosen.
func (o *outcome) document() ([]byte, error) {
	switch {
	case o.changes != nil:
		return []byte(o.changes.Text()), nil
	case o.format == "csv":
		return o.table.Bytes(), nil
	case o.format == "json" && len(o.objects) == 1:
		return indentedJSON(o.objects[0])
	case o.format == "json":
		return indentedJSON(o.objects)
	case o.students == 1:
		return []byte(strings.Join(o.single, "\n")), nil
	}
	return []byte(o.class.Text()), nil
}

func indentedJSON(what any) ([]byte, error) {
	text, err := json.MarshalIndent(what, "", "  ")
	return append(text, '\n'), err
}

// decide tries the decisions on the results of one student, and notes which fit none and which are wrong.
func (o *outcome) decide(results []*marking.Result) error {
	o.override(o.of.Counting(results))
	return nil
}

// override gives answers the points that an instructor decided.
func (o *outcome) override(results []*marking.Result) {
	for n, d := range o.decisions {
		for _, r := range results {
			if !d.IsOf(r.Paper, r.Marker.Name) {
				continue
			}
			o.fits[n] = true
			if err := r.Override(d, o.of); err != nil {
				o.faults = append(o.faults, fmt.Sprintf("%s:%d: %v", notation.Visible(o.mark.override), d.Line, err))
			}
		}
	}
}

// undecided is an error with all that is wrong with decisions; nil where nothing is.
func (o *outcome) undecided(name string) error {
	for n, d := range o.decisions {
		if !o.fits[n] {
			who := notation.Visible(strings.TrimSpace(d.Student + " " + d.Problem))
			o.faults = append(o.faults, fmt.Sprintf("%s:%d: there is no paper of %s that counts", notation.Visible(name), d.Line, who))
		}
	}
	if len(o.faults) > 0 {
		return fmt.Errorf("%s", strings.Join(o.faults, "\n"))
	}
	return nil
}
