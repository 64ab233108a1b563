package cells_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
)

var update = flag.Bool("update", false, "rewrite the drawings in testdata")

// TestDrawings draws what each file in testdata asks for. The drawings were looked at one by one; a change to them must
// be looked at too.
func TestDrawings(t *testing.T) {
	t.Parallel()
	motions, err := filepath.Glob(filepath.Join("..", "testdata", "motions", "*.txt"))
	if err != nil || len(motions) == 0 {
		t.Fatal("no motions in testdata")
	}
	for _, file := range append(figuretest.Files(t, "../testdata"), motions...) {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) {
			d, source, want := figuretest.Load(t, file)
			got := all(t, d)
			if *update {
				if err := os.WriteFile(file, []byte(strings.TrimRight(source, "\n")+figuretest.Divider+got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			if got != want {
				t.Errorf("%s draws otherwise:\n%s", file, got)
			}
		})
	}
}

// all is everything the file asks for, one under the other.
func all(t *testing.T, d *figuretest.Drawing) string {
	var b strings.Builder
	for _, asks := range d.Asks {
		fmt.Fprintf(&b, "== %s\n", strings.Join(asks, " "))
		b.WriteString(draw(t, d, asks[1:]))
	}
	return b.String()
}

// draw draws what one line asks for: its words are the scene, perhaps a body, the size, perhaps ascii.
func draw(t *testing.T, d *figuretest.Drawing, words []string) string {
	ascii := words[len(words)-1] == "ascii"
	if ascii {
		words = words[:len(words)-1]
	}
	n := len(words)
	s := d.Scene(t, words[:n-2], ascii)
	g := cells.Draw(s, figuretest.Atoi(words[n-2]), figuretest.Atoi(words[n-1]), ascii)
	if err := g.Check(); err != nil {
		t.Error(err)
	}
	var b strings.Builder
	for _, line := range strings.Split(g.Text(), "\n") {
		b.WriteString(strings.TrimRight(line, " ") + "\n")
	}
	for _, dropped := range g.Dropped {
		b.WriteString("left out: " + dropped + "\n")
	}
	return b.String()
}
