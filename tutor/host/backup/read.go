package backup

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"

	"unpin/tutor/record/database"
)

// largest bounds a file of the archive, in bytes: a part may end with one long line.
const largest = largestFile + 16<<20

// each goes over the files of a backup, and makes sure that it is whole.
func each(from io.Reader, take func(name string, mode fs.FileMode, content []byte) error) (whole Whole, err error) {
	zip, err := gzip.NewReader(from)
	if err != nil {
		return whole, fmt.Errorf("it is no backup: %w", err)
	}
	in, sum, got, first := tar.NewReader(zip), sha256.New(), Whole{}, true
	for {
		header, err := in.Next()
		if err != nil {
			return whole, fmt.Errorf("it is no whole backup: %w", ended(err))
		}
		content, err := io.ReadAll(io.LimitReader(in, largest+1))
		switch {
		case err != nil:
			return whole, fmt.Errorf("it is no whole backup: %w", ended(err))
		case header.Typeflag != tar.TypeReg || len(content) > largest:
			return whole, fmt.Errorf("it is no backup of unpin: %s is in it", header.Name)
		case first:
			if err := begun(header.Name, content); err != nil {
				return whole, err
			}
		case header.Name == wholeName:
			got.Digest = hex.EncodeToString(sum.Sum(nil))
			if json.Unmarshal(content, &whole) != nil || whole != got {
				return whole, fmt.Errorf("it is damaged: its digest is %s, and should be %s", got.Digest, whole.Digest)
			}
			if _, err := io.Copy(io.Discard, zip); err != nil { // its own check comes last
				return whole, fmt.Errorf("it is damaged: %w", err)
			}
			return whole, nil
		}
		digestOf(sum, header.Name, content)
		if got.count(header.Name, content); first {
			first = false
			continue
		}
		if err := take(header.Name, fs.FileMode(header.Mode).Perm(), content); err != nil {
			return whole, err
		}
	}
}

// ended says what an end means that comes too early.
func ended(err error) error {
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) {
		return errors.New("its end is missing")
	}
	return err
}

// begun reads the head.
func begun(name string, content []byte) error {
	var h head
	if name != headName || json.Unmarshal(content, &h) != nil {
		return errors.New("it is no backup of unpin")
	}
	if h.Version != version {
		return fmt.Errorf("it is of version %d, from a newer version of unpin: this one knows %d", h.Version, version)
	}
	return nil
}

// count counts what is in a file of the archive.
func (w *Whole) count(name string, content []byte) {
	switch {
	case strings.HasPrefix(name, folderName):
		w.Files++
	case strings.HasPrefix(name, notesName):
		w.Notes += bytes.Count(content, []byte("\n"))
	case strings.HasPrefix(name, linesName):
		w.Lines += bytes.Count(content, []byte("\n"))
	}
}

// Check makes sure that a backup is whole.
func Check(from io.Reader) (Whole, error) {
	return each(from, func(string, fs.FileMode, []byte) error { return nil })
}

// Files writes the files of a backup's folder into a folder.
func Files(from io.Reader, folder string) error {
	root, err := os.OpenRoot(folder)
	if err != nil {
		return err
	}
	defer root.Close()
	_, err = each(from, func(name string, mode fs.FileMode, content []byte) error {
		name, of := strings.CutPrefix(name, folderName)
		if !of {
			return nil
		}
		if !fs.ValidPath(name) || ofDatabase(name) {
			return fmt.Errorf("it is no backup of unpin: %s is in it", name)
		}
		if dir := path.Dir(name); dir != "." {
			if err := root.MkdirAll(filepath.FromSlash(dir), 0o700); err != nil {
				return err
			}
		}
		return root.WriteFile(filepath.FromSlash(name), content, mode)
	})
	return err
}

// Fill fills an empty store from a backup.
func Fill(ctx context.Context, from io.Reader, store *database.DB) error {
	return store.Fill(ctx, func(note func(database.Note) error, line func(database.Kept) error) error {
		_, err := each(from, func(name string, _ fs.FileMode, content []byte) error {
			switch {
			case strings.HasPrefix(name, notesName):
				return rows(content, note)
			case strings.HasPrefix(name, linesName):
				return rows(content, line)
			}
			return nil
		})
		return err
	})
}

// rows reads lines of JSON.
func rows[Row any](content []byte, take func(Row) error) error {
	for line := range bytes.Lines(content) {
		var row Row
		if err := json.Unmarshal(line, &row); err != nil {
			return fmt.Errorf("it is no backup of unpin: %w", err)
		}
		if err := take(row); err != nil {
			return err
		}
	}
	return nil
}
