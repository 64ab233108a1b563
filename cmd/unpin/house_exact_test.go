package main

import (
	"fmt"
	"go/ast"
	"go/token"
	"slices"
)

// Packages that draw, and so may use floats: places on paper and on a screen are not exact.
var drawing = []string{"statics/figure", "statics/figure/cells", "statics/figure/paper", "statics/figure/figuretest", "problems/worksheet", "tutor/screen"}

// floatNames are the names by which a float comes in.
var floatNames = []string{"float32", "float64", "ParseFloat", "Float64", "InexactFloat64", "NewFromFloat", "Float"}

// checkExact keeps floats out of all packages but those that draw. The one door is exact.Num.Float, which those call.
func checkExact(h *house) []string {
	var complaints []string
	for _, folder := range h.folders() {
		if slices.Contains(drawing, folder) {
			continue
		}
		for _, s := range h.packages[folder] {
			if s.test {
				continue
			}
			for _, d := range s.syntax.Decls {
				if f, ok := d.(*ast.FuncDecl); ok && folder == "statics/exact" && f.Name.Name == "Float" {
					continue
				}
				complaints = append(complaints, floatsIn(h, d)...)
			}
		}
	}
	return complaints
}

// floatsIn lists where a declaration uses floats.
func floatsIn(h *house, d ast.Decl) []string {
	var complaints []string
	ast.Inspect(d, func(n ast.Node) bool {
		what := ""
		switch n := n.(type) {
		case *ast.Ident:
			if slices.Contains(floatNames, n.Name) {
				what = n.Name
			}
		case *ast.BasicLit:
			if n.Kind == token.FLOAT {
				what = n.Value
			}
		}
		if what != "" {
			complaints = append(complaints, fmt.Sprintf("%s: %s is a float; numbers here are exact", h.at(n), what))
		}
		return true
	})
	return complaints
}
