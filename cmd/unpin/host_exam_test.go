//go:build unix

package main

import (
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// A backup in the middle of an exam, restored as on a second machine: the same paper, where it was, with the same end.
func TestExamRestored(t *testing.T) {
	t.Parallel()
	bin := unpinBinary(t)
	folder, code := classFolder(t, bin)
	set := "id: w5\ntitle: Week 5\nseed: a secret\nlevel: values\nminutes: 60\nopens: " + time.Now().Add(-time.Hour).UTC().Format("2006-01-02T15:04Z07:00") +
		"\nproblems:\n  - {problem: jetty-deck, points: 10}\n  - {problem: riding-hall, points: 15}\n"
	if err := os.WriteFile(filepath.Join(folder, "w5.yaml"), []byte(set), 0o600); err != nil {
		t.Fatal(err)
	}
	first := startHost(t, bin, folder, "--listen", "127.0.0.1:0")
	l := visit(t, first.port(t), code, "plain w5")
	io.WriteString(l.in, "begin\njetty-deck\n0\n12\n")
	l.out.says(t, `(?s)(noted.*){2}`)
	end := l.out.says(t, `until \S+ \d\d:\d\d`)[0]
	load := l.out.says(t, `A force of \S+ kN acts down on AB`)[0]
	file, again := filepath.Join(t.TempDir(), "class.backup"), filepath.Join(t.TempDir(), "again")
	for _, words := range [][]string{{"host", "backup", file, folder}, {"host", "restore", file, again}} {
		if out, err := exec.Command(bin, words...).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
	}
	first.Process.Kill()
	m := visit(t, startHost(t, bin, again, "--listen", "127.0.0.1:0").port(t), code, "plain w5")
	m.out.says(t, `\? problem`)
	io.WriteString(m.in, "jetty-deck\n")
	m.out.says(t, `\? Ay`) // the third: two are answered
	if got := m.out.says(t, `until \S+ \d\d:\d\d`)[0]; got != end {
		t.Errorf("it ends %s, not %s", got, end)
	}
	if got := m.out.says(t, `A force of \S+ kN acts down on AB`)[0]; got != load {
		t.Errorf("its numbers are others: %s, not %s", got, load)
	}
}
