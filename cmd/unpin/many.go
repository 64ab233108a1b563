package main

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"slices"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
)

// many are the problems that the words of a command mean, with what came of them so far.
type many struct {
	cmd     *cobra.Command
	words   []string // the problem files of a folder in place of it
	faults  []error  // of what cannot be read or solved
	refused bool     // a frame is not determinate

	texts map[string][]byte // of files of folders, as far as they were read to see what they are
	room  int               // for bytes of further ones

	saySet func(place int, s *problems.Set) string // what there is to say of a set, where the command takes sets
}

// named are the problems of some words; a folder without any is a fault. The sets of a folder are passed over.
func named(cmd *cobra.Command, words []string) *many {
	all := &many{cmd: cmd, texts: map[string][]byte{}, room: 16 << 20}
	all.gather(words, all.isSet)
	return all
}

// isSet reports whether a file of a folder is a set. If not, its text is kept as long as there is room, so that it is not read twice.
func (m *many) isSet(path string) bool {
	text, set := problems.Peek(path)
	if m.room -= len(text); text != nil && !set && m.room > 0 {
		m.texts[path] = text
	}
	return set
}

// gathered are the problems and sets of some words; a folder without any is a fault. Files of a folder are left out as told.
func gathered(cmd *cobra.Command, words []string, leftOut func(path string) bool) *many {
	all := &many{cmd: cmd}
	all.gather(words, leftOut)
	return all
}

// gather adds the words to those of m, the files of a folder in place of it.
func (m *many) gather(words []string, leftOut func(path string) bool) {
	for _, word := range words {
		entries, err := os.ReadDir(word)
		if err != nil || fromLibrary(word) {
			m.words = append(m.words, word)
			continue
		}
		found := slices.DeleteFunc(problemFiles(word, entries), leftOut)
		if len(found) == 0 {
			m.faults = append(m.faults, errors.New("unpin: the folder "+word+" holds no problem files (.yaml or .yml)"))
		}
		m.words = append(m.words, found...)
	}
}

// problemEndings are those of problem files. JSON is read too, where it is named, but most JSON is something else.
var problemEndings = []string{".yaml", ".yml"}

// problemFiles are the paths of the problem files of a folder, in the order of its entries, which is that of their names.
func problemFiles(folder string, entries []os.DirEntry) []string {
	var paths []string
	for _, e := range entries {
		if !e.IsDir() && slices.Contains(problemEndings, filepath.Ext(e.Name())) {
			paths = append(paths, filepath.Join(folder, e.Name()))
		}
	}
	return paths
}

// solve solves all problems, says of each what there is to say, with its place in the order, and hands it to take in that
// order. The saying is done by several at a time, the taking by one. What cannot be solved is kept for worst; the error is
// one of take, which ends the work.
func (m *many) solve(say func(place int, one worksheet.Solved) string, take func(one worksheet.Solved, said string) error) error {
	type answer struct {
		worksheet.Solved
		said string
		set  bool
		err  error
	}
	work := func(i int) (a answer) {
		means, err := m.meant(m.words[i])
		switch a.err = err; {
		case err != nil:
			return a
		case means.set != nil:
			a.set, a.said = true, m.saySet(i, means.set)
			return a
		}
		a.Problem = means.problem
		if a.Solution, a.err = statics.Solve(a.Problem.Frame); a.err == nil {
			a.said = say(i, a.Solved)
		}
		return a
	}
	alone := func(i int) bool { return m.words[i] == "-" } // standard input has an order of its own
	if len(m.words) > 1 {
		collectSeldom()
	}
	return inOrder(len(m.words), alone, work, func(a answer) error {
		if a.err != nil {
			m.faults = append(m.faults, a.err)
			return nil
		}
		m.refused = m.refused || !a.set && sound(a.Solution) != nil
		return take(a.Solved, a.said)
	})
}

// meant is the problem that a word means, or the set, where the command takes sets.
func (m *many) meant(word string) (means meaning, err error) {
	if text, known := m.texts[word]; known {
		means.problem, err = problems.Read(word, text)
		return means, err
	}
	if m.saySet != nil {
		return meaningOf(word, m.cmd.InOrStdin())
	}
	means.problem, err = find(word, m.cmd.InOrStdin())
	return means, err
}

// worst is the worst of what came of the problems: all faults, or that a frame is refused.
func (m *many) worst() error {
	if len(m.faults) == 0 && m.refused {
		return errNo
	}
	return errors.Join(m.faults...)
}

// A finished is what came of a job, or the value with which it panicked.
type finished[R any] struct {
	result R
	fault  any
}

// A job is one of inOrder's, with where its result goes.
type job[R any] struct {
	number int
	done   chan<- finished[R]
}

// inOrder does the jobs 0 to n-1 on all processors and hands what comes of them to take in their order, each as soon as all
// before it are taken. Jobs that are alone are done one at a time in their order. So that memory is bounded whatever n is, a
// job is not begun before all but the last few are taken. An error of take ends it; a panic of a job is one of the caller.
func inOrder[R any](n int, alone func(i int) bool, work func(i int) R, take func(R) error) error {
	if n == 1 {
		return finish(work, 0).taken(take)
	}
	begun := make(chan chan finished[R], 2*runtime.GOMAXPROCS(0))
	ended := make(chan struct{})
	defer close(ended)
	jobs := workers(work)
	go func() {
		defer close(begun)
		defer close(jobs)
		for i := range n {
			one := make(chan finished[R], 1)
			select {
			case begun <- one:
			case <-ended:
				return
			}
			if alone(i) {
				one <- finish(work, i)
				continue
			}
			select {
			case jobs <- job[R]{i, one}:
			case <-ended:
				return
			}
		}
	}()
	for one := range begun {
		if err := (<-one).taken(take); err != nil {
			return err
		}
	}
	return nil
}

// workers do the jobs that are sent to them, until no more can come. They stay the same, since a new goroutine begins with a
// small stack, which each job would have to make larger again.
func workers[R any](work func(i int) R) chan<- job[R] {
	jobs := make(chan job[R])
	for range runtime.GOMAXPROCS(0) {
		go func() {
			for j := range jobs {
				j.done <- finish(work, j.number)
			}
		}()
	}
	return jobs
}

// taken hands the result on, or panics as its job did.
func (f finished[R]) taken(take func(R) error) error {
	if f.fault != nil {
		panic(f.fault)
	}
	return take(f.result)
}

// finish does a job and catches its panic.
func finish[R any](work func(i int) R, i int) (f finished[R]) {
	defer func() { f.fault = recover() }()
	f.result = work(i)
	return f
}
