package host

import (
	"context"
	"database/sql"
	"flag"
	"fmt"
	"net"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"golang.org/x/crypto/ssh"

	"unpin/tutor/record"
	"unpin/tutor/record/database"
)

// server is the variable with the address of a PostgreSQL server on which databases may be made; without it those tests are left out.
const server = "UNPIN_TEST_POSTGRES"

var made atomic.Int64

// newPostgres makes a database on the server, if there is one, and returns its address.
func newPostgres(t *testing.T) string {
	t.Helper()
	if os.Getenv(server) == "" {
		t.Skip("no PostgreSQL: " + server + " names no server")
	}
	admin, err := sql.Open("pgx", os.Getenv(server))
	if err != nil {
		t.Fatal(err)
	}
	name := fmt.Sprintf("unpin_host_%d_%d", os.Getpid(), made.Add(1))
	if _, err := admin.Exec("CREATE DATABASE " + name); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		admin.Exec("DROP DATABASE " + name + " WITH (FORCE)")
		admin.Close()
	})
	at, err := url.Parse(os.Getenv(server))
	if err != nil {
		t.Fatal(err)
	}
	at.Path = "/" + name
	return at.String()
}

// stores are the databases that hosts can share: SQLite, as a host that is started while an earlier one still ends, and PostgreSQL.
var stores = map[string]func(*testing.T) string{
	"SQLite":     func(t *testing.T) string { return filepath.Join(t.TempDir(), "class.db") },
	"PostgreSQL": newPostgres,
}

// two starts two hosts on one database, with the same codes.
func two(t *testing.T, address string, keys ...string) (a, b *class) {
	t.Helper()
	a, b = openedOn(t, t.TempDir(), address, Options{Name: "mill", Keys: keys}), openedOn(t, t.TempDir(), address, Options{Name: "quay", Keys: keys})
	a.makeCodes(t)
	b.codes = a.codes
	waits(t, "each knows of the other", func() bool { return a.hub.several() && b.hub.several() })
	return a, b
}

// A second login at the other host takes the lesson over; keys and codes hold at both; who goes on misses nothing.
func TestTakenOverElsewhere(t *testing.T) {
	t.Parallel()
	for name, store := range stores {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			a, b := two(t, store(t))
			key := newKey(t)
			first := begin(t, a.in(t, ssh.PublicKeys(key)), false, "plain jetty-deck")
			first.sees("personal code")
			first.types(a.codes["s001"] + "\n")
			first.sees("?")
			first.types("tell\n")
			first.sees("told")
			second := begin(t, b.in(t, ssh.PublicKeys(key)), false, "plain jetty-deck")
			first.sees("goes on there")
			first.ends()
			second.sees("?")
			second.types("tell\n")
			second.sees("told")
			third := begin(t, a.in(t, ssh.PublicKeys(key)), false, "record --export") // which reads, and takes nothing over
			if third.ends(); strings.Count(third.out.String(), `"outcome":"told"`) != 2 {
				t.Errorf("not all is there:\n%s", third.out.String())
			}
			begin(t, a.in(t, ssh.PublicKeys(key)), false, "plain jetty-deck").sees("?")
			second.sees("goes on there")
		})
	}
}

// The board sees both hosts, and a word to all reaches both; those of a host that is gone fade.
func TestBoardOfTwo(t *testing.T) {
	t.Parallel()
	for name, store := range stores {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			key := newKey(t)
			keys, _ := ReadKeys("instructors", ssh.MarshalAuthorizedKey(key.PublicKey()))
			a, b := two(t, store(t), keys...)
			at := begin(t, b.in(t, code(b.codes["s002"])), false, "plain jetty-deck")
			at.sees("?")
			at.types("tell\n123456\n")
			at.sees("told")
			here := begin(t, a.in(t, code(a.codes["s001"])), true, "")
			here.sees("for today")
			board := begin(t, a.in(t, ssh.PublicKeys(key)), true, "")
			board.sees("2 learners here")
			board.sees("(at quay)")
			board.sees("jetty-deck") // whose learner is in hand
			board.types("\x1b[A\x1b[A")
			board.types("\r")
			board.sees("123456")
			board.types("wLook at B again.\r")
			at.sees("From your instructor: Look at B again.")
			here.sees("Look at B again.")
			time.Sleep(3 * apart)
			if n := strings.Count(at.out.String(), "Look at B again."); n != 1 {
				t.Errorf("the word is said %d times", n)
			}
			b.stop()
			at.sees("The host is stopping")
			waits(t, "one is left", func() bool { return a.present() == 1 })
		})
	}
}

