package variant

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestRosters reads every roster of testdata, good and broken, and holds what comes of it against the text beside it.
func TestRosters(t *testing.T) {
	t.Parallel()
	files, err := filepath.Glob("testdata/roster/*.csv")
	if err != nil || len(files) < 6 {
		t.Fatalf("%d rosters, %v", len(files), err)
	}
	for _, path := range files {
		file, err := os.Open(path)
		if err != nil {
			t.Fatal(err)
		}
		r, err := ReadRoster(filepath.Base(path), file)
		file.Close()
		var text strings.Builder
		if err != nil {
			fmt.Fprintln(&text, err)
		} else {
			for _, s := range r.Students {
				fmt.Fprintf(&text, "%+v\n", s)
			}
			fmt.Fprintf(&text, "ignored %q\n", r.Ignored)
		}
		compare(t, strings.TrimSuffix(path, ".csv")+".txt", text.String())
	}
}

// Any text is a roster or a fault with its line; no text is a crash.
func TestAnyRoster(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		pieces := []string{"id", "name", "extra", ",", ";", "\t", "\r", "\n", "\"", "'", "=", "+", "-", "a", "7", "\ufeff", "\x80"}
		text := strings.Join(rapid.SliceOfN(rapid.SampledFrom(pieces), 0, 40).Draw(t, "text"), "")
		if r, err := ReadRoster("r.csv", strings.NewReader(text)); err != nil {
			if !strings.HasPrefix(err.Error(), "r.csv:") {
				t.Fatalf("%q: %v", text, err)
			}
		} else if len(r.Students) == 0 {
			t.Fatalf("%q has no students and no fault", text)
		}
	})
}

// What is written is read back, whatever it holds, and no cell of it is run by a spreadsheet.
func TestCells(t *testing.T) {
	t.Parallel()
	for cell, want := range map[string]string{"=1": "'=1", "+1": "'+1", "@a": "'@a", "-": "'-", "-a": "'-a", "-9": "-9", "-.5": "-.5", "a": "a",
		"": "", "'a": "'a", "'=1": "''=1", "\tx": "'\tx"} {
		if got := SafeCell(cell); got != want {
			t.Errorf("%q is made %q, not %q", cell, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		cell := rapid.StringMatching("['=+@\t-]{0,3}[a-z0-9.]{0,3}").Draw(t, "cell")
		safe := SafeCell(cell)
		if runnable(safe) || BareCell(safe) != cell {
			t.Fatalf("%q is made %q and read as %q", cell, safe, BareCell(safe))
		}
	})
}

// FuzzReadRoster reads rosters of any content: a roster or a fault, no panic.
func FuzzReadRoster(f *testing.F) {
	f.Add("id,name,group\ns1,Ada,a\n")
	f.Add("\xef\xbb\xbfid;extra\r\n\"s\"\"1\";25\r\n")
	f.Fuzz(func(t *testing.T, text string) {
		roster, err := ReadRoster("roster.csv", strings.NewReader(text))
		if (roster == nil) == (err == nil) {
			t.Errorf("roster %v, fault %v", roster, err)
		}
	})
}
