package main

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// A fate is what becomes of a fault.
type fate string

// The fates.
const (
	unfit       fate = "does not build"
	killedByOwn fate = "killed by own"
	killedByAll fate = "killed by all"
	survived    fate = "SURVIVED"
)

// tryFault runs the tests of the package that a fault is in and, if these pass, those of everything. It returns the lines that tell
// which failed. A test that does not end is one that fails.
func tryFault(s site, everything string) (fate, string, error) {
	folder, err := os.MkdirTemp("", "mutant")
	if err != nil {
		return "", "", err
	}
	defer os.RemoveAll(folder)
	overlay, err := overlayOf(s, folder)
	if err != nil {
		return "", "", err
	}
	if exec.Command("go", "build", overlay, s.pkg).Run() != nil {
		return unfit, "", nil
	}
	if failed := runTests([]string{overlay}, s.pkg); failed != "" {
		return killedByOwn, failed, nil
	}
	if failed := runTests([]string{overlay}, everything); failed != "" {
		return killedByAll, failed, nil
	}
	return survived, "", nil
}

// builds reports whether the code with a fault compiles.
func builds(s site) (bool, error) {
	folder, err := os.MkdirTemp("", "mutant")
	if err != nil {
		return false, err
	}
	defer os.RemoveAll(folder)
	overlay, err := overlayOf(s, folder)
	return err == nil && exec.Command("go", "build", overlay, s.pkg).Run() == nil, err
}

// overlayOf writes the file with the fault into a folder, and returns the flag that has it compiled in place of the true one.
func overlayOf(s site, folder string) (string, error) {
	code, err := os.ReadFile(s.file)
	if err != nil {
		return "", err
	}
	changed := string(code[:s.from]) + s.now + string(code[s.to:])
	file, list := filepath.Join(folder, "fault.go"), filepath.Join(folder, "overlay.json")
	if err := os.WriteFile(file, []byte(changed), 0o666); err != nil {
		return "", err
	}
	replace, err := json.Marshal(map[string]map[string]string{"Replace": {s.file: file}})
	if err != nil {
		return "", err
	}
	return "-overlay=" + list, os.WriteFile(list, replace, 0o666)
}

// runTests runs the tests of some packages, and returns the lines that tell which failed, or nothing.
func runTests(flags []string, packages string) string {
	args := append([]string{"test", "-vet=off", "-failfast", "-timeout=10m"}, flags...)
	out, err := exec.Command("go", append(args, packages)...).CombinedOutput()
	if err == nil {
		return ""
	}
	var failed []string
	for line := range bytes.Lines(out) {
		text := strings.TrimRight(string(line), "\n")
		if strings.HasPrefix(text, "--- FAIL") || strings.HasPrefix(text, "FAIL\t") || strings.HasPrefix(text, "panic:") {
			failed = append(failed, "       "+text)
		}
	}
	if len(failed) == 0 {
		return string(out)
	}
	return strings.Join(failed, "\n")
}