// A host that does not answer holds its learners up for moments only.
func TestHostSilent(t *testing.T) {
	t.Parallel()
	address := filepath.Join(t.TempDir(), "class.db")
	a := openedOn(t, t.TempDir(), address, Options{Name: "mill"})
	a.makeCodes(t)
	ctx := context.Background()
	if err := a.o.Data.Beat(ctx, "dead", "quay"); err != nil {
		t.Fatal(err)
	}
	if err := a.o.Data.Sit(ctx, "a ticket", "s001", "dead"); err != nil {
		t.Fatal(err)
	}
	waits(t, "the other is known", a.hub.several)
	client := a.in(t, code(a.codes["s001"]))
	begun := time.Now()
	first := begin(t, client, false, "plain no-such")
	if first.ends(); time.Since(begun) > 5*patience { // of which it waits a third more than one
		t.Errorf("one waits %v for a host that is gone", time.Since(begun))
	}
	waits(t, "the seat is given up", func() bool {
		seats, err := a.o.Data.Seats(ctx, "s001")
		return err == nil && len(seats) == 0
	})
}

// A cable is a way to a server that can be cut, or fall silent.
type cable struct {
	net.Listener
	to     string
	mutex  sync.Mutex
	cut    bool
	silent bool
	conns  []net.Conn
}

// newCable lays one to a socket of PostgreSQL, and returns the address by it.
func newCable(t *testing.T, address string) (*cable, string) {
	t.Helper()
	at, err := url.Parse(address)
	if err != nil {
		t.Fatal(err)
	}
	listens, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	c := &cable{Listener: listens, to: filepath.Join(at.Query().Get("host"), ".s.PGSQL.5432")}
	t.Cleanup(func() { c.Close(); c.set(true, false) })
	go c.serve()
	at.Host, at.RawQuery = listens.Addr().String(), "sslmode=disable&connect_timeout=2"
	return c, at.String()
}

// set cuts the cable, has it fall silent, or mends it. What was on it then stays cut or silent.
func (c *cable) set(cut, silent bool) {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	c.cut, c.silent = cut, silent
	if cut {
		for _, conn := range c.conns {
			conn.Close()
		}
		c.conns = nil
	}
}

// serve carries what comes.
func (c *cable) serve() {
	for {
		near, err := c.Accept()
		if err != nil {
			return
		}
		c.mutex.Lock()
		far, err := net.Dial("unix", c.to)
		if c.cut || err != nil {
			near.Close()
		} else {
			c.conns = append(c.conns, near, far)
			go c.carry(near, far)
			go c.carry(far, near)
		}
		c.mutex.Unlock()
	}
}

// carry carries one way, until the cable falls silent: then for ever nothing.
func (c *cable) carry(to, from net.Conn) {
	text, lost := make([]byte, 32<<10), false
	for {
		n, err := from.Read(text)
		c.mutex.Lock()
		lost = lost || c.silent
		c.mutex.Unlock()
		if lost {
			if err != nil {
				return
			}
			continue
		}
		to.Write(text[:n])
		if err != nil {
			to.Close()
			return
		}
	}
}

// away is for how long the database is away in TestStoreAway.
var away = flag.Duration("store-away", 2*time.Second, "how long TestStoreAway cuts the database off")

// The database is away for a while: lessons go on, nobody is let in and is told why, and when it is back all is in it, in its order; what
// was seen as kept when the host is killed meanwhile is taken up by the next.
func TestStoreAway(t *testing.T) {
	t.Parallel()
	t.Run("cut", func(t *testing.T) { t.Parallel(); storeAway(t, func(c *cable) { c.set(true, false) }) })
	t.Run("silent", func(t *testing.T) { t.Parallel(); storeAway(t, func(c *cable) { c.set(false, true) }) })
}

