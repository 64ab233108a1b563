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

// A volume is a problem of the library, read when it is asked for.
type volume struct {
	name string
	read func() *Problem
}

// library lists the embedded problems in their order, none of them read yet.
var library = sync.OnceValue(func() []volume {
	entries, err := files.ReadDir("library")
	if err != nil {
		return nil
	}
	var all []volume
	for _, e := range entries {
		_, name, _ := strings.Cut(strings.TrimSuffix(e.Name(), ".yaml"), "-")
		all = append(all, volume{name, sync.OnceValue(func() *Problem { return embedded(name, e.Name()) })})
	}
	return all
})

// embedded reads a problem of the library. That each of them reads is held by a test, so a fault is one of the build.
func embedded(name, file string) *Problem {
	data, err := files.ReadFile(path.Join("library", file))
	if err != nil {
		panic(err)
	}
	p, err := Read(name, data)
	if err != nil {
		panic(err)
	}
	p.Name = name
	return p
}

// Names lists the problems of the embedded library, the gentlest first.
func Names() []string {
	var names []string
	for _, v := range library() {
		names = append(names, v.name)
	}
	return names
}

// Library is the problem of that name in the embedded library.
func Library(name string) (*Problem, bool) {
	for _, v := range library() {
		if v.name == name {
			return v.read(), true
		}
	}
	return nil, false
}
