package main

import (
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/creack/pty"
	"github.com/hinshun/vt10x"
)

// A session is a program that runs in a pseudo-terminal, with an emulated screen.
type session struct {
	t      *testing.T
	dir    string
	tty    *os.File
	screen vt10x.Terminal
	change chan struct{} // something came
	ended  chan struct{}
	all    strings.Builder
	lock   sync.Mutex
}

// newSession runs a line of shell, in which unpin is the program under test, in an empty folder.
func newSession(t *testing.T, shell string, w, h int) *session {
	t.Helper()
	return startSession(t, shell, w, h, true)
}

// newSilentSession is a session at a terminal that replies to nothing.
func newSilentSession(t *testing.T, shell string, w, h int) *session {
	t.Helper()
	return startSession(t, shell, w, h, false)
}

func startSession(t *testing.T, shell string, w, h int, replies bool) *session {
	t.Helper()
	cmd, dir := shellCommand(t, shell)
	tty, err := pty.StartWithSize(cmd, &pty.Winsize{Cols: uint16(w), Rows: uint16(h)})
	if err != nil {
		t.Skipf("there is no pseudo-terminal here: %v", err)
	}
	s := &session{t: t, dir: dir, tty: tty, change: make(chan struct{}, 1), ended: make(chan struct{})}
	var back io.Writer = io.Discard
	if replies {
		back = tty
	}
	s.screen = vt10x.New(vt10x.WithSize(w, h), vt10x.WithWriter(back))
	go s.read()
	t.Cleanup(func() {
		cmd.Process.Kill()
		cmd.Wait()
		tty.Close()
	})
	return s
}

// shellCommand is a line of shell to run in an empty folder, in which unpin is the program under test.
func shellCommand(t *testing.T, shell string) (cmd *exec.Cmd, dir string) {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	bin := t.TempDir()
	if err := os.Symlink(self, filepath.Join(bin, "unpin")); err != nil {
		t.Fatal(err)
	}
	cmd = exec.Command("sh", "-c", shell)
	cmd.Dir = t.TempDir()
	cmd.Env = append(os.Environ(), "PATH="+bin+":"+os.Getenv("PATH"), "XDG_STATE_HOME="+t.TempDir(), "TERM=xterm-256color", "LANG=C.UTF-8", "NO_COLOR=")
	return cmd, cmd.Dir
}

// read carries what the program writes to the screen, until it ends.
func (s *session) read() {
	defer close(s.ended)
	buffer := make([]byte, 1<<16)
	for {
		n, err := s.tty.Read(buffer)
		s.lock.Lock()
		s.all.Write(buffer[:n])
		s.screen.Write(buffer[:n])
		s.lock.Unlock()
		select {
		case s.change <- struct{}{}:
		default:
		}
		if err != nil {
			return
		}
	}
}

// text is what stands on the screen.
func (s *session) text() string {
	s.lock.Lock()
	defer s.lock.Unlock()
	return s.screen.String()
}

// written is all that has come from the program.
func (s *session) written() string {
	s.lock.Lock()
	defer s.lock.Unlock()
	return s.all.String()
}

// expect waits until the screen holds a text.
func (s *session) expect(want string) {
	s.t.Helper()
	late := time.After(time.Minute)
	for !strings.Contains(s.text(), want) {
		select {
		case <-s.change:
		case <-late:
			s.t.Fatalf("%q does not come:\n%s", want, s.text())
		}
	}
}

// send types, as a terminal would send it.
func (s *session) send(keys string) {
	s.t.Helper()
	if _, err := io.WriteString(s.tty, keys); err != nil {
		s.t.Fatal(err)
	}
}

// resize changes the size of the terminal.
func (s *session) resize(w, h int) {
	s.t.Helper()
	s.lock.Lock()
	s.screen.Resize(w, h)
	s.lock.Unlock()
	if err := pty.Setsize(s.tty, &pty.Winsize{Cols: uint16(w), Rows: uint16(h)}); err != nil {
		s.t.Fatal(err)
	}
}

// TestTerminal uses the program as a person does, in a pseudo-terminal: it finds a problem, answers, pastes, changes the
// size, presses keys that mean nothing, leaves, comes back to where it was, and finds the terminal as it was before.
func TestTerminal(t *testing.T) {
	s := newSession(t, `before=$(stty -g); unpin; code=$?
		test "$before" = "$(stty -g)" && echo "left with $code"; read line
		unpin practise quay-gantry --level values; echo "then with $?"`, 80, 24)
	s.expect("For teaching only")
	s.expect("Jetty deck with an overhang")
	s.send("quay")
	s.expect("find: quay")
	s.expect("[gradual]")
	s.send("\x1b[C\x1b[C")
	s.expect("[values]")
	s.send("\r")
	s.expect("Before you begin")
	s.send("\r")
	s.expect("question 1 of 28")
	s.send("\x1b[200~6 kN\x1b[201~")
	s.expect("Dx [kN] = 6 kN")
	s.resize(120, 40)
	s.expect("ctrl+f figure")
	s.send("\r")
	s.expect("question 2 of 28")
	s.expect("right: ")
	s.send("12\x1b[15;7~\x1b[99;99u3\x1b[D\x1b[D9") // keys that mean nothing, then left, left
	s.expect("= 1923")
	s.resize(39, 24)
	s.expect("40 x 12")
	s.resize(60, 18)
	s.expect("= 1923")
	s.send("\x05\x15?")
	s.expect("Help")
	s.send("q")
	s.expect("question 2 of 28")
	s.send("\x03")
	s.expect("left with 0")
	if s.screen.Mode()&vt10x.ModeAltScreen != 0 || !s.screen.CursorVisible() {
		t.Error("the terminal is not left as it was found")
	}
	s.send("\r")
	s.expect("Earlier work: 1 of 28")
	s.send("\r")
	s.expect("question 2 of 28")
	s.send("quit\r")
	s.expect("then with 0")
	<-s.ended
}

// coloured matches a rendition that sets a colour.
var coloured = regexp.MustCompile("\x1b\\[([0-9]*;)*(3|4|9|10)[0-9](;[0-9]*)*m")

// TestTerminalWithoutColour makes sure that NO_COLOR and a terminal without abilities are honoured.
func TestTerminalWithoutColour(t *testing.T) {
	s := newSession(t, `NO_COLOR=1 unpin practise jetty-deck --level values --ascii; TERM=dumb unpin practise jetty-deck --level values`, 80, 24)
	s.expect("enter begin")
	s.send("\r")
	s.expect("question 1 of 14")
	s.send("tell\r")
	s.expect("question 2 of 14")
	if colour := coloured.FindString(s.written()); colour != "" {
		t.Errorf("a colour is sent with NO_COLOR: %q", colour)
	}
	s.send("\x03")
	s.expect("? Ax [kN]")
	s.send("quit\n")
	<-s.ended
}
