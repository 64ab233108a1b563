package host

import (
	"net"
	"sync/atomic"
	"time"

	"github.com/charmbracelet/ssh"
	gossh "golang.org/x/crypto/ssh"
)

// How often a connection is asked for a sign of life, which also keeps what lies between from forgetting it, and how long it may take.
const (
	pulses  = time.Minute
	silence = 30 * time.Second
)

// A pulse is how often, and how long.
type pulse struct{ every, most time.Duration }

// comingKey is where a connection's timer is kept until a session begins on it.
type comingKey struct{}

// hurry ends a connection on which no session begins soon.
func hurry(ctx ssh.Context, conn net.Conn) net.Conn {
	ctx.SetValue(comingKey{}, time.AfterFunc(logins, func() { conn.Close() }))
	return conn
}

// arrived notes that a session has begun.
func arrived(ctx ssh.Context) {
	if timer, coming := ctx.Value(comingKey{}).(*time.Timer); coming {
		timer.Stop()
	}
}

// A heard session notes when something was last typed in it: what the host itself sends is no sign of anybody.
type heard struct {
	ssh.Session
	begun time.Time
	last  atomic.Int64 // as a time.Duration since it began, which no clock that is put right changes
}

// hear begins to note.
func hear(s ssh.Session) *heard {
	return &heard{Session: s, begun: time.Now()}
}

// Read notes what is typed.
func (h *heard) Read(b []byte) (int, error) {
	n, err := h.Session.Read(b)
	if n > 0 {
		h.last.Store(int64(time.Since(h.begun)))
	}
	return n, err
}

// rested is how long nothing was typed.
func (h *heard) rested() time.Duration { return time.Since(h.begun) - time.Duration(h.last.Load()) }

// watch ends a session in which nothing is typed for long, by stop, and one whose other end is gone, by cut, until it has left.
func (h *heard) watch(p pulse, left <-chan struct{}, stop func(why string), cut func()) {
	beats := time.NewTicker(p.every)
	defer beats.Stop()
	for {
		select {
		case <-left:
			return
		case <-beats.C:
		}
		if h.rested() > idle {
			stop("Nothing was typed for two hours. What you have done is kept: log in again.")
			return
		}
		if !answers(h.Session, p.most) {
			cut()
			return
		}
	}
}

// answers asks the other end for a sign of life. Any answer is one, a refusal too (RFC 4254, 4).
func answers(s ssh.Session, most time.Duration) bool {
	conn, known := s.Context().Value(ssh.ContextKeyConn).(gossh.Conn)
	if !known {
		return true
	}
	answered := make(chan bool, 1)
	go func() {
		_, _, err := conn.SendRequest("keepalive@openssh.com", true, nil)
		answered <- err == nil
	}()
	select {
	case well := <-answered:
		return well
	case <-time.After(most):
		conn.Close()
		return false
	}
}
