package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
)

// A site is a place where a fault of some kind can be put: the bytes from and to of a file become others.
type site struct {
	pkg, file, place string // place is file:line:column, from the root of the repository
	kind             string
	from, to         int
	was, now         string
}

func (s site) String() string {
	short := func(text string) string {
		if text = strings.Join(strings.Fields(text), " "); len(text) > 60 {
			text = text[:57] + "..."
		}
		return text
	}
	return fmt.Sprintf("%s: %s: %s → %s", s.place, s.kind, short(s.was), short(s.now))
}

// sitesIn lists the places for faults in packages, by kind, in the order of the code.
func sitesIn(patterns []string) (map[string][]site, error) {
	all := map[string][]site{}
	for _, pattern := range patterns {
		if _, err := os.Stat(strings.TrimSuffix(pattern, "/...")); err != nil {
			continue
		}
		out, err := exec.Command("go", "list", "-json=Dir,ImportPath,GoFiles", pattern).Output()
		if err != nil {
			return nil, fmt.Errorf("go list %s: %w", pattern, err)
		}
		for list := json.NewDecoder(bytes.NewReader(out)); ; {
			var p struct {
				Dir, ImportPath string
				GoFiles         []string
			}
			if err := list.Decode(&p); err == io.EOF {
				break
			} else if err != nil {
				return nil, err
			}
			for _, name := range p.GoFiles {
				if err := fileSites(p.ImportPath, filepath.Join(p.Dir, name), all); err != nil {
					return nil, err
				}
			}
		}
	}
	return all, nil
}

// fileSites adds the places in one file.
func fileSites(pkg, file string, all map[string][]site) error {
	code, err := os.ReadFile(file)
	if err != nil {
		return err
	}
	files := token.NewFileSet()
	syntax, err := parser.ParseFile(files, file, code, 0)
	if err != nil {
		return err
	}
	root, err := os.Getwd()
	if err != nil {
		return err
	}
	d := drawer{code: code}
	d.add = func(kind string, from, to token.Pos, now string) {
		at := files.Position(from)
		place, err := filepath.Rel(root, at.String())
		if err != nil {
			place = at.String()
		}
		s := site{pkg: pkg, file: file, place: place, kind: kind, from: at.Offset, to: files.Position(to).Offset, now: now}
		s.was = string(code[s.from:s.to])
		all[kind] = append(all[kind], s)
	}
	d.text = func(n ast.Node) string {
		return string(code[files.Position(n.Pos()).Offset:files.Position(n.End()).Offset])
	}
	ast.Inspect(syntax, d.visit)
	return nil
}

// A drawer finds the places for faults in a syntax tree.
type drawer struct {
	code []byte
	add  func(kind string, from, to token.Pos, now string)
	text func(ast.Node) string
}

// others are operators and the ones that take their places.
var others = map[token.Token]struct{ kind, now string }{
	token.LSS: {"comparison", "<="}, token.LEQ: {"comparison", "<"}, token.GTR: {"comparison", ">="}, token.GEQ: {"comparison", ">"},
	token.EQL: {"equality", "!="}, token.NEQ: {"equality", "=="},
	token.ADD: {"arithmetic", "-"}, token.SUB: {"arithmetic", "+"}, token.MUL: {"arithmetic", "/"}, token.QUO: {"arithmetic", "*"},
	token.LAND: {"and, or", "||"}, token.LOR: {"and, or", "&&"},
	token.ADD_ASSIGN: {"arithmetic", "-="}, token.SUB_ASSIGN: {"arithmetic", "+="}, token.INC: {"arithmetic", "--"}, token.DEC: {"arithmetic", "++"},
}

// siblings are names of methods, fields and constants, and the ones that take their places: the arithmetic of exact numbers,
// directions, ends and their kin.
var siblings = map[string]string{
	"Add": "Sub", "Sub": "Add", "X": "Y", "Y": "X", "Min": "Max", "Max": "Min", "min": "max", "max": "min", "First": "Last", "Last": "First",
	"From": "To", "To": "From", "Start": "End", "End": "Start", "Before": "After", "After": "Before", "Size": "Arm", "Arm": "Size",
}

// visit adds the places at one node.
func (d drawer) visit(n ast.Node) bool {
	switch n := n.(type) {
	case *ast.ImportSpec, *ast.StructType:
		return false
	case *ast.BinaryExpr:
		d.operator(n.Op, n.OpPos)
	case *ast.IncDecStmt:
		d.operator(n.Tok, n.TokPos)
	case *ast.AssignStmt:
		d.operator(n.Tok, n.TokPos)
		if n.Tok == token.ASSIGN {
			d.add("dropped statement", n.Pos(), n.End(), "")
		}
	case *ast.ExprStmt:
		d.add("dropped statement", n.Pos(), n.End(), "")
	case *ast.UnaryExpr:
		if n.Op == token.NOT || n.Op == token.SUB {
			d.add("dropped sign", n.Pos(), n.X.Pos(), "")
		}
	case *ast.IfStmt:
		d.add("condition", n.Cond.Pos(), n.Cond.End(), "!("+d.text(n.Cond)+")")
		d.add("dropped guard", n.Cond.Pos(), n.Cond.End(), "false && ("+d.text(n.Cond)+")")
	case *ast.BranchStmt:
		if now := map[token.Token]string{token.CONTINUE: "break", token.BREAK: "continue"}[n.Tok]; now != "" && n.Label == nil {
			d.add("left loop", n.Pos(), n.End(), now)
		}
	case *ast.FuncDecl:
		if n.Body != nil && n.Type.Results == nil && len(n.Body.List) > 0 {
			d.add("early return", n.Body.Lbrace+1, n.Body.Lbrace+1, " return;")
		}
	case *ast.CallExpr:
		d.call(n)
	case *ast.Ident:
		d.name(n)
	case *ast.BasicLit:
		d.literal(n)
	}
	return true
}

func (d drawer) operator(op token.Token, at token.Pos) {
	if other, ok := others[op]; ok {
		d.add(other.kind, at, at+token.Pos(len(op.String())), other.now)
	}
}

// call adds the exchange of the first two arguments, and the loss of a change of sign.
func (d drawer) call(n *ast.CallExpr) {
	if len(n.Args) >= 2 && !n.Ellipsis.IsValid() {
		if a, b := d.text(n.Args[0]), d.text(n.Args[1]); a != b {
			d.add("exchanged arguments", n.Args[0].Pos(), n.Args[1].End(), b+", "+a)
		}
	}
	if method, ok := n.Fun.(*ast.SelectorExpr); ok && (method.Sel.Name == "Neg" || method.Sel.Name == "Abs") && len(n.Args) == 0 {
		d.add("dropped sign", method.X.End(), n.End(), "")
	}
}

// name adds the other of two truths, and the sibling of a name.
func (d drawer) name(n *ast.Ident) {
	switch now := siblings[n.Name]; {
	case n.Name == "true":
		d.add("true, false", n.Pos(), n.End(), "false")
	case n.Name == "false":
		d.add("true, false", n.Pos(), n.End(), "true")
	case now != "":
		d.add("sibling", n.Pos(), n.End(), now)
	}
}

// literal adds another number, or a text that is empty.
func (d drawer) literal(n *ast.BasicLit) {
	switch n.Kind {
	case token.INT:
		if v, err := strconv.ParseInt(n.Value, 0, 64); err == nil {
			d.add("number", n.Pos(), n.End(), strconv.FormatInt(v+1, 10))
		}
	case token.STRING:
		if len(n.Value) > 2 {
			d.add("text", n.Pos(), n.End(), `""`)
		}
	}
}
