package main

import (
	"bytes"
	"fmt"
	"io"
	"path/filepath"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/tutor/marking"
)

// A meaning is what a word of the command line stands for: a set, or else a problem.
type meaning struct {
	set     *problems.Set
	problem *problems.Problem
}

// meaningOf reads the set or the problem that a word means. A file is a set if it lists problems.
func meaningOf(word string, in io.Reader) (m meaning, err error) {
	if word == "-" {
		data, errRead := io.ReadAll(io.LimitReader(in, mostOfFile))
		if errRead != nil {
			return m, fmt.Errorf("unpin: standard input cannot be read: %w", plainReason(errRead))
		}
		if problems.Holds(data) {
			m.set, err = problems.ReadSet("standard input", data, problems.Beside("."))
			return m, err
		}
		in = bytes.NewReader(data)
	}
	if isSet(word) {
		m.set, err = problems.LoadSet(word)
		return m, err
	}
	m.problem, err = find(word, in)
	return m, err
}

// mostOfFile is more than a problem or a set can have.
const mostOfFile = 2 << 20

// isSet reports whether a word means a file that is a set.
func isSet(word string) bool { return word != "-" && !fromLibrary(word) && problems.IsSet(word) }

// warn tells what is legal in it but likely a mistake.
func (m meaning) warn(cmd *cobra.Command) {
	if m.set == nil {
		warn(cmd, m.problem)
		return
	}
	for _, w := range m.set.Warnings {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s\n", w)
	}
}

// problems are those that it names, or itself.
func (m meaning) problems() []*problems.Problem {
	if m.set == nil {
		return []*problems.Problem{m.problem}
	}
	var all []*problems.Problem
	for _, t := range m.set.Tasks {
		all = append(all, t.Problem)
	}
	return all
}

// scheme is what the set of a word is marked by, or the scheme that holds by default.
func (m meaning) scheme(word string) (*marking.Scheme, error) {
	if m.set == nil || m.set.Scheme == "" {
		return marking.DefaultScheme(), nil
	}
	path := m.set.Scheme
	if !filepath.IsAbs(path) {
		path = filepath.Join(filepath.Dir(word), path)
	}
	s, err := problems.LoadScheme(path)
	return (*marking.Scheme)(s), err
}

// batch makes copies of it, with the seed if it is a problem.
func (m meaning) batch(seed string) (variant.Batch, error) {
	if m.set != nil {
		return variant.OfSet(m.set)
	}
	return variant.OfProblems([]*problems.Problem{m.problem}, seed)
}

// warnTexts tells of numbers in texts that stay what they are in all copies.
func warnTexts(cmd *cobra.Command, all []*problems.Problem) {
	for _, p := range all {
		where := ""
		if len(all) > 1 {
			where = " of " + p.Name
		}
		if n := p.PlainNumber(); n != "" {
			fmt.Fprintf(cmd.ErrOrStderr(), "warning: The text%s has the number %s, which is the same in all copies; where it should change, write {h} for the given number h.\n", where, n)
		}
	}
}

// readsOf are the files that a word makes the program read: itself, and of a set the files of its problems.
func readsOf(word string, m meaning) []string {
	all := []string{word}
	if m.set == nil {
		return all
	}
	for _, t := range m.set.Tasks {
		if path := t.Word; filepath.IsAbs(path) || word == "-" {
			all = append(all, path)
		} else {
			all = append(all, filepath.Join(filepath.Dir(word), path))
		}
	}
	return all
}
