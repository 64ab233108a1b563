package variant

import (
	"context"
	"fmt"
	"runtime"
	"slices"
	"sync"

	"unpin/problems"
)

// A Copy is the numbers that one student has.
type Copy struct {
	Student string
	Attempt int
	Draw    Draw
	Code    string
	Equal   bool // an earlier copy of the list has the same numbers
}

// A Wish is a copy that is wanted.
type Wish struct {
	Student string
	Attempt int // from 1
}

// Numbered are wishes for n copies of no one in particular, which are numbered from 1.
func Numbered(n int) []Wish {
	all := make([]Wish, n)
	for i := range all {
		all[i] = Wish{fmt.Sprint(i + 1), 1}
	}
	return all
}

// A Job is copies to be made.
type Job struct {
	Source   Source
	Wishes   []Wish
	Distinct bool           // no two copies may have the same numbers
	Progress func(done int) // is called as copies are found, if it is not nil, from one goroutine at a time
}

// Copies finds a good copy for each wish: the first good draw from the wish's own on, and if copies are to be distinct the
// first whose numbers no earlier copy has. The error is a *Shortage where there are not enough good ones, or that of the context.
func (m *Maker) Copies(ctx context.Context, job Job) ([]Copy, error) {
	s := search{Maker: m, ctx: ctx, job: job, draws: make([]Draw, len(job.Wishes))}
	if err := s.firsts(); err != nil {
		return nil, err
	}
	return s.settle()
}

// search is the work of finding copies.
type search struct {
	*Maker
	ctx   context.Context
	job   Job
	draws []Draw // for each wish the first good one

	lock sync.Mutex
	done int
}

// firsts finds the first good draw of each wish, whatever others have, on all processors.
func (s *search) firsts() error {
	next := make(chan int)
	errs := make([]error, runtime.GOMAXPROCS(0))
	var workers sync.WaitGroup
	for w := range errs {
		workers.Go(func() {
			for i := range next {
				if errs[w] != nil {
					continue
				}
				wish := s.job.Wishes[i]
				s.draws[i], errs[w] = s.good(s.job.Source.First(wish.Student, wish.Attempt), nil)
				s.tick()
			}
		})
	}
	for i := range s.draws {
		next <- i
	}
	close(next)
	workers.Wait()
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

// tick counts a copy that was found.
func (s *search) tick() {
	s.lock.Lock()
	defer s.lock.Unlock()
	s.done++
	if s.job.Progress != nil {
		s.job.Progress(s.done)
	}
}

// settle goes through the wishes in order and notes which numbers are taken.
func (s *search) settle() ([]Copy, error) {
	taken := map[string]bool{}
	copies := make([]Copy, 0, len(s.draws))
	for i, d := range s.draws {
		if s.job.Distinct {
			other, err := s.good(d, taken)
			if err != nil {
				return nil, err
			}
			d = other
		}
		key := s.key(d)
		wish := s.job.Wishes[i]
		copies = append(copies, Copy{wish.Student, wish.Attempt, d, s.job.Source.Code(d), taken[key]})
		taken[key] = true
	}
	return copies, nil
}

// key stands for the numbers of a draw.
func (m *Maker) key(d Draw) string { return fmt.Sprint(picks(m.changes, d)) }

// The most steps from a draw to a good one: where the choices are few, so many for each of them that all are met; where they
// are many, so many at all.
const (
	fewChoices   = 20_000
	stepsEach    = 60
	mostUnlucky  = 20_000
	leastUnlucky = 2_000
)

// good is the first good draw from d on whose numbers are not taken.
func (s *search) good(d Draw, taken map[string]bool) (Draw, error) {
	choices := combinations(s.changes, fewChoices)
	steps := max(leastUnlucky, choices*stepsEach)
	if choices == fewChoices {
		steps = mostUnlucky + len(taken)
	}
	if len(taken) < choices {
		for range steps {
			if s.ctx.Err() != nil {
				return 0, context.Cause(s.ctx)
			}
			if !taken[s.key(d)] && s.Judge(d) == Good {
				return d, nil
			}
			d = d.Next()
		}
	}
	return 0, s.shortage()
}

// A Shortage is the error of too few good copies.
type Shortage struct {
	Wanted int
	Good   int    // good ones that there are, or that were found
	Judged int    // how many were looked at
	All    bool   // these are all that there are
	Most   Reason // what excludes most
	Times  int    // how many it excludes
}

// Error tells how many there are, and what excludes most.
func (e *Shortage) Error() string {
	text := fmt.Sprintf("there are only %d good copies among the %d that its numbers allow", e.Good, e.Judged)
	if !e.All {
		text = fmt.Sprintf("only %d good copies were found among %d that were tried", e.Good, e.Judged)
	}
	text += fmt.Sprintf(", and %d are wanted", e.Wanted)
	if e.Times > 0 {
		text += fmt.Sprintf(".\n%d are excluded because %s", e.Times, e.Most)
	}
	return text
}

// shortage judges all copies, where they are few, and tells what came of it.
func (s *search) shortage() error {
	all := combinations(s.changes, fewChoices) < fewChoices
	if all {
		if err := s.judgeAll(); err != nil {
			return err
		}
	}
	s.Maker.lock.Lock()
	defer s.Maker.lock.Unlock()
	tally := map[Reason]int{}
	for _, reason := range s.judged {
		tally[reason]++
	}
	e := &Shortage{Wanted: len(s.job.Wishes), Good: tally[Good], Judged: len(s.judged), All: all}
	for reason, times := range tally {
		if reason != Good && (times > e.Times || times == e.Times && reason < e.Most) {
			e.Most, e.Times = reason, times
		}
	}
	return e
}

// judgeAll judges every combination of choices.
func (s *search) judgeAll() error {
	s.everyChoice(func(choices []int) bool {
		s.judge(choices)
		return s.ctx.Err() == nil
	})
	return context.Cause(s.ctx)
}

// everyChoice goes through all combinations of choices, until look says no.
func (m *Maker) everyChoice(look func(choices []int) bool) {
	choices := make([]int, len(m.changes))
	for look(slices.Clone(choices)) {
		i := 0
		for ; i < len(choices); i++ {
			if choices[i]++; choices[i] < len(m.changes[i].Choices) {
				break
			}
			choices[i] = 0
		}
		if i == len(choices) {
			return
		}
	}
}

// Numbers lists what the changed numbers of a copy are, in the order of Changes.
func (m *Maker) Numbers(d Draw) []string {
	all := make([]string, len(m.changes))
	for i, choice := range picks(m.changes, d) {
		all[i] = m.changes[i].Choices[choice]
	}
	return all
}

// Problem is the problem that copies are made of.
func (m *Maker) Problem() *problems.Problem { return m.problem }
