package tutor

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"unpin/problems"
	"unpin/tutor/record"
)

// What is left open last counts in an exam, whatever was typed there before, also after it was left and taken up again.
func TestExamLeftOpenLast(t *testing.T) {
	t.Parallel()
	p, _ := problems.Library("jetty-deck")
	store := record.At(filepath.Join(t.TempDir(), "practice.jsonl"))
	begin := func() *Lesson {
		l, err := New(p, Values, true)
		if err != nil {
			t.Fatal(err)
		}
		l.Keep(store, time.Now, func(err error) { t.Error(err) })
		return l
	}
	first := begin()
	for _, line := range []string{"777", "back", "tell"} {
		first.Type(line)
	}
	again := begin()
	again.Type("resume")
	for _, l := range []*Lesson{first, again} {
		name := l.sheet.questions[0].Name
		for asking := true; asking; _, asking = l.Now() {
			l.Type("tell")
		}
		if marks := l.Marks(); !slices.ContainsFunc(marks, func(s string) bool { return strings.HasPrefix(s, name+" left open") }) {
			t.Errorf("%s was left open last: %q", name, marks[:3])
		}
		if text, _ := PaperOf(l); strings.Contains(text, "777") || strings.Contains(text, name+" =") {
			t.Errorf("what was taken back stands on the paper:\n%s", text)
		}
	}
}
