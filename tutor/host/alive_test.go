package host

import (
	"net"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"golang.org/x/crypto/ssh"
)

// A deaf connection takes nothing in any more when it is told so, and does not close.
type deaf struct {
	net.Conn
	once   sync.Once
	closed chan struct{}
	falls  chan struct{}
}

func (d *deaf) Read(b []byte) (int, error) {
	n, err := d.Conn.Read(b)
	select {
	case <-d.falls:
		<-d.closed
	default:
	}
	return n, err
}

func (d *deaf) Close() error {
	d.once.Do(func() { close(d.closed) })
	return d.Conn.Close()
}

// A session whose other end is gone without a word ends soon; one that answers goes on, though nobody types.
func TestSignsOfLife(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	c := openedOn(t, folder, filepath.Join(folder, "class.db"), Options{pulse: pulse{200 * time.Millisecond, 5 * time.Second}})
	c.makeCodes(t)
	there := begin(t, c.in(t, code(c.codes["s001"])), true, "")
	there.sees("for today")
	conn, err := net.Dial("tcp", c.address)
	if err != nil {
		t.Fatal(err)
	}
	line := &deaf{Conn: conn, closed: make(chan struct{}), falls: make(chan struct{})}
	defer line.Close()
	to, channels, requests, err := ssh.NewClientConn(line, c.address, &ssh.ClientConfig{User: "class", Auth: []ssh.AuthMethod{code(c.codes["s002"])}, HostKeyCallback: ssh.InsecureIgnoreHostKey()})
	if err != nil {
		t.Fatal(err)
	}
	gone := begin(t, ssh.NewClient(to, channels, requests), true, "")
	gone.sees("for today")
	time.Sleep(time.Second)
	if n := c.seats.count(); n != 2 {
		t.Fatalf("%d are there, though both answer:\n%s", n, c.log.String())
	}
	close(line.falls)
	waits(t, "the one that is gone has left", func() bool { return !c.seats.holds("s002", "") })
	if !c.seats.holds("s001", "") {
		t.Errorf("the other one is gone as well:\n%s", c.log.String())
	}
}
