package main

import (
	"fmt"
	"go/ast"
	"slices"
)

// A budget says how many lines there may be, and how many methods of a type.
type budget struct{ file, function, median, methods int }

// ownBudget is the project's; smallBudget is for samples.
var (
	ownBudget   = budget{file: 500, function: 80, median: 10, methods: 50}
	smallBudget = budget{file: 30, function: 8, median: 3, methods: 2}
)

// checkSize holds files and functions to the budget: no file and no function over it but plain tables and switches, and
// the median function of the whole house short.
func checkSize(h *house) []string {
	var complaints []string
	var lengths []int
	for _, folder := range h.folders() {
		for _, s := range h.packages[folder] {
			if s.lines > h.budget.file {
				complaints = append(complaints, fmt.Sprintf("%s: %d lines; no file has more than %d", s.path, s.lines, h.budget.file))
			}
			for _, d := range s.syntax.Decls {
				f, ok := d.(*ast.FuncDecl)
				if !ok || f.Body == nil {
					continue
				}
				if n := h.lines(f) - h.tableLines(f); n > h.budget.function && !plainSwitch(f) {
					complaints = append(complaints, fmt.Sprintf("%s: %s has %d lines; none has more than %d but plain tables and switches",
						h.at(f), f.Name.Name, n, h.budget.function))
				}
				if !s.test {
					lengths = append(lengths, h.lines(f))
				}
			}
		}
	}
	if m := median(lengths); m > h.budget.median {
		complaints = append(complaints, fmt.Sprintf("the median of all %d functions is %d lines; the budget is %d", len(lengths), m, h.budget.median))
	}
	return complaints
}

// lines is how many lines a node takes.
func (h *house) lines(n ast.Node) int {
	return h.fset.Position(n.End()).Line - h.fset.Position(n.Pos()).Line + 1
}

// tableLines is how many lines of a function are inside of literals of plain data.
func (h *house) tableLines(f *ast.FuncDecl) int {
	n := 0
	ast.Inspect(f.Body, func(node ast.Node) bool {
		literal, ok := node.(*ast.CompositeLit)
		if ok && !holdsCode(literal) {
			n += h.lines(literal) - 1
		}
		return !ok
	})
	return n
}

func holdsCode(literal *ast.CompositeLit) bool {
	found := false
	ast.Inspect(literal, func(node ast.Node) bool {
		_, code := node.(*ast.FuncLit)
		found = found || code
		return !found
	})
	return found
}

// plainSwitch reports whether a function is one switch, maybe with a return after it, none of whose cases has more
// than two statements.
func plainSwitch(f *ast.FuncDecl) bool {
	body := f.Body.List
	if n := len(body); n == 2 {
		if _, ok := body[1].(*ast.ReturnStmt); !ok {
			return false
		}
	} else if n != 1 {
		return false
	}
	s, ok := body[0].(*ast.SwitchStmt)
	return ok && !slices.ContainsFunc(s.Body.List, func(c ast.Stmt) bool { return len(c.(*ast.CaseClause).Body) > 2 })
}

// median is the middle one of some lengths, the lower of two, or 0 of none.
func median(lengths []int) int {
	if len(lengths) == 0 {
		return 0
	}
	slices.Sort(lengths)
	return lengths[(len(lengths)-1)/2]
}
