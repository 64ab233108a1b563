package main

import (
	"bufio"
	"fmt"
	"io"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/tutor"
)

// choose lists the problems of the library by line and asks for one. It gives "" where the student leaves.
func choose(in *bufio.Reader, out io.Writer) (string, error) {
	var all []tutor.Choice
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		all = append(all, tutor.Choice{Name: name, Problem: p})
	}
	at, err := tutor.ChooseByLine(in, out, all)
	if at < 0 {
		return "", err
	}
	return all[at].Name, nil
}

// chooseTask lists the problems of a set and asks for one; nil where the student leaves.
func chooseTask(set *problems.Set, in *bufio.Reader, out io.Writer) (*problems.Task, error) {
	fmt.Fprintln(out, notation.ASCII(notation.VisibleLines(set.Title)))
	var all []tutor.Choice
	for _, t := range set.Tasks {
		all = append(all, tutor.Choice{Name: t.Name, Problem: t.Problem})
	}
	at, err := tutor.ChooseByLine(in, out, all)
	if at < 0 {
		return nil, err
	}
	return &set.Tasks[at], nil
}
