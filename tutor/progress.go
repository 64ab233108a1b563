package tutor

import (
	"unpin/problems"
	"unpin/tutor/record"
)

// A Progress is how far a student is with a problem at a level.
type Progress struct {
	Settled int // questions from the first on that were settled in earlier work
	Of      int // questions in all; zero where more come with each choice of the student
	First   int // right at the first try and without help
	Asked   int // questions in all that ask for an answer
}

// ProgressOf is how far a student is with a problem at a level, by the records of earlier work. It is zero for a frame
// that is not fit for a lesson.
func ProgressOf(p *problems.Problem, level Level, records []record.Record) Progress {
	l, err := New(p, level, false)
	if err != nil {
		return Progress{}
	}
	l.recall(records)
	if l.Earlier() > 0 {
		l.Resume()
	}
	var done Progress
	done.Settled, done.Of = l.Position()
	done.First, done.Asked = l.Score()
	if done.Settled < done.Of && l.Open() {
		done.Of = 0
	}
	return done
}
