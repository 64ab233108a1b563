//go:build unix

package main

import (
	"bytes"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"
	"time"
)

// TestKilledWriting ends the program at any moment while it writes a document over an older one, by SIGKILL and by SIGTERM: the older
// one is there or the new one, never half of it; and after SIGTERM nothing else.
func TestKilledWriting(t *testing.T) {
	t.Parallel()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	bin := filepath.Join(dir, "unpin")
	if err := os.Symlink(self, bin); err != nil {
		t.Fatal(err)
	}
	write := func(path string) *exec.Cmd {
		return exec.Command(bin, "solve", "jetty-deck", "--as", "html", "-o", path)
	}
	whole := filepath.Join(dir, "whole.html")
	began := time.Now()
	if out, err := write(whole).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	long := time.Since(began)
	document, err := os.ReadFile(whole)
	if err != nil {
		t.Fatal(err)
	}
	runs := 200
	if testing.Short() {
		runs = 20
	}
	random := rand.New(rand.NewPCG(1, 2))
	old, before, after := []byte("the older document\n"), 0, 0
	for run := range runs {
		folder := t.TempDir()
		path := filepath.Join(folder, "out.html")
		if err := os.WriteFile(path, old, 0o600); err != nil {
			t.Fatal(err)
		}
		cmd := write(path)
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(time.Duration(random.Int64N(int64(long * 5 / 4))))
		sig := []os.Signal{syscall.SIGKILL, syscall.SIGTERM}[run%2]
		cmd.Process.Signal(sig)
		cmd.Wait()
		switch got, err := os.ReadFile(path); {
		case err != nil:
			t.Fatal(err)
		case bytes.Equal(got, old):
			before++
		case bytes.Equal(got, document):
			after++
		default:
			t.Fatalf("after %v there are %d bytes, neither the older document nor the new one", sig, len(got))
		}
		if files, _ := os.ReadDir(folder); sig == syscall.SIGTERM && len(files) != 1 {
			t.Errorf("after SIGTERM there are %d files", len(files))
		}
	}
	t.Logf("%d ended before the document was there, %d after", before, after)
}
