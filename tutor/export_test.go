package tutor

import "unpin/statics"

// Solution is what the lesson rests on, for tests from outside.
func (l *Lesson) Solution() *statics.Solution { return l.about.solution }
