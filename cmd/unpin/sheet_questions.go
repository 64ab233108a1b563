package main

import (
	"cmp"
	"errors"
	"fmt"
	"io"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/problems/worksheet/qti"
	"unpin/tutor/marking"
)

// questionsFormat is that of questions for a learning platform.
const questionsFormat = "qti"

// questionVersions are the words of --qti, in the order of package qti.
var questionVersions = []string{"2.1", "3"}

// questionVersion is the version of the standard that is asked for.
func (s *sheeting) questionVersion() qti.Version {
	if s.qti == questionVersions[qti.V30] {
		return qti.V30
	}
	return qti.V21
}

// checkQuestions refuses what questions for a platform do not have.
func (s *sheeting) checkQuestions() error {
	switch {
	case s.format != questionsFormat && s.given("qti"):
		return usageFault(s.cmd, "--qti is for --as qti, and this is %s", s.format)
	case s.format != questionsFormat:
		return nil
	case s.key:
		return usageFault(s.cmd, "questions for a platform hold their own answers: leave %s out", s.givenOf("key", "full")[0])
	case s.given("level"):
		return usageFault(s.cmd, "--level is for printed sheets: questions for a platform ask for the values alone")
	}
	return nil
}

// questions writes the tasks of handouts as one package of questions: a section for each problem, of whose copies a platform
// draws one. What passes for right in a problem's own numbers, or in a first copy's, is told.
func (s *sheeting) questions(to io.Writer, all []variant.Handout, shown func(int)) error {
	type made struct {
		*qti.Item
		err error
	}
	v, tasks := s.questionVersion(), len(s.tasks)
	w, done := qti.NewWriter(to, v), 0
	err := inOrder(len(all)*tasks, never, func(k int) (m made) {
		m.Item, m.err = s.question(all[k/tasks], k%tasks, v)
		return m
	}, func(m made) error {
		n := done % tasks
		if done++; n == tasks-1 {
			shown(done / tasks)
		}
		switch {
		case m.err != nil || m.Item == nil:
			return m.err
		case m.Remark != "" && done <= tasks && len(s.handouts) == len(all):
			fmt.Fprintf(s.cmd.ErrOrStderr(), "%s: %s.\n", s.tasks[n].Name, m.Remark)
		}
		return w.Add(n, m.Item)
	})
	return cmp.Or(err, w.Close(s.test(all)))
}

// question is a student's copy of a problem, or the problem itself, as a question; nil where it is of another code.
func (s *sheeting) question(h variant.Handout, i int, v qti.Version) (*qti.Item, error) {
	if h.Copies != nil && h.Copies[i].Code == "" {
		return nil, nil
	}
	t, err := s.task(h, i)
	if err != nil {
		return nil, err
	}
	marker, err := marking.New(t.Solved, t.Find)
	if err != nil {
		return nil, errors.New("unpin: " + err.Error())
	}
	item, err := qti.NewItem(qti.Question{
		Solved: t.Solved, Items: t.Items, Points: s.tasks[i].Points, Weights: marker.Weights(s.scheme), Scheme: (*problems.Scheme)(s.scheme),
		Number: t.Number, Code: t.Code,
	}, v)
	if err != nil {
		return nil, errors.New("unpin: " + err.Error())
	}
	return item, nil
}

// test is the paper of a package of questions.
func (s *sheeting) test(all []variant.Handout) qti.Test {
	t := qti.Test{ID: s.tasks[0].Name, Title: s.heading.Title}
	if s.set != nil {
		t.ID = s.set.ID
	}
	if len(all) == 1 && all[0].Student.ID != "" {
		t.ID += "-" + all[0].Student.ID
	}
	for i, task := range s.tasks {
		title := task.Title
		if len(s.tasks) > 1 {
			title = fmt.Sprintf("Problem %d: %s", i+1, title)
		}
		t.Sections = append(t.Sections, title)
	}
	if t.Title == "" {
		t.Title = s.tasks[0].Title
	}
	return t
}
