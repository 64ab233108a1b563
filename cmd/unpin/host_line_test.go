//go:build unix

package main

import (
	"flag"
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// Of the line to a host in TestOpenSSH.
var (
	lineDelay = flag.Duration("line-delay", 5*time.Millisecond, "how long what is sent is on its way, each way")
	lineShots = flag.String("line-screens", "", "a folder for the screens of TestOpenSSH, to be looked at")
)

// A badLine is a way to a host that delays, stalls and cuts.
type badLine struct {
	net.Listener
	to      string
	mutex   sync.Mutex
	stalled *bool // what those who are on it share
	conns   []net.Conn
}

// newBadLine lays one to a port.
func newBadLine(t *testing.T, port string) *badLine {
	t.Helper()
	at, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	l := &badLine{Listener: at, to: net.JoinHostPort("127.0.0.1", port), stalled: new(bool)}
	t.Cleanup(func() { at.Close(); l.cut() })
	go func() {
		for {
			near, err := at.Accept()
			if err != nil {
				return
			}
			far, err := net.Dial("tcp", l.to)
			if err != nil {
				near.Close()
				continue
			}
			l.mutex.Lock()
			l.conns = append(l.conns, near, far)
			go l.carry(far, near, l.stalled)
			go l.carry(near, far, l.stalled)
			l.mutex.Unlock()
		}
	}()
	return l
}

// carry carries what comes, late.
func (l *badLine) carry(to, from net.Conn, stalled *bool) {
	type piece struct {
		text []byte
		due  time.Time
	}
	pieces := make(chan piece, 4096)
	go func() {
		defer close(pieces)
		for {
			text := make([]byte, 32<<10)
			n, err := from.Read(text)
			if n > 0 {
				pieces <- piece{text[:n], time.Now().Add(*lineDelay)}
			}
			if err != nil {
				return
			}
		}
	}()
	for p := range pieces {
		time.Sleep(time.Until(p.due))
		l.mutex.Lock()
		silent := *stalled
		l.mutex.Unlock()
		if !silent {
			to.Write(p.text)
		}
	}
	l.mutex.Lock()
	silent := *stalled
	l.mutex.Unlock()
	if !silent {
		to.Close()
	}
}

// cut breaks every connection that there is.
func (l *badLine) cut() {
	l.mutex.Lock()
	defer l.mutex.Unlock()
	for _, conn := range l.conns {
		conn.Close()
	}
	l.conns = nil
}

// stall has nothing arrive any more on the connections that there are, and tells nobody.
func (l *badLine) stall() {
	l.mutex.Lock()
	defer l.mutex.Unlock()
	*l.stalled, l.stalled = true, new(bool)
	l.conns = nil
}

// port is where it begins.
func (l *badLine) port() string {
	_, port, _ := net.SplitHostPort(l.Addr().String())
	return port
}

// opensshClass is a class with a learner and a teacher who have keys, behind a bad line; it returns the learner's code, and what each of
// the two types to say a word.
func opensshClass(t *testing.T) (line *badLine, code string, command func(who, word string) string) {
	t.Helper()
	client, err := exec.LookPath("ssh")
	if err != nil {
		t.Skip("there is no OpenSSH client (Debian: openssh-client)")
	}
	bin := unpinBinary(t)
	folder, code := classFolder(t, bin)
	keys := t.TempDir()
	for _, name := range []string{"learner", "teacher"} {
		if out, err := exec.Command(filepath.Join(filepath.Dir(client), "ssh-keygen"), "-q", "-t", "ed25519", "-N", "", "-f", filepath.Join(keys, name)).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
	}
	public, err := os.ReadFile(filepath.Join(keys, "teacher.pub"))
	if err == nil {
		err = os.WriteFile(filepath.Join(folder, "instructors"), public, 0o600)
	}
	if err != nil {
		t.Fatal(err)
	}
	line = newBadLine(t, startHost(t, bin, folder, "--listen", "127.0.0.1:0").port(t))
	return line, code, func(who, word string) string {
		return fmt.Sprintf("exec %s -F none -p %s -i %s -o IdentitiesOnly=yes -o UserKnownHostsFile=%s -o StrictHostKeyChecking=accept-new class@127.0.0.1 %s",
			client, line.port(), filepath.Join(keys, who), filepath.Join(keys, "known"), word)
	}
}

// OpenSSH's own client, on a terminal, over a line that delays, cuts and stalls: the first use, a lesson that goes on where it was after
// each, the lesson by line, and the board.
func TestOpenSSH(t *testing.T) {
	t.Parallel()
	line, code, command := opensshClass(t)
	begun := time.Now()
	v := newSession(t, command("learner", ""), 100, 30)
	v.expect("Your personal code:")
	t.Logf("from the call to the question for a code: %v", time.Since(begun).Round(time.Millisecond))
	v.shot("1-code")
	v.send(strings.ToLower(code) + "\r")
	v.expect("for today")
	v.shot("2-list")
	v.send("jetty")
	v.expect("find: jetty")
	v.send("\x1b[C\x1b[C") // the level values
	v.expect("[values]")
	v.shot("3-found")
	v.send("\r")
	v.expect("Before you begin")
	v.send("\r")
	v.expect("question 1 of")
	v.shot("4-lesson")
	for range 5 {
		before, pressed := v.text(), time.Now()
		v.send("4")
		v.changes(before)
		t.Logf("from a key to what it changes: %v", time.Since(pressed).Round(time.Millisecond))
		v.send("\x7f")
		time.Sleep(3 * *lineDelay)
	}
	v.send("tell\r")
	v.expect("question 2 of")
	v.shot("5-told")
	line.cut()
	v.closes()
	v = newSession(t, command("learner", ""), 100, 30)
	v.expect("for today")
	v.send("jetty\x1b[C\x1b[C\r")
	v.expect("1 of 14 questions settled")
	v.send("\r")
	v.expect("question 2 of")
	v.shot("6-after-the-cut")
	line.stall() // the laptop is shut, say; nobody is told
	begun = time.Now()
	w := newSession(t, command("learner", "plain jetty-deck"), 100, 30)
	w.expect("type resume to take it up")
	t.Logf("from the call to the lesson, while the line of the session before is dead: %v", time.Since(begun).Round(time.Millisecond))
	w.shot("7-by-line")
	board := newSession(t, command("teacher", ""), 100, 30)
	board.expect("s001")
	board.shot("8-board")
	export := exec.Command("sh", "-c", command("learner", "record --export"))
	out, err := export.Output()
	if err != nil || strings.Count(string(out), `"outcome":"told"`) != 1 {
		t.Errorf("%v\n%s", err, out)
	}
	health, err := exec.Command("sh", "-c", command("teacher", "health")).Output()
	if err != nil || !strings.HasPrefix(string(health), "All is well") {
		t.Errorf("%v %s", err, health)
	}
}

// shot writes the screen, if that is wanted.
func (s *session) shot(name string) {
	if *lineShots != "" {
		if err := os.WriteFile(filepath.Join(*lineShots, name+".txt"), []byte(s.text()), 0o600); err != nil {
			s.t.Error(err)
		}
	}
}

// changes waits until the screen is another.
func (s *session) changes(before string) {
	s.t.Helper()
	for end := time.Now().Add(time.Minute); time.Now().Before(end); time.Sleep(time.Millisecond) {
		if s.text() != before {
			return
		}
	}
	s.t.Fatalf("nothing changes:\n%s", before)
}

// closes waits until the program has ended.
func (s *session) closes() {
	s.t.Helper()
	select {
	case <-s.ended:
	case <-time.After(time.Minute):
		s.t.Fatalf("it does not end:\n%s", s.text())
	}
}
