package variant

import (
	"cmp"
	"context"
	"fmt"
	"slices"
	"strings"
)

// A Shortage is the error of too few good copies.
type Shortage struct {
	Wanted   int
	Judged   int         // how many sets of numbers were looked at
	All      bool        // these are all that there are
	Good     int         // of them
	Excluded []Exclusion // the others, most first
	More     string      // what would give more, as a sentence, or empty
}

// An Exclusion is how many sets of numbers are no good for one reason.
type Exclusion struct {
	Reason Reason
	Times  int
}

// Error tells how many there are, by which rules the others are excluded, and what would give more.
func (e *Shortage) Error() string {
	among := fmt.Sprintf("among the %d sets of numbers that it allows", e.Judged)
	if !e.All {
		among = fmt.Sprintf("among %d sets of numbers that were tried", e.Judged)
	}
	text := fmt.Sprintf("%s %s, and %d are wanted", e.copies(), among, e.Wanted)
	if len(e.Excluded) > 0 {
		text += fmt.Sprintf(". Excluded are the other %d:", e.Judged-e.Good)
	}
	for _, x := range e.Excluded {
		text += fmt.Sprintf("\n%7d because %s", x.Times, x.Reason)
	}
	if e.More != "" {
		text += "\n" + e.More
	}
	return text
}

// brief tells how many there are, what excludes most, and what would give more, without how many are wanted.
func (e *Shortage) brief() string {
	text := fmt.Sprintf("%d of the %d sets of numbers that its file allows are good", e.Good, e.Judged)
	if !e.All {
		text = fmt.Sprintf("%d of %d sets of numbers that were tried are good", e.Good, e.Judged)
	}
	if e.Good == 1 {
		text = strings.Replace(text, " are good", " is good", 1)
	}
	if len(e.Excluded) > 0 {
		text += fmt.Sprintf("; of the %d that are not, %d are excluded because %s", e.Judged-e.Good, e.Excluded[0].Times, e.Excluded[0].Reason)
	}
	return strings.TrimSuffix(text+". "+e.More, " ")
}

// copies tells how many good ones there are.
func (e *Shortage) copies() string {
	switch e.Good {
	case 0:
		return "there is no good copy"
	case 1:
		return "there is only 1 good copy"
	}
	return fmt.Sprintf("there are only %d good copies", e.Good)
}

// shortage judges all copies, where they are few, and tells what came of it.
func (s *search) shortage() error {
	all := combinations(s.changes, fewChoices) < fewChoices
	if all {
		if err := s.judgeAll(s.ctx); err != nil {
			return err
		}
	}
	return s.lack(len(s.job.Wishes), all)
}

// judgeAll judges every combination of choices.
func (m *Maker) judgeAll(ctx context.Context) error {
	m.everyChoice(func(choices []int) bool {
		m.judge(choices)
		return ctx.Err() == nil
	})
	return context.Cause(ctx)
}

// lack is what has been judged, against how many copies are wanted.
func (m *Maker) lack(wanted int, all bool) *Shortage {
	e := &Shortage{Wanted: wanted, All: all}
	tally := map[Reason]int{}
	good := newGoodness(m.changes)
	for _, key := range m.lookedAt() {
		choices := choicesOf(key)
		reason := m.judge(choices)
		if reason == Long {
			if reason = HidesMistakes; m.spareOf(choices) {
				reason = Good
			}
		}
		e.Judged++
		tally[reason]++
		good.add(choices, reason == Good)
	}
	for reason, times := range tally {
		if reason != Good {
			e.Excluded = append(e.Excluded, Exclusion{reason, times})
		}
	}
	slices.SortFunc(e.Excluded, func(a, b Exclusion) int {
		return cmp.Or(b.Times-a.Times, strings.Compare(string(a.Reason), string(b.Reason)))
	})
	e.Good, e.More = tally[Good], good.more(m.changes, m.problem)
	return e
}
