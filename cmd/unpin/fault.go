package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// usageFault is a command line that cannot be carried out: what is wrong with it, and where help is.
func usageFault(cmd *cobra.Command, format string, args ...any) error {
	return fmt.Errorf("unpin: %s\nHelp: %s --help", fmt.Sprintf(format, args...), cmd.CommandPath())
}

// flagFault is a flag that cannot be read, in people's words.
func flagFault(cmd *cobra.Command, err error) error {
	var unknown *pflag.NotExistError
	var missing *pflag.ValueRequiredError
	var invalid *pflag.InvalidValueError
	switch {
	case errors.As(err, &unknown):
		return unknownFlag(cmd, unknown)
	case errors.As(err, &missing):
		flag := missing.GetFlag()
		value, _ := pflag.UnquoteUsage(flag)
		return usageFault(cmd, "--%s needs a value: --%s %s", flag.Name, flag.Name, value)
	case errors.As(err, &invalid) && invalid.GetFlag().Value.Type() == "bool":
		return usageFault(cmd, "--%s takes no value", invalid.GetFlag().Name)
	case errors.As(err, &invalid):
		return usageFault(cmd, "--%s cannot be %q: %v", invalid.GetFlag().Name, invalid.GetValue(), invalid.Unwrap())
	}
	return usageFault(cmd, "%v", err)
}

// unknownFlag names the flag and what was likely meant.
func unknownFlag(cmd *cobra.Command, unknown *pflag.NotExistError) error {
	name := unknown.GetSpecifiedName()
	dashes := "--"
	if unknown.GetSpecifiedShortnames() != "" {
		dashes = "-"
	}
	flags := flagNames(cmd)
	meant := nearest(name, flags)
	if meant == "" && dashes == "-" {
		meant = nearest(unknown.GetSpecifiedShortnames(), flags) // -plain for --plain
	}
	if meant != "" {
		return usageFault(cmd, "there is no flag %s%s; did you mean --%s?", dashes, name, meant)
	}
	return usageFault(cmd, "there is no flag %s%s; the flags of %s are --%s", dashes, name, cmd.CommandPath(), strings.Join(flags, ", --"))
}

// flagNames lists the flags of a command.
func flagNames(cmd *cobra.Command) []string {
	var names []string
	cmd.Flags().VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
	return names
}

// nearest is the word of a list that a misspelt word is closest to, or "" if it is close to none.
func nearest(word string, list []string) string {
	lookup := &cobra.Command{SuggestionsMinimumDistance: max(1, min(2, len(word)/2))}
	for _, w := range list {
		lookup.AddCommand(&cobra.Command{Use: w, Run: func(*cobra.Command, []string) {}})
	}
	for _, meant := range lookup.SuggestionsFor(word) {
		return meant
	}
	return ""
}
