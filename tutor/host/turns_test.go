package host

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"sync"
	"testing"
)

// Whatever pieces a lesson is written in, and whenever a word is said beside it: both have all their lines, in their order and whole.
func TestTurns(t *testing.T) {
	t.Parallel()
	var out strings.Builder
	to := &turns{to: &out}
	var lesson string
	for i := range 200 {
		lesson += fmt.Sprintf("lesson %d%s\n", i, strings.Repeat(".", i%70))
	}
	var group sync.WaitGroup
	group.Go(func() {
		for i := range 200 {
			to.beside(fmt.Sprint("word ", i))
		}
	})
	group.Go(func() {
		for rest := lesson; rest != ""; {
			n := min(1+rand.IntN(40), len(rest))
			if got, err := to.Write([]byte(rest[:n])); got != n || err != nil {
				t.Error(got, err)
			}
			rest = rest[n:]
		}
	})
	group.Wait()
	var lines, words strings.Builder
	for line := range strings.Lines(out.String()) {
		if strings.HasPrefix(line, "word") {
			words.WriteString(line)
		} else {
			lines.WriteString(line)
		}
	}
	if lines.String() != lesson {
		t.Errorf("the lesson is\n%s", lines.String())
	}
	for i, word := range strings.Fields(strings.ReplaceAll(words.String(), "word ", "")) {
		if word != fmt.Sprint(i) {
			t.Fatalf("word %s comes in place of word %d", word, i)
		}
	}
	if n := strings.Count(words.String(), "\n"); n != 200 {
		t.Errorf("%d words of 200", n)
	}
}
