package tutor

import (
	"time"

	"unpin/statics/wording"
)

// TimeLeft says how much time an exam has left, in whole minutes begun; empty where there is no limit.
func TimeLeft(l *Lesson) string {
	if l.sitting == nil {
		return ""
	}
	return l.sitting.TimeLeft()
}

// TimeLeft says how much time is left, in whole minutes begun; empty where there is no limit, or the paper was handed in.
func (s *Sitting) TimeLeft() string {
	if left, limited := s.Left(); limited {
		return minutes(left) + " left"
	}
	return ""
}

// minutes are whole minutes begun, in words.
func minutes(d time.Duration) string {
	return wording.Counted(int(max(0, (d+time.Minute-1)/time.Minute)), "minute")
}

// timeSays says how much time is left, in a sentence.
func timeSays(s *Sitting) string {
	if s != nil {
		if says := s.TimeLeft(); says != "" {
			return says + "."
		}
	}
	return "Here is no limit of time."
}

// tellTime is the word time.
func tellTime(l *Lesson, _ Question, _ bool) Reply {
	if TimeLeft(l) == "" {
		return Reply{Kind: Unread, Lines: []string{timeSays(nil)}}
	}
	return Reply{Kind: Listed, Lines: []string{timeSays(l.sitting)}}
}

// TimeOver is what is said once the time is over, whoever ended it.
func (s *Sitting) TimeOver() string {
	why := "The time is over"
	if s.Watch != nil && s.Watch.Shut(s.paper.Began) {
		why = "Your instructor has closed the exam"
	}
	return why + ": the paper is handed in as it stands."
}

// late hands the paper in where the time is over, and reports whether it did.
func late(l *Lesson, line string) (Reply, bool) {
	s := l.sitting
	if s == nil || l.replaying || s.Over() || !s.timeOver() {
		return Reply{}, false
	}
	s.HandIn()
	said := s.TimeOver()
	if line != "" && !IsCommand(line) {
		said += " The last line came too late and is not taken."
	}
	return Reply{Kind: HandedIn, Lines: []string{said}}, true
}

// handInCommand is the word that hands in an exam.
const handInCommand = "hand in"

// unsure has the word hand in ask once more.
func unsure(l *Lesson) {
	if l.sure = false; l.sitting != nil {
		l.sitting.sure = false
	}
}

// handInWord is the word hand in: said twice it hands in the paper, or an exam on one problem, as it stands.
func handInWord(l *Lesson, _ Question, asking bool) Reply {
	switch {
	case !l.sheet.exam:
		return Reply{Kind: Unread, Lines: []string{"Here is nothing to hand in: each answer is judged at once."}}
	case l.sitting != nil:
		return l.sitting.AskHandIn(AgainByWord)
	case !asking:
		return Reply{Kind: Unread, Lines: []string{"The paper is handed in."}}
	case !l.sure:
		l.sure = true
		return Reply{Kind: Listed, Lines: []string{"Not all is answered. " + onceMore(AgainByWord)}}
	}
	handIn(l)
	return Reply{Kind: HandedIn, Lines: []string{"The paper is handed in as it stands."}}
}

// toProblems is the word problems.
func toProblems(l *Lesson, _ Question, _ bool) Reply {
	if l.sitting == nil {
		return Reply{Kind: Unread, Lines: []string{"Here is one problem alone; unpin lists all of them."}}
	}
	return Reply{Kind: ToList}
}

// handIn leaves open what is not answered.
func handIn(l *Lesson) {
	for q, asking := l.Now(); asking; q, asking = l.Now() {
		switch {
		case q.Kind == Reading:
			l.Type("")
		case l.sheet.inHand().tries > 0 && !q.Composing(): // gone back to
			l.sheet.at++
		default:
			l.Type("tell")
		}
	}
}

// examOver reports whether all is asked and, of the paper of a set, this was handed in.
func examOver(l *Lesson) bool {
	_, asking := l.Now()
	return !asking && (l.sitting == nil || l.sitting.Over())
}
