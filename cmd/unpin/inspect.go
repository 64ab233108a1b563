package main

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"unpin/problems/worksheet"
	"unpin/statics/notation"
)

// newInspect tells what kind of frame each problem is, and how good its numbers are.
func newInspect() *cobra.Command {
	var w inspecting
	cmd := &cobra.Command{
		Use:   "inspect PROBLEM...",
		Short: "Say whether a frame can be solved, how hard it is, and how good its numbers are.",
		Long: "Count unknowns and sums and say whether the frame is determinate; if not, which forces are too many or how it\n" +
			"moves, why, and what would mend it. Of a determinate one: how tidy its answers are, how hard it is and why, which\n" +
			"common mistakes its numbers would hide with the smallest change that shows them, and the plan, a step a line with\n" +
			"its skills. A folder stands for the problem files in it. As json one object for each problem, one after the other.\n" +
			"The exit code is 1 if a frame is not determinate, 2 if a problem cannot be read.",
		Args: someProblems,
		RunE: func(cmd *cobra.Command, words []string) error {
			if w.watch {
				return w.keepWatch(cmd, words)
			}
			words, err := unfolded(words)
			if err != nil {
				return err
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
	var faults []error
	refused := false
	for i, word := range words {
		switch err := w.one(cmd, word, i > 0); {
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
}

// one writes what there is to say about one problem, a text after a blank line where others came before.
func (w inspecting) one(cmd *cobra.Command, word string, more bool) error {
	p, s, err := solved(cmd, word)
	if err != nil {
		return err
	}
	text := ""
	switch {
	case w.brief:
		text = worksheet.InspectBrief(p, s)
	case w.format == "json":
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

// problemEndings are those of problem files. JSON is read too, where it is named, but most JSON is something else.
var problemEndings = []string{".yaml", ".yml"}

// unfolded has the problem files of a folder in place of it, in order of their names.
func unfolded(words []string) ([]string, error) {
	var all []string
	for _, word := range words {
		entries, err := os.ReadDir(word)
		if err != nil || fromLibrary(word) {
			all = append(all, word)
			continue
		}
		found := len(all)
		for _, e := range entries {
			if !e.IsDir() && slices.Contains(problemEndings, filepath.Ext(e.Name())) {
				all = append(all, filepath.Join(word, e.Name()))
			}
		}
		if len(all) == found {
			return nil, errors.New("unpin: the folder " + word + " holds no problem files (.yaml or .yml)")
		}
	}
	return all, nil
}
