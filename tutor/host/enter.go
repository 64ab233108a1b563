package host

import (
	"io"
	"slices"

	"github.com/charmbracelet/ssh"
)

// instructs reports whether a session is an instructor's, by the key that was proven at its login.
func (d *door) instructs(s ssh.Session) bool {
	return s.PublicKey() != nil && fingerprint(s.PublicKey()) == s.Permissions().Extensions[byKey] && slices.Contains(d.keys, fingerprint(s.PublicKey()))
}

// refusal is why somebody is not let in, as they are told.
type refusal string

// Error is the reason.
func (r refusal) Error() string { return string(r) }

// mostCodes is how often a code is asked for in one session.
const mostCodes = 3

// enter finds out who is there: from the login, or by a code that binds the key which was proven at the login.
func (d *door) enter(s ssh.Session) (string, error) {
	id, key, err := d.identity(s)
	switch {
	case err != nil:
		d.log.Error("keys cannot be read", "error", err.Error())
		return "", refusal(noLogin)
	case id != "":
		return id, nil
	case key == "":
		return "", refusal("This key was not proven at the login.")
	}
	from, lines := addressOf(s.RemoteAddr()), &typed{in: s, echo: func() io.Writer { return nil }}
	say(s, "Your key is new here. Type your personal code to bind it to you; from then on it opens your lesson by itself.")
	for range mostCodes {
		if d.guesses.tooMany(from) {
			return "", refusal("There were too many wrong codes. Wait a minute, then log in again.")
		}
		io.WriteString(s, "Your personal code: ")
		code, err := lines.line()
		say(s, "")
		if err != nil {
			return "", refusal("No code was typed.")
		}
		if id, ok := d.heard(code, from); ok {
			if err := d.people.bind(key, id); err != nil {
				d.log.Error("a key cannot be kept", "error", err.Error())
				say(s, "Your key cannot be kept now: the code will be asked for again.")
			}
			return id, nil
		}
		say(s, "That is not a code of this class. It has ten letters and digits; ask whoever teaches it for yours.")
	}
	return "", refusal("Log in again when you have your code.")
}
