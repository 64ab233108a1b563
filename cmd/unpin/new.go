package main

import (
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/cells"
	"unpin/statics/notation"
)

// newNew writes a problem to begin with.
func newNew() *cobra.Command {
	var output string
	var ascii bool
	cmd := &cobra.Command{
		Use:   "new [KIND]",
		Short: "Write a problem file to begin with.",
		Long: "Write a problem of a kind, with comments on how it is written: a good problem as it stands, in which you change what\n" +
			"you like. Without a kind the kinds are listed, each with a small figure. Then unpin inspect FILE --watch says what you\n" +
			"have made of it, at each save. unpin new set writes a set, the problems of one paper.",
		Args: cobra.ArbitraryArgs,
		RunE: func(cmd *cobra.Command, args []string) error {
			switch {
			case len(args) > 1:
				return usageFault(cmd, "new takes one kind, not %d", len(args))
			case len(args) == 1:
				return begin(cmd, args[0], output)
			case output != "":
				return usageFault(cmd, "-o needs a kind: unpin new beam -o %s", output)
			}
			_, err := io.WriteString(cmd.OutOrStdout(), starterList(ascii))
			return err
		},
	}
	cmd.Flags().StringVarP(&output, "output", "o", "", "write to `FILE`, which does not exist yet, not to standard output")
	cmd.Flags().BoolVar(&ascii, "ascii", false, "figures in plain ASCII")
	return cmd
}

// setKind is the word for a set in place of a problem.
const setKind = "set"

// begin writes the starter of a kind. A file that exists is not written over: it may hold somebody's work.
func begin(cmd *cobra.Command, kind, output string) error {
	var kinds []string
	for _, s := range append(problems.Starters(), problems.Starter{Kind: setKind, Text: problems.SetStarter}) {
		if s.Kind == kind {
			if _, err := os.Lstat(output); output != "" && err == nil {
				return usageFault(cmd, "%s exists already: name another file", output)
			}
			return deliver([]byte(s.Text), output, cmd.OutOrStdout())
		}
		kinds = append(kinds, s.Kind)
	}
	if meant := nearest(kind, kinds); meant != "" {
		return usageFault(cmd, "there is no kind %q; did you mean %s?", kind, meant)
	}
	return usageFault(cmd, "there is no kind %q; the kinds are %s", kind, notation.List(kinds))
}

// The size of a small figure, in characters.
const (
	smallWide = 64
	smallTall = 14
)

// starterList is the kinds, each with its title and a figure of the bare frame.
func starterList(ascii bool) string {
	var list strings.Builder
	for _, s := range problems.Starters() {
		p, err := problems.Read(s.Kind, []byte(s.Text))
		if err != nil {
			panic("internal error: a starter that cannot be read") // a test reads them all
		}
		fmt.Fprintf(&list, "%-20s  %s\n\n", s.Kind, p.Title)
		for line := range strings.SplitSeq(smallFigure(p, ascii), "\n") {
			fmt.Fprintf(&list, "%s\n", strings.TrimRight("    "+line, " "))
		}
	}
	list.WriteString("unpin new KIND writes one of these; unpin new KIND -o FILE writes it into a file.\n")
	return list.String()
}

// smallFigure is a frame with its pins and supports, without loads.
func smallFigure(p *problems.Problem, ascii bool) string {
	bare := p.Frame
	bare.Loads = []statics.Load{}
	scene := figure.OfFrame(&bare, figure.Options{Style: p.Style(ascii)})
	lines := strings.Split(cells.Draw(scene, smallWide, smallTall, ascii).Text(), "\n")
	blank := func(line string) bool { return strings.TrimSpace(line) == "" }
	for len(lines) > 0 && blank(lines[0]) {
		lines = lines[1:]
	}
	for len(lines) > 0 && blank(lines[len(lines)-1]) {
		lines = lines[:len(lines)-1]
	}
	return strings.Join(lines, "\n") + "\n"
}
