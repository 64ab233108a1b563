package problems

import (
	"embed"
	"path"
	"strings"
	"sync"
)

// files holds the embedded library. A file's number gives its place; the rest of its name is the problem's.
//
//go:embed library/*.yaml
var files embed.FS

// library reads the embedded problems once. That each of them reads is held by a test, so a fault cannot occur here.
var library = sync.OnceValue(func() []*Problem {
	entries, err := files.ReadDir("library")
	if err != nil {
		return nil
	}
	var all []*Problem
	for _, e := range entries {
		data, err := files.ReadFile(path.Join("library", e.Name()))
		if err != nil {
			continue
		}
		_, name, _ := strings.Cut(strings.TrimSuffix(e.Name(), ".yaml"), "-")
		if p, err := Read(name, data); err == nil {
			p.Name = name
			all = append(all, p)
		}
	}
	return all
})

// Names lists the problems of the embedded library, the gentlest first.
func Names() []string {
	var names []string
	for _, p := range library() {
		names = append(names, p.Name)
	}
	return names
}

// Library is the problem of that name in the embedded library.
func Library(name string) (*Problem, bool) {
	for _, p := range library() {
		if p.Name == name {
			return p, true
		}
	}
	return nil, false
}
