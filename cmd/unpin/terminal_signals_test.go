//go:build !windows

package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"
	"github.com/hinshun/vt10x"
)

// pid is the number of the process that wrote it into the file "pid" of the session's folder.
func (s *session) pid() int {
	s.t.Helper()
	for end := time.Now().Add(time.Minute); time.Now().Before(end); time.Sleep(10 * time.Millisecond) {
		text, err := os.ReadFile(filepath.Join(s.dir, "pid"))
		if n, bad := strconv.Atoi(strings.TrimSpace(string(text))); err == nil && bad == nil {
			return n
		}
	}
	s.t.Fatal("the program does not start")
	return 0
}

func (s *session) kill(sig syscall.Signal) {
	s.t.Helper()
	if err := syscall.Kill(s.pid(), sig); err != nil {
		s.t.Fatal(err)
	}
}

// asFound makes sure that the screen is the one that the program found.
func (s *session) asFound() {
	s.t.Helper()
	s.lock.Lock()
	defer s.lock.Unlock()
	if s.screen.Mode()&vt10x.ModeAltScreen != 0 || !s.screen.CursorVisible() || s.screen.Mode()&vt10x.ModeWrap == 0 {
		s.t.Error("the terminal is not left as it was found")
	}
}

// withPid is a line of shell that runs unpin with its number in the file "pid".
func withPid(args string) string { return `sh -c 'echo $$ >pid; exec unpin ` + args + `'` }

// asksBack matches what a terminal replies to: where the cursor is, what it is, its colours, its modes (ECMA-48 8.3.24 and
// 8.3.35, and what terminals add).
var asksBack = regexp.MustCompile("\x1b\\[[?>=]?[0-9;]*[cn]|\x1b\\][0-9;]+;\\?|\x1b\\[[?0-9;]*\\$p|\x1b\\[[>?]?[0-9;]*[qxu]|\x1bP[+$]q|\x05|\x1bZ")

// TestTerminalNotAsked makes sure that no command asks the terminal anything, so that one that never replies is as good as
// any, and that what is typed before the first frame is not lost.
func TestTerminalNotAsked(t *testing.T) {
	for args, want := range map[string]string{
		"--help": "needs the local codes", "solve": "PROBLEM", "solve jetty-deck": "Check", "inspect jetty-deck": "determinate",
		"practise jetty-deck --plain": "? Ax [kN]", "practise jetty-deck": "enter begin", "": "Jetty deck with an overhang",
	} {
		t.Run("unpin "+args, func(t *testing.T) {
			t.Parallel()
			s := newSilentSession(t, "unpin "+args, 80, 60)
			s.expect(want)
			s.send("\x03")
			<-s.ended
			if asked := asksBack.FindString(s.written()); asked != "" {
				t.Errorf("the terminal is asked %q", asked)
			}
		})
	}
	t.Run("typed ahead", func(t *testing.T) {
		t.Parallel()
		s := newSilentSession(t, "unpin practise quay-gantry --level values", 80, 24)
		s.send("6 kN\r")
		s.expect("question 2 of 28")
		s.expect("right: ")
		s.send("\x03")
		<-s.ended
	})
}

// TestTerminalSignals ends the program from outside, on the screen and by lines: the terminal is as it was found, and the exit code is
// the usual one.
func TestTerminalSignals(t *testing.T) {
	for args, shows := range map[string]string{"practise jetty-deck": "enter begin", "": "Jetty deck", "practise jetty-deck --plain": "? Ax [kN]"} {
		for sig, code := range map[syscall.Signal]int{syscall.SIGINT: 130, syscall.SIGTERM: 143, syscall.SIGHUP: 129, syscall.SIGQUIT: 131} {
			t.Run(fmt.Sprintf("%s/unpin %s", sig, args), func(t *testing.T) {
				t.Parallel()
				s := newSilentSession(t, `trap : HUP QUIT; before=$(stty -g); `+withPid(args)+`; code=$?
					test "$before" = "$(stty -g)" && echo "left with $code."`, 80, 24)
				s.expect(shows)
				s.kill(sig)
				s.expect(fmt.Sprintf("left with %d.", code))
				<-s.ended
				s.asFound()
				for _, bad := range []string{"goroutine", "killed", "signal"} {
					if strings.Contains(s.written(), bad) {
						t.Errorf("%q is told", bad)
					}
				}
			})
		}
	}
	t.Run("ignored", func(t *testing.T) {
		t.Parallel()
		s := newSilentSession(t, `trap '' HUP; `+withPid("practise jetty-deck --level values")+`; echo "left with $?."`, 80, 24)
		s.expect("enter begin")
		s.kill(syscall.SIGHUP)
		s.send("\r")
		s.expect("question 1 of 14")
		s.send("\x03")
		s.expect("left with 0.")
	})
}

