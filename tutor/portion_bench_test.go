package tutor

import (
	"testing"

	"unpin/tutor/record"
)

// BenchmarkOffers is what opening the list of problems takes: looking over the whole library, and making the offers; and the second part
// of that alone.
func BenchmarkOffers(b *testing.B) {
	at := atHand()
	var done []record.Record
	b.Run("all", func(b *testing.B) {
		for b.Loop() {
			Offers(done, today0, at)
		}
	})
	t := newToday(done, today0, at)
	b.Run("made", func(b *testing.B) {
		for b.Loop() {
			t.anew().portion()
			t.anew().wholes()
		}
	})
}
