package main

import (
	"io"
	"os"
	"slices"

	"github.com/mattn/go-isatty"
	"github.com/spf13/cobra"

	"unpin/statics/notation"
	"unpin/tutor/record"
	"unpin/tutor/screen"
)

// onTerminal reports whether a command is used at a terminal: both what it reads and what it writes are one.
func onTerminal(cmd *cobra.Command) bool {
	return isTerminal(cmd.InOrStdin()) && isTerminal(cmd.OutOrStdout()) && os.Getenv("TERM") != "dumb"
}

// isTerminal reports whether a stream is a terminal.
func isTerminal(stream any) bool {
	f, ok := stream.(*os.File)
	return ok && isatty.IsTerminal(f.Fd())
}

// show runs the lesson on the screen: one given, or those to choose, in the learner's own conventions.
func show(cmd *cobra.Command, o screen.Options, own notation.Preferences) error {
	o.Colour = os.Getenv("NO_COLOR") == "" // https://no-color.org: any value that is not empty
	o.Entries = func() []screen.Entry {
		all := slices.Concat(screen.Sets("."), screen.Library(), screen.Folder("."))
		for i, e := range all {
			if e.Problem != nil && e.Set == nil { // a set has the conventions of its course
				all[i].Problem = e.Problem.In(own.Over(e.Problem.Conventions))
			}
		}
		return all
	}
	store, err := record.Open()
	if err != nil {
		o.Notice = "warning: " + err.Error()
	}
	o.Store = store
	var in io.Reader = cmd.InOrStdin()
	return unwatched(func() error { return screen.Run(o, in, cmd.OutOrStdout()) })
}
