package main

import (
	"fmt"
	"io"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/tutor"
)

// newPractise is the lesson.
func newPractise() *cobra.Command {
	var rung string
	var exam, plain bool
	cmd := &cobra.Command{
		Use:   "practise [PROBLEM]",
		Short: "Solve a problem step by step, every value judged.",
		Long: "Solve a problem step by step. Every value is asked for and judged exactly. hint, tell, back, sheet, help and quit\n" +
			"work at every question. Without PROBLEM, the first of the library.",
		Args: perhapsProblem,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				args = problems.Names()[:1]
				fmt.Fprintf(cmd.ErrOrStderr(), "%s is the first problem of the library; unpin practise NAME takes another: %s.\n",
					args[0], strings.Join(problems.Names()[1:], ", "))
			}
			return practise(cmd, args[0], rung, exam)
		},
	}
	cmd.Flags().Var(oneOf(&rung, tutor.Values.String(), tutor.Rungs()), "rung", "how much of each step is left to you")
	cmd.Flags().BoolVar(&exam, "exam", false, "no verdicts and no help until the end")
	cmd.Flags().BoolVar(&plain, "plain", false, "one fact a line, one answer a line, no drawing")
	return cmd
}

// practise carries the student through a problem. A frame that is not determinate is refused with the reason.
func practise(cmd *cobra.Command, word, rung string, exam bool) error {
	if word == "-" {
		return usageFault(cmd, "the answers come on standard input, so the problem cannot; name a file")
	}
	p, s, err := solved(cmd, word)
	if err != nil {
		return err
	}
	warn(cmd, p)
	if no := sound(s); no != nil {
		if _, err := io.WriteString(cmd.OutOrStdout(), worksheet.Text(p, s, worksheet.Options{})); err != nil {
			return err
		}
		return no
	}
	r, err := tutor.ParseRung(rung)
	if err != nil {
		return err
	}
	lesson, err := tutor.New(p, r, exam)
	if err != nil {
		return err
	}
	keep(cmd, lesson)
	// Every lesson is by line; --plain is honoured by being the only way there is.
	return tutor.Plain(lesson, cmd.InOrStdin(), cmd.OutOrStdout())
}

// keep has the lesson's progress kept in the user's state folder. Where it cannot be kept the student is told, and the
// lesson goes on.
func keep(cmd *cobra.Command, lesson *tutor.Lesson) {
	complain := func(err error) { fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err) }
	store, err := tutor.OpenStore()
	if err != nil {
		complain(err)
		return
	}
	lesson.Keep(store, time.Now, complain)
}
