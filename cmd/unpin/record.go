package main

import (
	"bufio"
	"errors"
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"unpin/tutor"
	"unpin/tutor/record"
)

// newRecord tells what a learner has done and knows.
func newRecord() *cobra.Command {
	var r recording
	cmd := &cobra.Command{
		Use:   "record",
		Short: "Say what you have done and know.",
		Long: "Say what was practised here: how many steps of each skill came right at the first try, which skill is due again,\n" +
			"which mistakes came back, and what was done when. A skill stands after five right steps, on three frames and three days;\n" +
			"of a day the first step counts: right it gives a day, with a mistake in the skill it takes one. How far it is stands\n" +
			"beside it. It is due again a day later, then after 3, 7 and 21 days. All of it stays on this computer.",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 0 {
				return usageFault(cmd, "record takes no problem: it tells of all of them")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, _ []string) error { return r.run(cmd) },
	}
	cmd.Flags().Var(oneOf(&r.format, "text", []string{"text", "json", "html"}), "as", "the `FORMAT`: text, json or html, a page with plots")
	cmd.Flags().BoolVar(&r.export, "export", false, "write every line that is kept, as it is kept (JSON, one object a line)")
	cmd.Flags().BoolVar(&r.erase, "erase", false, "erase all practice for good; asks first")
	cmd.Flags().BoolVar(&r.sure, "yes", false, "with --erase: do not ask")
	cmd.Flags().StringVarP(&r.output, "output", "o", "", "write to `FILE`, not to standard output")
	return cmd
}

// recording is what is asked of record.
type recording struct {
	format              string
	export, erase, sure bool
	output              string
}

// run tells, exports or erases.
func (r recording) run(cmd *cobra.Command) error {
	store, err := record.Open()
	if err != nil {
		return err
	}
	switch {
	case r.sure && !r.erase:
		return usageFault(cmd, "--yes has no effect without --erase")
	case r.erase && (r.export || cmd.Flags().Changed("as") || r.output != ""):
		return usageFault(cmd, "--erase goes alone: export first, then erase")
	case r.export && cmd.Flags().Changed("as"):
		return usageFault(cmd, "--export writes the lines as they are kept: leave out --as")
	case r.erase:
		return r.eraseAll(cmd, store)
	case r.export:
		out := cmd.OutOrStdout()
		if isTerminal(out) {
			out = visibleWriter{out}
		}
		return deliverPieces(r.output, out, store.Export)
	}
	all, passed, err := store.Records()
	if err != nil {
		return err
	}
	if text := passed.String(); text != "" {
		fmt.Fprintln(cmd.ErrOrStderr(), "unpin: "+text)
	}
	out := cmd.OutOrStdout()
	if r.format == "text" {
		out = wrapped(out)
	}
	return deliver(r.document(tutor.AccountOf(all, time.Now())), r.output, out)
}

// document is an account in the format that is asked for.
func (r recording) document(a tutor.Account) []byte {
	switch r.format {
	case "json":
		return a.JSON()
	case "html":
		return a.HTML()
	}
	return []byte(strings.Join(a.Lines(), "\n") + "\n")
}

// eraseAll erases all practice once the learner has said so.
func (r recording) eraseAll(cmd *cobra.Command, store *record.Store) error {
	if !r.sure {
		if !isTerminal(cmd.InOrStdin()) {
			return usageFault(cmd, "--erase asks first, and there is no terminal to ask: add --yes")
		}
		fmt.Fprint(cmd.ErrOrStderr(), "All practice on this computer will be gone for good. Type erase to go on: ")
		answer, _ := bufio.NewReader(cmd.InOrStdin()).ReadString('\n')
		if strings.TrimSpace(answer) != "erase" {
			return errors.New("nothing was erased")
		}
	}
	if err := store.Erase(); err != nil {
		return err
	}
	fmt.Fprintln(cmd.ErrOrStderr(), "All practice is erased.")
	return nil
}
