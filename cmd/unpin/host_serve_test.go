//go:build unix

package main

import (
	"bytes"
	"database/sql"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"golang.org/x/crypto/ssh"
)

// A running host is one in a process of its own.
type runningHost struct {
	*exec.Cmd
	mutex sync.Mutex
	text  bytes.Buffer
	done  chan error
}

func (r *runningHost) Write(b []byte) (int, error) {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	return r.text.Write(b)
}

func (r *runningHost) said() string {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	return r.text.String()
}

// says waits for what a host says.
func (r *runningHost) says(t *testing.T, pattern string) []string {
	t.Helper()
	re := regexp.MustCompile(pattern)
	for end := time.Now().Add(time.Minute); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		if found := re.FindStringSubmatch(r.said()); found != nil {
			return found
		}
	}
	t.Fatalf("%s does not come:\n%s", pattern, r.said())
	return nil
}

// unpinBinary is this program under its own name.
func unpinBinary(t *testing.T) string {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	bin := filepath.Join(t.TempDir(), "unpin")
	if err := os.Symlink(self, bin); err != nil {
		t.Fatal(err)
	}
	return bin
}

// startHost starts one.
func startHost(t *testing.T, bin string, words ...string) *runningHost {
	t.Helper()
	r := &runningHost{Cmd: exec.Command(bin, append([]string{"host"}, words...)...), done: make(chan error, 1)}
	r.Stderr = r
	if err := r.Start(); err != nil {
		t.Fatal(err)
	}
	go func() { r.done <- r.Wait() }()
	t.Cleanup(func() { r.Process.Kill() })
	return r
}

// port is where it serves.
func (r *runningHost) port(t *testing.T) string {
	return r.says(t, `(?:ssh -p |"address":"127.0.0.1:)(\d+)`)[1]
}

