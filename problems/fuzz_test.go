package problems

import (
	"path/filepath"
	"testing"

	"unpin/statics"
)

// FuzzRead reads anything: no input may crash it or hang it, each fault has a place in the file, and what is read is a
// frame that the engine takes.
func FuzzRead(f *testing.F) {
	for _, pattern := range []string{"broken/*.yaml", "broken/*.json", "read/*.yaml", "read/*.json", "examples/*.yaml"} {
		files, err := filepath.Glob(filepath.Join("..", "testdata", pattern))
		if err != nil || len(files) == 0 {
			f.Fatalf("no files %s: %v", pattern, err)
		}
		for _, path := range files {
			f.Add(readFile(f, path))
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 20_000 {
			t.Skip("large input is TestBig's")
		}
		p, err := Read("fuzz.yaml", data)
		if err != nil {
			checkPlaces(t, data, err)
			return
		}
		if _, err := statics.Cut(p.Frame); err != nil {
			t.Errorf("the engine refuses the frame: %v", err)
		}
	})
}
