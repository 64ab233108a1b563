package main

import (
	"fmt"
	"io"
	"sync"

	"unpin/problems/variant"
	"unpin/problems/worksheet"
)

// answers writes the table of all answers.
func (s *sheeting) answers(to io.Writer, format string, shown func(int)) error {
	if format == "csv" {
		return s.answersCSV(to, shown)
	}
	parts := make([]worksheet.AnswersPart, len(s.tasks))
	for i, t := range s.tasks {
		parts[i].Solved = t.Solved
		if len(s.tasks) > 1 || s.set != nil {
			parts[i].Number = i + 1
		}
		if s.set != nil {
			parts[i].Points = t.Conventions.Decimal.In(t.Points.Decimal(3))
		}
	}
	err := s.eachAnswers(func(i int, c worksheet.CopyAnswers) error {
		parts[i].Copies = append(parts[i].Copies, c)
		return nil
	}, shown)
	switch {
	case err != nil:
		return err
	case format == "pdf":
		return worksheet.AnswersPDF(to, s.heading, parts, s.size())
	}
	return worksheet.AnswersMarkdown(to, s.heading, parts)
}

// answersCSV writes the table as CSV, problem by problem.
func (s *sheeting) answersCSV(to io.Writer, shown func(int)) error {
	if _, err := to.Write(variant.WriteCSV([][]string{worksheet.AnswersHead})); err != nil {
		return err
	}
	return s.eachAnswers(func(_ int, c worksheet.CopyAnswers) error {
		_, err := to.Write(variant.WriteCSV(c.Rows()))
		return err
	}, shown)
}

// eachAnswers finds the answers of all copies on all processors and hands them to take, problem by problem in the order of the
// handouts.
func (s *sheeting) eachAnswers(take func(task int, c worksheet.CopyAnswers) error, shown func(int)) error {
	type found struct {
		worksheet.CopyAnswers
		task int
		err  error
	}
	students, done := len(s.handouts), 0
	var known sync.Map // answers by what copyKey says
	return inOrder(students*len(s.tasks), never, func(k int) (f found) {
		f.task = k / students
		h := s.handouts[k%students]
		f.CopyAnswers = worksheet.CopyAnswers{Student: h.Student.ID, Problem: s.tasks[f.task].Name}
		if h.Copies != nil {
			f.Code = h.Copies[f.task].Code
		}
		key := s.copyKey(h, f.task)
		if all, there := known.Load(key); there {
			f.Answers = all.([]worksheet.Answer)
			return f
		}
		t, err := s.task(h, f.task)
		if f.err = err; err == nil {
			f.Answers = worksheet.Answers(t)
			known.Store(key, f.Answers)
		}
		return f
	}, func(f found) error {
		if f.err != nil {
			return f.err
		}
		if done++; done%len(s.tasks) == 0 {
			shown(done / len(s.tasks))
		}
		return take(f.task, f.CopyAnswers)
	})
}

// copyKey stands for the numbers of a student's copy of a problem: copies with the same have the same answers.
func (s *sheeting) copyKey(h variant.Handout, i int) string {
	if h.Copies == nil {
		return fmt.Sprint(i)
	}
	return fmt.Sprint(i, s.batch[i].Numbers(h.Copies[i].Draw))
}
