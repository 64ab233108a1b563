package main

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"unpin/statics/notation"
)

// formats are the ways to write a solution.
var formats = []string{"text", "markdown", "html", "json", "svg", "pdf"}

// endings are those of files that tell the format.
var endings = map[string]string{".txt": "text", ".md": "markdown", ".html": "html", ".json": "json", ".svg": "svg", ".pdf": "pdf"}

// settle settles the format, and refuses options that contradict each other or the problems, or that would be of no effect.
func (w *writing) settle(cmd *cobra.Command, words []string) error {
	for _, check := range []func(*cobra.Command, []string) error{w.settleFormat, w.checkLooks, w.checkSeveral} {
		if err := check(cmd, words); err != nil {
			return err
		}
	}
	return w.spared(w.file)
}

// settleFormat takes the format from the ending of the file where --as does not give it.
func (w *writing) settleFormat(cmd *cobra.Command, _ []string) error {
	ending := filepath.Ext(w.file)
	named, known := endings[ending]
	switch given := cmd.Flags().Changed("as"); {
	case given && known && named != w.format:
		return usageFault(cmd, "-o %s is named as %s and --as says %s: leave --as out, or name the file %s", w.file, named, w.format,
			strings.TrimSuffix(w.file, ending)+endingOf(w.format))
	case given || ending == "" || w.file == "-":
	case !known:
		return usageFault(cmd, "the ending %s of -o %s names no format: the endings are %s; with --as FORMAT any will do", ending, w.file, endingList())
	default:
		w.format = named
	}
	return nil
}

// endingOf is the ending of a format.
func endingOf(format string) string {
	for ending, named := range endings {
		if named == format {
			return ending
		}
	}
	return ""
}

// endingList lists the endings in the order of the formats.
func endingList() string {
	var all []string
	for _, format := range formats {
		all = append(all, endingOf(format))
	}
	return strings.Join(all, ", ")
}

// checkLooks refuses options that the format does not heed.
func (w *writing) checkLooks(cmd *cobra.Command, _ []string) error {
	for _, option := range []struct {
		name, does string
		formats    []string
	}{
		{"figure", "chooses the figure of", []string{"svg"}},
		{"step", "shows a step as", []string{"svg"}},
		{"paper", "is for", []string{"pdf"}},
		{"pictures", "makes images of the figures of", []string{"markdown"}},
		{"only", "chooses parts of", []string{"text", "markdown", "html", "pdf"}},
	} {
		if cmd.Flags().Changed(option.name) && !slices.Contains(option.formats, w.format) {
			return usageFault(cmd, "--%s is of no use with %s: it %s %s; %s", option.name, w.format, option.does, notation.List(option.formats),
				w.instead(option.formats))
		}
	}
	if cmd.Flags().Changed("pictures") && w.pictures == "" {
		return usageFault(cmd, "--pictures needs a folder: --pictures figures")
	}
	if cmd.Flags().Changed("figure") && cmd.Flags().Changed("step") {
		return usageFault(cmd, "--step shows a step in place of a figure: leave --figure or --step out")
	}
	return nil
}

// instead says what would be right where an option is for other formats.
func (w *writing) instead(formats []string) string {
	if len(formats) == 1 {
		return fmt.Sprintf("add --as %s or -o FILE%s", formats[0], endingOf(formats[0]))
	}
	return map[string]string{"json": "the JSON always has all", "svg": "--figure chooses the figure"}[w.format]
}

// checkSeveral refuses several problems where only one can be shown.
func (w *writing) checkSeveral(cmd *cobra.Command, words []string) error {
	if w.format == "svg" && len(words) > 1 {
		return usageFault(cmd, "an SVG shows one figure of one problem, not of %d: name one", len(words))
	}
	return nil
}
