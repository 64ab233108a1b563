package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"unpin/statics/notation"
)

// deliver writes a finished document to the file at path, or to out where path is "" or "-".
func deliver(document []byte, path string, out io.Writer) error {
	if path == "" || path == "-" {
		_, err := out.Write(document)
		return err
	}
	if err := writeWhole(path, document); err != nil {
		return fmt.Errorf("unpin: %s cannot be written: %w", path, plainReason(err))
	}
	return nil
}

// notOver refuses to write over a file that is read, whatever links or spellings of its path name it.
func notOver(cmd *cobra.Command, output string, words []string) error {
	if output == "" || output == "-" {
		return nil
	}
	if word, over := readFrom(cmd.InOrStdin(), output, words); over {
		return usageFault(cmd, "%s would be written over the problem %s, which is read: name another file", output, word)
	}
	return nil
}

// readFrom is the word that means the file at a path, if one does.
func readFrom(in io.Reader, path string, words []string) (string, bool) {
	target, err := os.Stat(path)
	if err != nil || !target.Mode().IsRegular() {
		return "", false
	}
	for _, word := range words {
		source, err := os.Stat(word)
		if file, ok := in.(*os.File); word == "-" && ok {
			source, err = file.Stat()
		}
		if err == nil && !fromLibrary(word) && os.SameFile(source, target) {
			return word, true
		}
	}
	return "", false
}

// A visibleWriter writes texts, each whole, with what would steer a terminal made visible: file names and words typed may
// hold it.
type visibleWriter struct{ to io.Writer }

// Write reports all of the text as written where its visible form was.
func (w visibleWriter) Write(text []byte) (int, error) {
	if _, err := io.WriteString(w.to, notation.VisibleLines(string(text))); err != nil {
		return 0, err
	}
	return len(text), nil
}

// writeWhole writes a file by way of a temporary one beside it, so that a reader finds the old content or the new, never
// half of it. What exists and is no plain file, as a device or a pipe, is written to as it is.
func writeWhole(path string, content []byte) error {
	if target, err := filepath.EvalSymlinks(path); err == nil {
		path = target
	}
	mode := fs.FileMode(0o666)
	switch info, err := os.Stat(path); {
	case err == nil && info.IsDir():
		return errors.New("it is a folder")
	case err == nil && !info.Mode().IsRegular():
		return os.WriteFile(path, content, 0)
	case err == nil:
		mode = info.Mode().Perm()
	}
	temporary := fmt.Sprintf("%s.%d.part", path, os.Getpid())
	unfinished.add(temporary)
	defer unfinished.drop(temporary)
	if err := writeSynced(temporary, content, mode); err != nil {
		os.Remove(temporary)
		return err
	}
	return os.Rename(temporary, path)
}

// writeSynced writes a new file and waits until it is on the disk.
func writeSynced(path string, content []byte, mode fs.FileMode) error {
	file, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return err
	}
	_, err = file.Write(content)
	return errors.Join(err, file.Sync(), file.Close())
}

// plainReason is an error without the operation and the path, which the message around it already tells.
func plainReason(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}
