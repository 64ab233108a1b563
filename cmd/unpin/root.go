package main

import (
	"strings"
	"sync"

	"github.com/spf13/cobra"

	"unpin/statics/wording"
)

// newRoot is the tree of commands. Alone, unpin practises.
func newRoot() *cobra.Command {
	prepare()
	root := newPractise()
	root.Use, root.Aliases = "unpin", nil
	root.Long = about
	root.Args = noSuchCommand
	root.SilenceErrors, root.SilenceUsage = true, true
	root.CompletionOptions.DisableDefaultCmd = true
	root.SetFlagErrorFunc(flagFault)
	root.Version = "told by the template, since it takes a while to find out"
	root.SetVersionTemplate("unpin {{version}}\n")
	root.SetHelpTemplate(helpTemplate)
	root.SetHelpCommand(newHelp())
	root.AddCommand(newPractise(), newSolve(), newInspect(), newVary(), newSheet(), newMark(), newReport(), newNew(), newSchema(), newRecord(), newHost(), newCompletion())
	for _, cmd := range append(root.Commands(), root) {
		cmd.Flags().SortFlags = false
		cmd.Flags().BoolP("help", "h", false, "show this help")
		cmd.DisableFlagsInUseLine = true
		completing(cmd)
	}
	root.Flags().Bool("version", false, "show the version of this build")
	return root
}

// prepare sets what all trees of commands have in common, once.
var prepare = sync.OnceFunc(func() {
	cobra.EnableCommandSorting = false // help lists the commands in the order of their use
	cobra.AddTemplateFunc("libraryList", libraryList)
	cobra.AddTemplateFunc("topicList", topicList)
	cobra.AddTemplateFunc("version", version)
	cobra.AddTemplateFunc("namesProblem", func(use string) bool { return strings.Contains(use, "PROBLEM") })
	cobra.AddTemplateFunc("namesSet", func(use string) bool { return strings.Contains(use, "SET") })
	cobra.AddTemplateFunc("caution", func() string { return wording.Caution })
})

// about says what the program is for.
const about = "unpin teaches how to take a plane frame apart at its pins and find every force by equilibrium, one unknown at a\n" +
	"time. With no command it opens the list of problems, at its head what to practise today: choose one, and the level,\n" +
	"which says how much of each step is left to you. What you do is kept in unpin/practice.jsonl under $XDG_STATE_HOME,\n" +
	"or else ~/.local/state; unpin record says what you know by now, and can erase it."

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
