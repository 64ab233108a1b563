package problems

import (
	"path/filepath"
	"strings"
	"testing"

	"unpin/statics"
)

// TestRead holds what is read from each file of testdata/read against the text beside it.
func TestRead(t *testing.T) {
	for _, pattern := range []string{"*.yaml", "*.json"} {
		files, err := filepath.Glob(filepath.Join("..", "testdata", "read", pattern))
		if err != nil || len(files) == 0 {
			t.Fatalf("no files %s: %v", pattern, err)
		}
		for _, path := range files {
			t.Run(filepath.Base(path), func(t *testing.T) {
				p, err := Load(path)
				if err != nil {
					t.Fatal(err)
				}
				compare(t, strings.TrimSuffix(path, filepath.Ext(path))+".txt", describe(p))
			})
		}
	}
}

// TestReadCut checks that the engine takes every frame that is read without fault.
func TestReadCut(t *testing.T) {
	for _, folder := range []string{"read", "examples"} {
		files, err := filepath.Glob(filepath.Join("..", "testdata", folder, "*.yaml"))
		if err != nil || len(files) == 0 {
			t.Fatalf("no files in %s: %v", folder, err)
		}
		for _, path := range files {
			p, err := Load(path)
			if err != nil {
				t.Error(err)
			} else if _, err := statics.Cut(p.Frame); err != nil {
				t.Errorf("%s: %v", path, err)
			}
		}
	}
}