// classFolder is a folder with a roster of one, and the code.
func classFolder(t *testing.T, bin string, more ...string) (folder, code string) {
	t.Helper()
	folder = t.TempDir()
	list := filepath.Join(t.TempDir(), "codes.csv")
	if err := os.WriteFile(filepath.Join(folder, "roster.csv"), []byte("id\ns001\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	if out, err := exec.Command(bin, append([]string{"host", folder, "--codes", list}, more...)...).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	text, err := os.ReadFile(list)
	if err != nil {
		t.Fatal(err)
	}
	return folder, strings.TrimSpace(string(text[bytes.LastIndexByte(bytes.TrimSpace(text), ',')+1:]))
}

// A lineLesson is a lesson by line, far away.
type lineLesson struct {
	t   *testing.T
	out runningHost
	in  io.WriteCloser
	*ssh.Session
}

// visit logs in and says a word.
func visit(t *testing.T, port, code, word string) *lineLesson {
	t.Helper()
	how := ssh.KeyboardInteractive(func(_, _ string, questions []string, _ []bool) ([]string, error) {
		answers := make([]string, len(questions))
		for i := range answers {
			answers[i] = code
		}
		return answers, nil
	})
	client, err := ssh.Dial("tcp", net.JoinHostPort("127.0.0.1", port), &ssh.ClientConfig{User: "class", Auth: []ssh.AuthMethod{how}, HostKeyCallback: ssh.InsecureIgnoreHostKey(), Timeout: time.Minute})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { client.Close() })
	l := &lineLesson{t: t}
	if l.Session, err = client.NewSession(); err != nil {
		t.Fatal(err)
	}
	l.Stdout, l.Stderr = &l.out, &l.out
	if l.in, err = l.StdinPipe(); err == nil {
		err = l.Start(word)
	}
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// tell asks for the next answer, and waits until it is acknowledged, as the nth.
func (l *lineLesson) tell(n int) {
	l.t.Helper()
	io.WriteString(l.in, "tell\n")
	l.out.says(l.t, fmt.Sprintf(`(?s)(told.*){%d}`, n))
}

// kept is how many answers are kept.
func kept(t *testing.T, port, code string) int {
	t.Helper()
	l := visit(t, port, code, "record --export")
	if err := l.Session.Wait(); err != nil {
		t.Fatal(err, l.out.said())
	}
	return strings.Count(l.out.said(), `"outcome":"told"`)
}

// A host is upgraded: the next one is started on the same folder and address, waits, and goes on when the first is asked to stop; who is
// there is told, and nothing is lost. Meanwhile it says how it is.
func TestHostUpgraded(t *testing.T) {
	t.Parallel()
	bin := unpinBinary(t)
	folder, code := classFolder(t, bin)
	first := startHost(t, bin, folder, "--listen", "127.0.0.1:0", "--health", "127.0.0.1:0", "--log", "json")
	watch := first.says(t, `"msg":"tells how it is","address":"([^"]+)"`)[1]
	port := first.says(t, `"msg":"serving","address":"127.0.0.1:(\d+)"`)[1]
	l := visit(t, port, code, "plain riding-hall")
	l.out.says(t, `\?`)
	for n := range 3 {
		l.tell(n + 1)
	}
	if status, text := fetched(t, "http://"+watch+"/health"); status != 200 || !strings.HasPrefix(text, "All is well: 1 learner here") {
		t.Errorf("%d %q", status, text)
	}
	if status, text := fetched(t, "http://"+watch+"/metrics"); status != 200 || !wellFormed(text) || !strings.Contains(text, "\nunpin_sessions 1\n") || !strings.Contains(text, "\nunpin_let_in_total 1\n") {
		t.Errorf("%d %s", status, text)
	}
	second := startHost(t, bin, folder, "--listen", "127.0.0.1:"+port)
	second.says(t, "is in use: waiting")
	begun := time.Now()
	first.Process.Signal(syscall.SIGTERM)
	l.out.says(t, "The host is stopping")
	if err := <-first.done; err != nil || time.Since(begun) > 30*time.Second {
		t.Errorf("it stops after %v: %v\n%s", time.Since(begun), err, first.said())
	}
	second.port(t)
	if n := kept(t, port, code); n != 3 {
		t.Errorf("%d of 3 are kept", n)
	}
	for line := range strings.Lines(first.said()) {
		if !json.Valid([]byte(line)) {
			t.Errorf("logged: %s", line)
		}
	}
	if !strings.Contains(first.said(), `"msg":"in","from":"127.0.0.1:`) {
		t.Error(first.said())
	}
}

// A backup is made in the middle of a lesson and restored into a new folder, as on a second machine: its host has the same key, lets the
// same code in, and has whatever was acknowledged before; the first goes on.
func TestHostRestored(t *testing.T) {
	t.Parallel()
	bin := unpinBinary(t)
	folder, code := classFolder(t, bin)
	first := startHost(t, bin, folder, "--listen", "127.0.0.1:0")
	l := visit(t, first.port(t), code, "plain riding-hall")
	l.out.says(t, `\?`)
	l.tell(1)
	l.tell(2)
	file, again := filepath.Join(t.TempDir(), "class.backup"), filepath.Join(t.TempDir(), "again")
	for _, words := range [][]string{{"host", "backup", file, folder}, {"host", "restore", file, again}} {
		if out, err := exec.Command(bin, words...).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
	}
	l.tell(3)
	second := startHost(t, bin, again, "--listen", "127.0.0.1:0")
	if n := kept(t, second.port(t), code); n != 2 {
		t.Errorf("%d of 2 are restored", n)
	}
	if a, b := first.says(t, `SHA256:\S+`), second.says(t, `SHA256:\S+`); a[0] != b[0] {
		t.Errorf("its key is %s, and was %s", b[0], a[0])
	}
	if n := kept(t, first.port(t), code); n != 3 {
		t.Errorf("%d of 3 are kept by the first", n)
	}
}

// fetched asks an address.
func fetched(t *testing.T, address string) (int, string) {
	t.Helper()
	r, err := http.Get(address)
	if err != nil {
		t.Fatal(err)
	}
	defer r.Body.Close()
	text, err := io.ReadAll(r.Body)
	if err != nil {
		t.Fatal(err)
	}
	return r.StatusCode, string(text)
}

// metricsLine is one of the text format of OpenMetrics 1.0 (its ABNF, as far as it is used here).
var metricsLine = regexp.MustCompile(`^(# TYPE [a-z_]+ (gauge|counter|histogram)|# UNIT [a-z_]+_seconds seconds|# HELP [a-z_]+ [ -~]+|[a-z_]+(\{le="([0-9.]+|\+Inf)"\})? [0-9.e+-]+|# EOF)$`)

// wellFormed holds a text to that format.
func wellFormed(text string) bool {
	lines := strings.Split(strings.TrimSuffix(text, "\n"), "\n")
	for i, line := range lines {
		if !metricsLine.MatchString(line) || (line == "# EOF") != (i == len(lines)-1) {
			return false
		}
	}
	return strings.HasSuffix(text, "# EOF\n")
}

// Figures are for this computer alone.
func TestHealthIsPrivate(t *testing.T) {
	t.Parallel()
	bin := unpinBinary(t)
	folder, _ := classFolder(t, bin)
	r := startHost(t, bin, folder, "--listen", "127.0.0.1:0", "--health", ":0")
	if err := <-r.done; err == nil || !strings.Contains(r.said(), "this computer only") {
		t.Errorf("%v %s", err, r.said())
	}
}

// Two hosts in two processes share a PostgreSQL; one is killed in the middle of a lesson: at the other it goes on at once, and whatever
// was acknowledged is there.
func TestHostKilledOfTwo(t *testing.T) {
	t.Parallel()
	server := os.Getenv("UNPIN_TEST_POSTGRES")
	if server == "" {
		t.Skip("no PostgreSQL: UNPIN_TEST_POSTGRES names no server")
	}
	admin, err := sql.Open("pgx", server)
	if err != nil {
		t.Fatal(err)
	}
	defer admin.Close()
	name := fmt.Sprintf("unpin_two_%d", os.Getpid())
	if _, err := admin.Exec("CREATE DATABASE " + name); err != nil {
		t.Fatal(err)
	}
	defer admin.Exec("DROP DATABASE " + name + " WITH (FORCE)")
	at, _ := url.Parse(server)
	at.Path = "/" + name
	bin := unpinBinary(t)
	folder, code := classFolder(t, bin, "--store", at.String())
	kills, told := 6, 0
	if testing.Short() {
		kills = 2
	}
	hosts := [2]*runningHost{}
	start := func(i int) { hosts[i] = startHost(t, bin, folder, "--listen", "127.0.0.1:0", "--store", at.String()) }
	start(0)
	start(1)
	for kill := range kills {
		here, there := hosts[kill%2], hosts[1-kill%2]
		l := visit(t, here.port(t), code, "plain riding-hall")
		l.out.says(t, `\?`)
		for n := range 3 {
			l.tell(n + 1)
			told++
		}
		here.Process.Kill()
		<-here.done
		begun := time.Now()
		if n := kept(t, there.port(t), code); n != told {
			t.Fatalf("%d of %d are kept", n, told)
		}
		if took := time.Since(begun); took > 30*time.Second {
			t.Errorf("it goes on after %v", took)
		}
		start(kill % 2)
	}
}
