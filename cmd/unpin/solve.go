package main

import (
	"path/filepath"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
)

// formats are the ways to write a solution.
var formats = []string{"text", "markdown", "json", "svg"}

// endings are those of files that tell the format.
var endings = map[string]string{".txt": "text", ".md": "markdown", ".json": "json", ".svg": "svg"}

// newSolve writes the whole solution.
func newSolve() *cobra.Command {
	var format, file string
	cmd := &cobra.Command{
		Use:   "solve PROBLEM",
		Short: "Write the whole solution.",
		Long: "Write the whole solution: count, free bodies, every sum and what it gives, check, N V M of every member;\n" +
			"as svg only the figure of the frame.\n" +
			"A frame that is not determinate is refused with the reason, and the exit code is 1.",
		Args: oneProblem,
		RunE: func(cmd *cobra.Command, args []string) error {
			if named, ok := endings[filepath.Ext(file)]; ok && !cmd.Flags().Changed("as") {
				format = named
			}
			return solve(cmd, args[0], format, file)
		},
	}
	cmd.Flags().Var(oneOf(&format, "text", formats), "as", "the format; if not given, the one that FILE's ending names")
	cmd.Flags().StringVarP(&file, "output", "o", "", "write to `FILE`, not to standard output")
	return cmd
}

func solve(cmd *cobra.Command, word, format, file string) error {
	p, s, err := solved(cmd, word)
	if err != nil {
		return err
	}
	warn(cmd, p)
	if err := deliver(solution(p, s, format), file, cmd.OutOrStdout()); err != nil {
		return err
	}
	return sound(s)
}

// solution is the solution as a document.
func solution(p *problems.Problem, s *statics.Solution, format string) []byte {
	switch format {
	case "json":
		return worksheet.JSON(p, s)
	case "markdown":
		return []byte(worksheet.Markdown(p, s))
	case "svg":
		return worksheet.SVG(p, s)
	}
	return []byte(worksheet.Text(p, s, worksheet.Options{}))
}
