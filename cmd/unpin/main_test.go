package main

import (
	"bytes"
	"strings"
	"testing"
)

// A broken reader stands for a fault of the program anywhere beneath.
type brokenReader struct{}

func (brokenReader) Read([]byte) (int, error) { panic("out of order") }

// TestGuard makes sure that a fault of the program comes out as one line and an exit code.
func TestGuard(t *testing.T) {
	var out, errs bytes.Buffer
	if code := run([]string{"solve", "-"}, brokenReader{}, &out, &errs); code != badIn {
		t.Errorf("exit code %d", code)
	}
	if got := errs.String(); got != "unpin: internal error: out of order (a fault of the program, whatever the input)\n" {
		t.Errorf("message %q", got)
	}
	if out.Len() > 0 {
		t.Errorf("output %q", out.String())
	}
}

// TestExitCodes holds run itself, in one process, to the exit codes that scripts see of the whole program.
func TestExitCodes(t *testing.T) {
	const frame = `{title: t, units: kN m, joints: {A: [0, 0], B: [4, 0]}, members: [AB], supports: {A: pin, B: SUPPORT}}`
	for support, want := range map[string]int{"{roller: up}": done, "pin": no, "{roller: right}": no, "hook": badIn} {
		var out, errs bytes.Buffer
		in := strings.NewReader(strings.Replace(frame, "SUPPORT", support, 1))
		if code := run([]string{"inspect", "-"}, in, &out, &errs); code != want {
			t.Errorf("support %s: exit code %d, want %d\n%s%s", support, code, want, out.String(), errs.String())
		}
		if (errs.Len() > 0) != (want == badIn) || (out.Len() > 0) == (want == badIn) {
			t.Errorf("support %s: output %q, errors %q", support, out.String(), errs.String())
		}
	}
}
