package main

import (
	"fmt"
	"go/ast"
	"go/token"
)

// checkComments wants a comment on every package and on every exported name: functions, methods of exported types,
// types, constants and variables, of which a group may share one.
func checkComments(h *house) []string {
	var complaints []string
	for _, folder := range h.folders() {
		described := false
		for _, s := range h.packages[folder] {
			if s.test {
				continue
			}
			described = described || s.syntax.Doc != nil
			for _, d := range s.syntax.Decls {
				for _, name := range bare(d) {
					complaints = append(complaints, fmt.Sprintf("%s: %s has no comment", h.at(name), name.Name))
				}
			}
		}
		if !described {
			complaints = append(complaints, fmt.Sprintf("%s: the package has no comment", folder))
		}
	}
	return complaints
}

// bare lists the exported names of a declaration that have no comment.
func bare(d ast.Decl) []*ast.Ident {
	switch d := d.(type) {
	case *ast.FuncDecl:
		if d.Doc == nil && d.Name.IsExported() && (d.Recv == nil || receiver(d).IsExported()) {
			return []*ast.Ident{d.Name}
		}
	case *ast.GenDecl:
		if d.Tok != token.IMPORT && (d.Doc == nil || d.Tok == token.TYPE && d.Lparen.IsValid()) {
			return bareSpecs(d.Specs)
		}
	}
	return nil
}

func bareSpecs(specs []ast.Spec) []*ast.Ident {
	var names []*ast.Ident
	for _, spec := range specs {
		switch s := spec.(type) {
		case *ast.TypeSpec:
			if s.Doc == nil && s.Comment == nil && s.Name.IsExported() {
				names = append(names, s.Name)
			}
		case *ast.ValueSpec:
			for _, name := range s.Names {
				if s.Doc == nil && s.Comment == nil && name.IsExported() {
					names = append(names, name)
				}
			}
		}
	}
	return names
}

// receiver is the name of a method's type.
func receiver(f *ast.FuncDecl) *ast.Ident {
	t := f.Recv.List[0].Type
	for {
		switch x := t.(type) {
		case *ast.StarExpr:
			t = x.X
		case *ast.IndexExpr:
			t = x.X
		case *ast.Ident:
			return x
		default:
			return ast.NewIdent("_")
		}
	}
}
