package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"unpin/statics/notation"
	"unpin/tutor/record"
)

// An askFlag is the learner's own conventions as given with --ask: to be added to those that are remembered, or default,
// which forgets these.
type askFlag struct {
	given  bool
	forget bool
	own    notation.Preferences
}

// Set reads conventions by name and word, or default.
func (a *askFlag) Set(text string) (err error) {
	a.given, a.forget = true, text == "default"
	if !a.forget {
		a.own, err = notation.ReadPreferences(text)
	}
	return err
}

// String is empty: no conventions stand there by default.
func (a *askFlag) String() string { return "" }

// Type is how help names the value.
func (a *askFlag) Type() string { return "NAME=WORD,...|default" }

// preferences are the learner's own conventions now. What --ask changes in them is kept for later runs. Where they cannot
// be read or kept the learner is told, and those of the command line alone hold.
func (a *askFlag) preferences(cmd *cobra.Command) notation.Preferences {
	warn := func(err error) { fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err) }
	own := a.own
	store, err := record.Open()
	if err != nil {
		if a.given {
			warn(err)
		}
		return own
	}
	if !a.forget {
		kept, err := store.Preferences()
		if err != nil {
			warn(err)
			return own
		}
		own = kept.With(a.own)
	}
	if a.given {
		if err := store.Prefer(own); err != nil {
			warn(err)
		}
	}
	if len(own) > 0 {
		fmt.Fprintf(cmd.ErrOrStderr(), "Your own conventions hold: %s. They are remembered; unpin practise --ask default forgets them.\n", own)
	}
	return own
}
