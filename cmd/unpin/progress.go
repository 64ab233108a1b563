package main

import (
	"fmt"
	"time"

	"github.com/spf13/cobra"
)

// patience is how long a work may take before its progress is shown, and between two lines of it.
const patience = 200 * time.Millisecond

// progress shows on a terminal how far a long work is: "copies found: 120 of 1000" in a line that is written over, and taken
// away at the end. The function is called with how much is done.
func progress(cmd *cobra.Command, what string, all int) func(done int) {
	if !isTerminal(cmd.ErrOrStderr()) {
		return nil
	}
	shown, last := false, time.Now()
	return func(done int) {
		switch now := time.Now(); {
		case done >= all && shown:
			fmt.Fprintf(cmd.ErrOrStderr(), "\r%60s\r", "")
		case done < all && now.Sub(last) >= patience:
			fmt.Fprintf(cmd.ErrOrStderr(), "\r%s: %d of %d ", what, done, all)
			shown, last = true, now
		}
	}
}
