package record

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/statics/notation"
)

// What a learner prefers is kept until it is changed or removed, and nothing else is left beside it.
func TestPreferencesAreKept(t *testing.T) {
	t.Parallel()
	s := At(filepath.Join(t.TempDir(), "unpin", "practice.jsonl"))
	for _, text := range []string{"", "moments=cw", "shear=counter-clockwise,figures=4", "", ""} {
		var p notation.Preferences
		if text != "" {
			p, _ = notation.ReadPreferences(text)
		}
		if err := s.Prefer(p); err != nil {
			t.Fatal(err)
		}
		got, err := s.Preferences()
		if err != nil || got.String() != text {
			t.Errorf("kept %q, read %q: %v", text, got, err)
		}
		files, _ := os.ReadDir(filepath.Dir(s.log.Place(preferencesName)))
		if want := min(1, len(text)); len(files) != want {
			t.Errorf("after %q there are %d files", text, len(files))
		}
	}
}

// A file that cannot be used is told with its path and what to do, and can be removed.
func TestPreferencesOfNoUse(t *testing.T) {
	t.Parallel()
	for _, text := range []string{"moments=left", "", "\x00\xff", strings.Repeat("moments=cw,", 1000)} {
		s := At(filepath.Join(t.TempDir(), "practice.jsonl"))
		if err := os.WriteFile(s.log.Place(preferencesName), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		p, err := s.Preferences()
		if err == nil || len(p) > 0 || !strings.Contains(err.Error(), s.log.Place(preferencesName)) || !strings.Contains(err.Error(), "--ask default") {
			t.Errorf("%.20q: %v, %v", text, p, err)
		}
		if err := s.Prefer(nil); err != nil {
			t.Error(err)
		}
		if p, err := s.Preferences(); err != nil || len(p) > 0 {
			t.Errorf("after removal %v, %v", p, err)
		}
	}
}