// TestTerminalSuspended puts the program aside, from outside and by its key: the shell finds the terminal as it was, and
// fg brings the lesson back, in the size that the window has by then.
func TestTerminalSuspended(t *testing.T) {
	for _, how := range []string{"signal", "key"} {
		t.Run(how, func(t *testing.T) {
			t.Parallel()
			s := newSilentSession(t, `set -m; before=$(stty -g); `+withPid("practise jetty-deck --level values")+`; test "$before" = "$(stty -g)" && echo "as found."; read line; fg; echo "left with $?."`, 80, 24)
			s.expect("enter begin")
			s.send("\r7")
			s.expect("Ax [kN] = 7")
			if how == "key" {
				s.send("\x1a")
			} else {
				s.kill(syscall.SIGTSTP)
			}
			s.expect("as found.")
			s.asFound()
			s.resize(100, 30)
			s.send("\r")
			s.expect("ctrl+f figure")
			s.expect("Ax [kN] = 7")
			s.send("\x03")
			s.expect("left with 0.")
			s.asFound()
		})
	}
}

// TestTerminalGone takes the terminal away, without a word to the program: it ends.
func TestTerminalGone(t *testing.T) {
	t.Parallel()
	cmd, _ := shellCommand(t, `trap '' HUP; exec unpin practise jetty-deck --level values`)
	tty, err := pty.StartWithSize(cmd, &pty.Winsize{Cols: 80, Rows: 24})
	if err != nil {
		t.Skipf("there is no pseudo-terminal here: %v", err)
	}
	var seen strings.Builder
	for buffer := make([]byte, 1<<12); !strings.Contains(seen.String(), "The task"); {
		n, err := tty.Read(buffer)
		seen.Write(buffer[:n])
		if err != nil {
			t.Fatal(err)
		}
	}
	tty.Close()
	ended := make(chan error, 1)
	go func() { ended <- cmd.Wait() }()
	select {
	case <-ended:
	case <-time.After(time.Minute):
		cmd.Process.Kill()
		t.Error("it stays without a terminal")
	}
}

// TestTerminalAtRest counts how often a lesson wakes while nobody types.
func TestTerminalAtRest(t *testing.T) {
	if _, err := os.Stat("/proc/self/status"); err != nil {
		t.Skip("needs /proc")
	}
	s := newSilentSession(t, withPid("practise jetty-deck --level values"), 80, 24)
	s.expect("enter begin")
	s.send("\r7")
	s.expect("Ax [kN] = 7")
	time.Sleep(time.Second)
	const seconds = 3
	before := wakeups(t, s.pid())
	time.Sleep(seconds * time.Second)
	if n := wakeups(t, s.pid()) - before; n > 2*seconds {
		t.Errorf("a lesson at rest wakes %d times in %d seconds", n, seconds)
	}
	s.send("\x03")
	<-s.ended
}

// wakeups is how often the threads of a process have waited for something and gone on.
func wakeups(t *testing.T, pid int) int {
	t.Helper()
	threads, err := filepath.Glob(fmt.Sprintf("/proc/%d/task/*/status", pid))
	if err != nil || len(threads) == 0 {
		t.Fatalf("process %d: %v", pid, err)
	}
	n := 0
	for _, name := range threads {
		text, _ := os.ReadFile(name)
		if _, after, ok := strings.Cut(string(text), "\nvoluntary_ctxt_switches:"); ok {
			count, _, _ := strings.Cut(after, "\n")
			k, _ := strconv.Atoi(strings.TrimSpace(count))
			n += k
		}
	}
	return n
}
