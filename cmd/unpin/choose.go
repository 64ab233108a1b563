package main

import (
	"bufio"
	"fmt"
	"io"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/tutor"
	"unpin/tutor/screen"
)

// A picked problem is one of the library, or of a set.
type picked struct {
	word string         // the name, or the file of the set; empty where the student leaves
	task *problems.Task // of the set
}

// choose lists the problems of the library and those of the sets of a folder by line, and asks for one.
func choose(in *bufio.Reader, out io.Writer, folder string) (picked, error) {
	var all []tutor.Choice
	var means []picked
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		all, means = append(all, tutor.Choice{Name: name, Problem: p}), append(means, picked{word: name})
	}
	for _, path := range screen.SetFiles(folder) {
		set, err := problems.LoadSet(path)
		if err != nil {
			continue // unpin inspect says what is wrong with it
		}
		for i, t := range set.Tasks {
			all = append(all, tutor.Choice{Name: set.ID + "/" + t.Name, Problem: t.Problem})
			means = append(means, picked{path, &set.Tasks[i]})
		}
	}
	at, err := tutor.ChooseByLine(in, out, all)
	if at < 0 {
		return picked{}, err
	}
	return means[at], nil
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
