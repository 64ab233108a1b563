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
type drilling struct{ find, sketch, today bool }

// flags adds the flags that ask for one.
func (d *drilling) flags(cmd *cobra.Command) {
	cmd.Flags().BoolVar(&d.find, "find", false, "find the mistake in a worked solution, with new numbers, name it and mend it")
	cmd.Flags().BoolVar(&d.today, "today", false, "about ten minutes of short pieces, of what is due and wanting by what you have done")
	cmd.Flags().BoolVar(&d.sketch, "sketch", false, "say what you expect before any sum, with new numbers: senses, the largest moment, shapes")
}

// asked reports whether an exercise is asked for; what has no effect on one is refused.
func (d *drilling) asked(cmd *cobra.Command) (bool, error) {
	var names []string
	for _, x := range []struct {
		wanted bool
		name   string
	}{{d.find, "find"}, {d.sketch, "sketch"}, {d.today, "today"}} {
		if x.wanted {
			names = append(names, x.name)
		}
	}
	switch {
	case len(names) == 0:
		return false, nil
	case len(names) > 1:
		return false, usageFault(cmd, "--%s and --%s are two exercises: leave out one", names[0], names[1])
	case !d.today && cmd.Flags().NArg() == 0:
		return false, usageFault(cmd, "--%s goes with a problem, as in unpin practise jetty-deck --%s; --today picks problems itself", names[0], names[0])
	case d.today && cmd.Flags().NArg() > 0:
		return false, usageFault(cmd, "--today picks the problems itself: leave out %s", cmd.Flags().Arg(0))
	}
	for _, other := range []string{"level", "exam"} {
		if cmd.Flags().Changed(other) {
			return false, usageFault(cmd, "--%s has questions of its own: leave out --%s", names[0], other)
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
	if d.today {
		return d.runToday(cmd, o, own, screened)
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
	keepPiece(cmd, tutor.Piece{Drill: made})
	return tutor.PlainDrill(made, bufio.NewReader(cmd.InOrStdin()), wrapped(cmd.OutOrStdout()))
}

// runToday runs about ten minutes of practice: of the library and the folder's problems, by what was done.
func (d *drilling) runToday(cmd *cobra.Command, o screen.Options, own notation.Preferences, screened bool) error {
	var done []record.Record
	store, err := record.Open()
	if err == nil {
		var past *record.Past
		if past, err = store.Past(); err == nil {
			done, err = past.Of()
		}
	}
	if err != nil {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err)
	}
	var at []*problems.Problem
	for _, e := range append(screen.Library(), screen.Folder(".")...) {
		if e.Problem != nil {
			at = append(at, e.Problem.In(own.Over(e.Problem.Conventions)))
		}
	}
	if said := tutor.ClockSays(done, time.Now()); said != "" && !screened {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s\n", said)
	}
	o.Portion = tutor.Portion(done, time.Now(), at)
	if screened {
		return show(cmd, o, own)
	}
	begin := func(o tutor.Offer) (tutor.Piece, error) {
		piece, err := o.Begin(time.Now())
		if err == nil {
			keepPiece(cmd, piece)
		}
		return piece, err
	}
	return tutor.PlainPortion(o.Portion, begin, cmd.InOrStdin(), wrapped(cmd.OutOrStdout()))
}

// keepPiece has what is done in a piece kept, in the user's state folder.
func keepPiece(cmd *cobra.Command, piece tutor.Piece) {
	if piece.Lesson != nil {
		keep(cmd, piece.Lesson)
		piece.Lesson.Clock = time.Now
		return
	}
	complain := func(err error) { fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err) }
	piece.Drill.Clock = time.Now
	store, err := record.Open()
	if err != nil {
		complain(err)
		return
	}
	piece.Drill.Keep(store, time.Now, complain)
}
