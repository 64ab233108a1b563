package record

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"unpin/statics/notation"
)

// preferencesName is the file beside the practice that keeps a learner's own conventions: one line, as
// notation.ReadPreferences reads it.
const preferencesName = "conventions"

// preferencesPath is where the learner's own conventions are kept.
func (s *Store) preferencesPath() string { return filepath.Join(filepath.Dir(s.path), preferencesName) }

// mostPreferences is the longest file of conventions that is read, in bytes.
const mostPreferences = 4096

// Preferences are the learner's own conventions; none where nothing was kept. The error says of a file that cannot be
// used what to do about it.
func (s *Store) Preferences() (notation.Preferences, error) {
	info, err := os.Stat(s.preferencesPath())
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err == nil && (!info.Mode().IsRegular() || info.Size() > mostPreferences) {
		err = errors.New("it is no short text")
	}
	var data []byte
	if err == nil {
		data, err = os.ReadFile(s.preferencesPath())
	}
	var p notation.Preferences
	if err == nil {
		p, err = notation.ReadPreferences(strings.TrimSpace(string(data)))
	}
	if err != nil {
		return nil, fmt.Errorf("your own conventions in %s cannot be read: %w; --ask default removes them", s.preferencesPath(), err)
	}
	return p, nil
}

// Prefer keeps the learner's own conventions in place of earlier ones, whole or not at all; none removes the file.
func (s *Store) Prefer(p notation.Preferences) error {
	path := s.preferencesPath()
	var err error
	if len(p) == 0 {
		if err = os.Remove(path); errors.Is(err, fs.ErrNotExist) {
			err = nil
		}
	} else {
		err = replace(path, []byte(p.String()+"\n"))
	}
	if err != nil {
		return fmt.Errorf("your own conventions cannot be kept: %w", err)
	}
	return nil
}

// replace writes a file by way of another beside it.
func replace(path string, data []byte) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	f, err := os.CreateTemp(filepath.Dir(path), filepath.Base(path)+".*")
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err = errors.Join(err, f.Close()); err == nil {
		err = os.Rename(f.Name(), path)
	}
	if err != nil {
		os.Remove(f.Name())
	}
	return err
}
