package main

import (
	"bufio"
	"bytes"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
)

// rootEntries is all that stands at the project's root, besides dot files.
var rootEntries = []string{"cmd", "tutor", "statics", "problems", "testdata", "README.md", "DEVELOPERS.md", "go.mod", "go.sum"}

// checkRoot keeps the root to its list. What .gitignore leaves out is not part of the project.
func checkRoot(h *house) []string {
	entries, err := fs.ReadDir(h.files, ".")
	if err != nil {
		return []string{err.Error()}
	}
	ignored := ignorePatterns(h)
	var complaints []string
	for _, e := range entries {
		name := e.Name()
		matches := func(pattern string) bool {
			ok, _ := path.Match(pattern, name)
			return ok
		}
		if name[0] != '.' && !slices.Contains(rootEntries, name) && !slices.ContainsFunc(ignored, matches) {
			complaints = append(complaints, fmt.Sprintf("%s: at the root stand only %s and dot files", name, strings.Join(rootEntries, ", ")))
		}
	}
	return complaints
}

// ignorePatterns lists the lines of .gitignore as patterns for names at the root.
func ignorePatterns(h *house) []string {
	text, err := fs.ReadFile(h.files, ".gitignore")
	if err != nil {
		return nil
	}
	var patterns []string
	for lines := bufio.NewScanner(bytes.NewReader(text)); lines.Scan(); {
		patterns = append(patterns, strings.Trim(lines.Text(), "/"))
	}
	return patterns
}
