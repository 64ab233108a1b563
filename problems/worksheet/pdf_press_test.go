package worksheet

import (
	"bytes"
	"fmt"
	"path/filepath"
	"slices"
	"testing"
)

// TestPress makes the pages of papers at once, in another order than they are drawn in, and one after the other: the same bytes.
func TestPress(t *testing.T) {
	t.Parallel()
	var papers []Paper
	for i, name := range []string{"01-jetty-deck", "27-riding-hall", "22-kiln-portal", "05-harbour-sign"} {
		task := taskOf(t, filepath.Join("..", "library", name+".yaml"), Level(i))
		papers = append(papers, Paper{Heading: Heading{Title: "Week 5", Student: fmt.Sprint("s", i)}, Tasks: []Task{task}, Large: i == 3})
	}
	var want, got bytes.Buffer
	if err := PapersPDF(&want, slices.Values(papers), PaperOptions{}); err != nil {
		t.Fatal(err)
	}
	press := NewPress(PaperOptions{}, 2)
	made := make([]chan Pages, len(papers))
	for i := range papers {
		made[i] = make(chan Pages, 1)
	}
	for i := len(papers) - 1; i >= 0; i-- {
		made[i] <- press.Pages(papers[i])
	}
	err := PagesPDF(&got, func(yield func(Pages) bool) {
		for _, one := range made {
			if !yield(<-one) {
				return
			}
		}
	})
	if err != nil || !bytes.Equal(want.Bytes(), got.Bytes()) {
		t.Errorf("%d bytes, and %d of the same papers one after the other: %v", got.Len(), want.Len(), err)
	}
}
