package main

import (
	"errors"
	"fmt"
	"iter"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/problems/worksheet"
	"unpin/statics"
)

// papersAs makes the papers of handouts on all processors, each into what as makes of it, and yields these in their order, no more
// of them at a time than are in the making. What goes wrong is left in *fault.
func papersAs[R any](s *sheeting, all []variant.Handout, fault *error, shown func(int), as func(worksheet.Paper) R) iter.Seq[R] {
	type made struct {
		result R
		err    error
	}
	return func(yield func(R) bool) {
		done := 0
		*fault = inOrder(len(all), never, func(i int) (m made) {
			p, err := s.sheetOf(all[i])
			if m.err = err; err == nil {
				m.result = as(p)
			}
			return m
		}, func(m made) error {
			if m.err != nil {
				return m.err
			}
			if !yield(m.result) {
				return errEnough
			}
			done++
			shown(done)
			return nil
		})
		if errors.Is(*fault, errEnough) {
			*fault = nil // the reader has a reason of its own
		}
	}
}

// errEnough ends the making of papers of which no more are read.
var errEnough = errors.New("no more papers are wanted")

// never is for jobs none of which has to be done alone.
func never(int) bool { return false }

// sheetOf is the paper of one student.
func (s *sheeting) sheetOf(h variant.Handout) (worksheet.Paper, error) {
	p := worksheet.Paper{Heading: s.heading, Size: s.size()}
	if s.roster != "" || s.variants != "" {
		p.Student, p.Name = h.Student.ID, h.Student.Name
		if h.Student.Attempt > 1 {
			p.Student += fmt.Sprintf(", attempt %d", h.Student.Attempt)
		}
	}
	switch h.Student.Print {
	case "a4":
		p.Size = worksheet.A4
	case "letter":
		p.Size = worksheet.Letter
	case "large":
		p.Large = true
	}
	for i := range s.tasks {
		if h.Copies != nil && h.Copies[i].Code == "" {
			continue // of another code
		}
		t, err := s.task(h, i)
		if err != nil {
			return p, err
		}
		p.Tasks = append(p.Tasks, t)
	}
	return p, nil
}

// task is a student's copy of one problem, or the problem itself.
func (s *sheeting) task(h variant.Handout, i int) (worksheet.Task, error) {
	solved, code, err := s.solvedCopy(h, i)
	if err != nil {
		return worksheet.Task{}, err
	}
	items, err := solved.Asked(solved.Find)
	if err != nil {
		return worksheet.Task{}, fmt.Errorf("unpin: %s: %w", solved.Name, err)
	}
	t := worksheet.Task{Solved: solved, Items: append([]problems.Item{}, items...), Code: code, Level: s.sheetLevel()}
	if len(s.tasks) > 1 || s.set != nil {
		t.Number = i + 1
	}
	if s.set != nil {
		t.Points = solved.Conventions.Decimal.In(s.tasks[i].Points.Decimal(3))
	}
	return t, nil
}

// solvedCopy is a student's copy of one problem, or the problem itself, solved, with its code.
func (s *sheeting) solvedCopy(h variant.Handout, i int) (solved problems.Solved, code string, err error) {
	if h.Copies == nil {
		return s.tasks[i].Solved, "", nil
	}
	p, err := s.batch[i].At(h.Copies[i].Draw)
	if err != nil {
		return solved, "", fmt.Errorf("unpin: the copy %s of %s cannot be read: %w", h.Copies[i].Code, s.tasks[i].Name, err)
	}
	solution, err := statics.Solve(p.Frame)
	if err != nil {
		return solved, "", err
	}
	if solution.Count.Determinacy() != statics.Determinate {
		return solved, "", fmt.Errorf("unpin: the copy %s of %s is not determinate: is this code of another version of its file?", h.Copies[i].Code, s.tasks[i].Name)
	}
	return problems.Solved{Problem: p, Solution: solution}, h.Copies[i].Code, nil
}
