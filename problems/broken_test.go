package problems

import (
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"
)

var update = flag.Bool("update", false, "rewrite the expected texts in testdata")

// TestBroken holds the message of every broken file against the text beside it.
func TestBroken(t *testing.T) {
	files := brokenFiles(t)
	if len(files) < 45 {
		t.Errorf("%d broken files; there were more", len(files))
	}
	for _, path := range files {
		t.Run(filepath.Base(path), func(t *testing.T) {
			_, err := Read(filepath.Base(path), readFile(t, path))
			if err == nil {
				t.Fatal("no fault was found")
			}
			compare(t, strings.TrimSuffix(path, filepath.Ext(path))+".txt", err.Error()+"\n")
		})
	}
}

// TestFaultsHavePlaces checks of every fault of the broken files that its place is in the file and that it says what
// would be right.
func TestFaultsHavePlaces(t *testing.T) {
	t.Parallel()
	for _, path := range brokenFiles(t) {
		data := readFile(t, path)
		_, err := Read(filepath.Base(path), data)
		checkPlaces(t, data, err)
	}
}

// byteOrderMark may stand before a text; editors neither show nor count it.
const byteOrderMark = "\ufeff"

// checkPlaces reports faults that are not in the file, are out of order or lack words.
func checkPlaces(t *testing.T, data []byte, err error) {
	t.Helper()
	faults := (*Faults)(nil)
	if !errors.As(err, &faults) {
		t.Fatalf("%v is no *Faults", err)
	}
	lines := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.TrimPrefix(string(data), byteOrderMark)), "\n")
	last := Fault{Line: 1, Column: 1}
	for _, f := range faults.List {
		if f.Line < 1 || f.Line > len(lines) || f.Column < 1 || f.Column > len([]rune(lines[f.Line-1]))+1 {
			t.Errorf("%d:%d is not in the file: %s", f.Line, f.Column, f.Problem)
		}
		if f.Line < last.Line || f.Line == last.Line && f.Column < last.Column {
			t.Errorf("%d:%d comes after %d:%d", f.Line, f.Column, last.Line, last.Column)
		}
		if f.Problem == "" || f.Remedy == "" || strings.HasSuffix(f.Problem, ".") {
			t.Errorf("%d:%d: %q, %q", f.Line, f.Column, f.Problem, f.Remedy)
		}
		checkCarets(t, lines[f.Line-1], f)
		last = f
	}
}

// checkCarets reports an excerpt whose carets do not begin beneath the character of the fault's column.
func checkCarets(t *testing.T, line string, f Fault) {
	t.Helper()
	if f.Excerpt == "" {
		return
	}
	shown, carets, _ := strings.Cut(f.Excerpt, "\n")
	at := len(carets) - len(strings.TrimLeft(carets, " "))
	under, column := []rune(shown), []rune(line)
	switch inShown, inLine := at < len(under), f.Column <= len(column); {
	case inShown != inLine:
		t.Errorf("%d:%d: the carets are not beneath the column\n%s", f.Line, f.Column, f.Excerpt)
	case inShown && under[at] != column[f.Column-1] && unicode.IsPrint(column[f.Column-1]) && !unicode.Is(unicode.Mn, column[f.Column-1]):
		t.Errorf("%d:%d: %c stands above the carets, not %c", f.Line, f.Column, under[at], column[f.Column-1])
	}
}

func brokenFiles(t *testing.T) []string {
	t.Helper()
	var files []string
	for _, pattern := range []string{"*.yaml", "*.json"} {
		found, err := filepath.Glob(filepath.Join("..", "testdata", "broken", pattern))
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, found...)
	}
	return files
}

func readFile(t testing.TB, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// compare holds a text against a file, or with -update writes it there.
func compare(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if want := string(readFile(t, path)); got != want {
		t.Errorf("%s: got\n%s\nwant\n%s", path, got, want)
	}
}
