package screen

import (
	"fmt"
	"testing"

	"unpin/tutor"
)

// BenchmarkKey measures a typed key, from the message to the screen.
func BenchmarkKey(b *testing.B) {
	for _, s := range [][2]int{{80, 24}, {120, 40}} {
		b.Run(fmt.Sprintf("%dx%d", s[0], s[1]), func(b *testing.B) {
			m := inLesson(b, "hillside-garage", tutor.Values)
			size(m, s[0], s[1])
			work(b, m, 8)
			for b.Loop() {
				press(m, "4", "backspace")
				_ = m.View()
			}
		})
	}
}

// BenchmarkAnswer measures a right answer and the way back, after each of which figure and sheet are made anew.
func BenchmarkAnswer(b *testing.B) {
	for _, s := range [][2]int{{80, 24}, {120, 40}} {
		b.Run(fmt.Sprintf("%dx%d", s[0], s[1]), func(b *testing.B) {
			m := inLesson(b, "hillside-garage", tutor.Values)
			size(m, s[0], s[1])
			work(b, m, 8)
			for b.Loop() {
				work(b, m, 1)
				_ = m.View()
				press(m, "back", "enter")
				_ = m.View()
			}
		})
	}
}

// BenchmarkStart measures the way from nothing to the first screen of the chooser.
func BenchmarkStart(b *testing.B) {
	for b.Loop() {
		m := atChooser(Options{})
		size(m, 80, 24)
		_ = m.View()
	}
}

// BenchmarkLesson measures an answer on average, as a problem is worked to its end, diagrams and all: judged, and its
// sheet and figures shown.
func BenchmarkLesson(b *testing.B) {
	for _, s := range [][2]int{{80, 24}, {120, 40}} {
		b.Run(fmt.Sprintf("%dx%d", s[0], s[1]), func(b *testing.B) {
			answers := 0
			for b.Loop() {
				m := inLesson(b, "hillside-garage", tutor.Terms)
				size(m, s[0], s[1])
				for at, of := m.course.l.Position(); at < of; at++ {
					work(b, m, 1)
					_ = m.View()
					answers++
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(answers), "ns/answer")
		})
	}
}
