package tutor

import (
	"testing"

	"unpin/problems"
	"unpin/statics"
)

// What a problem asks for is what the plain lesson asks at the level values, in its order.
func TestItemsAreThePlainQuestions(t *testing.T) {
	t.Parallel()
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		l, err := NewPlain(p, Values, false)
		if err != nil {
			t.Fatal(err)
		}
		solution, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		items, err := problems.Solved{Problem: p, Solution: solution}.Asked(p.Find)
		if err != nil {
			t.Fatal(err)
		}
		questions := l.about.script().all()
		for i := range max(len(items), len(questions)) {
			if i >= len(items) || i >= len(questions) || items[i].Name != questions[i].Name || !items[i].Value.Equal(questions[i].truth) {
				t.Errorf("%s: question %d is not item %d", name, i, i)
				break
			}
		}
	}
}
