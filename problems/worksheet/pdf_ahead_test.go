package worksheet

import (
	"bytes"
	"fmt"
	"io"
	"iter"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
)

// TestAhead prints papers on one processor and on several: the same bytes, in the order of the papers. What panics where papers are
// made panics where they are printed. It sets the number of processors, so that nothing runs beside it.
func TestAhead(t *testing.T) {
	task := taskOf(t, filepath.Join("..", "library", "01-jetty-deck.yaml"), BlankLevel)
	var papers []Paper
	for i := range 7 {
		papers = append(papers, Paper{Heading: Heading{Title: "Week 5", Student: fmt.Sprint("s", i)}, Tasks: []Task{task}})
	}
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	var first []byte
	for _, processors := range []int{1, 2, 5} {
		runtime.GOMAXPROCS(processors)
		var out bytes.Buffer
		if err := PapersPDF(&out, slices.Values(papers), PaperOptions{}); err != nil {
			t.Fatal(err)
		}
		if first == nil {
			first = out.Bytes()
		}
		if !bytes.Equal(first, out.Bytes()) {
			t.Errorf("%d processors print other bytes than one", processors)
		}
		n := 0
		for r := range ahead(slices.Values(papers), PaperOptions{}) {
			if r.Student != fmt.Sprint("s", n) {
				t.Errorf("paper %d is that of %s", n, r.Student)
			}
			if n++; n == 4 {
				break // nobody waits for the rest
			}
		}
	}
	var broken iter.Seq[Paper] = func(yield func(Paper) bool) {
		if yield(papers[0]) {
			panic("no more paper")
		}
	}
	defer func() {
		if fault := recover(); !strings.Contains(fmt.Sprint(fault), "no more paper") {
			t.Errorf("the fault is %v", fault)
		}
	}()
	_ = PapersPDF(io.Discard, broken, PaperOptions{})
	t.Error("a panic is lost")
}
