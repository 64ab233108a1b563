package main

import (
	"strings"

	"github.com/spf13/cobra"

	"unpin/problems"
)

// oneProblem wants exactly one PROBLEM.
func oneProblem(cmd *cobra.Command, args []string) error {
	switch {
	case len(args) == 0:
		return usageFault(cmd, "%s needs a problem. %s", cmd.Name(), whatProblemsAre())
	case len(args) > 1:
		return usageFault(cmd, "%s takes one problem, not %d", cmd.Name(), len(args))
	}
	return nil
}

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
	return "PROBLEM is a file or one of the library: " + strings.Join(problems.Names(), ", ") + "."
}
