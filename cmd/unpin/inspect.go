package main

import (
	"errors"
	"io"

	"github.com/spf13/cobra"

	"unpin/problems/worksheet"
	"unpin/statics/notation"
)

// newInspect tells what kind of frame each problem is.
func newInspect() *cobra.Command {
	var format string
	cmd := &cobra.Command{
		Use:   "inspect PROBLEM...",
		Short: "Count unknowns and sums, and say what is wrong.",
		Long: "Count unknowns and sums and say whether the frame is determinate; if not, which forces are too many or how it\n" +
			"moves, why, and what would mend it. As json one object for each problem, one after the other. The exit code is 1\n" +
			"if a frame is not determinate, 2 if a problem cannot be read.",
		Args: someProblems,
		RunE: func(cmd *cobra.Command, words []string) error {
			var faults []error
			refused := false
			for i, word := range words {
				err := inspect(cmd, word, format, i > 0)
				switch {
				case errors.Is(err, errNo):
					refused = true
				case err != nil:
					faults = append(faults, err)
				}
			}
			if len(faults) == 0 && refused {
				return errNo
			}
			return errors.Join(faults...)
		},
	}
	cmd.Flags().Var(oneOf(&format, "text", []string{"text", "json"}), "as", "the format")
	return cmd
}

// inspect writes what there is to say about one problem, a text after a blank line where others came before.
func inspect(cmd *cobra.Command, word, format string, more bool) error {
	p, s, err := solved(cmd, word)
	if err != nil {
		return err
	}
	text := ""
	switch {
	case format == "json":
		text = string(worksheet.InspectJSON(p, s))
	case more:
		text = "\n" + worksheet.Inspect(p, s, worksheet.Options{})
	default:
		text = worksheet.Inspect(p, s, worksheet.Options{})
	}
	if _, err := io.WriteString(cmd.OutOrStdout(), notation.VisibleLines(text)); err != nil {
		return err
	}
	return sound(s)
}
