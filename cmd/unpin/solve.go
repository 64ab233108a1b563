package main

import (
	"cmp"
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"unpin/problems/worksheet"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// newSolve writes the whole solution.
func newSolve() *cobra.Command {
	var w writing
	cmd := &cobra.Command{
		Use:   "solve PROBLEM...",
		Short: "Write the whole solution.",
		Long: "Write the whole solution: count, free bodies, every sum and what it gives, check, N V M of every member;\n" +
			"as svg one figure of it. Several problems stand one after the other; as json they are a list. A folder stands for\n" +
			"the problem files in it. In the JSON a force's value is along the unit vector of its direction; along itself is\n" +
			"unscaled: [3, 4], not [0.6, 0.8]. A frame that is not determinate is refused with the reason, and the exit code\n" +
			"is 1; it is 2 if a problem cannot be read. Documents of more than 60 parts have no figures: --figure and --step\n" +
			"draw them, but not all parts apart.",
		Args: someProblems,
		RunE: func(cmd *cobra.Command, words []string) error {
			all := named(cmd, words)
			w.spared = func(path string) error { return notOver(cmd, path, all.words) }
			if err := w.settle(cmd, all.words); err != nil {
				return err
			}
			return w.solve(all)
		},
	}
	cmd.Flags().Var(oneOf(&w.format, "text", formats), "as", "the format; if not given, the one that FILE's ending names")
	cmd.Flags().Var(oneOf(&w.figure, worksheet.Figures[0], worksheet.Figures), "figure", "the `FIGURE` of an SVG: "+strings.Join(worksheet.Figures, ", "))
	cmd.Flags().Var((*ordinal)(&w.step), "step", "in place of --figure, step `N` of the plan with its arms")
	cmd.Flags().Var(oneOf(&w.paper, worksheet.A4.Name, []string{worksheet.A4.Name, worksheet.Letter.Name}), "paper", "the paper of a PDF")
	cmd.Flags().Var(someOf(&w.only, worksheet.Parts), "only", "only some `PARTS` of the solution, with commas between: "+strings.Join(worksheet.Parts, ", "))
	cmd.Flags().StringVar(&w.pictures, "pictures", "", "write the figures of Markdown as SVG images into `FOLDER`, and link to them")
	cmd.Flags().StringVarP(&w.file, "output", "o", "", "write to `FILE`, not to standard output")
	return cmd
}

// A writing is how a solution is written, and where.
type writing struct {
	format, file  string
	figure, paper string
	only          []string
	pictures      string // the folder for the images of Markdown, or empty
	step          int    // of the plan, from 1, that an SVG shows; 0 is none

	spared func(path string) error // refuses a path from which a problem is read
}

// solve writes the solutions of those problems that can be read. The error is the worst of what came of them.
func (w writing) solve(all *many) error {
	write := w.together
	if w.inRow() {
		write = w.oneByOne
	}
	return cmp.Or(write(all), all.worst())
}

// together writes a document that needs all solutions before it can begin.
func (w writing) together(all *many) error {
	var list []worksheet.Solved
	gather := func(one worksheet.Solved, _ string) error {
		warn(all.cmd, one.Problem)
		list = append(list, one)
		return nil
	}
	err := all.solve(func(int, worksheet.Solved) string { return "" }, gather)
	if err != nil || len(list) == 0 {
		return err
	}
	if first := list[0].Solution; w.step > len(first.Plan) && first.Values != nil {
		return usageFault(all.cmd, "--step cannot be %d: the plan has %d steps", w.step, len(first.Plan))
	}
	document, err := w.document(list)
	if errors.Is(err, worksheet.ErrNoFigure) {
		fmt.Fprintln(all.cmd.ErrOrStderr(), wording.Sentence(err.Error()))
		return errNo
	}
	if err != nil {
		return err
	}
	return deliver(document, w.file, all.cmd.OutOrStdout())
}

// document is the solutions in a format that holds them together. What is text has nothing in it that would steer a terminal.
func (w writing) document(all []worksheet.Solved) ([]byte, error) {
	o := w.options()
	text := ""
	switch w.format {
	case "pdf":
		return worksheet.PDF(all, o)
	case "markdown":
		markdown, err := w.markdown(all, o)
		if err != nil {
			return nil, err
		}
		text = markdown
	case "html":
		text = worksheet.HTML(all, o)
	case "svg":
		svg, err := w.drawing(all[0])
		if err != nil {
			return nil, err
		}
		text = string(svg)
	}
	return []byte(notation.VisibleLines(text)), nil
}

// options are those of the document.
func (w writing) options() worksheet.Options {
	o := worksheet.Options{Only: w.only}
	if w.paper == worksheet.Letter.Name {
		o.Paper = worksheet.Letter
	}
	return o
}

// drawing is the figure chosen.
func (w writing) drawing(one worksheet.Solved) ([]byte, error) {
	if w.step != 0 {
		return worksheet.StepSVG(one.Problem, one.Solution, w.step)
	}
	return worksheet.SVG(one.Problem, one.Solution, w.figure)
}
