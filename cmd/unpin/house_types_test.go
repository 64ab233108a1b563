package main

import (
	"fmt"
	"go/ast"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"
)

// checkTypes holds types to the budget of methods: a type over it holds a concept that wants a type of its own.
func checkTypes(h *house) []string {
	var complaints []string
	for _, folder := range h.folders() {
		methods := h.methods(folder)
		for _, name := range slices.Sorted(maps.Keys(methods)) {
			if n := methods[name]; n > h.budget.methods {
				complaints = append(complaints, fmt.Sprintf("%s: type %s has %d methods; none has more than %d", folder, name, n, h.budget.methods))
			}
		}
	}
	return complaints
}

// methods counts the methods of each type of a package, tests left out.
func (h *house) methods(folder string) map[string]int {
	counts := map[string]int{}
	for _, s := range h.packages[folder] {
		for _, d := range s.syntax.Decls {
			if f, ok := d.(*ast.FuncDecl); ok && f.Recv != nil && !s.test {
				if r := receiver(f); r != nil {
					counts[r.Name]++
				}
			}
		}
	}
	return counts
}

// TestHouseMeasures tells the size of each room: files, lines, lines of tests to lines of code, and the type with most
// methods.
func TestHouseMeasures(t *testing.T) {
	h := readHouse(t, os.DirFS("../.."), ownBudget)
	t.Logf("%-26s %5s %6s %6s %5s  %s", "package", "files", "lines", "tests", "ratio", "most methods")
	for _, folder := range h.folders() {
		files, code, tests := 0, 0, 0
		for _, s := range h.packages[folder] {
			if s.test {
				tests += s.lines
				continue
			}
			files++
			code += s.lines
		}
		t.Logf("%-26s %5d %6d %6d %5.2f  %s", folder, files, code, tests, float64(tests)/float64(max(code, 1)), longest(h.methods(folder)))
	}
}

// longest names the type with most methods, and how many.
func longest(methods map[string]int) string {
	most := ""
	for _, name := range slices.Sorted(maps.Keys(methods)) {
		if methods[name] > methods[most] {
			most = name
		}
	}
	return strings.TrimSpace(fmt.Sprint(most, " ", methods[most]))
}
