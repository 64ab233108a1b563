package main

import (
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
			"as svg one figure of it. Several problems stand one after the other; as json they are a list.\n" +
			"In the JSON a force's value is along the unit vector of its direction; along itself is unscaled: [3, 4], not [0.6, 0.8].\n" +
			"A frame that is not determinate is refused with the reason, and the exit code is 1; it is 2 if a problem\n" +
			"cannot be read.",
		Args: someProblems,
		RunE: func(cmd *cobra.Command, words []string) error {
			w.spared = func(path string) error { return notOver(cmd, path, words) }
			if err := w.settle(cmd, words); err != nil {
				return err
			}
			return solve(cmd, words, w)
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
func solve(cmd *cobra.Command, words []string, w writing) error {
	all, faults := read(cmd, words)
	if len(all) == 0 {
		return errors.Join(faults...)
	}
	if first := all[0].Solution; w.step > len(first.Plan) && first.Values != nil {
		return usageFault(cmd, "--step cannot be %d: the plan has %d steps", w.step, len(first.Plan))
	}
	document, err := w.document(all)
	if errors.Is(err, worksheet.ErrNoFigure) {
		fmt.Fprintln(cmd.ErrOrStderr(), wording.Sentence(err.Error()))
		return errNo
	}
	if err != nil {
		return err
	}
	if err := deliver(document, w.file, cmd.OutOrStdout()); err != nil {
		return err
	}
	if len(faults) > 0 {
		return errors.Join(faults...)
	}
	for _, one := range all {
		if err := sound(one.Solution); err != nil {
			return err
		}
	}
	return nil
}

// read solves the problems that the words mean, with their warnings, and collects what is wrong with the others.
func read(cmd *cobra.Command, words []string) (all []worksheet.Solved, faults []error) {
	for _, word := range words {
		p, s, err := solved(cmd, word)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		warn(cmd, p)
		all = append(all, worksheet.Solved{Problem: p, Solution: s})
	}
	return all, faults
}

// document is the solutions in the format chosen. What is text has nothing in it that would steer a terminal.
func (w writing) document(all []worksheet.Solved) ([]byte, error) {
	o := worksheet.Options{Only: w.only}
	if w.paper == worksheet.Letter.Name {
		o.Paper = worksheet.Letter
	}
	if w.format == "pdf" {
		return worksheet.PDF(all, o)
	}
	text := ""
	switch w.format {
	case "markdown":
		markdown, err := w.markdown(all, o)
		if err != nil {
			return nil, err
		}
		text = markdown
	case "html":
		text = worksheet.HTML(all, o)
	case "json":
		text = listed(all)
	case "svg":
		svg, err := w.drawing(all[0])
		if err != nil {
			return nil, err
		}
		text = string(svg)
	default:
		text = worksheet.Text(all, o)
	}
	return []byte(notation.VisibleLines(text)), nil
}

// drawing is the figure chosen.
func (w writing) drawing(one worksheet.Solved) ([]byte, error) {
	if w.step != 0 {
		return worksheet.StepSVG(one.Problem, one.Solution, w.step)
	}
	return worksheet.SVG(one.Problem, one.Solution, w.figure)
}

// listed is the JSON of one solution, or the list of several.
func listed(all []worksheet.Solved) string {
	var objects []string
	for _, one := range all {
		objects = append(objects, strings.TrimSpace(string(worksheet.JSON(one.Problem, one.Solution))))
	}
	if len(objects) == 1 {
		return objects[0] + "\n"
	}
	return "[" + strings.Join(objects, ",\n") + "]\n"
}
