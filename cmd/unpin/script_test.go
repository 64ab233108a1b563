package main

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain makes the real program available to scripts as the command unpin.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"unpin": main})
}

// TestScript runs the scripts in testdata/script, each in an empty folder with its own files beside it.
func TestScript(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			root, err := os.Getwd()
			env.Setenv("PROJECT", root+"/../..")
			return err
		},
	})
}
