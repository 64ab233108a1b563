package host

import (
	"strings"

	"github.com/charmbracelet/ssh"

	"unpin/tutor"
)

// wordsHelp lists the words that a session may have in place of the screen.
const wordsHelp = `These words may follow the address:
  plain            the lesson by line, for screen readers and scripts; plain NAME begins a problem
  record           what you have done and know
  record --export  every line that is kept of you
  record --erase   erases your practice, for good; asks first, with --yes not
  privacy          what is kept of you, how long, and who sees it
  help             this list
Without a word, on a terminal, the lesson opens on the screen.`

// words does what the words of a session say, and returns the exit code.
func (h *Host) words(s ssh.Session, id string, mine *seat) int {
	words := s.Command()
	switch strings.Join(words, " ") {
	case "help":
		say(s, wordsHelp)
		return 0
	case "record":
		return h.record(s, id)
	case "privacy":
		for _, line := range h.privacyText() {
			say(s, line)
		}
		return 0
	case "record --erase", "record --erase --yes":
		return h.erase(s, id, mine, len(words) == 3)
	case "record --export":
		return h.export(s, id)
	}
	if words[0] == "plain" {
		return h.plain(s, id, mine, words[1:])
	}
	say(s.Stderr(), "There is no word "+words[0]+" here. "+wordsHelp)
	return 2
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
