package tutor

import (
	"fmt"
	"time"

	"unpin/tutor/record"
)

// A limit is the time that an exam may take. The zero limit is none.
type limit struct {
	lasts  time.Duration
	began  time.Time
	handed bool // the paper is being handed in, or is
}

// Limit has an exam last so long from now by a clock; one that is taken up again, from when it was begun. Then the paper is handed in
// as it stands: a line that comes later is not taken, and what is not answered is left open. A lesson has no limit.
func Limit(l *Lesson, lasts time.Duration, clock func() time.Time) {
	if !l.sheet.exam || lasts <= 0 {
		return
	}
	l.Clock, l.limit = clock, limit{lasts: lasts, began: clock()}
	l.notes = append(l.notes, fmt.Sprintf("You have %s; time says what is left. Here an exam is practice: unpin solve has the key.", minutes(lasts)))
}

// timeLeft is how much of its time an exam has left, zero or less once that is over; false where it has no limit, or is done.
func timeLeft(l *Lesson) (left time.Duration, limited bool) {
	_, asking := l.Now()
	if l.limit.lasts == 0 || l.Clock == nil || !asking {
		return 0, false
	}
	return l.limit.began.Add(l.limit.lasts).Sub(l.Clock()), true
}

// TimeLeft says how much time is left, in whole minutes; empty where there is no limit.
func TimeLeft(l *Lesson) string {
	if left, limited := timeLeft(l); limited {
		return minutes(left) + " left"
	}
	return ""
}

// minutes are whole minutes begun, in words.
func minutes(d time.Duration) string {
	n := max(0, (d+time.Minute-1)/time.Minute)
	if n == 1 {
		return "1 minute"
	}
	return fmt.Sprintf("%d minutes", n)
}

// tellTime says how much time is left.
func tellTime(l *Lesson, _ Question, _ bool) Reply {
	if says := TimeLeft(l); says != "" {
		return Reply{Kind: Listed, Lines: []string{says + "."}}
	}
	return Reply{Kind: Unread, Lines: []string{"Here is no limit of time."}}
}

// begunAt counts the time of an exam that is taken up again from its first line.
func begunAt(l *Lesson, events []record.Record) {
	for _, r := range events {
		if !r.At.IsZero() && r.At.Before(l.limit.began) {
			l.limit.began = r.At
		}
	}
}

// late hands the paper in where the time is over, and reports whether it did.
func late(l *Lesson, line string) (Reply, bool) {
	left, limited := timeLeft(l)
	if !limited || left > 0 || l.limit.handed || l.replaying {
		return Reply{}, false
	}
	l.limit.handed = true
	handIn(l)
	said := "The time is over: the paper is handed in as it stands."
	if line != "" && !IsCommand(line) {
		said += " The last line came too late and is not taken."
	}
	return Reply{Kind: Told, Lines: []string{said}}, true
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
