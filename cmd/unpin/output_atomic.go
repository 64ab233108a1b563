package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// An atomicFile is a file in the writing, by way of a temporary one beside it, so that a reader finds the old content or the
// new, never half of it. What exists and is no plain file, as a device or a pipe, is written to as it is.
type atomicFile struct {
	path      string
	file      *os.File // nil until the first write
	temporary string   // its path, or empty
	private   bool     // a new one is for its owner's eyes only
}

// Write opens the file where it is the first.
func (f *atomicFile) Write(content []byte) (int, error) {
	if f.file == nil {
		if err := f.open(); err != nil {
			return 0, err
		}
	}
	return f.file.Write(content)
}

func (f *atomicFile) open() error {
	if target, err := filepath.EvalSymlinks(f.path); err == nil {
		f.path = target
	}
	mode := fs.FileMode(0o666)
	if f.private {
		mode = 0o600
	}
	switch info, err := os.Stat(f.path); {
	case err == nil && info.IsDir():
		return errors.New("it is a folder")
	case err == nil && !info.Mode().IsRegular():
		f.file, err = os.OpenFile(f.path, os.O_WRONLY|os.O_TRUNC, 0)
		return err
	case err == nil:
		mode = info.Mode().Perm()
	}
	f.temporary = fmt.Sprintf("%s.%d.part", f.path, os.Getpid())
	unfinished.add(f.temporary)
	file, err := os.OpenFile(f.temporary, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		os.Remove(f.temporary)
		unfinished.drop(f.temporary)
		return err
	}
	f.file = file
	return nil
}

// end waits until what was written is on the disk, and puts it in the place of what was there. If the writing had an error
// all stays as it was.
func (f *atomicFile) end(err error) error {
	switch {
	case f.file == nil:
		return err
	case f.temporary == "":
		return errors.Join(err, f.file.Close())
	}
	defer unfinished.drop(f.temporary)
	if err := errors.Join(err, f.file.Sync(), f.file.Close()); err != nil {
		os.Remove(f.temporary)
		return err
	}
	return os.Rename(f.temporary, f.path)
}
