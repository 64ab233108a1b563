package main

import (
	"github.com/spf13/cobra"

	"unpin/problems"
)

// newSchema writes the schema of problem files.
func newSchema() *cobra.Command {
	var output string
	cmd := &cobra.Command{
		Use:   "schema",
		Short: "Write the JSON Schema of problem files, for editors.",
		Long: "Write the JSON Schema (2020-12) of problem files. An editor that knows it completes names of fields, shows what each\n" +
			"means, and marks what cannot be so while you type. Write it once beside your files,\n\n" +
			"  unpin schema -o unpin.schema.json\n\n" +
			"and begin each file with the line\n\n" +
			"  # yaml-language-server: $schema=unpin.schema.json",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 0 {
				return usageFault(cmd, "schema takes no problem: it is the same for all")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, _ []string) error {
			return deliver(problems.Schema(), output, cmd.OutOrStdout())
		},
	}
	cmd.Flags().StringVarP(&output, "output", "o", "", "write to `FILE`, not to standard output")
	return cmd
}
