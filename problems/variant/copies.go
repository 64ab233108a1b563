package variant

import (
	"context"
	"fmt"
	"runtime"
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
	Long    bool // a force has more decimals than problems.Decimals allows, for nothing shorter was found
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
// first whose numbers no earlier copy has. Where none is found soon, the first that is good but for long decimals. The error
// is a *Shortage where there are not enough, or that of the context.
func (m *Maker) Copies(ctx context.Context, job Job) ([]Copy, error) {
	s := search{Maker: m, ctx: ctx, job: job, found: make([]hit, len(job.Wishes))}
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
	found []hit // for each wish the first good one

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
				s.found[i], errs[w] = s.good(s.job.Source.First(wish.Student, wish.Attempt), nil, patience)
				s.tick()
			}
		})
	}
	for i := range s.found {
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

// settle goes through the wishes in order and notes which numbers are taken. Copies that are to be distinct are looked for far
// before one with long decimals is taken, until once there was none.
func (s *search) settle() ([]Copy, error) {
	taken := map[string]bool{}
	far := farPatience
	copies := make([]Copy, 0, len(s.found))
	for i, h := range s.found {
		wish := s.job.Wishes[i]
		if s.job.Distinct && (h.long || taken[s.key(h.draw)]) {
			var err error
			if h, err = s.good(s.job.Source.First(wish.Student, wish.Attempt), taken, far); err != nil {
				return nil, err
			}
			if h.long {
				far = patience
			}
		}
		key := s.key(h.draw)
		copies = append(copies, Copy{wish.Student, wish.Attempt, h.draw, s.job.Source.Code(h.draw), taken[key], h.long})
		taken[key] = true
	}
	return copies, nil
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
