package main

import (
	"flag"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"
)

var update = flag.Bool("update", false, "rewrite the files that hold expected output")

// A house is the whole project as the house rules see it: its files, and its Go code parsed.
type house struct {
	files    fs.FS
	budget   budget
	fset     *token.FileSet
	packages map[string][]*source // by folder
}

// A source is one Go file.
type source struct {
	path   string
	test   bool
	lines  int
	syntax *ast.File
}

// A houseRule lists what breaks it, each with its place.
type houseRule func(h *house) []string

var houseRules = map[string]houseRule{
	"imports":   checkImports,
	"size":      checkSize,
	"types":     checkTypes,
	"comments":  checkComments,
	"exact":     checkExact,
	"root":      checkRoot,
	"documents": checkDocuments,
}

// TestHouse holds the project to its own rules.
func TestHouse(t *testing.T) {
	h := readHouse(t, os.DirFS("../.."), ownBudget)
	for name, rule := range houseRules {
		t.Run(name, func(t *testing.T) {
			for _, complaint := range rule(h) {
				t.Error(complaint)
			}
		})
	}
}

// TestHouseRulesCanFail runs the rules on small samples. Each sample is named after its rule, RULE-CASE.txtar, and
// begins with the complaints expected.
func TestHouseRulesCanFail(t *testing.T) {
	samples, err := filepath.Glob("testdata/house/*.txtar")
	if err != nil {
		t.Fatal(err)
	}
	tried := map[string]bool{}
	for _, sample := range samples {
		name := strings.TrimSuffix(filepath.Base(sample), ".txtar")
		t.Run(name, func(t *testing.T) {
			archive, err := txtar.ParseFile(sample)
			if err != nil {
				t.Fatal(err)
			}
			files, err := txtar.FS(archive)
			if err != nil {
				t.Fatal(err)
			}
			rule, _, _ := strings.Cut(name, "-")
			complaints := houseRules[rule](readHouse(t, files, smallBudget))
			tried[rule] = tried[rule] || len(complaints) > 0
			got := strings.Join(append(complaints, ""), "\n")
			switch want := string(archive.Comment); {
			case got == want:
			case *update:
				archive.Comment = []byte(got)
				if err := os.WriteFile(sample, txtar.Format(archive), 0o666); err != nil {
					t.Fatal(err)
				}
			default:
				t.Errorf("complaints:\n%swant:\n%s", got, want)
			}
		})
	}
	for rule := range houseRules {
		if !tried[rule] {
			t.Errorf("no sample breaks the rule %q", rule)
		}
	}
}

// readHouse parses all Go files but those in testdata and in dot folders.
func readHouse(t *testing.T, files fs.FS, b budget) *house {
	h := &house{files: files, budget: b, fset: token.NewFileSet(), packages: map[string][]*source{}}
	err := fs.WalkDir(files, ".", func(name string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && name != "." && (entry.Name() == "testdata" || entry.Name()[0] == '.'):
			return fs.SkipDir
		case entry.IsDir() || path.Ext(name) != ".go":
			return nil
		}
		return h.add(name)
	})
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func (h *house) add(name string) error {
	content, err := fs.ReadFile(h.files, name)
	if err != nil {
		return err
	}
	syntax, err := parser.ParseFile(h.fset, name, content, parser.ParseComments|parser.SkipObjectResolution)
	if err != nil {
		return err
	}
	folder := path.Dir(name)
	h.packages[folder] = append(h.packages[folder], &source{
		path:   name,
		test:   strings.HasSuffix(name, "_test.go"),
		lines:  strings.Count(string(content), "\n"),
		syntax: syntax,
	})
	return nil
}

// folders lists the packages in order.
func (h *house) folders() []string {
	var all []string
	for folder := range h.packages {
		all = append(all, folder)
	}
	slices.Sort(all)
	return all
}

// at is the place of a node: file and line.
func (h *house) at(n ast.Node) string {
	p := h.fset.Position(n.Pos())
	p.Column = 0
	return p.String()
}
