package tutor

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/wording"
	"unpin/tutor/marking"
	"unpin/tutor/record"
)

// HandIn hands the paper in as it stands; at the latest when its time was over. After it nothing can be typed.
func (s *Sitting) HandIn() {
	if s.Over() {
		return
	}
	at := s.clock()
	if end, limited := s.End(); limited && at.After(end) {
		at = end
	}
	s.note(record.Handed, at)
	s.paper.Handed = at
	s.close()
}

// close leaves open what is not answered, which is not kept.
func (s *Sitting) close() {
	for _, l := range s.lessons {
		l.Heed, l.replaying = nil, true
		handIn(l)
		l.replaying = false
	}
}

// unanswered counts the questions of a problem that are not answered yet, where these are all known; and whether all is answered.
func (s *Sitting) unanswered(i int) (n int, all bool) {
	l := s.lessons[i]
	for k, q := range l.sheet.questions {
		if a := l.sheet.answers[k]; q.Kind != Reading && a.tries == 0 && !a.along && !a.told {
			n++
		}
	}
	_, asking := l.Now()
	return n, n == 0 && !asking
}

// Standing is how problem i stands, in a few words: before the end how much is answered, after it the points.
func (s *Sitting) Standing(i int) string {
	l := s.lessons[i]
	if s.Over() {
		if got, of, told := s.points(i); told {
			return marking.Points(got) + " of " + marking.Points(of)
		}
		return "handed in"
	}
	answered := 0
	for _, a := range l.sheet.answers {
		if a.tries > 0 {
			answered++
		}
	}
	switch _, all := s.unanswered(i); {
	case all:
		return "all answered"
	case answered == 0:
		return ""
	case l.Open():
		return fmt.Sprintf("%d so far", answered)
	}
	return fmt.Sprintf("%d of %d", answered, len(l.sheet.questions))
}

// unfinished lists the problems of which not all is answered.
func (s *Sitting) unfinished() []string {
	var all []string
	for i, t := range s.Tasks {
		if _, done := s.unanswered(i); !done {
			all = append(all, t.Name)
		}
	}
	return all
}

// How a paper is handed in after that was asked for once.
const (
	AgainByWord  = "Type hand in once more to hand the paper in"
	AgainByEnter = "Enter once more hands the paper in"
)

// onceMore says how, and what it means.
func onceMore(how string) string { return how + "; after it nothing can be typed." }

// AskHandIn is what the word hand in does: the first time it says what is still open, and how the paper is handed in; the second time it is.
func (s *Sitting) AskHandIn(again string) Reply {
	switch {
	case s.Over():
		return Reply{Kind: Unread, Lines: []string{"The paper is handed in."}}
	case s.sure:
		s.HandIn()
		return Reply{Kind: HandedIn, Lines: []string{"The paper is handed in."}}
	}
	s.sure = true
	said := "All is answered."
	if left := s.unfinished(); len(left) > 0 {
		said = "Not all is answered: " + strings.Join(left, ", ") + "."
	}
	return Reply{Kind: Listed, Lines: []string{said + " " + onceMore(again)}}
}

// points are those of problem i by the scheme; false while marks are not told.
func (s *Sitting) points(i int) (got, of exact.Num, told bool) {
	if !s.Over() || !s.marksTold() {
		return got, of, false
	}
	r := examined(s.lessons[i]).result
	if r == nil {
		return got, of, false
	}
	return r.Got, r.Of, true
}

// Results are the marks of the paper, a line a problem and one of all; before they are told, from when on.
func (s *Sitting) Results() []string {
	if !s.Over() {
		return nil
	}
	lines := []string{"Handed in at " + moment(s.paper.Handed) + "."}
	switch {
	case s.marksTold():
	case s.Watch != nil:
		return append(lines, "The marks are told once the time of everybody is over.")
	default:
		return append(lines, "The marks are told from "+moment(s.Marks)+" on.")
	}
	var all tally
	for i, t := range s.Tasks {
		got, of, told := s.points(i)
		if !told {
			continue
		}
		all = tally{all.got.Add(got), all.of.Add(of)}
		lines = append(lines, fmt.Sprintf("%s: %s of %s points; %s.", t.Name, marking.Points(got), marking.Points(of), examined(s.lessons[i]).shares()))
	}
	return append(lines, fmt.Sprintf("In all %s of %s points.", marking.Points(all.got), marking.Points(all.of)))
}

// Whole is the paper of problem i after its end: each answer with its marks; nothing before marks are told.
func (s *Sitting) Whole(i int) []string {
	if !s.Over() || !s.marksTold() {
		return nil
	}
	return s.lessons[i].Marks()
}

// Terms say how the exam is sat: how many problems, how long, until when.
func (s *Sitting) Terms() []string {
	lines := []string{fmt.Sprintf("An exam over %s, at the level %s: one paper, in any order.", wording.Counted(len(s.Tasks), "problem"), s.Level)}
	if s.Practice {
		lines[0] += " Here it is practice: unpin solve has the key."
	}
	if s.papers > 1 {
		lines = append(lines, fmt.Sprintf("This is paper %d of this set: it was handed in before, so this one is practice.", s.papers))
	}
	if left, limited := s.Left(); limited {
		end, _ := s.End()
		lines = append(lines, fmt.Sprintf("You have %s, until %s. The clock goes on while you are away; then the paper is handed in as it stands.", minutes(left), moment(end)))
	}
	return lines
}
