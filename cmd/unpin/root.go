package main

import (
	"strings"

	"github.com/spf13/cobra"
)

// newRoot is the tree of commands. Alone, unpin practises.
func newRoot() *cobra.Command {
	cobra.EnableCommandSorting = false // help lists the commands in the order of their use
	root := newPractise()
	root.Use = "unpin"
	root.Long = about
	root.Args = noSuchCommand
	root.SilenceErrors, root.SilenceUsage = true, true
	root.CompletionOptions.DisableDefaultCmd = true
	root.SetFlagErrorFunc(flagFault)
	cobra.AddTemplateFunc("libraryList", libraryList)
	root.SetHelpTemplate(helpTemplate)
	root.SetHelpCommand(newHelp())
	root.AddCommand(newPractise(), newSolve(), newInspect())
	for _, cmd := range append(root.Commands(), root) {
		cmd.Flags().SortFlags = false
		cmd.Flags().BoolP("help", "h", false, "show this help")
		cmd.DisableFlagsInUseLine = true
	}
	return root
}

// about says what the program is for.
const about = "unpin teaches how to take a plane frame apart at its pins and find every force by equilibrium, one unknown at a\n" +
	"time. Alone it begins to practise."

// commandNames lists the commands in the order in which help shows them.
func commandNames(root *cobra.Command) []string {
	var names []string
	for _, c := range root.Commands() {
		if c.IsAvailableCommand() {
			names = append(names, c.Name())
		}
	}
	return names
}

// noSuchCommand is the error of a first word that is no command.
func noSuchCommand(root *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	word, commands := args[0], commandNames(root)
	if meant := nearest(word, commands); meant != "" {
		return usageFault(root, "there is no command %q; did you mean unpin %s?", word, meant)
	}
	if _, err := find(word, strings.NewReader("")); err == nil {
		return usageFault(root, "%s is a problem, not a command: type unpin practise %s or unpin solve %s", word, word, word)
	}
	return usageFault(root, "there is no command %q; the commands are %s", word, strings.Join(commands, ", "))
}

// newHelp is the command that people try first; it does the same as --help.
func newHelp() *cobra.Command {
	return &cobra.Command{
		Use:    "help [COMMAND]",
		Short:  "Show what a command does.",
		Hidden: true,
		RunE: func(cmd *cobra.Command, args []string) error {
			about, rest, err := cmd.Root().Find(args)
			if err != nil || about == cmd.Root() && len(rest) > 0 {
				return noSuchCommand(cmd.Root(), args)
			}
			return about.Help()
		},
	}
}

// helpTemplate shows what a command does, how it is called, its commands, its flags, and what PROBLEM stands for.
const helpTemplate = `{{.Long}}

Use:
  {{.UseLine}}{{range .Commands}}{{if .IsAvailableCommand}}
  {{printf "unpin %-20s" .Use}}  {{.Short}}{{end}}{{end}}

Flags:
{{.LocalFlags.FlagUsages | trimTrailingWhitespaces}}

PROBLEM is a file, - for standard input, or one of the library:
{{libraryList}}`
