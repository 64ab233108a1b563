package tutor

import (
	"bufio"
	"errors"
	"io"
	"strconv"
	"strings"
	"time"

	"unpin/statics/notation"
	"unpin/statics/wording"
)

// SitPlain runs a sitting by line: a problem is chosen by its number or name, and worked as by Plain; problems leads back to the
// list, and hand in ends it. At its end the whole paper is told. An error is one of reading or writing.
func SitPlain(s *Sitting, in *bufio.Reader, out io.Writer) error {
	p := plain{out: bufio.NewWriter(out)}
	next, off := s.reading(in)
	defer off()
	p.next = next
	p.say("%s", notation.ASCII(s.Title))
	if s.Over() {
		return errors.Join(p.afterwards(s), p.out.Flush())
	}
	p.lines(s.Terms())
	p.say("%s", wording.Caution)
	return errors.Join(p.sit(s), p.out.Flush())
}

// sit has problems chosen and worked until the student leaves or the paper is handed in.
func (p *plain) sit(s *Sitting) error {
	for list := true; !s.Over(); {
		if list {
			p.list(s)
		}
		list = false
		p.say("? problem [number, name or hand in]")
		line, err := p.line()
		switch {
		case errors.Is(err, io.EOF):
			return nil
		case errors.Is(err, errTime):
			s.HandIn()
			p.say("%s", s.TimeOver())
			continue
		case err != nil:
			return err
		}
		switch word := strings.ToLower(strings.TrimSpace(line)); {
		case word == "quit":
			return nil
		case s.timeOver():
			s.HandIn()
			p.say("%s", s.TimeOver())
		case word == "hand in" && s.Held() != "":
			p.say("%s", s.Held())
		case word == "hand in":
			p.lines(s.AskHandIn(AgainByWord).Lines)
		case word == "time":
			p.say("%s", timeSays(s))
		case s.numbered(word) >= 0:
			s.sure = false
			on, err := p.workOn(s, s.numbered(word))
			if !on || err != nil {
				return err
			}
			list = true
		default:
			s.sure = false
			p.say("Type a number from 1 to %d or a name of the list; hand in, time or quit.", len(s.Tasks))
		}
	}
	p.results(s)
	return nil
}

// list lists the problems, with how far each is.
func (p *plain) list(s *Sitting) {
	for i, t := range s.Tasks {
		standing := s.Standing(i)
		if standing != "" {
			standing = " (" + standing + ")"
		}
		p.say("%d: %s: %s%s", i+1, t.Name, notation.ASCII(t.Title), standing)
	}
}

// numbered is the problem that a word means, by its place or its name, or -1.
func (s *Sitting) numbered(word string) int {
	n, bad := strconv.Atoi(word)
	for i, t := range s.Tasks {
		if bad == nil && n == i+1 || word == strings.ToLower(t.Name) {
			return i
		}
	}
	return -1
}

// workOn works a problem until its last question or the student goes back to the list, and reports whether the student is still there.
func (p *plain) workOn(s *Sitting, i int) (on bool, err error) {
	l := s.Reopened(i)
	if _, asking := l.Now(); !asking {
		p.say("All of %s is answered, and its last equation is finished.", s.Tasks[i].Name)
		return true, nil
	}
	return p.work(l, p.opening, func() {
		if !s.Over() {
			p.say("All of %s is answered; choose it again to change an answer.", s.Tasks[i].Name)
		}
	})
}

// Reopened is the lesson of problem i with a question in hand: where all is answered, the last one again, if it can be changed.
func (s *Sitting) Reopened(i int) *Lesson {
	l := s.lessons[i]
	if _, asking := l.Now(); !asking && !s.Over() {
		l.Type("back")
	}
	return l
}

// results tell the whole paper.
func (p *plain) results(s *Sitting) {
	for i, t := range s.Tasks {
		if whole := s.Whole(i); whole != nil {
			p.say("Problem %d, %s: %s", i+1, t.Name, notation.ASCII(t.Title))
			p.lines(whole)
		}
	}
	p.lines(s.Results())
}

// afterwards tells a paper that was handed in before; as practice another can be begun.
func (p *plain) afterwards(s *Sitting) error {
	p.results(s)
	for s.Practice {
		p.say("? again or quit [again: another paper, for practice]")
		line, err := p.line()
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return err
		}
		switch strings.ToLower(strings.TrimSpace(line)) {
		case "quit":
			return nil
		case "again":
			if err := s.Anew(); err != nil {
				return err
			}
			p.lines(s.Terms())
			return p.sit(s)
		}
	}
	return nil
}

// errTime says that the time was over before a line came.
var errTime = errors.New("the time is over")

// reading reads lines; where the time of the paper is over before one comes, with the error errTime. off ends it: a line that is
// still waited for is lost.
func (s *Sitting) reading(in *bufio.Reader) (next func() (string, error), off func()) {
	type typed struct {
		line string
		err  error
	}
	wanted, lines := make(chan struct{}), make(chan typed, 1)
	go func() {
		for range wanted {
			line, err := readLine(in)
			lines <- typed{line, err}
		}
	}()
	waiting := false
	next = func() (string, error) {
		if !waiting {
			wanted <- struct{}{}
			waiting = true
		}
		for {
			over, stop := s.atEnd()
			select {
			case t := <-lines:
				stop()
				waiting = false
				return t.line, t.err
			case <-over:
			case <-s.changed():
				stop()
			}
			if left, limited := s.Left(); limited && left <= 0 {
				return "", errTime
			}
		}
	}
	return next, func() { close(wanted) }
}

// atEnd tells when the time is over, as it is settled now.
func (s *Sitting) atEnd() (over <-chan time.Time, stop func()) {
	left, limited := s.Left()
	if !limited {
		return nil, func() {}
	}
	timer := time.NewTimer(max(left, 0))
	return timer.C, func() { timer.Stop() }
}
