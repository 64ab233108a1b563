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

// A sitting is what is asked of an exam over a set.
type sitting struct {
	level, paper string
	own          notation.Preferences
	screen       screen.Options
	screened     bool
}

// run sits the exam, on the screen or line by line, and writes the paper once it is handed in.
func (a sitting) run(cmd *cobra.Command, word string, in *bufio.Reader) error {
	s, err := a.begin(cmd, word)
	if err != nil {
		return err
	}
	if a.screened {
		a.screen.Sitting, a.screen.Level = s, s.Level
		err = show(cmd, a.screen, a.own)
	} else {
		err = tutor.SitPlain(s, in, wrapped(cmd.OutOrStdout()))
	}
	if err != nil || a.paper == "" {
		return err
	}
	text, over := tutor.PaperOfSitting(s)
	return deliverPaper(cmd, text, over, a.paper)
}

// begin begins the exam over a set as the set says, or takes it up. The level is another one only where that is asked for.
func (a sitting) begin(cmd *cobra.Command, word string) (*tutor.Sitting, error) {
	m, err := meaningOf(word, cmd.InOrStdin())
	if err != nil {
		return nil, err
	}
	m.warn(cmd)
	rules, err := tutor.RulesOf(m.set)
	if err == nil && cmd.Flags().Changed("level") {
		rules.Level, err = tutor.ParseLevel(a.level)
	}
	if err != nil {
		return nil, err
	}
	scheme, err := m.scheme(word)
	if err != nil {
		return nil, err
	}
	rules.Scheme, rules.Practice = (*problems.Scheme)(scheme), true
	complain := func(err error) { fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err) }
	store, err := record.Open()
	if err != nil {
		complain(err)
	}
	return tutor.Sit(rules, store, time.Now, complain)
}
