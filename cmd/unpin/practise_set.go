package main

import (
	"bufio"
	"fmt"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/tutor"
)

// fromSet has one of the problems of a set chosen: by its place or its name, line by line, or, where there is no terminal, the
// first. The level is that of the set where nothing else is asked for. There is no task where the word means no set, or where the
// student leaves, which left tells.
func fromSet(cmd *cobra.Command, args []string, chosen *problems.Task, in *bufio.Reader, level *tutor.Level) (task *problems.Task, left bool, err error) {
	if len(args) == 0 || !isSet(args[0]) {
		return nil, false, nil
	}
	m, err := meaningOf(args[0], cmd.InOrStdin())
	if err != nil {
		return nil, false, err
	}
	m.warn(cmd)
	if word := m.set.Level; word != "" && !cmd.Flags().Changed("level") {
		if *level, err = tutor.ParseLevel(word); err != nil {
			return nil, false, err
		}
	}
	tasks := m.set.Tasks
	switch {
	case chosen != nil:
		return chosen, false, nil
	case len(tasks) == 1:
	case onTerminal(cmd):
		task, err = chooseTask(m.set, in, wrapped(cmd.OutOrStdout()))
		return task, task == nil, err
	default:
		var others []string
		for _, t := range tasks[1:] {
			others = append(others, t.Name)
		}
		fmt.Fprintf(cmd.ErrOrStderr(), "%s is the first problem of %s, whose others are %s.\n", tasks[0].Name, m.set.ID, notation.List(others))
	}
	return &tasks[0], false, nil
}

// lessonFor begins a lesson on a problem of a set, in the conventions of its course, or else on the problem that a word means, in the
// student's own.
func lessonFor(cmd *cobra.Command, word string, task *problems.Task, own notation.Preferences, begin func(*problems.Problem) (*tutor.Lesson, error)) (*tutor.Lesson, error) {
	if task != nil {
		return begin(task.Problem)
	}
	return newLesson(cmd, word, func(p *problems.Problem) (*tutor.Lesson, error) { return begin(p.In(own.Over(p.Conventions))) })
}
