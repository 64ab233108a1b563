package tutor

import (
	"testing"

	"unpin/statics/exact"
)

// BenchmarkDiagnose is the whole reply to one wrong value: reading, judging, and finding what it came from; each question
// of one problem in turn, with a value that fits no slip, so that single slips and pairs are all tried.
func BenchmarkDiagnose(b *testing.B) {
	for _, name := range []string{"jetty-deck", "hillside-garage", "boatyard-crane"} {
		l := lesson(b, name, Values)
		var questions []Question
		for _, q := range l.Questions {
			if q.Kind == ForceValue || q.Kind == SectionPart {
				questions = append(questions, q)
			}
		}
		b.Run(name, func(b *testing.B) {
			for i := 0; b.Loop(); i++ {
				q := questions[i%len(questions)]
				v, err := l.read(q, q.truth.Add(exact.MustParse("17.2931")).Figures(6))
				if err != nil {
					b.Fatal(err)
				}
				l.feedback(q, Judge(v, q.truth, l.balances(q)), v)
			}
		})
	}
}
