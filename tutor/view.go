package tutor

import "unpin/problems"

// UseSigns has sums, numbers and units in replies written with the signs of the trade, as Σ, · and −, where they are
// otherwise in ASCII.
func (l *Lesson) UseSigns() { l.signs = true }

// Progress is how many questions of a problem, from the first on, were settled in earlier work at a rung, and how many
// there are. It is nought of nought for a frame that is not fit for a lesson.
func Progress(p *problems.Problem, rung Rung, records []Record) (settled, of int) {
	l, err := New(p, rung, false)
	if err != nil {
		return 0, 0
	}
	l.recall(records)
	if l.route != nil { // how long the way is shows only as it is gone
		l.Resume()
		return l.Position()
	}
	return l.Earlier(), len(l.Questions)
}
