package tutor

import "unpin/problems"

// A renewal says of which problem a lesson has other numbers, and which of them.
type renewal struct {
	of *problems.Problem
	n  int
}

// renew asks for the same frame with other numbers, which is another lesson: who runs this one begins it.
func renew(l *Lesson, _ Question, _ bool) Reply {
	switch {
	case l.sheet.exam:
		return Reply{Kind: Unread, Lines: []string{"An exam keeps its numbers."}}
	case l.again:
		return Reply{Kind: Unread, Lines: []string{"This step has new numbers: do it first."}}
	}
	return Reply{Kind: Renewing, Lines: []string{"The same frame with new numbers; what was done is kept."}}
}

// Renewed is a lesson on the same frame with other numbers, at the same level: all lengths are doubled, and each load is
// taken a number of times of its own. Asked again, it gives others until all are used, then the first once more.
func Renewed(l *Lesson) (*Lesson, error) {
	next := renewal{of: l.about.problem}
	if last := l.about.renewed; last != nil {
		next = renewal{last.of, (last.n + 1) % len(shares)}
	}
	renewed, err := New(sibling(next.of, next.n), l.about.levels.level, l.sheet.exam)
	if err != nil {
		return nil, err
	}
	renewed.about.renewed, renewed.about.signs = &next, l.about.signs
	renewed.notes = l.notes
	return renewed, nil
}
