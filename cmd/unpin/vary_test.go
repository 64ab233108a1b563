package main

import (
	"bytes"
	"os"
	"path/filepath"
	"syscall"
	"testing"
	"time"

	"github.com/spf13/cobra"
)

// A signal to the program in the midst of its work: the exit code is that of the signal, and what is there is whole.
func TestVarySignal(t *testing.T) {
	t.Parallel()
	cmd, dir := shellCommand(t, "exec unpin vary jetty-deck --copies 300 -o copies")
	folder := filepath.Join(dir, "copies")
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	for range 60_000 {
		if written, _ := filepath.Glob(filepath.Join(folder, "*.yaml")); len(written) > 0 {
			break
		}
		time.Sleep(time.Millisecond)
	}
	if err := cmd.Process.Signal(syscall.SIGINT); err != nil {
		t.Fatal(err)
	}
	if cmd.Wait(); cmd.ProcessState.ExitCode() != 130 {
		t.Errorf("exit code %d, want 130", cmd.ProcessState.ExitCode())
	}
	left, err := os.ReadDir(folder)
	if err != nil || len(left) == 0 || len(left) > 300 {
		t.Errorf("%d files are left (%v)", len(left), err)
	}
	for _, f := range left {
		if path := filepath.Join(folder, f.Name()); filepath.Ext(path) != ".yaml" {
			t.Errorf("%s is left", path)
		} else if _, err := find(path, nil); err != nil {
			t.Error(err)
		}
	}
}

// Progress is shown on a terminal alone.
func TestProgressQuiet(t *testing.T) {
	t.Parallel()
	cmd := &cobra.Command{}
	cmd.SetErr(&bytes.Buffer{})
	if progress(cmd, "copies", 10) != nil {
		t.Error("progress is shown where there is no terminal")
	}
}
