package main

import (
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"strings"
)

// strangers are words that say where and by what means the project was made, which is no business of its readers. The
// pattern is put together from pieces so that this file does not hold them.
var strangers = regexp.MustCompile(`(?i)` + strings.Join([]string{
	`/wo` + `rk/`, `/ro` + `ot/`, `/ho` + `me/`, `/tm` + `p/`, // places on one machine
	`proxy\.gol` + `ang`, `sum\.gol` + `ang`, `gosum` + `db`, // hosts of module registries
	`\bsess` + `ions?\b`, `\bsub-?ag` + `ents?\b`, `\bag` + `ents?\b`, `\bsha` + `red/`, `\bissue (#|\d)`, `see` + `d document`,
}, "|"))

// checkWords looks for strangers in documents, scripts, problem files and code.
func checkWords(h *house) []string {
	var complaints []string
	err := fs.WalkDir(h.files, ".", func(name string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && (name == ".git" || entry.Name() == "fuzz"):
			return fs.SkipDir
		case entry.IsDir() || name == "go.sum" || !wordy(name):
			return nil
		}
		text, err := fs.ReadFile(h.files, name)
		for i, line := range strings.Split(string(text), "\n") {
			if found := strangers.FindString(line); found != "" && !strings.HasPrefix(name, "cmd/unpin/testdata/house/") {
				complaints = append(complaints, fmt.Sprintf("%s:%d: %q does not belong in the project", name, i+1, found))
			}
		}
		return err
	})
	if err != nil {
		complaints = append(complaints, err.Error())
	}
	return complaints
}

// wordy reports whether a file is one that people read or write.
func wordy(name string) bool {
	switch path.Ext(name) {
	case ".go", ".md", ".yaml", ".txt", ".txtar", ".json", ".svg", ".mod":
		return true
	}
	return name == ".ci/run"
}
