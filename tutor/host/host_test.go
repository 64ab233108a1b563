package host

import (
	"bytes"
	"context"
	"crypto/ed25519"
	"crypto/rand"
	"errors"
	"io"
	"log/slog"
	"net"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"golang.org/x/crypto/ssh"

	"unpin/problems/variant"
	"unpin/tutor/record/database"
)

// A class is a host with what a test needs of it.
type class struct {
	*Host
	address string
	codes   map[string]string // by id
	log     *noted
	stop    func()
	stopped chan error
}

// noted keeps what is logged.
type noted struct {
	mutex sync.Mutex
	text  bytes.Buffer
}

func (n *noted) Write(b []byte) (int, error) {
	n.mutex.Lock()
	defer n.mutex.Unlock()
	return n.text.Write(b)
}

func (n *noted) String() string {
	n.mutex.Lock()
	defer n.mutex.Unlock()
	return n.text.String()
}

// threeStudents are the class of these tests; one has half the time more.
var threeStudents = []variant.Student{{ID: "s001", Attempt: 1}, {ID: "s002", Name: "Bo", Attempt: 1, Extra: 50}, {ID: "s003", Attempt: 1}}

// opened starts a host for three learners in a folder, on a port of its own, with the keys of instructors.
func opened(t *testing.T, folder string, keys ...string) *class {
	t.Helper()
	return openedWith(t, folder, nil, nil, keys...)
}

// openedWith does so with sets, and a clock of the test's.
func openedWith(t *testing.T, folder string, sets []Set, now func() time.Time, keys ...string) *class {
	t.Helper()
	c := openedOn(t, folder, filepath.Join(folder, "class.db"), Options{Sets: sets, Clock: now, Keys: keys})
	c.makeCodes(t)
	return c
}

// openedOn starts a host on a database, with the codes that are there.
func openedOn(t *testing.T, folder, address string, o Options) *class {
	t.Helper()
	data, err := database.Open(context.Background(), address)
	if err != nil {
		t.Fatal(err)
	}
	log := &noted{}
	o.Title, o.Students, o.Data, o.Key, o.Log = "Statics, week 5", threeStudents, data, filepath.Join(folder, "host-key"), slog.New(slog.NewTextHandler(log, nil))
	h, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	h.hub.beat = 100 * time.Millisecond
	h.seats.waits = patient // a session that is slow to stop on a busy machine is told why all the same
	at, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	c := &class{Host: h, address: at.Addr().String(), codes: map[string]string{}, log: log, stop: stop, stopped: make(chan error, 1)}
	go func() { c.stopped <- h.Serve(ctx, at) }()
	t.Cleanup(func() {
		stop()
		<-c.stopped
		c.stopped <- nil
		data.Close()
	})
	return c
}

// makeCodes makes codes for all.
func (c *class) makeCodes(t *testing.T) {
	t.Helper()
	ids, codes, err := c.NewCodes(true)
	if err != nil {
		t.Fatal(err)
	}
	for i, id := range ids {
		c.codes[id] = codes[i]
	}
}

// newKey makes a key of a learner.
func newKey(t *testing.T) ssh.Signer {
	t.Helper()
	_, private, err := ed25519.GenerateKey(rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	signer, err := ssh.NewSignerFromKey(private)
	if err != nil {
		t.Fatal(err)
	}
	return signer
}

// code logs in with a code, asked for as often as the host likes.
func code(text string) ssh.AuthMethod {
	return ssh.KeyboardInteractive(func(_, _ string, questions []string, _ []bool) ([]string, error) {
		answers := make([]string, len(questions))
		for i := range answers {
			answers[i] = text
		}
		return answers, nil
	})
}

// login connects, or says why not.
func (c *class) login(how ...ssh.AuthMethod) (*ssh.Client, error) {
	return ssh.Dial("tcp", c.address, &ssh.ClientConfig{User: "class", Auth: how, HostKeyCallback: ssh.InsecureIgnoreHostKey(), Timeout: patient})
}

// in connects, as it must be possible.
func (c *class) in(t *testing.T, how ...ssh.AuthMethod) *ssh.Client {
	t.Helper()
	client, err := c.login(how...)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { client.Close() })
	return client
}

