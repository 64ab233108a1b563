package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"unpin/problems"
)

// shells writes the script of each shell that completes words.
var shells = []struct {
	name  string
	write func(root *cobra.Command, out io.Writer) error
}{
	{"bash", func(root *cobra.Command, out io.Writer) error { return root.GenBashCompletionV2(out, true) }},
	{"zsh", (*cobra.Command).GenZshCompletion},
	{"fish", func(root *cobra.Command, out io.Writer) error { return root.GenFishCompletion(out, true) }},
	{"powershell", (*cobra.Command).GenPowerShellCompletionWithDesc},
}

// newCompletion writes the script that has a shell complete what is typed.
func newCompletion() *cobra.Command {
	var names []string
	for _, s := range shells {
		names = append(names, s.name)
	}
	return &cobra.Command{
		Use:   "completion SHELL",
		Short: "Have your shell complete problems and flags.",
		Long: "Write a script with which a shell completes commands, problems of the library, files, and what flags take.\n" +
			"SHELL is " + strings.Join(names, ", ") + ". For bash, say in ~/.bashrc: source <(unpin completion bash)",
		ValidArgs: names,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) != 1 || !slices.Contains(names, args[0]) {
				return usageFault(cmd, "completion needs the name of a shell: %s", strings.Join(names, ", "))
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			return shells[slices.Index(names, args[0])].write(cmd.Root(), cmd.OutOrStdout())
		},
	}
}

// completing tells the shell what may stand in a command: its flags' words, and problems where it takes them. Problems may
// be files too.
func completing(cmd *cobra.Command) {
	if strings.Contains(cmd.Use, "PROBLEM") {
		cmd.ValidArgsFunction = func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
			return problems.Names(), cobra.ShellCompDirectiveDefault
		}
	}
	cmd.Flags().VisitAll(func(f *pflag.Flag) {
		var words []string
		switch v := f.Value.(type) {
		case *choice:
			words = v.words
		case *selection:
			words = v.words
		default:
			return
		}
		err := cmd.RegisterFlagCompletionFunc(f.Name, cobra.FixedCompletions(words, cobra.ShellCompDirectiveNoFileComp))
		if err != nil {
			panic(fmt.Sprintf("internal error: completion of --%s: %v", f.Name, err)) // a test makes every tree of commands
		}
	})
}
