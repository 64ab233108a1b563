package main

import (
	"fmt"
	"go/ast"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
)

// documentNames are the documents whose every word of code is checked.
var documentNames = []string{"README.md", "DEVELOPERS.md"}

// measuredNames are those on what was measured, which are checked likewise.
const measuredNames = "testdata/measured/*.md"

// checkDocuments wants everything that the documents name as code to exist: commands of unpin with their flags, paths,
// tests, and names of packages such as exact.Num. Problems in them must be sound.
func checkDocuments(h *house) []string {
	var complaints []string
	measured, _ := fs.Glob(h.files, measuredNames) // the pattern is sound
	for _, name := range slices.Concat(documentNames, measured) {
		text, err := fs.ReadFile(h.files, name)
		if err != nil {
			return append(complaints, err.Error())
		}
		d := readMarkdown(name, string(text))
		tell := func(line int, complaint string) {
			if complaint != "" {
				complaints = append(complaints, fmt.Sprintf("%s:%d: %s", d.name, line, complaint))
			}
		}
		for _, s := range d.spans {
			tell(s.line, checkCode(h, s.text))
		}
		for _, b := range d.blocks {
			checkBlock(h, b, tell)
		}
	}
	return complaints
}

// checkBlock checks a problem as a whole, and of other blocks the commands.
func checkBlock(h *house, b block, tell func(line int, complaint string)) {
	kind, _, _ := strings.Cut(b.info, " ")
	switch kind {
	case "yaml":
		tell(b.line, checkProblem(strings.Join(b.lines, "\n")))
	case "sh":
		for i, line := range b.lines {
			tell(b.line+i, checkCode(h, line))
		}
	case "console":
		for i, line := range b.lines {
			if command, ok := strings.CutPrefix(line, "$ "); ok {
				tell(b.line+i, checkCode(h, command))
			}
		}
	case "text", "imports", "screen":
	default:
		tell(b.line, fmt.Sprintf("a block is marked yaml, sh, console, screen, text or imports, not %q", b.info))
	}
}

// checkProblem says what is wrong with a problem or a set shown in a document, or nothing.
func checkProblem(text string) string {
	if problems.Holds([]byte(text)) {
		if _, err := problems.ReadSet("the set shown", []byte(text), problems.Beside(".")); err != nil {
			return firstLine(err)
		}
		return ""
	}
	p, err := problems.Read("the problem shown", []byte(text))
	if err != nil {
		return firstLine(err)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		return err.Error()
	}
	if v := s.Count.Determinacy(); v != statics.Determinate {
		return fmt.Sprintf("the problem shown is %s", v)
	}
	return ""
}

// Where a command line is cut into commands, and what is left out of a command.
var (
	between = regexp.MustCompile(` (\||&&|>|<) `)
	remark  = regexp.MustCompile(` +#.*|  .*$`)
)

// checkCode says what is wrong with a line of code, or nothing.
func checkCode(h *house, code string) string {
	for _, command := range between.Split(remark.ReplaceAllString(code, ""), -1) {
		words := strings.Fields(strings.NewReplacer("[", "", "]", "", "...", "…").Replace(command))
		if len(words) > 3 && words[0] == "go" && words[1] == "run" && words[2] == "./cmd/unpin" {
			words = append([]string{"unpin"}, words[3:]...)
		}
		if len(words) > 1 && words[0] == "unpin" {
			if complaint := checkCommand(words[1:]); complaint != "" {
				return complaint
			}
			continue
		}
		for _, word := range words {
			if complaint := checkWord(h, word); complaint != "" {
				return complaint
			}
		}
	}
	return ""
}

// checkCommand holds the arguments of unpin to the real tree of commands.
func checkCommand(args []string) string {
	root := newRoot()
	root.InitDefaultHelpCmd()
	cmd, rest, err := root.Find(args)
	if err == nil {
		err = cmd.ParseFlags(rest)
	}
	if operands := cmd.Flags().Args(); err == nil && len(operands) > 0 {
		err = cmd.ValidateArgs(operands)
	}
	if err != nil {
		return fmt.Sprintf("unpin %s: %s", strings.Join(args, " "), firstLine(err))
	}
	return ""
}

func firstLine(err error) string {
	line, _, _ := strings.Cut(err.Error(), "\n")
	return line
}

// What a word of code looks like.
var (
	fileName    = regexp.MustCompile(`^[\w./-]+\.(go|md|yaml|json|txtar|mod|sum)$`)
	testName    = regexp.MustCompile(`^(Test|Fuzz|Benchmark)[A-Z]\w*$`)
	codeName    = regexp.MustCompile(`^([a-z]+)\.([A-Z]\w*)(\.[A-Z]\w*)?$`)
	placeholder = regexp.MustCompile(`\b[A-Z]{2,}\b`)
)

// checkWord says that a path, a test or a name of a package does not exist, or nothing.
func checkWord(h *house, word string) string {
	word = strings.Trim(word, ",;:()'\"^$")
	switch parts := codeName.FindStringSubmatch(word); {
	case testName.MatchString(word):
		if !h.declares("", word) {
			return fmt.Sprintf("there is no test %s", word)
		}
	case parts != nil && h.folderOf(parts[1]) != "":
		if !h.declares(h.folderOf(parts[1]), parts[2]) {
			return fmt.Sprintf("package %s has no %s", parts[1], parts[2])
		}
	case h.pathLike(word):
		return h.checkPath(word)
	}
	return ""
}

// pathLike reports whether a word is meant as a path: it begins at the root, or ends as a file does.
func (h *house) pathLike(word string) bool {
	first, _, deep := strings.Cut(word, "/")
	_, err := fs.Stat(h.files, first)
	return deep && (first == "." || err == nil) || fileName.MatchString(word)
}

// checkPath says that a path does not exist, or nothing. A word in capitals stands for any name; NAME alone, for a file
// that the reader is to make.
func (h *house) checkPath(word string) string {
	name := path.Clean(strings.TrimSuffix(word, "/…"))
	if _, err := fs.Stat(h.files, name); err == nil || strings.HasPrefix(name, "NAME.") {
		return ""
	}
	matches, err := fs.Glob(h.files, placeholder.ReplaceAllString(name, "*"))
	if err != nil || len(matches) == 0 {
		return fmt.Sprintf("there is no %s", word)
	}
	return ""
}

// folderOf is the folder of the package with that name, or "".
func (h *house) folderOf(name string) string {
	for _, folder := range h.folders() {
		if path.Base(folder) == name {
			return folder
		}
	}
	return ""
}

// declares reports whether a package, or any package where folder is "", declares a name at its top.
func (h *house) declares(folder, name string) bool {
	for f, sources := range h.packages {
		for _, s := range sources {
			if folder != "" && f != folder {
				continue
			}
			for _, d := range s.syntax.Decls {
				for _, n := range names(d) {
					if n.Name == name {
						return true
					}
				}
			}
		}
	}
	return false
}

// names lists what a declaration declares.
func names(d ast.Decl) []*ast.Ident {
	f, ok := d.(*ast.FuncDecl)
	if ok {
		return []*ast.Ident{f.Name}
	}
	var all []*ast.Ident
	for _, spec := range d.(*ast.GenDecl).Specs {
		switch s := spec.(type) {
		case *ast.TypeSpec:
			all = append(all, s.Name)
		case *ast.ValueSpec:
			all = append(all, s.Names...)
		}
	}
	return all
}