// A seen is a session with what came from it.
type seen struct {
	*ssh.Session
	t    *testing.T
	in   io.WriteCloser
	out  noted // all, as a terminal shows it; what goes to standard error comes in its own time
	told noted // to standard output
	errs noted // to standard error
	done chan error
}

// begin opens a session: on a terminal of 80 by 24 cells, or by a word.
func begin(t *testing.T, client *ssh.Client, terminal bool, word string) *seen {
	t.Helper()
	s, err := client.NewSession()
	if err != nil {
		t.Fatal(err)
	}
	v := &seen{Session: s, t: t, done: make(chan error, 1)}
	s.Stdout, s.Stderr = io.MultiWriter(&v.out, &v.told), io.MultiWriter(&v.out, &v.errs)
	if v.in, err = s.StdinPipe(); err == nil && terminal {
		err = s.RequestPty("xterm", 24, 80, ssh.TerminalModes{})
	}
	if err == nil && word != "" {
		err = s.Start(word)
	} else if err == nil {
		err = s.Shell()
	}
	if err != nil {
		t.Fatal(err)
	}
	go func() { v.done <- s.Wait() }()
	return v
}

// patient is how long these tests wait for what must come: a busy machine may take its time.
const patient = time.Minute

// waits waits until something holds.
func waits(t *testing.T, what string, holds func() bool) {
	t.Helper()
	for end := time.Now().Add(patient); !holds(); time.Sleep(10 * time.Millisecond) {
		if time.Now().After(end) {
			t.Fatal("waited in vain: " + what)
		}
	}
}

// sees waits until a text came.
func (v *seen) sees(text string) {
	v.t.Helper()
	v.seesTimes(text, 1)
}

// seesTimes waits until a text came so many times.
func (v *seen) seesTimes(text string, n int) {
	v.t.Helper()
	for end := time.Now().Add(patient); strings.Count(v.out.String(), text) < n; time.Sleep(10 * time.Millisecond) {
		if time.Now().After(end) {
			v.t.Fatalf("%q does not come %d times:\n%s", text, n, v.out.String())
		}
	}
}

// types sends what is typed.
func (v *seen) types(text string) {
	v.t.Helper()
	if _, err := io.WriteString(v.in, text); err != nil {
		v.t.Fatal(err)
	}
}

// ends waits for the end, and returns the exit code.
func (v *seen) ends() int {
	v.t.Helper()
	select {
	case err := <-v.done:
		var exit *ssh.ExitError
		switch {
		case err == nil:
			return 0
		case errors.As(err, &exit):
			return exit.ExitStatus()
		}
		return -1
	case <-time.After(patient):
		v.t.Fatalf("the session does not end:\n%s", v.out.String())
	}
	return -1
}

// A learner with a code sees the list on the screen, and what is done there is kept.
func TestLessonOnTheScreen(t *testing.T) {
	t.Parallel()
	c := opened(t, t.TempDir())
	v := begin(t, c.in(t, code(c.codes["s001"])), true, "")
	v.sees("for today")
	v.types("\r")
	v.sees("enter")
	v.types("\x03")
	v.ends()
	if !strings.Contains(c.log.String(), "id=s001") {
		t.Error(c.log.String())
	}
}

