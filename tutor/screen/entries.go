package screen

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"unpin/problems"
)

// mostFiles is how many problem files of a folder are offered.
const mostFiles = 500

// Library lists the problems of the library.
func Library() []Entry {
	var list []Entry
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		list = append(list, Entry{Name: name, Problem: p})
	}
	return list
}

// Folder lists the problem files of a folder by name, those that cannot be used with the reason. What ends in .yaml or
// .yml is taken for one, unless it is a set.
func Folder(dir string) []Entry {
	files, err := os.ReadDir(dir)
	if err != nil {
		return nil
	}
	var list []Entry
	for _, f := range files {
		name := f.Name()
		if !isProblemFile(f) {
			continue
		}
		e, path := Entry{Name: name}, filepath.Join(dir, name)
		p, err := problems.Load(path)
		if err != nil && problems.IsSet(path) {
			continue
		} else if err != nil {
			e.Fault = err.Error()
		} else {
			e.Problem = p
		}
		if list = append(list, e); len(list) == mostFiles {
			break
		}
	}
	return list
}

// isProblemFile reports whether a file of a folder is taken for a problem or a set, by its name.
func isProblemFile(f os.DirEntry) bool {
	return f.Type().IsRegular() && slices.Contains([]string{".yaml", ".yml"}, strings.ToLower(filepath.Ext(f.Name())))
}
