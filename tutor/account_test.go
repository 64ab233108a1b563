package tutor

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"unpin/tutor/record"
)

// An account of the records in testdata/account.jsonl, in all its forms.
func TestAccount(t *testing.T) {
	t.Parallel()
	all, passed, err := record.At("testdata/account.jsonl").Records()
	if err != nil || passed.String() != "" {
		t.Fatal(err, passed)
	}
	a := AccountOf(all, time.Date(2026, 4, 2, 9, 0, 0, 0, time.UTC))
	for name, got := range map[string][]byte{
		"account.txt": []byte(strings.Join(a.Lines(), "\n") + "\n"), "account.json": a.JSON(), "account.html": a.HTML(),
	} {
		golden(t, name, got)
		if bytes.ContainsAny(got, "\x1b\u202e") {
			t.Errorf("%s holds what steers a terminal", name)
		}
	}
}

// An account of nothing says so, in all forms.
func TestAccountOfNothing(t *testing.T) {
	t.Parallel()
	a := AccountOf(nil, time.Unix(0, 0))
	if lines := a.Lines(); len(lines) != 1 || !bytes.Contains(a.HTML(), []byte("Nothing has been practised")) || !bytes.Contains(a.JSON(), []byte(`"skills": []`)) {
		t.Errorf("%q, %s, %s", lines, a.HTML(), a.JSON())
	}
}

// golden holds what was made against a file of testdata, or writes it there with -update.
func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if want, err := os.ReadFile(path); err != nil || !bytes.Equal(got, want) {
		t.Errorf("%s differs (%v); got:\n%s", name, err, got)
	}
}
