package main

import (
	"bufio"
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/tutor"
	"unpin/tutor/record"
	"unpin/tutor/screen"
)

// A drilling is a short exercise that is asked for in place of a lesson.
type drilling struct{ find, sketch bool }

// flags adds the flags that ask for one.
func (d *drilling) flags(cmd *cobra.Command) {
	cmd.Flags().BoolVar(&d.find, "find", false, "find the mistake in a worked solution, with new numbers, name it and mend it")
	cmd.Flags().BoolVar(&d.sketch, "sketch", false, "say what you expect before any sum, with new numbers: senses, the largest moment, shapes")
}

// asked reports whether an exercise is asked for; what has no effect on one is refused.
func (d *drilling) asked(cmd *cobra.Command) (bool, error) {
	name := map[bool]string{true: "find", false: "sketch"}[d.find]
	switch {
	case !d.find && !d.sketch:
		return false, nil
	case d.find && d.sketch:
		return false, usageFault(cmd, "--find and --sketch are two exercises: leave out one")
	}
	for _, other := range []string{"level", "exam"} {
		if cmd.Flags().Changed(other) {
			return false, usageFault(cmd, "--%s has questions of its own: leave out --%s", name, other)
		}
	}
	return true, nil
}

// make makes the exercise.
func (d *drilling) make(p *problems.Problem, now time.Time) (*tutor.Drill, error) {
	p = tutor.Fresh(p, now)
	if d.sketch {
		return tutor.Sketch(p, uint64(now.UnixNano()))
	}
	return tutor.FindTheMistake(p, "", uint64(now.UnixNano()))
}

// run runs an exercise on a problem with new numbers: on the screen, or line by line.
func (d *drilling) run(cmd *cobra.Command, o screen.Options, own notation.Preferences, args []string, screened bool) error {
	if len(args) == 0 {
		args = problems.Names()[:1]
	}
	now := time.Now()
	var made *tutor.Drill
	_, err := newLesson(cmd, args[0], func(p *problems.Problem) (*tutor.Lesson, error) {
		var err error
		made, err = d.make(p.In(own.Over(p.Conventions)), now)
		return nil, err
	})
	switch {
	case err != nil:
		return err
	case screened:
		o.Drill = made
		return show(cmd, o, own)
	}
	made.Clock = time.Now
	if store, err := record.Open(); err == nil {
		made.Keep(store, time.Now, func(err error) { fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err) })
	} else {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err)
	}
	return tutor.PlainDrill(made, bufio.NewReader(cmd.InOrStdin()), wrapped(cmd.OutOrStdout()))
}
