package main

import (
	"bytes"
	"fmt"
	"os"
	"slices"

	"unpin/problems"
	"unpin/problems/variant"
)

// assign finds who has which copies.
func (s *sheeting) assign() error {
	if len(s.givenOf("copies", "roster", "variants", "code")) == 0 {
		s.handouts = []variant.Handout{{}}
		return nil
	}
	if s.set != nil && s.given("seed") {
		return usageFault(s.cmd, "a set has its own seed: write it there, not --seed")
	}
	if err := s.makers(); err != nil {
		fmt.Fprintf(s.cmd.ErrOrStderr(), "unpin: %v\n", err)
		return errNo
	}
	switch {
	case s.code != "":
		return s.again()
	case s.variants != "":
		return s.handed()
	}
	return s.drawn()
}

// makers are what copies are made by.
func (s *sheeting) makers() (err error) {
	if s.set != nil {
		s.batch, err = variant.OfSet(s.set)
		return err
	}
	s.batch, err = variant.OfProblems(s.problems(), s.seed)
	return err
}

// problems are those of the tasks.
func (s *sheeting) problems() []*problems.Problem {
	var all []*problems.Problem
	for _, t := range s.tasks {
		all = append(all, t.Problem)
	}
	return all
}

// drawn draws copies for a class.
func (s *sheeting) drawn() error {
	class := variant.Nobody(s.copies)
	if s.roster != "" {
		roster, err := readRoster(s.cmd, s.roster)
		if err != nil {
			return err
		}
		class = classOf(s.cmd, s.set, roster)
	}
	warnTexts(s.cmd, s.problems())
	all, err := handouts(s.cmd, s.batch, class)
	if err != nil {
		return err
	}
	s.handouts, s.list = all, s.batch.List(all)
	if len(s.tasks) == 1 && s.set == nil {
		s.list = variant.List(s.batch[0].Maker, firsts(all))
	}
	if n := s.batch.Equal(class, all); n > 0 {
		fmt.Fprintf(s.cmd.ErrOrStderr(), "%d of %d copies have numbers that another has.\n", n, len(all)*len(s.tasks))
	}
	return s.unchanged()
}

// unchanged refuses a folder in which other copies are listed, or copies of a problem that has changed since.
func (s *sheeting) unchanged() error {
	if !s.folder {
		return nil
	}
	old, err := os.ReadFile(s.listPath())
	if err != nil || bytes.Equal(old, s.list) {
		return nil
	}
	if listed, err := variant.ReadList(s.listPath(), bytes.NewReader(old)); err == nil {
		if _, err := s.batch.Handed(s.listPath(), listed); err != nil {
			return err
		}
	}
	return fmt.Errorf("unpin: %s lists other copies, which some may have already: name another folder, or print those again with --variants %s", s.listPath(), s.listPath())
}

// listed reads the list of --variants.
func (s *sheeting) listed() ([]variant.Listed, error) {
	file, err := os.Open(s.variants)
	if err != nil {
		return nil, fmt.Errorf("unpin: %s cannot be read: %w", s.variants, plainReason(err))
	}
	defer file.Close()
	return variant.ReadList(s.variants, file)
}

// handed takes copies as they were listed; names and ways to print come from the roster, and whoever is not on it is left out.
func (s *sheeting) handed() error {
	listed, err := s.listed()
	if err != nil {
		return err
	}
	s.handouts, err = s.batch.Handed(s.variants, listed)
	if err != nil || s.roster == "" {
		return err
	}
	roster, err := readRoster(s.cmd, s.roster)
	if err != nil {
		return err
	}
	var all []variant.Handout
	for _, student := range roster.Students {
		at := slices.IndexFunc(s.handouts, func(h variant.Handout) bool {
			return h.Student.ID == student.ID && h.Student.Attempt == student.Attempt
		})
		if at < 0 {
			return fmt.Errorf("unpin: %s of %s is not listed in %s", student.ID, s.roster, s.variants)
		}
		all = append(all, variant.Handout{Student: student, Copies: s.handouts[at].Copies})
	}
	s.handouts = all
	return nil
}

// again takes the copy of a code. Where a list is given it must be there, of the problem as it is now.
func (s *sheeting) again() error {
	at, draw, err := s.batch.Decode(s.code)
	if err != nil {
		return usageFault(s.cmd, "%v", err)
	}
	own := variant.Copy{Draw: draw, Code: s.batch[at].Source.Code(draw)}
	h := variant.Handout{Copies: make([]variant.Copy, len(s.batch))}
	if s.variants != "" {
		listed, err := s.listed()
		if err != nil {
			return err
		}
		line := slices.IndexFunc(listed, func(l variant.Listed) bool { return l.Code == own.Code })
		if line < 0 {
			return fmt.Errorf("unpin: the code %s is not listed in %s", own.Code, s.variants)
		}
		if listed[line].Digest != variant.Digest(s.batch[at].Problem()) {
			return fmt.Errorf("%s:%d: the problem %s has changed since this list was made: put its file back as it was", s.variants, listed[line].Line, s.tasks[at].Name)
		}
		own.Student = listed[line].Student
		h.Student.ID = own.Student
	}
	h.Copies[at] = own
	s.handouts = []variant.Handout{h}
	return nil
}
