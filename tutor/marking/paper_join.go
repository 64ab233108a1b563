package marking

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"unpin/statics/notation"
)

// Join makes one of the answers of several files, whose names are given in the same order. A paper that names no student is that of
// its file's name; one that stands in an earlier file already is told and left out.
func Join(files []string, answers []*Answers) *Answers {
	if len(answers) == 1 {
		return answers[0]
	}
	all, first := &Answers{}, map[string]string{}
	for i, a := range answers {
		name := notation.Visible(filepath.Base(files[i]))
		for _, f := range a.Faults {
			f.Text = name + ": " + f.Text
			all.Faults = append(all.Faults, f)
		}
		for _, column := range a.Ignored {
			if !slices.Contains(all.Ignored, column) {
				all.Ignored = append(all.Ignored, column)
			}
		}
		all.Notes = append(all.Notes, a.Notes...)
		for _, p := range a.Papers {
			if p.Student == "" {
				p.Student = strings.TrimSuffix(name, filepath.Ext(name))
			}
			if earlier, twice := first[p.key()]; twice {
				why := fmt.Sprintf("this paper of %s is in %s as well, which counts: leave out one of them, or write attempt: 2", notation.Visible(p.Student), earlier)
				all.Faults = append(all.Faults, Unread{Lines: []int{p.Line}, Text: name, Why: why})
				continue
			}
			first[p.key()] = name
			all.Papers = append(all.Papers, p)
		}
	}
	slices.SortStableFunc(all.Papers, (*Paper).order)
	return all
}
