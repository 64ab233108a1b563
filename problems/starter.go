package problems

import (
	"embed"
	"path"
	"strings"
)

// starters holds files to begin a problem with. A file's number gives its place; the rest of its name is the kind.
//
//go:embed starter/*.yaml
var starters embed.FS

// A Starter is a problem of a kind, with comments on how it is written.
type Starter struct {
	Kind string // compound-beam
	Text string // the file
}

// Starters lists the kinds of problems that there are starters of, the simplest first.
func Starters() []Starter {
	entries, err := starters.ReadDir("starter")
	if err != nil {
		return nil
	}
	var all []Starter
	for _, e := range entries {
		text, err := starters.ReadFile(path.Join("starter", e.Name()))
		if err != nil {
			continue
		}
		_, kind, numbered := strings.Cut(strings.TrimSuffix(e.Name(), ".yaml"), "-")
		if !numbered {
			continue
		}
		all = append(all, Starter{kind, string(text)})
	}
	return all
}

// SetStarter is a set to begin with, with comments on how it is written.
//
//go:embed starter/set.yaml
var SetStarter string
