package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"unpin/statics/wording"
	"unpin/tutor/host/backup"
	"unpin/tutor/record/database"
)

// storeFlag is the flag that names a store elsewhere.
func storeFlag(cmd *cobra.Command, to *string) {
	cmd.Flags().StringVar(to, "store", "", "the PostgreSQL at this `ADDRESS`, as postgres://USER@HOST/NAME; if absent class.db in the folder")
}

// newBackup writes all of a class into one file.
func newBackup() *cobra.Command {
	var store string
	cmd := &cobra.Command{
		Use:   "backup FILE [FOLDER]",
		Short: "Write all that a class has into one file, while its host goes on.",
		Long: "Write all that a class has into FILE, while its host goes on: the files of FOLDER (this folder, if it is not named), and what the\n" +
			"store holds, all of it as it is at one moment. Whatever a learner saw kept before is in it. FILE is whole or it is not there; it holds\n" +
			"the host's key and digests of codes, so keep it to yourself. unpin host restore fills an empty folder from it.",
		Args: fileAndFolder,
		RunE: func(cmd *cobra.Command, args []string) error { return runBackup(cmd, args[0], folderOf(args), store) },
	}
	storeFlag(cmd, &store)
	return cmd
}

// fileAndFolder takes a file and, if wanted, a folder.
func fileAndFolder(cmd *cobra.Command, args []string) error {
	if len(args) < 1 || len(args) > 2 {
		return usageFault(cmd, "%s takes a file, and the folder of the class if it is not this one", cmd.Name())
	}
	return nil
}

// folderOf is the folder that is named behind a file, or this one.
func folderOf(args []string) string {
	if len(args) == 2 {
		return args[1]
	}
	return "."
}

// runBackup writes a backup.
func runBackup(cmd *cobra.Command, path, folder, store string) error {
	if _, err := os.Stat(filepath.Join(folder, "roster.csv")); err != nil {
		return usageFault(cmd, "%s is no folder of a class: it has no roster.csv", folder)
	}
	if within(folder, path) {
		return usageFault(cmd, "%s is in the folder that is backed up: name a file elsewhere", path)
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
	defer data.Close()
	var whole backup.Whole
	err = deliverFile(&atomicFile{path: path, private: true}, func(to io.Writer) (err error) {
		whole, err = backup.Write(cmd.Context(), to, folder, data, time.Now())
		return err
	})
	if err != nil {
		return err
	}
	fmt.Fprintf(cmd.ErrOrStderr(), "Written to %s: %s.\n", path, contents(whole))
	return nil
}

// contents says what is in a backup.
func contents(w backup.Whole) string {
	return fmt.Sprintf("%s of the folder, %s and %s of the store; digest %s", wording.Counted(w.Files, "file"), wording.Counted(w.Notes, "note"), wording.Counted(w.Lines, "line"), w.Digest)
}

// within reports whether a file is in a folder, or below.
func within(folder, path string) bool {
	rest, err := filepath.Rel(resolved(folder), filepath.Join(resolved(filepath.Dir(path)), filepath.Base(path)))
	return err == nil && rest != ".." && !strings.HasPrefix(rest, ".."+string(filepath.Separator))
}

// resolved is a path from the root without links, as far as that can be told.
func resolved(path string) string {
	if plain, err := filepath.EvalSymlinks(path); err == nil {
		path = plain
	}
	return absolute(path)
}

// newRestore fills an empty folder from a backup.
func newRestore() *cobra.Command {
	var store string
	cmd := &cobra.Command{
		Use:   "restore FILE [FOLDER]",
		Short: "Fill an empty folder, and an empty store, from a backup.",
		Long: "Fill FOLDER (this folder, if it is not named) and its store from FILE, which unpin host backup has written: here or on another\n" +
			"computer, with the same or another kind of store. Both must be empty: nothing is written over. The folder is filled whole or not at\n" +
			"all. Then unpin host FOLDER serves it, with the same key, codes and records.",
		Args: fileAndFolder,
		RunE: func(cmd *cobra.Command, args []string) error { return runRestore(cmd, args[0], folderOf(args), store) },
	}
	storeFlag(cmd, &store)
	return cmd
}

// runRestore restores a backup: into a folder beside the one that is meant, which then takes its place.
func runRestore(cmd *cobra.Command, path, folder, store string) (err error) {
	file, err := os.Open(path)
	if err != nil {
		return fmt.Errorf("unpin: %s cannot be read: %w", path, plainReason(err))
	}
	defer file.Close()
	whole, err := backup.Check(file)
	if err != nil {
		return fmt.Errorf("unpin: %s cannot be restored: %w", path, err)
	}
	if entries, err := os.ReadDir(folder); err == nil && len(entries) > 0 {
		return fmt.Errorf("unpin: %s is not empty: nothing is written over; name a new folder", folder)
	} else if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("unpin: %s: %w", folder, plainReason(err))
	}
	folder = resolved(folder)
	beside, err := os.MkdirTemp(filepath.Dir(folder), filepath.Base(folder)+".*.part")
	if err != nil {
		return fmt.Errorf("unpin: %s cannot be made: %w", folder, plainReason(err))
	}
	defer os.RemoveAll(beside)
	if store == "" {
		store = filepath.Join(beside, backup.DatabaseName)
	}
	if err := refill(cmd, file, beside, store); err != nil {
		return err
	}
	if err := os.Remove(folder); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("unpin: %s cannot be filled: %w", folder, plainReason(err))
	}
	if err := os.Rename(beside, folder); err != nil {
		return fmt.Errorf("unpin: %s cannot be filled: %w", folder, plainReason(err))
	}
	fmt.Fprintf(cmd.ErrOrStderr(), "Restored into %s: %s.\n", folder, contents(whole))
	return nil
}

// refill writes the files of a backup into a folder, and fills a store.
func refill(cmd *cobra.Command, file io.ReadSeeker, folder, store string) error {
	if _, err := file.Seek(0, io.SeekStart); err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	if err := backup.Files(file, folder); err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	if _, err := file.Seek(0, io.SeekStart); err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	data, err := openStore(cmd, store)
	if err != nil {
		return err
	}
	err = backup.Fill(cmd.Context(), file, data)
	if errors.Is(err, database.ErrNotEmpty) {
		err = fmt.Errorf("%s: %w", databaseName(store), err)
	}
	if err = errors.Join(err, data.Close()); err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	return nil
}
