package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"unpin/problems"
)

// someProblems wants one PROBLEM or more.
func someProblems(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		return usageFault(cmd, "%s needs a problem. %s", cmd.Name(), whatProblemsAre())
	}
	return nil
}

// perhapsProblem wants at most one PROBLEM.
func perhapsProblem(cmd *cobra.Command, args []string) error {
	if len(args) > 1 {
		return usageFault(cmd, "%s takes one problem, not %d", cmd.Name(), len(args))
	}
	return nil
}

// whatProblemsAre says what may stand for PROBLEM.
func whatProblemsAre() string {
	return "PROBLEM is a file or one of the library; unpin --help lists them."
}

// libraryList is a line for each problem of the library: its name and title.
func libraryList() string {
	var list strings.Builder
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		fmt.Fprintf(&list, "  %-20s  %s\n", name, p.Title)
	}
	return list.String()
}
