package main

import (
	"path/filepath"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
)

// formats are the ways to write a solution.
var formats = []string{"text", "markdown", "json", "svg", "pdf"}

// endings are those of files that tell the format.
var endings = map[string]string{".txt": "text", ".md": "markdown", ".json": "json", ".svg": "svg", ".pdf": "pdf"}

// newSolve writes the whole solution.
func newSolve() *cobra.Command {
	var format, file, paper string
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
			return solve(cmd, args[0], format, file, paper)
		},
	}
	cmd.Flags().Var(oneOf(&format, "text", formats), "as", "the format; if not given, the one that FILE's ending names")
	cmd.Flags().Var(oneOf(&paper, worksheet.A4.Name, []string{worksheet.A4.Name, worksheet.Letter.Name}), "paper", "the paper of a PDF")
	cmd.Flags().StringVarP(&file, "output", "o", "", "write to `FILE`, not to standard output")
	return cmd
}

func solve(cmd *cobra.Command, word, format, file, paper string) error {
	p, s, err := solved(cmd, word)
	if err != nil {
		return err
	}
	warn(cmd, p)
	document, err := solution(p, s, format, paper)
	if err != nil {
		return err
	}
	if err := deliver(document, file, cmd.OutOrStdout()); err != nil {
		return err
	}
	return sound(s)
}

// solution is the solution as a document.
func solution(p *problems.Problem, s *statics.Solution, format, paper string) ([]byte, error) {
	switch format {
	case "markdown":
		return []byte(worksheet.Markdown(p, s)), nil
	case "json":
		return worksheet.JSON(p, s), nil
	case "svg":
		return worksheet.SVG(p, s), nil
	case "pdf":
		size := worksheet.A4
		if paper == worksheet.Letter.Name {
			size = worksheet.Letter
		}
		return worksheet.PDF(p, s, size)
	}
	return []byte(worksheet.Text(p, s, worksheet.Options{})), nil
}
