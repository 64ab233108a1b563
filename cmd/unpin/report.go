package main

import (
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"unpin/tutor/marking"
)

// newReport tells what a class got wrong.
func newReport() *cobra.Command {
	var format, file string
	var anonymous bool
	cmd := &cobra.Command{
		Use:   "report MARKS",
		Short: "Say what a class got wrong.",
		Long: "Read marks as unpin mark --as csv writes them, and say what the class got wrong: what to teach again; the commonest\n" +
			"mistakes, each with a value of the class and the sum that it violates, written out for the board; of each step, which\n" +
			"gives a force or a diagram along a member, and of each value how many have it right, carried on from before, or begin\n" +
			"to go wrong there, and of exams how many have the body, the method and the terms right; a map of mistakes by steps;\n" +
			"and from 50 papers on, values that most good papers have alike against the true one. With --anonymous no student is\n" +
			"named, and nothing is told of fewer than five papers. The HTML page needs no other file. The exit code is 2 if MARKS\n" +
			"cannot be read.",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) != 1 {
				return usageFault(cmd, "report takes one file of marks, as unpin mark --as csv writes it, not %d words", len(args))
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			if err := notOver(cmd, file, args); err != nil {
				return err
			}
			r, err := readReport(cmd, args[0], anonymous)
			if err != nil {
				return err
			}
			document, err := map[string]func() ([]byte, error){
				"text": func() ([]byte, error) { return []byte(r.Text()), nil },
				"csv":  func() ([]byte, error) { return r.CSV(), nil },
				"html": func() ([]byte, error) { return []byte(r.HTML()), nil },
				"pdf":  r.PDF,
			}[format]()
			if err != nil {
				return err
			}
			if format == "pdf" {
				return deliver(document, file, cmd.OutOrStdout())
			}
			out := cmd.OutOrStdout()
			if format == "text" {
				out = wrapped(out)
			}
			return deliver(document, file, visibleWriter{out})
		},
	}
	cmd.Flags().Var(oneOf(&format, "text", []string{"text", "html", "pdf", "csv"}), "as", "the format of the report")
	cmd.Flags().BoolVar(&anonymous, "anonymous", false, "name no student, and tell nothing of fewer than five papers")
	cmd.Flags().StringVarP(&file, "output", "o", "", "write to `FILE`, not to standard output")
	return cmd
}

// readReport reads marks from a file or, as -, from standard input.
func readReport(cmd *cobra.Command, word string, anonymous bool) (*marking.Report, error) {
	if word == "-" {
		return marking.ReadReport("standard input", cmd.InOrStdin(), anonymous)
	}
	in, err := os.Open(word)
	if err != nil {
		return nil, fmt.Errorf("unpin: %s cannot be read: %w", word, plainReason(err))
	}
	defer in.Close()
	return marking.ReadReport(word, in, anonymous)
}
