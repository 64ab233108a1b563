//go:build !windows

package main

import (
	"strings"
	"testing"
	"time"

	"github.com/creack/pty"
	"github.com/spf13/cobra"
)

// On a terminal a bar shows how far a long work is, though what is told passes the writer that makes texts visible; at the
// end it is taken away.
func TestProgressBar(t *testing.T) {
	t.Parallel()
	screen, tty, err := pty.Open()
	if err != nil {
		t.Fatal(err)
	}
	defer screen.Close()
	defer tty.Close()
	cmd := &cobra.Command{}
	cmd.SetErr(visibleWriter{tty})
	begun := time.Now()
	shown := progress(cmd, "copies found", 10)
	if shown == nil {
		t.Fatal("no progress is shown on a terminal")
	}
	shown(2)
	early := time.Since(begun) < patience // a busy machine may be late already, and then the 2 is shown too
	time.Sleep(patience + 50*time.Millisecond)
	shown(3)
	shown(10)
	tty.WriteString("end\n")
	text, buffer := "", make([]byte, 1000)
	for !strings.Contains(text, "end") {
		n, err := screen.Read(buffer)
		if err != nil {
			t.Fatal(err)
		}
		text += string(buffer[:n])
	}
	if want := "\rcopies found [#########.....................] 3 of 10 \r" + strings.Repeat(" ", 78) + "\rend"; !strings.Contains(text, want) || early && !strings.HasPrefix(text, want) {
		t.Errorf("%q, want %q", text, want)
	}
}
