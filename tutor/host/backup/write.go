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
	"hash"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"unpin/tutor/record/database"
)

// The names in the archive.
const (
	headName   = "unpin-backup.json"
	wholeName  = "whole.json"
	folderName = "folder/"
	notesName  = "notes-"
	linesName  = "lines-"
)

// A head begins a backup.
type head struct {
	Version int       `json:"version"`
	Made    time.Time `json:"made"`
}

// version is that of the format.
const version = 1

// A Whole ends a backup, and tells what is in it.
type Whole struct {
	Files  int    `json:"files"`
	Notes  int    `json:"notes"`
	Lines  int    `json:"lines"`
	Digest string `json:"digest"`
}

// DatabaseName is the file of a folder that holds its database, where it is SQLite.
const DatabaseName = "class.db"

// Write writes what a folder and a store hold.
func Write(ctx context.Context, to io.Writer, folder string, store *database.DB, now time.Time) (Whole, error) {
	zip := gzip.NewWriter(to)
	w := &writer{tar: tar.NewWriter(zip), sum: sha256.New(), now: now}
	err := w.all(ctx, folder, store)
	return w.whole, errors.Join(err, w.tar.Close(), zip.Close())
}

// A writer writes an archive.
type writer struct {
	tar   *tar.Writer
	sum   hash.Hash
	now   time.Time
	whole Whole
}

// all writes everything.
func (w *writer) all(ctx context.Context, folder string, store *database.DB) error {
	begins, err := json.Marshal(head{version, w.now.UTC()})
	if err == nil {
		err = w.add(headName, 0o600, begins)
	}
	if err == nil {
		err = w.files(folder)
	}
	if err != nil {
		return err
	}
	notes, lines := &part{w: w, name: notesName}, &part{w: w, name: linesName}
	err = store.Whole(ctx, func(n database.Note) error {
		w.whole.Notes++
		return notes.add(n)
	}, func(k database.Kept) error {
		w.whole.Lines++
		return lines.add(k)
	})
	if err == nil {
		err = errors.Join(notes.end(), lines.end())
	}
	if err != nil {
		return err
	}
	w.whole.Digest = hex.EncodeToString(w.sum.Sum(nil))
	ends, err := json.Marshal(w.whole)
	if err != nil {
		return err
	}
	return w.add(wholeName, 0o600, ends)
}

// add adds a file to the archive, and to the digest.
func (w *writer) add(name string, mode fs.FileMode, content []byte) error {
	digestOf(w.sum, name, content)
	header := &tar.Header{Name: name, Mode: int64(mode.Perm()), Size: int64(len(content)), ModTime: w.now, Typeflag: tar.TypeReg, Format: tar.FormatPAX}
	if err := w.tar.WriteHeader(header); err != nil {
		return err
	}
	_, err := w.tar.Write(content)
	return err
}

// digestOf takes a file into a digest.
func digestOf(sum hash.Hash, name string, content []byte) {
	fmt.Fprintf(sum, "%s\x00%d\x00", name, len(content))
	sum.Write(content)
}

// largestFile bounds a file of a folder, in bytes: sets and problems are texts.
const largestFile = 64 << 20

// files adds the files of a folder and of those in it.
func (w *writer) files(folder string) error {
	return filepath.WalkDir(folder, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		name, err := filepath.Rel(folder, path)
		if err != nil {
			return err
		}
		info, err := os.Stat(path)
		if errors.Is(err, fs.ErrNotExist) { // it has just been removed, or leads nowhere
			return nil
		}
		if err != nil || !info.Mode().IsRegular() || ofDatabase(name) {
			return err
		}
		if info.Size() > largestFile {
			return fmt.Errorf("%s has more than %d MB: move it out of the folder", path, largestFile>>20)
		}
		content, err := os.ReadFile(path)
		if errors.Is(err, fs.ErrNotExist) {
			return nil
		}
		if err != nil {
			return err
		}
		w.whole.Files++
		return w.add(folderName+filepath.ToSlash(name), info.Mode(), content)
	})
}

// ofDatabase reports whether a file of the folder is the database's, or is being written.
func ofDatabase(name string) bool {
	return strings.HasPrefix(name, DatabaseName) || strings.HasSuffix(name, ".part")
}

// A part is a file of the archive with lines of JSON; when it is large another begins.
type part struct {
	w    *writer
	name string
	n    int
	text bytes.Buffer
}

// largePart is when another part begins, in bytes.
const largePart = 4 << 20

// add adds a line.
func (p *part) add(row any) error {
	line, err := json.Marshal(row)
	if err != nil {
		return err
	}
	p.text.Write(line)
	p.text.WriteByte('\n')
	if p.text.Len() < largePart {
		return nil
	}
	return p.end()
}

// end writes what there is.
func (p *part) end() error {
	if p.text.Len() == 0 {
		return nil
	}
	p.n++
	defer p.text.Reset()
	return p.w.add(fmt.Sprintf("%s%06d.jsonl", p.name, p.n), 0o600, p.text.Bytes())
}
