package judging

import (
	"testing"

	"unpin/statics/exact"
)

// BenchmarkDiagnose is the whole reply to one wrong value: reading, judging, and finding what it came from; each question
// of one problem in turn, with a value that fits no slip, so that single slips and pairs are all tried.
func BenchmarkDiagnose(b *testing.B) {
	for _, name := range []string{"jetty-deck", "hillside-garage", "boatyard-crane"} {
		l := newSheet(b, libraryProblem(b, name))
		b.Run(name, func(b *testing.B) {
			for i := 0; b.Loop(); i++ {
				q := l.questions[i%len(l.questions)]
				v := l.read(b, q, q.truth.Add(exact.MustParse("17.2931")).Figures(6))
				held := l.caseOf(q)
				held.Find(held.Verdict(v), v)
			}
		})
	}
}
