package host

import (
	"net"

	"github.com/charmbracelet/ssh"
	gossh "golang.org/x/crypto/ssh"
)

// fingerprint is that of a key, as OpenSSH shows it.
func fingerprint(key gossh.PublicKey) string { return gossh.FingerprintSHA256(key) }

// The permissions that a login leaves with its connection, and with no other.
const (
	byKey  = "unpin key"  // the fingerprint of the key that was offered
	byCode = "unpin code" // the id that the code stands for
)

// hearKey lets every key in that is proven to be at hand: one that is known goes on, the others are asked for a code in their session.
func (h *Host) hearKey(ctx ssh.Context, key ssh.PublicKey) bool {
	ctx.Permissions().Extensions = map[string]string{byKey: fingerprint(key)}
	return true
}

// noLogin is told to who comes while it cannot be looked up who they are.
const noLogin = "The class's store is away, so nobody can be let in now: try again in a minute. What you have done is kept."

// hearCode asks for a code where there is no key.
func (h *Host) hearCode(ctx ssh.Context, ask gossh.KeyboardInteractiveChallenge) bool {
	ctx.Permissions().Extensions = nil // what was said of a key before does not hold
	from := addressOf(ctx.RemoteAddr())
	if h.guesses.tooMany(from) {
		h.o.Log.Warn("too many wrong codes", "from", from)
		return false
	}
	if h.keep.State().Away {
		ask("", noLogin, nil, nil)
		return false
	}
	answers, err := ask("", h.o.Title, []string{"Your personal code: "}, []bool{false})
	if err != nil || len(answers) != 1 {
		return false
	}
	id, ok := h.heard(answers[0], from)
	if ok {
		ctx.Permissions().Extensions = map[string]string{byCode: id}
	}
	return ok
}

// heard is the id that a code stands for, if it is one of the roster's.
func (h *Host) heard(code, from string) (id string, ok bool) {
	id, err := h.people.ofCode(code)
	if err != nil {
		h.o.Log.Error("codes cannot be read", "error", err.Error())
		return "", false
	}
	if !h.knows(id) {
		h.figures.wrong.Add(1)
		h.guesses.wrong(from)
		return "", false
	}
	return id, true
}

// knows reports whether somebody is on the roster.
func (h *Host) knows(id string) bool {
	_, known := h.students[id]
	return known
}

// identity is who is at the other end: the id, or else the fingerprint of a proven key that is bound to nobody.
func (h *Host) identity(s ssh.Session) (id, key string, err error) {
	held := s.Permissions().Extensions
	if id := held[byCode]; h.knows(id) {
		return id, "", nil
	}
	// The key that was proven, which need not be the one that was offered last (CVE-2024-45337).
	if s.PublicKey() == nil || fingerprint(s.PublicKey()) != held[byKey] {
		return "", "", nil
	}
	id, err = h.people.ofKey(held[byKey])
	if !h.knows(id) {
		id = ""
	}
	return id, held[byKey], err
}

// addressOf is where somebody comes from, without the port.
func addressOf(at net.Addr) string {
	if tcp, ok := at.(*net.TCPAddr); ok {
		return tcp.IP.String()
	}
	return at.String()
}
