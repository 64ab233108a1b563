package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"

	"github.com/spf13/cobra"

	"unpin/statics/notation"
)

// deliver writes a finished document to the file at path, or to out where path is "" or "-".
func deliver(document []byte, path string, out io.Writer) error {
	return deliverPieces(path, out, func(to io.Writer) error {
		_, err := to.Write(document)
		return err
	})
}

// deliverPieces has a document written piece by piece to the file at path, or to out where path is "" or "-". Where nothing
// is written no file comes to be.
func deliverPieces(path string, out io.Writer, write func(to io.Writer) error) error {
	if path == "" || path == "-" {
		return write(out)
	}
	return deliverFile(&atomicFile{path: path}, write)
}

// deliverPrivate is deliver for what only its owner may read.
func deliverPrivate(document []byte, path string, out io.Writer) error {
	write := func(to io.Writer) error {
		_, err := to.Write(document)
		return err
	}
	if path == "" || path == "-" {
		return write(out)
	}
	return deliverFile(&atomicFile{path: path, private: true}, write)
}

// deliverFile has a file written, whole or not at all.
func deliverFile(file *atomicFile, write func(to io.Writer) error) error {
	if err := file.end(write(file)); err != nil {
		return fmt.Errorf("unpin: %s cannot be written: %w", file.path, plainReason(err))
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

// plainReason is an error without the operation and the path, which the message around it already tells.
func plainReason(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}
