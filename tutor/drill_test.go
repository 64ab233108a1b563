package tutor

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/problems"
)

// TestDrills plays what each file of testdata/drills asks for: its first line is a form, a problem, for a mistake also a skill or "any",
// and a number; the lines up to the divider are typed; then stands what the student sees.
func TestDrills(t *testing.T) {
	t.Parallel()
	const divider = "----\n"
	files, err := filepath.Glob(filepath.Join("testdata", "drills", "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatal("no drills in testdata")
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		asked, want, _ := strings.Cut(string(data), divider)
		head, typed, _ := strings.Cut(asked, "\n")
		var out bytes.Buffer
		if err := PlainDrill(drillOf(t, head), strings.NewReader(typed), &out); err != nil {
			t.Fatal(err)
		}
		if *update {
			if err := os.WriteFile(file, []byte(asked+divider+out.String()), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if out.String() != want {
			t.Errorf("%s plays otherwise:\n%s", file, out.String())
		}
	}
}

// drillOf is the drill that a line asks for.
func drillOf(t *testing.T, head string) *Drill {
	t.Helper()
	var form, name, skill string
	var n uint64
	fmt.Sscan(head, &form, &name, &skill, &n)
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("there is no %s", name)
	}
	d, err := FindTheMistake(p, skill, n)
	if form == "sketch" {
		d, err = Sketch(p, n)
	}
	if err != nil {
		t.Fatal(err)
	}
	return d
}
