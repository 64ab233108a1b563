package statics

import (
	"go/ast"
	gobuild "go/build"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// TestLayers checks that no file needs one of a later layer. The layers are those of the package's comment, in that order.
func TestLayers(t *testing.T) {
	t.Parallel()
	doc, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	var layers []string
	_, list, _ := strings.Cut(string(doc), "# Layers")
	list, _, _ = strings.Cut(list, "\n// # ")
	for _, m := range regexp.MustCompile(`(?m)^//\t([a-z]+) +\S`).FindAllStringSubmatch(list, -1) {
		layers = append(layers, m[1])
	}
	fset := token.NewFileSet()
	pkg, uses := checked(t, fset)
	for id, o := range uses {
		if o.Pkg() != pkg || !o.Pos().IsValid() {
			continue
		}
		from, to := layerOf(fset, id.Pos()), layerOf(fset, o.Pos())
		switch lower, upper := slices.Index(layers, from), slices.Index(layers, to); {
		case lower < 0 || upper < 0:
			t.Errorf("%s or %s is no layer that doc.go lists", from, to)
		case lower < upper:
			t.Errorf("%s needs %s of the later layer %s", fset.Position(id.Pos()), o.Name(), to)
		}
	}
	if len(layers) < 9 || len(uses) < 1000 {
		t.Errorf("only %d layers and %d names in use were found", len(layers), len(uses))
	}
}

// checked is the package without its tests, and what each name in it stands for.
func checked(t *testing.T, fset *token.FileSet) (*types.Package, map[*ast.Ident]types.Object) {
	t.Helper()
	paths, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	var files []*ast.File
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(fset, path, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, f)
	}
	if gobuild.Default.GOROOT == "" { // a test built with -trimpath does not know where the standard library lies
		root, err := exec.Command("go", "env", "GOROOT").Output()
		if err != nil {
			t.Fatal(err)
		}
		gobuild.Default.GOROOT = strings.TrimSpace(string(root))
	}
	info := &types.Info{Uses: map[*ast.Ident]types.Object{}}
	config := types.Config{Importer: importer.ForCompiler(fset, "source", nil)}
	pkg, err := config.Check("unpin/statics", fset, files, info)
	if err != nil {
		t.Fatal(err)
	}
	return pkg, info.Uses
}

// layerOf is the first word of the name of the file at a position.
func layerOf(fset *token.FileSet, at token.Pos) string {
	name := strings.TrimSuffix(filepath.Base(fset.Position(at).Filename), ".go")
	layer, _, _ := strings.Cut(name, "_")
	return layer
}
