package host

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/ssh"
	gossh "golang.org/x/crypto/ssh"

	"unpin/tutor/screen"
)

// ReadKeys reads the keys of instructors, one a line as in a file of authorized keys (sshd(8)), and returns their fingerprints. All
// lines at fault are told.
func ReadKeys(name string, text []byte) (fingerprints []string, err error) {
	for i, line := range strings.Split(string(text), "\n") {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		key, _, _, _, no := gossh.ParseAuthorizedKey([]byte(line))
		if no != nil {
			err = errors.Join(err, fmt.Errorf("%s:%d: this is no public key; one begins with its kind, as ssh-ed25519, and stands on one line, as in ~/.ssh/id_ed25519.pub", name, i+1))
			continue
		}
		fingerprints = append(fingerprints, fingerprint(key))
	}
	return fingerprints, err
}

// board shows the board, and returns the exit code.
func (h *Host) board(s ssh.Session) int {
	if slices.Equal(s.Command(), []string{"health"}) {
		text, _ := h.healthText()
		say(s, text)
		return 0
	}
	if words := s.Command(); len(words) > 0 {
		return examsOf(h).instructed(s, words)
	}
	pty, changes, onTerminal := s.Pty()
	if !onTerminal {
		say(s.Stderr(), instructorWords)
		return 2
	}
	err := screen.ServeProgram(newBoard(h, fingerprint(s.PublicKey())), screen.Far{In: s, Out: s, Sizes: sizes(pty, changes), End: h.stopping})
	if err != nil {
		return 1
	}
	return 0
}

// tellAll says a word to all, at every host, and returns to how many sessions. While the store is away it reaches those here.
func (h *Host) tellAll(text string) int {
	if h.keep.State().Away {
		return h.seats.tell(fromInstructor + text)
	}
	if err := h.hub.say(word{At: h.o.Clock(), Word: text}); err != nil {
		h.o.Log.Error("a word to all is not kept", "error", err.Error())
		return h.seats.tell(fromInstructor + text)
	}
	return h.present()
}

// tellOne says a word to one learner, at whatever host, and reports whether they are there.
func (h *Host) tellOne(id, text string) bool {
	if _, there := h.where(id); !there {
		return false
	}
	if h.keep.State().Away || h.hub.say(word{At: h.o.Clock(), Word: text, To: id}) != nil {
		return h.seats.tellTo(id, fromInstructor+text)
	}
	return true
}

// fromInstructor begins what an instructor says to all.
const fromInstructor = "From your instructor: "

// said is what is said to all, and that the times of an exam may be otherwise, as the screen takes them, until the session ends.
func (s *seat) said() <-chan tea.Msg {
	all := make(chan tea.Msg)
	go func() {
		for {
			var one tea.Msg
			select {
			case word := <-s.news:
				one = screen.Said(word)
			case <-s.changed:
				one = screen.Changed{}
			case <-s.left:
				return
			}
			select {
			case all <- one:
			case <-s.left:
				return
			}
		}
	}()
	return all
}
