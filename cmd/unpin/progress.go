package main

import (
	"fmt"
	"io"
	"strings"
	"time"

	"github.com/spf13/cobra"
)

// patience is how long a work may take before its progress is shown, and between two pictures of it.
const patience = 200 * time.Millisecond

// barWidth is how many cells a whole bar has.
const barWidth = 30

// progress shows on a terminal how far a long work is: "copies found [###.........] 120 of 480" in a line that is written over,
// and taken away at the end. The function is called with how much is done; there is none where nobody watches.
func progress(cmd *cobra.Command, what string, all int) func(done int) {
	errs := underneath(cmd.ErrOrStderr())
	if !isTerminal(errs) {
		return nil
	}
	shown, last := false, time.Now()
	return func(done int) {
		switch now := time.Now(); {
		case done >= all && shown:
			fmt.Fprintf(errs, "\r%78s\r", "")
		case done < all && now.Sub(last) >= patience:
			full := barWidth * done / all
			fmt.Fprintf(errs, "\r%s [%s%s] %d of %d ", what, strings.Repeat("#", full), strings.Repeat(".", barWidth-full), done, all)
			shown, last = true, now
		}
	}
}

// underneath is a stream without what makes texts visible, for one's own words that steer the cursor.
func underneath(stream io.Writer) io.Writer {
	if v, ok := stream.(visibleWriter); ok {
		return v.to
	}
	return stream
}
