package record

import (
	"errors"
	"fmt"
	"strings"

	"unpin/statics/notation"
)

// preferencesName is the note that keeps a learner's own conventions: one line, as
// notation.ReadPreferences reads it.
const preferencesName = "conventions"

// mostPreferences is the longest text of conventions that is read, in bytes.
const mostPreferences = 4096

// Preferences are the learner's own conventions; none where nothing was kept. The error says of a file that cannot be
// used what to do about it.
func (s *Store) Preferences() (notation.Preferences, error) {
	text, err := s.log.Note(preferencesName)
	if err == nil && len(text) > mostPreferences {
		err = errors.New("it is no short text")
	}
	if err == nil && text == nil {
		return nil, nil
	}
	var p notation.Preferences
	if err == nil {
		p, err = notation.ReadPreferences(strings.TrimSpace(string(text)))
	}
	if err != nil {
		return nil, fmt.Errorf("your own conventions in %s cannot be read: %w; --ask default removes them", s.log.Place(preferencesName), err)
	}
	return p, nil
}

// Prefer keeps the learner's own conventions in place of earlier ones, whole or not at all; none removes them.
func (s *Store) Prefer(p notation.Preferences) error {
	var text []byte
	if len(p) > 0 {
		text = []byte(p.String() + "\n")
	}
	if err := s.log.SetNote(preferencesName, text); err != nil {
		return fmt.Errorf("your own conventions cannot be kept: %w", err)
	}
	return nil
}
