package worksheet

import (
	"io"
	"path/filepath"
	"slices"
	"testing"
)

// BenchmarkPaper prints six copies of one problem as one document, as a sheet and as a key.
func BenchmarkPaper(b *testing.B) {
	for _, name := range []string{"01-jetty-deck", "33-hillside-garage", "29-painters-trestle"} {
		for _, o := range []PaperOptions{{}, {Key: true}} {
			task := taskOf(b, filepath.Join("..", "library", name+".yaml"), ValuesLevel)
			papers := make([]Paper, 6)
			for i := range papers {
				papers[i] = Paper{Heading: week, Tasks: []Task{task}}
			}
			b.Run(name+map[bool]string{true: " key"}[o.Key], func(b *testing.B) {
				for b.Loop() {
					if err := PapersPDF(io.Discard, slices.Values(papers), o); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}