// A key that nobody knows opens nothing but the question for a code; bound once, it opens the lesson by itself, of its own learner.
func TestKeyIsBound(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	c := opened(t, folder)
	key := newKey(t)
	v := begin(t, c.in(t, ssh.PublicKeys(key)), false, "record")
	v.sees("personal code")
	v.types("nonsense\nAAAAA-AAAAA\n" + strings.ToLower(c.codes["s002"]) + "\n")
	v.sees("Nothing has been practised here yet")
	if got := v.ends(); got != 0 || strings.Count(v.out.String(), "not a code of this class") != 2 {
		t.Errorf("code %d:\n%s", got, v.out.String())
	}
	again := begin(t, c.in(t, ssh.PublicKeys(key)), false, "record")
	again.sees("Nothing has been practised here yet")
	if again.ends(); strings.Contains(again.out.String(), "code") {
		t.Error("the code is asked for again")
	}
	none := begin(t, c.in(t, ssh.PublicKeys(newKey(t))), false, "record --export")
	none.types("x\nx\nx\n")
	if got := none.ends(); got != 1 || !strings.Contains(none.out.String(), "when you have your code") {
		t.Errorf("code %d:\n%s", got, none.out.String())
	}
}

// Nobody comes in by a wrong code, by the code of another class, without anything, or by a password; and not by guessing on.
func TestNotLetIn(t *testing.T) {
	t.Parallel()
	c, other := opened(t, t.TempDir()), opened(t, t.TempDir())
	for _, how := range []ssh.AuthMethod{code(""), code("AAAAA-AAAAA"), code(other.codes["s001"]), code(strings.Repeat("A", 1<<16)), code("' OR 1=1"), ssh.Password(c.codes["s001"])} {
		if client, err := c.login(how); err == nil {
			client.Close()
			t.Error("somebody came in")
		}
	}
	if client, err := c.login(); err == nil {
		client.Close()
		t.Error("nobody came in")
	}
	for !c.door.guesses.tooMany("127.0.0.1") {
		c.door.guesses.wrong("127.0.0.1")
	}
	if client, err := c.login(code(c.codes["s001"])); err == nil {
		client.Close()
		t.Error("after too many wrong codes one more is heard")
	}
}

// A session opens no shell, no program, no file transfer and no way into the network of the host.
func TestNothingElse(t *testing.T) {
	t.Parallel()
	c := opened(t, t.TempDir())
	client := c.in(t, code(c.codes["s001"]))
	for _, word := range []string{"sh", "ls /", "record --export /etc/passwd", "scp -f /etc/passwd", "plain ../../etc/passwd", "plain a b", "\x1b[2J\x1b]0;x\a", strings.Repeat("x", 30_000)} {
		v := begin(t, client, false, word)
		if got := v.ends(); got != 2 || strings.Contains(v.out.String(), "root") || strings.ContainsAny(v.out.String(), "\x1b\a") {
			t.Errorf("%.40q ends with %d:\n%.300q", word, got, v.out.String())
		}
	}
	s, err := client.NewSession()
	if err != nil {
		t.Fatal(err)
	}
	if err := s.RequestSubsystem("sftp"); err == nil {
		t.Error("there is a subsystem")
	}
	if conn, err := client.Dial("tcp", c.address); err == nil {
		conn.Close()
		t.Error("it forwards")
	}
	if at, err := client.Listen("tcp", "127.0.0.1:0"); err == nil {
		at.Close()
		t.Error("it forwards back")
	}
}

// The plain lesson asks, judges and keeps; who was cut off goes on where they were, also at a host that was started anew.
func TestPlainLessonIsKept(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	c := opened(t, folder)
	v := begin(t, c.in(t, code(c.codes["s003"])), false, "plain jetty-deck")
	if v.sees("?"); strings.Contains(v.out.String(), "there is no problem") {
		t.Fatal(v.out.String())
	}
	v.types("tell\n")
	v.sees("told")
	v.Session.Close()
	waits(t, "the seat is given up", func() bool { return c.seats.count() == 0 })
	c.stop()
	if err := <-c.stopped; err != nil {
		t.Fatal(err)
	}
	c.stopped <- nil
	again := opened(t, folder)
	w := begin(t, again.in(t, code(again.codes["s003"])), false, "record --export")
	if w.ends(); strings.Count(w.out.String(), `"outcome":"told"`) != 1 {
		t.Errorf("what was done is not kept:\n%s", w.out.String())
	}
	x := begin(t, again.in(t, code(again.codes["s001"])), false, "record --export")
	if x.ends(); x.out.String() != "" {
		t.Errorf("another learner reads it:\n%s", x.out.String())
	}
}

