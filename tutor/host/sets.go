package host

import (
	"bytes"
	"context"
	"fmt"
	"slices"
	"sync"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/tutor"
	"unpin/tutor/marking"
)

// A Set is one that a host serves, with what it is marked by.
type Set struct {
	*problems.Set
	Scheme *marking.Scheme
}

// A set is one that is served, with what makes its copies.
type set struct {
	Set
	batch func() (variant.Batch, error) // made once, when it is first wanted
}

// served prepares sets.
func served(all []Set) []*set {
	var list []*set
	for _, s := range all {
		list = append(list, &set{s, sync.OnceValues(func() (variant.Batch, error) { return variant.OfSet(s.Set) })})
	}
	return list
}

// exam reports whether a set is worked as one paper by the clock.
func (s *set) exam() bool { return s.Minutes > 0 }

// level is the one at which the set is worked; nil where it does not say.
func (s *set) level() *tutor.Level {
	if s.Level == "" {
		return nil
	}
	level, err := tutor.ParseLevel(s.Level)
	if err != nil {
		return nil
	}
	return &level
}

// copiesNote is the name of the note that keeps which copies of a set a learner has.
func (s *set) copiesNote() string { return "copies " + s.ID }

// An own is a problem of a set with a learner's numbers.
type own struct {
	problems.Task
	code string // of the copy; empty where the numbers are those of the problem itself
}

// handed are the problems of a set with a learner's numbers: those that were handed out before, or else those that vary and sheet give
// the same learner. They are kept, so that they stay whatever becomes of the program.
func (h *Host) handed(s *set, who variant.Student) ([]own, error) {
	batch, err := s.batch()
	if err != nil { // nothing of a problem can change: the numbers are those of its file
		all := make([]own, len(s.Tasks))
		for i, t := range s.Tasks {
			all[i].Task = t
		}
		return all, nil
	}
	notes := h.keep.Log(who.ID)
	list, err := notes.Note(s.copiesNote())
	if err != nil {
		return nil, err
	}
	var copies []variant.Copy
	if list != nil {
		copies, err = listed(batch, list, who)
	}
	if copies == nil && err == nil {
		if copies, list, err = drawn(batch, s, who); err == nil {
			err = notes.SetNote(s.copiesNote(), list)
		}
	}
	if err != nil {
		return nil, fmt.Errorf("your copy of %s cannot be made: %w", s.Title, err)
	}
	return copied(s, batch, copies)
}

// listed are a learner's copies as they were kept; none where only those of another attempt were.
func listed(batch variant.Batch, list []byte, who variant.Student) ([]variant.Copy, error) {
	lines, err := variant.ReadList("the copies of "+who.ID, bytes.NewReader(list))
	if err != nil {
		return nil, err
	}
	all, err := batch.Handed("the copies of "+who.ID, lines)
	if i := slices.IndexFunc(all, func(h variant.Handout) bool { return h.Student.Attempt == who.Attempt }); err == nil && i >= 0 {
		return all[i].Copies, nil
	}
	return nil, err
}

// drawn draws a learner's copies, and lists them.
func drawn(batch variant.Batch, s *set, who variant.Student) ([]variant.Copy, []byte, error) {
	all, err := batch.Handouts(context.Background(), variant.Class{Students: []variant.Student{who}, Groups: s.Same == problems.Group}, nil)
	if err != nil {
		return nil, nil, err
	}
	return all[0].Copies, batch.List(all), nil
}

// copied are the problems of a set with the numbers of copies.
func copied(s *set, batch variant.Batch, copies []variant.Copy) ([]own, error) {
	all := make([]own, len(s.Tasks))
	for i, t := range s.Tasks {
		p, err := batch[i].At(copies[i].Draw)
		if err != nil {
			return nil, err
		}
		alone, err := problems.Alone(p.In(t.Conventions).Asking(t.Find))
		if err != nil {
			return nil, err
		}
		alone.Word, alone.Points = t.Word, t.Points
		all[i] = own{alone, copies[i].Code}
	}
	return all, nil
}
