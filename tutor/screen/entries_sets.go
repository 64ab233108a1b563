package screen

import (
	"fmt"
	"os"
	"path/filepath"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor"
)

// mostSets is how many sets of a folder are offered.
const mostSets = 40

// Sets lists the sets of a folder by file name, each as a heading with its problems beneath it, those that cannot be used with the reason.
func Sets(dir string) []Entry {
	var all []Entry
	for n, path := range SetFiles(dir) {
		if n == mostSets {
			break
		}
		name := filepath.Base(path)
		set, err := problems.LoadSet(path)
		if err != nil {
			all = append(all, Entry{Name: name, Fault: err.Error()})
			continue
		}
		all = append(all, setEntries(name, set)...)
	}
	return all
}

// SetFiles lists the files of a folder that are sets.
func SetFiles(dir string) []string {
	files, err := os.ReadDir(dir)
	if err != nil {
		return nil
	}
	var all []string
	for _, f := range files {
		if path := filepath.Join(dir, f.Name()); isProblemFile(f) && problems.IsSet(path) {
			all = append(all, path)
		}
	}
	return all
}

// setEntries are the heading of a set and its problems.
func setEntries(file string, set *problems.Set) []Entry {
	about := &SetEntry{Title: notation.VisibleLines(set.Title)}
	if set.Course != "" {
		about.Says = append(about.Says, notation.VisibleLines(set.Course))
	}
	about.Says = append(about.Says, fmt.Sprintf("%s, %s points; the set is %s.", wording.Counted(len(set.Tasks), "problem"), set.Points().Decimal(3), notation.Visible(file)))
	if level, err := tutor.ParseLevel(set.Level); set.Level != "" && err == nil {
		about.Level = &level
	}
	all := []Entry{{Name: set.ID, Set: about}}
	for _, t := range set.Tasks {
		all = append(all, Entry{Name: set.ID + "/" + t.Name, Problem: t.Problem, Set: about})
	}
	return all
}
