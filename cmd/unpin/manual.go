package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// manual is the manual page of the program, for man: all commands with their flags, as help tells them. It is written in the
// macros of man(7).
func manual(root *cobra.Command) string {
	var m roff
	m.macro(".TH", "UNPIN", "1", "", "unpin", "")
	m.macro(".SH", "NAME")
	m.text("unpin - a step-by-step tutor of equilibrium for plane frames")
	m.macro(".SH", "SYNOPSIS")
	m.text("unpin [COMMAND] [FLAGS] [PROBLEM...]")
	m.macro(".SH", "DESCRIPTION")
	m.text(root.Long)
	m.flags(root)
	m.macro(".SH", "COMMANDS")
	for _, cmd := range root.Commands() {
		if !cmd.IsAvailableCommand() {
			continue
		}
		m.macro(".SS", "unpin "+cmd.Use)
		m.text(cmd.Long)
		m.flags(cmd)
	}
	m.macro(".SH", "EXIT STATUS")
	for _, c := range [][2]string{
		{"0", "done"},
		{"1", "the work is sound but the answer is no, as for a frame that is not determinate"},
		{"2", "bad use, or input that cannot be read"},
		{"130, 143", "ended by SIGINT, SIGTERM"},
	} {
		m.item(c[0], c[1])
	}
	m.macro(".SH", "SEE ALSO")
	m.text(strings.TrimSpace(topicList()))
	return m.String()
}

// A roff is a manual page in the making.
type roff struct{ strings.Builder }

// roffText keeps signs from being taken for roff's own.
var roffText = strings.NewReplacer(`\`, `\e`, "-", `\-`)

// macro writes a macro with its arguments.
func (m *roff) macro(name string, arguments ...string) {
	m.WriteString(name)
	for _, a := range arguments {
		m.WriteString(` "` + strings.ReplaceAll(roffText.Replace(a), `"`, `\(dq`) + `"`)
	}
	m.WriteString("\n")
}

// text writes lines; a free line begins a paragraph.
func (m *roff) text(text string) {
	for line := range strings.SplitSeq(text, "\n") {
		line = strings.TrimSpace(roffText.Replace(line))
		switch {
		case line == "":
			line = ".PP"
		case strings.ContainsAny(line[:1], ".'"):
			line = `\&` + line
		}
		m.WriteString(line + "\n")
	}
}

// item writes what a term means.
func (m *roff) item(term, meaning string) {
	m.macro(".TP")
	m.text(term)
	m.text(meaning)
}

// flags writes the flags of a command.
func (m *roff) flags(cmd *cobra.Command) {
	cmd.Flags().VisitAll(func(f *pflag.Flag) {
		value, usage := pflag.UnquoteUsage(f)
		term := "--" + f.Name
		if f.Shorthand != "" {
			term = "-" + f.Shorthand + ", " + term
		}
		if value != "" {
			term += " " + value
		}
		if f.DefValue != "" && f.DefValue != "false" && f.DefValue != "0" {
			usage += fmt.Sprintf(" (default %s)", f.DefValue)
		}
		m.item(term, usage)
	})
}
