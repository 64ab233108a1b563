package main

import (
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// testsLine is the line of the import table that says what tests may import besides.
const testsLine = "tests"

// checkImports holds the import graph, tests included, to the table in DEVELOPERS.md: the block marked "imports", in
// which each package stands with what it may import besides the standard library. "x/..." is x and all below it; a
// module of others stands for all its packages.
func checkImports(h *house) []string {
	table, err := importTable(h)
	if err != nil {
		return []string{err.Error()}
	}
	var complaints []string
	for _, folder := range h.folders() {
		allowed, listed := table[folder]
		if !listed {
			complaints = append(complaints, fmt.Sprintf("%s: the package has no line in the import table of DEVELOPERS.md", folder))
			continue
		}
		for _, s := range h.packages[folder] {
			complaints = append(complaints, foreignImports(h, s, folder, allowed, table[testsLine])...)
		}
	}
	for _, folder := range slices.Sorted(maps.Keys(table)) {
		if folder != testsLine && h.packages[folder] == nil {
			complaints = append(complaints, fmt.Sprintf("DEVELOPERS.md: the import table names %s, which does not exist", folder))
		}
	}
	return complaints
}

// foreignImports lists the imports of a file that its package's line does not allow.
func foreignImports(h *house, s *source, folder string, allowed, tests []string) []string {
	var complaints []string
	for _, spec := range s.syntax.Imports {
		name, _ := strconv.Unquote(spec.Path.Value)
		name = strings.TrimPrefix(name, "unpin/")
		switch {
		case standard(name) || name == folder && s.test:
		case covers(allowed, name) || s.test && covers(tests, name):
		default:
			complaints = append(complaints, fmt.Sprintf("%s: %s may not import %s; its line in DEVELOPERS.md allows: %s",
				h.at(spec), folder, name, strings.Join(allowed, ", ")))
		}
	}
	return complaints
}

// ourTrees are the first elements of the project's own packages.
var ourTrees = []string{"cmd", "tutor", "statics", "problems"}

// standard reports whether an import path is of the standard library: no dot before the first slash, and not ours.
func standard(name string) bool {
	first, _, _ := strings.Cut(name, "/")
	return !strings.Contains(first, ".") && !slices.Contains(ourTrees, first)
}

// covers reports whether a list of the table allows an import.
func covers(allowed []string, name string) bool {
	for _, entry := range allowed {
		tree, below := strings.CutSuffix(entry, "/...")
		below = below || strings.Contains(entry, ".") // a module
		switch {
		case entry == "all" && !strings.Contains(name, "."):
			return true
		case name == tree, below && strings.HasPrefix(name, tree+"/"):
			return true
		}
	}
	return false
}

// importTable reads the table.
func importTable(h *house) (map[string][]string, error) {
	text, err := fs.ReadFile(h.files, "DEVELOPERS.md")
	if err != nil {
		return nil, err
	}
	table := map[string][]string{}
	for _, b := range readMarkdown("DEVELOPERS.md", string(text)).blocks {
		if b.info != "imports" {
			continue
		}
		for _, line := range b.lines {
			folder, list, found := strings.Cut(line, ":")
			if !found {
				return nil, fmt.Errorf("DEVELOPERS.md:%d: a line of the import table is \"package: what it may import\"", b.line)
			}
			table[folder] = strings.FieldsFunc(list, func(c rune) bool { return c == ',' || c == ' ' })
		}
	}
	if len(table) == 0 {
		return nil, fmt.Errorf("DEVELOPERS.md: there is no import table, a code block marked imports")
	}
	return table, nil
}
