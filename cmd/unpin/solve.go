package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
	"unpin/statics/wording"
)

// formats are the ways to write a solution.
var formats = []string{"text", "markdown", "html", "json", "svg", "pdf"}

// endings are those of files that tell the format.
var endings = map[string]string{".txt": "text", ".md": "markdown", ".html": "html", ".json": "json", ".svg": "svg", ".pdf": "pdf"}

// newSolve writes the whole solution.
func newSolve() *cobra.Command {
	var format, file string
	var looks look
	cmd := &cobra.Command{
		Use:   "solve PROBLEM",
		Short: "Write the whole solution.",
		Long: "Write the whole solution: count, free bodies, every sum and what it gives, check, N V M of every member;\n" +
			"as svg one figure of it.\n" +
			"A frame that is not determinate is refused with the reason, and the exit code is 1.",
		Args: oneProblem,
		RunE: func(cmd *cobra.Command, args []string) error {
			if named, ok := endings[filepath.Ext(file)]; ok && !cmd.Flags().Changed("as") {
				format = named
			}
			return solve(cmd, args[0], format, file, looks)
		},
	}
	cmd.Flags().Var(oneOf(&format, "text", formats), "as", "the format; if not given, the one that FILE's ending names")
	cmd.Flags().Var(oneOf(&looks.figure, worksheet.Figures[0], worksheet.Figures), "figure", "the `FIGURE` of an SVG: "+strings.Join(worksheet.Figures, ", "))
	cmd.Flags().Var((*ordinal)(&looks.step), "step", "in place of --figure, step `N` of the plan with its arms")
	cmd.Flags().Var(oneOf(&looks.paper, worksheet.A4.Name, []string{worksheet.A4.Name, worksheet.Letter.Name}), "paper", "the paper of a PDF")
	cmd.Flags().Var(someOf(&looks.only, worksheet.Parts), "only", "only some `PARTS` of the solution, with commas between: "+strings.Join(worksheet.Parts, ", "))
	cmd.Flags().StringVarP(&file, "output", "o", "", "write to `FILE`, not to standard output")
	return cmd
}

// A look is what only some formats ask for.
type look struct {
	figure, paper string
	only          []string
	step          int // of the plan, from 1, that an SVG shows; 0 is none
}

func solve(cmd *cobra.Command, word, format, file string, looks look) error {
	if len(looks.only) > 0 && (format == "json" || format == "svg") {
		return usageFault(cmd, "--only is of no use with %s: it chooses parts of text, markdown, html and pdf%s", format,
			map[string]string{"json": "; the JSON always has all", "svg": "; --figure chooses the figure"}[format])
	}
	p, s, err := solved(cmd, word)
	if err != nil {
		return err
	}
	warn(cmd, p)
	if looks.step > len(s.Plan) && s.Values != nil {
		return usageFault(cmd, "--step cannot be %d: the plan has %d steps", looks.step, len(s.Plan))
	}
	document, err := solution(p, s, format, looks)
	if errors.Is(err, worksheet.ErrNoFigure) {
		fmt.Fprintln(cmd.ErrOrStderr(), wording.Sentence(err.Error()))
		return errNo
	}
	if err != nil {
		return err
	}
	if err := deliver(document, file, cmd.OutOrStdout()); err != nil {
		return err
	}
	return sound(s)
}

// solution is the solution as a document.
func solution(p *problems.Problem, s *statics.Solution, format string, looks look) ([]byte, error) {
	o := worksheet.Options{Only: looks.only}
	if looks.paper == worksheet.Letter.Name {
		o.Paper = worksheet.Letter
	}
	switch format {
	case "markdown":
		return []byte(worksheet.Markdown(worksheet.One(p, s), o)), nil
	case "html":
		return []byte(worksheet.HTML(worksheet.One(p, s), o)), nil
	case "json":
		return worksheet.JSON(p, s), nil
	case "svg":
		if looks.step != 0 {
			return worksheet.StepSVG(p, s, looks.step)
		}
		return worksheet.SVG(p, s, looks.figure)
	case "pdf":
		return worksheet.PDF(worksheet.One(p, s), o)
	}
	return []byte(worksheet.Text(worksheet.One(p, s), o)), nil
}
