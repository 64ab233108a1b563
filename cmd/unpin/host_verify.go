package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/host"
	"unpin/tutor/host/backup"
)

// newVerify holds papers against the signature of the class.
func newVerify() *cobra.Command {
	var store string
	cmd := &cobra.Command{
		Use:   "verify FILE [FOLDER]",
		Short: "Say whether papers are as the class's host signed them.",
		Long: "Say whether the papers in FILE, as ssh class@ADDRESS answers SET writes them, are as a host of the class in FOLDER (this folder, if\n" +
			"it is not named) signed them (Ed25519). Whatever byte was changed, added or taken out shows, with the lines of its paper. The exit\n" +
			"code is 1 if one is not as it was signed.",
		Args: fileAndFolder,
		RunE: func(cmd *cobra.Command, args []string) error { return runVerify(cmd, args[0], folderOf(args), store) },
	}
	storeFlag(cmd, &store)
	return cmd
}

// runVerify verifies papers.
func runVerify(cmd *cobra.Command, path, folder, store string) (err error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return fmt.Errorf("unpin: %s cannot be read: %w", path, plainReason(err))
	}
	if store == "" {
		store = filepath.Join(folder, backup.DatabaseName)
		if _, err := os.Stat(store); err != nil {
			return usageFault(cmd, "%s has no %s: has it been served yet, or is its store elsewhere (--store)?", folder, backup.DatabaseName)
		}
	}
	data, err := openStore(cmd, store)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, data.Close()) }()
	key, err := host.PaperKey(data)
	if err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	papers, bad := host.Verify(string(text), key)
	if bad != nil {
		fmt.Fprintf(cmd.OutOrStdout(), "%s:\n%s\n", notation.Visible(path), bad)
		return errNo
	}
	fmt.Fprintf(cmd.OutOrStdout(), "%s in %s, as a host of the class signed them.\n", wording.Counted(papers, "paper"), notation.Visible(path))
	return nil
}