// Who logs in again takes over: the first session is told and ends.
func TestTakenOver(t *testing.T) {
	t.Parallel()
	c := opened(t, t.TempDir())
	first := begin(t, c.in(t, code(c.codes["s001"])), true, "")
	first.sees("for today")
	second := begin(t, c.in(t, code(c.codes["s001"])), true, "")
	second.sees("for today")
	first.sees("goes on there")
	if got := first.ends(); got != 0 {
		t.Errorf("the first ends with %d", got)
	}
	waits(t, "one session is left", func() bool { return c.seats.count() == 1 })
}

// A host that stops tells those who are there.
func TestStopping(t *testing.T) {
	t.Parallel()
	c := opened(t, t.TempDir())
	screen := begin(t, c.in(t, code(c.codes["s001"])), true, "")
	plain := begin(t, c.in(t, code(c.codes["s002"])), false, "plain")
	screen.sees("for today")
	plain.sees("? problem")
	c.stop()
	for _, v := range []*seen{screen, plain} {
		v.sees("The host is stopping")
		v.ends()
	}
}

// Wild sizes of a window, a flood of them, and pasted megabytes end nothing but perhaps the session.
func TestFloods(t *testing.T) {
	t.Parallel()
	c := opened(t, t.TempDir())
	v := begin(t, c.in(t, code(c.codes["s001"])), true, "")
	v.sees("for today")
	for i := range 2000 {
		for _, size := range [][2]int{{0, 0}, {1 << 30, 1 << 30}, {i % 50, i}, {24, 80}} {
			if err := v.WindowChange(size[0], size[1]); err != nil {
				t.Fatal(err)
			}
		}
	}
	go io.WriteString(v.in, "\x1b[200~"+strings.Repeat("Cy = 9.5\x00\x1b]0;\a", 200_000)+"\x1b[201~")
	other := begin(t, c.in(t, code(c.codes["s002"])), false, "record")
	other.sees("Nothing has been practised here yet")
	if got := other.ends(); got != 0 {
		t.Errorf("another session ends with %d", got)
	}
}

// An instructor sees on the board who does what, reads it, and says a word to all; nobody else sees the board.
func TestBoard(t *testing.T) {
	t.Parallel()
	key := newKey(t)
	keys, err := ReadKeys("instructors", append([]byte("# ours\n\n"), ssh.MarshalAuthorizedKey(key.PublicKey())...))
	if err != nil {
		t.Fatal(err)
	}
	c := opened(t, t.TempDir(), keys...)
	v := begin(t, c.in(t, ssh.PublicKeys(key)), true, "")
	v.sees("s003")
	plain := begin(t, c.in(t, code(c.codes["s001"])), false, "plain jetty-deck")
	plain.sees("?")
	plain.types("tell\n123456\n")
	plain.sees("told")
	v.sees("s001")
	v.sees("jetty-deck")
	screen := begin(t, c.in(t, code(c.codes["s002"])), true, "")
	screen.sees("for today")
	v.sees("s001, 123456: wrong")
	v.sees("choosing")
	v.types("\r")
	v.sees("123456  ")
	v.types("w")
	v.types("Look at B again.\r")
	v.sees("Told to 2 sessions")
	plain.sees("From your instructor: Look at B again.")
	screen.sees("Look at B again.")
	v.types("\x03")
	if got := v.ends(); got != 0 {
		t.Errorf("the board ends with %d", got)
	}
	if other := begin(t, c.in(t, code(c.codes["s003"])), true, ""); true {
		other.sees("for today")
		if strings.Contains(other.out.String(), "s001") {
			t.Error("a learner sees another")
		}
	}
	word := begin(t, c.in(t, ssh.PublicKeys(key)), false, "record --export")
	if got := word.ends(); got != 2 {
		t.Errorf("an instructor's word ends with %d", got)
	}
}
