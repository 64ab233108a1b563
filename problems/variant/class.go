package variant

import (
	"context"
	"fmt"

	"unpin/problems"
)

// A Line is one problem of a paper, with what makes its copies and what their draws are taken from.
type Line struct {
	*Maker
	Source Source
}

// A Batch is the problems of a paper, in their order.
type Batch []Line

// OfSet is the batch of a set's problems. The error is that of New, with the problem's name.
func OfSet(s *problems.Set) (Batch, error) {
	var b Batch
	for i, t := range s.Tasks {
		m, err := New(t.Problem)
		if err != nil {
			return nil, fmt.Errorf("%s has no copies: %w", t.Name, err)
		}
		b = append(b, Line{m, Source{Set: s.ID, Seed: s.Seed, Place: i + 1}})
	}
	return b, nil
}

// OfProblems is a batch of problems by themselves: each has copies of its own, whatever stands beside it.
func OfProblems(all []*problems.Problem, seed string) (Batch, error) {
	var b Batch
	for _, p := range all {
		m, err := New(p)
		if err != nil {
			return nil, fmt.Errorf("%s has no copies: %w", p.Name, err)
		}
		b = append(b, Line{m, Source{Set: p.Name, Seed: seed, Place: 1}})
	}
	return b, nil
}

// Decode reads a code of one of the batch's problems: its index, and the draw.
func (b Batch) Decode(code string) (line int, d Draw, err error) {
	for i, l := range b {
		place, draw, errHere := l.Source.Decode(code)
		if errHere == nil && place == l.Source.Place {
			return i, draw, nil
		}
		if err == nil && errHere != nil {
			err = errHere
		}
	}
	if err == nil {
		err = fmt.Errorf("the code %q is of another place than these problems have", code)
	}
	return 0, 0, err
}

// A Class is who gets copies.
type Class struct {
	Students []Student
	Groups   bool // all of a group get the same numbers, and so does nobody else
	Distinct bool // no two get the same numbers
}

// Nobody is a class of n copies of no one in particular, which are numbered from 1 and all distinct.
func Nobody(n int) Class {
	c := Class{Distinct: true}
	for i := range n {
		c.Students = append(c.Students, Student{ID: fmt.Sprint(i + 1), Attempt: 1})
	}
	return c
}

// wishes are the copies that the class needs of each problem, and for each student which of them is theirs.
func (c Class) wishes() (all []Wish, whose []int) {
	places := map[Wish]int{}
	for _, s := range c.Students {
		w := Wish{s.ID, s.Attempt}
		if c.Groups && s.Group != "" {
			w.Student = s.Group
		}
		at, there := places[w]
		if !there {
			at = len(all)
			places[w] = at
			all = append(all, w)
		}
		whose = append(whose, at)
	}
	return all, whose
}

// A Handout is what one student gets: a copy of each problem.
type Handout struct {
	Student Student
	Copies  []Copy // in the order of the batch; the student of each is Student
}

// Handouts finds the copies of a class. Progress is called as copies are found, if it is not nil, with how many of how many
// there are. The error of too few good copies names the problem and wraps a *Shortage.
func (b Batch) Handouts(ctx context.Context, c Class, progress func(done, all int)) ([]Handout, error) {
	all := make([]Handout, len(c.Students))
	for i, s := range c.Students {
		all[i] = Handout{Student: s}
	}
	wishes, whose := c.wishes()
	for at, l := range b {
		job := Job{Source: l.Source, Wishes: wishes, Distinct: c.Distinct}
		if progress != nil {
			job.Progress = func(done int) { progress(at*len(wishes)+done, len(b)*len(wishes)) }
		}
		copies, err := l.Copies(ctx, job)
		if err != nil {
			return nil, fmt.Errorf("of %s %w", l.problem.Name, err)
		}
		for i, s := range c.Students {
			own := copies[whose[i]]
			own.Student, own.Attempt = s.ID, s.Attempt
			all[i].Copies = append(all[i].Copies, own)
		}
	}
	return all, nil
}

// Equal is how many copies have numbers that an earlier one has, each group as one.
func (b Batch) Equal(c Class, all []Handout) int {
	n := 0
	_, whose := c.wishes()
	counted := map[int]bool{}
	for i, h := range all {
		if counted[whose[i]] {
			continue
		}
		counted[whose[i]] = true
		for _, own := range h.Copies {
			if own.Equal {
				n++
			}
		}
	}
	return n
}
