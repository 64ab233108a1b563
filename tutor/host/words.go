package host

import (
	"io"
	"strings"

	"github.com/charmbracelet/ssh"

	"unpin/tutor"
)

// wordsHelp lists the words that a session may have in place of the screen.
const wordsHelp = `These words may follow the address:
  plain            the lesson or exam by line, for screen readers and scripts; plain NAME begins one
  record           what you have done and know
  record --export  every line that is kept of you
  record --erase   erases your practice, for good; asks first, with --yes not
  time             how much time of your exam is left
  paper SET        what you have handed in of an exam, signed by the host
  privacy          what is kept of you, how long, and who sees it
  help             this list
Without a word, on a terminal, the lesson opens on the screen.`

// words does what the words of a session say that write to what is kept, and returns the exit code.
func (h *Host) words(s ssh.Session, id string, mine *seat) int {
	words := s.Command()
	switch exam, err := examsOf(h).writes(id); {
	case words[0] == "plain":
		return byLine{Host: h, s: s, id: id, mine: mine}.run(words[1:])
	case exam != nil || err != nil:
		say(s.Stderr(), "You are in an exam: nothing is erased before its end.")
		return 1
	}
	return keepingOf(h).erase(s, id, mine, len(words) == 3)
}

// reads does what the words of a session say, where that writes nothing: whoever works in another session goes on there. It reports
// whether it did.
func (h *Host) reads(s ssh.Session, id string) bool {
	words := s.Command()
	if len(words) == 0 || words[0] == "plain" {
		return false
	}
	switch text := strings.Join(words, " "); text {
	case "record --erase", "record --erase --yes":
		return false
	case "help":
		say(s, wordsHelp)
		s.Exit(0)
	case "time":
		say(s, examsOf(h).timeWord(id))
		s.Exit(0)
	case "privacy":
		for _, line := range keepingOf(h).privacyText() {
			say(s, line)
		}
		s.Exit(0)
	default:
		s.Exit(h.looks(s, id, text))
	}
	return true
}

// looks does what words say that show what was done, which is not shown in an exam. It returns the exit code.
func (h *Host) looks(s ssh.Session, id, text string) int {
	do := map[string]func(ssh.Session, string) int{"record": h.record, "record --export": h.export}[text]
	if words := s.Command(); do == nil && len(words) == 2 && words[0] == "paper" {
		do = func(s ssh.Session, id string) int { return examsOf(h).own(s, id, words[1]) }
	}
	if do == nil {
		say(s.Stderr(), "There are no words "+text+" here. "+wordsHelp)
		return 2
	}
	if exam, err := examsOf(h).writes(id); exam != nil || err != nil {
		say(s.Stderr(), "You are in an exam: what you have done before is shown after its end.")
		return 1
	}
	return do(s, id)
}

// record says what a learner has done and knows.
func (h *Host) record(s ssh.Session, id string) int {
	all, passed, err := h.store(id).Records()
	if err != nil {
		say(s.Stderr(), err.Error())
		return 1
	}
	if text := passed.String(); text != "" {
		say(s.Stderr(), text)
	}
	for _, line := range tutor.AccountOf(all, h.o.Clock()).Lines() {
		say(s, line)
	}
	return 0
}

// export writes every line that is kept of a learner: practice, then exams.
func (h *Host) export(s ssh.Session, id string) int {
	err := h.store(id).Export(s)
	for _, one := range h.sets {
		if one.exam() && err == nil {
			err = h.storeOf(id, one.ID).Export(s)
		}
	}
	if err != nil {
		say(s.Stderr(), err.Error())
		return 1
	}
	return 0
}

// own writes a learner's own paper of an exam.
func (h exams) own(s ssh.Session, id, exam string) int {
	of := h.examNamed(exam)
	if of == nil {
		say(s.Stderr(), "There is no exam "+exam+" here.")
		return 2
	}
	text, _, err := h.paper(of, id)
	switch {
	case err != nil:
		say(s.Stderr(), err.Error())
		return 1
	case text == "":
		say(s.Stderr(), "You have handed nothing in of "+exam+".")
		return 1
	}
	io.WriteString(s, text)
	return 0
}
