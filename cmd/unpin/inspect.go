package main

import (
	"cmp"
	"io"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics/notation"
)

// newInspect tells what kind of frame each problem is, and how good its numbers are.
func newInspect() *cobra.Command {
	var w inspecting
	cmd := &cobra.Command{
		Use:   "inspect PROBLEM|SET...",
		Short: "Say whether a frame can be solved, how hard it is, and how good its numbers are.",
		Long: "Count unknowns and sums and say whether the frame is determinate; if not, which forces are too many or how it\n" +
			"moves, why, and what would mend it. Of a determinate one: how tidy its answers are, how hard it is and why, which\n" +
			"common mistakes its numbers would hide with the smallest change that shows them, and the plan, a step a line with\n" +
			"its skills. Of a set of problems (unpin help set): points, grades, skills, how long it takes, conventions that clash,\n" +
			"and how many copies there are. A folder stands for the problem files in it. As json one object for each problem, one after the other.\n" +
			"The exit code is 1 if a frame is not determinate, 2 if a problem cannot be read.",
		Args: someProblems,
		RunE: func(cmd *cobra.Command, words []string) error {
			if w.watch {
				return w.keepWatch(cmd, words)
			}
			return w.all(cmd, words)
		},
	}
	cmd.Flags().Var(oneOf(&w.format, "text", []string{"text", "json"}), "as", "the format")
	cmd.Flags().BoolVar(&w.brief, "brief", false, "one line for each problem")
	cmd.Flags().BoolVar(&w.watch, "watch", false, "say it anew whenever the file is saved, and keep a figure of the frame beside it, FILE.svg")
	return cmd
}

// inspecting is how problems are inspected.
type inspecting struct {
	format       string
	brief, watch bool
}

// all inspects every problem and returns the worst of what came of them.
func (w inspecting) all(cmd *cobra.Command, words []string) error {
	if w.brief && w.format == "json" {
		return usageFault(cmd, "--brief is a text: it does not go with --as json")
	}
	all := gathered(cmd, words, func(string) bool { return false })
	all.saySet = w.ofSet
	err := all.solve(w.text, func(_ worksheet.Solved, text string) error {
		_, err := io.WriteString(cmd.OutOrStdout(), text)
		return err
	})
	return cmp.Or(err, all.worst())
}

// ofSet is what there is to say about a set, as text does.
func (w inspecting) ofSet(place int, s *problems.Set) string {
	text := ""
	switch {
	case w.brief:
		text = worksheet.InspectSetBrief(s)
	case w.format == "json":
		text = string(worksheet.InspectSetJSON(s))
	case place > 0:
		text = "\n" + worksheet.InspectSet(s, worksheet.Options{})
	default:
		text = worksheet.InspectSet(s, worksheet.Options{})
	}
	return notation.VisibleLines(text)
}

// text is what there is to say about a problem, with nothing in it that would steer a terminal; after a blank line where
// others come before.
func (w inspecting) text(place int, one worksheet.Solved) string {
	text := ""
	switch {
	case w.brief:
		text = worksheet.InspectBrief(one.Problem, one.Solution)
	case w.format == "json":
		text = string(worksheet.InspectJSON(one.Problem, one.Solution))
	case place > 0:
		text = "\n" + worksheet.Inspect(one.Problem, one.Solution, worksheet.Options{})
	default:
		text = worksheet.Inspect(one.Problem, one.Solution, worksheet.Options{})
	}
	return notation.VisibleLines(text)
}
