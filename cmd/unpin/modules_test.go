package main

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// modulesFile tells of each module that go.mod requires what it is for, its licence, and why it and not another.
const modulesFile = "../../testdata/measured/modules.md"

// A required module is a line of go.mod.
type required struct {
	path, version string
	indirect      bool
}

// readRequired reads the modules that go.mod requires.
func readRequired(t *testing.T) []required {
	t.Helper()
	text, err := os.ReadFile("../../go.mod")
	if err != nil {
		t.Fatal(err)
	}
	var all []required
	for line := range strings.Lines(string(text)) {
		words := strings.Fields(strings.TrimPrefix(line, "require "))
		if len(words) >= 2 && strings.HasPrefix(words[1], "v") && words[0] != "replace" {
			all = append(all, required{words[0], words[1], strings.HasSuffix(strings.TrimSpace(line), "// indirect")})
		}
	}
	return all
}

// licences are what tells a licence in its text.
var licences = []struct{ name, mark string }{
	{"Apache-2.0", "Apache License"},
	{"Bitstream Vera", "Bitstream Vera"},
	{"BSD-3-Clause", "Neither the name"},
	{"BSD-3-Clause", "may be used to endorse"},
	{"BSD-2-Clause", "Redistribution and use in source"},
	{"MPL-2.0", "Mozilla Public License"},
	{"MIT", "Permission is hereby granted, free of charge"},
}

// licenceIn is the licence that a module's own files give, "its own" where it has none.
func licenceIn(dir string) string {
	files, _ := filepath.Glob(filepath.Join(dir, "[LC][IO][CP][EY][NI]*"))
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			continue
		}
		plain := strings.Join(strings.Fields(string(text)), " ")
		for _, l := range licences {
			if strings.Contains(plain, l.mark) {
				return l.name
			}
		}
	}
	return "none found"
}

// TestModules holds the table of modules to go.mod and to the licences in the modules themselves; -update writes versions
// and licences anew, and a row for a new module, in which the words are still to be written.
func TestModules(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile(modulesFile)
	if err != nil {
		t.Fatal(err)
	}
	head, words := strings.Builder{}, map[string][]string{}
	for lines := bufio.NewScanner(strings.NewReader(string(text))); lines.Scan(); {
		if cells := strings.Split(strings.Trim(lines.Text(), "| "), " | "); strings.HasPrefix(lines.Text(), "| `") && len(cells) == 5 {
			words[strings.Trim(cells[0], "`")] = cells[3:]
			continue
		}
		fmt.Fprintln(&head, lines.Text())
	}
	var rows strings.Builder
	for _, m := range readRequired(t) {
		w := words[m.path]
		if len(w) == 0 {
			w = []string{"?", "?"}
		}
		for _, cell := range w {
			if len(strings.Trim(cell, " ?")) < 3 {
				t.Errorf("%s: it is not said what %s is for, and why it and not another", modulesFile, m.path)
			}
		}
		dir, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", m.path).Output()
		if err != nil {
			t.Fatalf("go list -m %s: %v", m.path, err)
		}
		licence := licenceIn(strings.TrimSpace(string(dir)))
		if strings.TrimSpace(string(dir)) == "" {
			t.Errorf("%s is not in the module cache: go mod download", m.path)
		}
		if _, own := strings.CutSuffix(m.path, ".unpin"); own {
			licence = "the project's"
		}
		fmt.Fprintf(&rows, "| `%s` | %s | %s | %s | %s |\n", m.path, m.version, licence, w[0], w[1])
	}
	want := head.String() + rows.String()
	if *update {
		err = os.WriteFile(modulesFile, []byte(want), 0o666)
	}
	if err != nil {
		t.Fatal(err)
	}
	if !*update && string(text) != want {
		t.Errorf("%s is not what go.mod and the modules say: go test ./cmd/unpin -run TestModules -update", modulesFile)
	}
}