func storeAway(t *testing.T, goes func(*cable)) {
	direct := newPostgres(t)
	cable, address := newCable(t, direct)
	folder := t.TempDir()
	c := openedOn(t, folder, address, Options{Name: "mill"})
	c.makeCodes(t)
	v := begin(t, c.in(t, code(c.codes["s001"])), false, "plain riding-hall")
	v.sees("?")
	screen := begin(t, c.in(t, code(c.codes["s002"])), true, "")
	screen.sees("for today")
	told := 0
	tell := func() {
		v.types("tell\n")
		told++
		v.seesTimes("told", told)
	}
	for range 3 {
		tell()
	}
	goes(cable)
	tell()
	v.sees("The class's store is away. Go on")
	screen.sees("store is away")
	screen.types("\r")
	screen.sees("enter")
	for end := time.Now().Add(*away); told < 15 || time.Now().Before(end); time.Sleep(*away / 20) {
		if told < 15 {
			tell()
		}
	}
	said := &noted{}
	how := ssh.KeyboardInteractive(func(_, instruction string, questions []string, _ []bool) ([]string, error) {
		said.Write([]byte(instruction))
		return make([]string, len(questions)), nil
	})
	if client, err := c.login(how); err == nil {
		client.Close()
		t.Error("somebody is let in")
	} else if !strings.Contains(said.String(), "store is away") {
		t.Errorf("%v %q", err, said.String())
	}
	known := begin(t, c.in(t, ssh.PublicKeys(newKey(t))), false, "record")
	known.sees("store is away")
	if got := known.ends(); got != 1 {
		t.Errorf("ends with %d", got)
	}
	if text, well := c.healthText(); well || !strings.Contains(text, "The store is away since") {
		t.Errorf("%s", text)
	}
	if state := c.keep.State(); state.Waiting < 5 {
		t.Errorf("%+v", state)
	}
	cable.set(false, false)
	v.sees("The class's store is back")
	tell()
	toldInOrder(t, direct, told)
	if left, _ := filepath.Glob(filepath.Join(folder, "waiting-*")); len(left) > 0 {
		t.Errorf("left: %q", left)
	}
}

// toldInOrder makes sure that a database has so many answers of s001, in the order in which they were given.
func toldInOrder(t *testing.T, address string, told int) {
	t.Helper()
	data, err := database.Open(context.Background(), address)
	if err != nil {
		t.Fatal(err)
	}
	defer data.Close()
	all, _, err := data.Learner("s001").Records()
	n := 0
	for i, r := range all {
		if r.Outcome == "told" {
			n++
		}
		if i > 0 && r.At.Before(all[i-1].At) {
			t.Errorf("%v comes after %v", r.At, all[i-1].At)
		}
	}
	if err != nil || n != told {
		t.Errorf("%d of %d are kept: %v", n, told, err)
	}
}

// The clock goes by the one that is asked, whatever that of the machine says, and goes back only when it was put right.
func TestClock(t *testing.T) {
	t.Parallel()
	c := newClock(nil)
	set := func(to time.Time) { // and then it is what was asked, but for how long asking took
		t.Helper()
		begun := time.Now()
		if err := c.set(context.Background(), func(context.Context) (time.Time, error) { return to.Add(time.Since(begun)), nil }); err != nil {
			t.Fatal(err)
		}
		took := time.Since(begun)
		if now := c.now(); now.Before(to.Add(-took)) || now.After(to.Add(time.Since(begun)+took)) {
			t.Errorf("it is %v, where %v was said %v ago", now, to, time.Since(begun))
		}
	}
	at := time.Date(2031, 5, 1, 10, 0, 0, 0, time.UTC)
	set(at)
	before := c.now()
	if err := c.set(context.Background(), func(context.Context) (time.Time, error) { return before.Add(-2 * time.Second), nil }); err != nil {
		t.Fatal(err)
	}
	if now := c.now(); now.Before(before) {
		t.Errorf("it goes back from %v to %v", before, now)
	}
	set(at.Add(-time.Hour))
	set(at.Add(time.Hour))
}

// What a learner erases at one host is gone from the board of another; what others have done stays there, and so does an exam.
func TestErasedElsewhere(t *testing.T) {
	t.Parallel()
	for name, store := range stores {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			a, b := two(t, store(t))
			for _, id := range []string{"s001", "s002"} {
				v := begin(t, a.in(t, code(a.codes[id])), false, "plain jetty-deck")
				v.types("tell\nquit\n")
				v.ends()
			}
			if err := a.storeOf("s003", "w3").Add(record.Record{Run: "r", At: time.Now(), Exam: true, Typed: "1"}); err != nil {
				t.Fatal(err)
			}
			a.hub.changed()
			known := func() string {
				var ids []string
				for _, d := range b.activity.all() {
					ids = append(ids, d.id)
				}
				slices.Sort(ids)
				return strings.Join(ids, " ")
			}
			waits(t, "the other host knows of all", func() bool { return known() == "s001 s002 s003" })
			v := begin(t, a.in(t, code(a.codes["s001"])), false, "record --erase --yes")
			v.sees("Your practice is erased.")
			waits(t, "the other host forgets", func() bool { return known() == "s002 s003" })
		})
	}
}
