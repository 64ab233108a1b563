package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// lockedBuffer is a buffer that one goroutine writes while another reads.
type lockedBuffer struct {
	lock sync.Mutex
	text bytes.Buffer
}

func (b *lockedBuffer) Write(p []byte) (int, error) {
	b.lock.Lock()
	defer b.lock.Unlock()
	return b.text.Write(p)
}

func (b *lockedBuffer) String() string {
	b.lock.Lock()
	defer b.lock.Unlock()
	return b.text.String()
}

// A file that is watched is inspected at once and at each save, be it written over or replaced; the figure beside it is kept
// fresh; a fault is told, and the figure stays.
func TestWatch(t *testing.T) {
	t.Parallel()
	const beam = "title: Beam of %\nunits: kN m\njoints: {A: [0, 0], B: [%, 0]}\nmembers: [AB]\nsupports: {A: fixed}\n"
	path := filepath.Join(t.TempDir(), "beam.yaml")
	write := func(length string, replace bool) {
		to := path
		if replace {
			to += ".new"
		}
		if err := os.WriteFile(to, []byte(strings.ReplaceAll(beam, "%", length)), 0o666); err != nil {
			t.Error(err)
		}
		if replace {
			if err := os.Rename(to, path); err != nil {
				t.Error(err)
			}
		}
	}
	write("4", false)
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	var out, errs lockedBuffer
	cmd := newInspect()
	cmd.SetContext(ctx)
	cmd.SetArgs([]string{path, "--watch", "--brief"})
	cmd.SetOut(&out)
	cmd.SetErr(&errs)
	ended := make(chan error, 1)
	go func() { ended <- cmd.Execute() }()
	figure := strings.TrimSuffix(path, ".yaml") + ".svg"
	await := func(what string, holds func() bool) {
		t.Helper()
		for end := time.Now().Add(time.Minute); time.Now().Before(end); time.Sleep(10 * time.Millisecond) {
			if holds() {
				return
			}
		}
		t.Errorf("%s does not come:\n%s%s", what, out.String(), errs.String())
	}
	drawn := func(length string) func() bool {
		return func() bool {
			svg, _ := os.ReadFile(figure)
			return strings.Contains(string(svg), length+" m")
		}
	}
	await("the first figure", drawn("4"))
	write("5", false)
	await("the figure after a save", drawn("5"))
	write("6.5", true)
	await("the figure of a file put in place", drawn("6.5"))
	write("x", false)
	await("the fault", func() bool { return strings.Contains(errs.String(), "beam.yaml:3:") })
	if !drawn("6.5")() {
		t.Error("the last figure is gone")
	}
	if n := strings.Count(out.String(), "beam: determinate, grade 1"); n < 3 {
		t.Errorf("it was told %d times:\n%s", n, out.String())
	}
	cancel()
	if err := <-ended; err != nil {
		t.Error(err)
	}
}
