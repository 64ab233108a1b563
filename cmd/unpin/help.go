package main

import (
	"bytes"
	"embed"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"
)

// topicFiles are texts on what is typed into files and lessons, one a topic.
//
//go:embed help/*.txt
var topicFiles embed.FS

// A topic is a text that unpin help shows beside those on commands.
type topic struct{ name, about string }

// topics lists them in the order in which help shows them.
var topics = []topic{
	{"levels", "how much of each step is left to you, and where to begin"},
	{"answers", "what can be typed in a lesson, and how it is judged"},
	{"file", "how to write a problem file"},
	{"set", "how to put the problems of a paper together"},
	{"class", "sets, exams and results on a host, the board, what is kept of whom"},
	{"hosting", "a class over SSH for a term: service, backup, upgrade, several hosts"},
}

// text is what a topic says.
func (t topic) text() string {
	text, err := topicFiles.ReadFile("help/" + t.name + ".txt")
	if err != nil {
		panic("internal error: no help on " + t.name) // a test reads all of them
	}
	return string(text)
}

// topicNamed is the topic of that name.
func topicNamed(name string) (topic, bool) {
	for _, t := range topics {
		if t.name == name {
			return t, true
		}
	}
	return topic{}, false
}

// topicList is a line for each topic.
func topicList() string {
	var list strings.Builder
	for _, t := range topics {
		fmt.Fprintf(&list, "  unpin help %-24s  %s\n", t.name, t.about)
	}
	fmt.Fprintf(&list, "  unpin help %-24s  %s\n", "--man", "the manual page, for man")
	return list.String()
}

// newHelp is the command that people try first: on a command it does the same as --help, and it shows the topics.
func newHelp() *cobra.Command {
	var man bool
	help := &cobra.Command{
		Use:    "help [COMMAND|TOPIC]",
		Short:  "Show what a command does, or a topic.",
		Hidden: true,
		RunE: func(cmd *cobra.Command, args []string) error {
			if man {
				_, err := fmt.Fprint(cmd.OutOrStdout(), manual(cmd.Root()))
				return err
			}
			if len(args) == 1 {
				if t, ok := topicNamed(args[0]); ok {
					_, err := io.WriteString(cmd.OutOrStdout(), forTerminal(cmd.OutOrStdout(), t.text()))
					return err
				}
			}
			about, rest, err := cmd.Root().Find(args)
			if err != nil || about == cmd.Root() && len(rest) > 0 {
				return noSuchCommand(cmd.Root(), args)
			}
			return about.Help()
		},
	}
	help.Flags().BoolVar(&man, "man", false, "write the manual page, for man")
	return help
}

// helpWith makes the function that shows the help of a command. Cobra takes no error from such a function, so the fault
// of a first word that is no command, or of an output that takes nothing, is left in *fault.
func helpWith(show func(*cobra.Command, []string), fault *error) func(*cobra.Command, []string) {
	return func(cmd *cobra.Command, args []string) {
		if words := cmd.Flags().Args(); cmd == cmd.Root() && len(words) > 0 {
			*fault = noSuchCommand(cmd, words)
			return
		}
		out := cmd.OutOrStdout()
		var text bytes.Buffer
		cmd.SetOut(&text)
		show(cmd, args)
		cmd.SetOut(out)
		if _, err := io.WriteString(out, forTerminal(out, text.String())); err != nil {
			*fault = fmt.Errorf("unpin: the help cannot be written: %w", plainReason(err))
		}
	}
}

// helpTemplate shows what a command does, how it is called, its commands, its flags, and what PROBLEM and SET stand for
// where it takes one; the library is listed once, in the help of the whole.
const helpTemplate = `{{.Long}}

Use:
  {{.UseLine}}{{range .Commands}}{{if .IsAvailableCommand}}
  {{printf "%s %-29s" $.CommandPath .Use}}  {{.Short}}{{end}}{{end}}{{if not .HasParent}}
{{topicList}}{{else}}
{{end}}
Flags:
{{.LocalFlags.FlagUsages | trimTrailingWhitespaces}}
{{if not .HasParent}}
PROBLEM is a file, - for standard input, or one of the library:
{{libraryList}}
{{caution}}
{{else if namesProblem .UseLine}}
PROBLEM is a file, - for standard input, or a name of the library, which unpin --help lists.
{{if namesSet .UseLine}}SET is a file that names the problems of one paper: unpin help set.
{{end}}{{end}}`
