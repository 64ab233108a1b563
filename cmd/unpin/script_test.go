package main

import (
	"errors"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"unpin/statics/heaptest"
)

// TestMain makes the real program available to scripts as the command unpin.
func TestMain(m *testing.M) {
	testscript.Main(heaptest.Roomy{M: m}, map[string]func(){"unpin": main})
}

// TestScript runs the scripts in testdata/script, each in an empty folder with its own files beside it. The command
// "exits CODE PROGRAM..." runs a program that must end with that code.
func TestScript(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			env.Setenv("XDG_STATE_HOME", filepath.Join(env.WorkDir, ".state"))
			return nil
		},
		Cmds: map[string]func(ts *testscript.TestScript, neg bool, args []string){"exits": exits},
	})
}

func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("use: exits CODE PROGRAM ARGUMENTS")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	code := 0
	var ended *exec.ExitError
	switch err := ts.Exec(args[1], args[2:]...); {
	case errors.As(err, &ended):
		code = ended.ExitCode()
	case err != nil:
		ts.Fatalf("%v", err)
	}
	if code != want {
		ts.Fatalf("exit code %d, want %d", code, want)
	}
}
