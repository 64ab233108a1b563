package host

import (
	"log/slog"
	"net"
	"slices"
	"sync/atomic"

	"github.com/charmbracelet/ssh"
	gossh "golang.org/x/crypto/ssh"

	"unpin/problems/variant"
)

// A door is who is who at a host: whom it lets in, and as whom.
type door struct {
	title    string
	roster   []variant.Student
	students map[string]variant.Student // by id, of several lines of the roster the last: the latest attempt
	keys     []string                   // fingerprints of those of instructors
	people   people
	guesses  guesses
	wrong    atomic.Int64 // codes that were typed
	away     func() bool  // whether it cannot be looked up who they are
	log      *slog.Logger
}

// newDoor is that of a class.
func newDoor(o Options, known people, away func() bool) *door {
	d := &door{title: o.Title, roster: o.Students, students: map[string]variant.Student{}, keys: o.Keys, people: known, guesses: guesses{now: o.Clock}, away: away, log: o.Log}
	for _, s := range o.Students {
		if s.ID != peopleName {
			d.students[s.ID] = s
		}
	}
	return d
}

// newCodes makes a code for each of those who have none, or with all for everybody, and lists them by id.
func (d *door) newCodes(all bool) (ids, codes []string, err error) {
	for _, s := range d.roster {
		id := s.ID
		if slices.Contains(ids, id) || !all && d.people.hasCode(id) {
			continue
		}
		code, err := d.people.newCode(id)
		if err != nil {
			return nil, nil, err
		}
		ids, codes = append(ids, id), append(codes, code)
	}
	return ids, codes, nil
}

// fingerprint is that of a key, as OpenSSH shows it.
func fingerprint(key gossh.PublicKey) string { return gossh.FingerprintSHA256(key) }

// The permissions that a login leaves with its connection, and with no other.
const (
	byKey  = "unpin key"  // the fingerprint of the key that was offered
	byCode = "unpin code" // the id that the code stands for
)

// hearKey lets every key in that is proven to be at hand: one that is known goes on, the others are asked for a code in their session.
func (d *door) hearKey(ctx ssh.Context, key ssh.PublicKey) bool {
	ctx.Permissions().Extensions = map[string]string{byKey: fingerprint(key)}
	return true
}

// noLogin is told to who comes while it cannot be looked up who they are.
const noLogin = "The class's store is away, so nobody can be let in now: try again in a minute. What you have done is kept."

// hearCode asks for a code where there is no key.
func (d *door) hearCode(ctx ssh.Context, ask gossh.KeyboardInteractiveChallenge) bool {
	ctx.Permissions().Extensions = nil // what was said of a key before does not hold
	from := addressOf(ctx.RemoteAddr())
	if d.guesses.tooMany(from) {
		d.log.Warn("too many wrong codes", "from", from)
		return false
	}
	if d.away() {
		ask("", noLogin, nil, nil)
		return false
	}
	answers, err := ask("", d.title, []string{"Your personal code: "}, []bool{false})
	if err != nil || len(answers) != 1 {
		return false
	}
	id, ok := d.heard(answers[0], from)
	if ok {
		ctx.Permissions().Extensions = map[string]string{byCode: id}
	}
	return ok
}

// heard is the id that a code stands for, if it is one of the roster's.
func (d *door) heard(code, from string) (id string, ok bool) {
	id, err := d.people.ofCode(code)
	if err != nil {
		d.log.Error("codes cannot be read", "error", err.Error())
		return "", false
	}
	if !d.knows(id) {
		d.wrong.Add(1)
		d.guesses.wrong(from)
		return "", false
	}
	return id, true
}

// knows reports whether somebody is on the roster.
func (d *door) knows(id string) bool {
	_, known := d.students[id]
	return known
}

// identity is who is at the other end: the id, or else the fingerprint of a proven key that is bound to nobody.
func (d *door) identity(s ssh.Session) (id, key string, err error) {
	held := s.Permissions().Extensions
	if id := held[byCode]; d.knows(id) {
		return id, "", nil
	}
	// The key that was proven, which need not be the one that was offered last (CVE-2024-45337).
	if s.PublicKey() == nil || fingerprint(s.PublicKey()) != held[byKey] {
		return "", "", nil
	}
	id, err = d.people.ofKey(held[byKey])
	if !d.knows(id) {
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
