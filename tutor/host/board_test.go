package host

import (
	"strings"
	"sync"
	"testing"
	"time"

	"golang.org/x/crypto/ssh"
)

// A set clock stands until it is moved.
type setClock struct {
	mutex sync.Mutex
	at    time.Time
}

func (c *setClock) now() time.Time {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	return c.at
}

func (c *setClock) move(by time.Duration) {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	c.at = c.at.Add(by)
}

// instructed is a class with sets, a clock, and an instructor at the board.
func instructed(t *testing.T, folder string, now *setClock, sets ...Set) (*class, *seen) {
	t.Helper()
	key := newKey(t)
	c := openedWith(t, folder, sets, now.now, ssh.FingerprintSHA256(key.PublicKey()))
	v := begin(t, c.in(t, ssh.PublicKeys(key)), true, "")
	v.sees("s003")
	return c, v
}

// An instructor opens a set until a time, pauses it, gives minutes and more time, and closes it; what is typed wrong changes nothing.
func TestBoardOfSets(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	c, v := instructed(t, t.TempDir(), now, setOf(t, "w1", "opens: 2026-12-05T10:00+01:00"), setOf(t, "w3", "opens: 2026-12-05T10:00+01:00", "minutes: 30"))
	hours := func() hours { return c.hours(c.sets[1]) }
	v.types("s")
	v.sees("opens 5 December, 10:00")
	v.types("\x1b[B")
	for _, r := range []struct{ typed, says string }{
		{"o11.30\r", "This is no time"},
		{"o09:59\r", "is over already"},
		{"ghundred\r", "Type a whole number"},
		{"gnobody 5\r", "nobody is not on the roster"},
		{"x50\r", "Type whose time it is"},
		{"m0\r", "Type a whole number of minutes"},
		{"cno\r", "It stays as it is"},
	} {
		v.types(r.typed)
		v.sees(r.says)
	}
	if all := c.orders.of("w3"); len(all) > 0 {
		t.Fatalf("orders %v", all)
	}
	v.types("o11:30\r")
	v.sees("is open until Friday 4 December 2026, 11:30")
	if w := hours(); w.at(now.now()) != running || !w.closes.Equal(clock(t, "11:30")) {
		t.Errorf("hours %+v", w)
	}
	v.types("gs002 5\r")
	v.sees("5 minutes for s002 in w3.")
	v.types("g10\r")
	v.sees("10 minutes for all in w3.")
	v.types("xs001 50\r")
	v.sees("s001 has 50 per cent more time in w3.")
	v.types("m60\r")
	v.sees("Each has 60 minutes in w3.")
	if end, _ := hours().ends("s001", now.now(), now.now()); !end.Equal(clock(t, "11:40")) {
		t.Errorf("s001 ends at %s", end)
	}
	v.types("p")
	v.sees("w3 is paused")
	now.move(7 * time.Minute)
	if hours().at(now.now()) != resting {
		t.Error("it is not paused")
	}
	v.types("p")
	v.sees("has the time of the pause back")
	if end, _ := hours().ends("s001", clock(t, "10:00"), now.now()); !end.Equal(clock(t, "11:47")) {
		t.Errorf("s001 ends at %s", end)
	}
	v.types("cclose\r")
	v.sees("all papers are handed in")
	if w := hours(); w.at(now.now()) != over || !w.done(now.now()) {
		t.Errorf("hours %+v", w)
	}
	if c.hours(c.sets[0]).at(now.now()) != before {
		t.Error("another set changed")
	}
	v.types("\x1b")
	v.sees("hint to one")
}

// A hint to one is heard by that one alone; who is not there has not heard it. First tries are counted by step.
func TestHintToOne(t *testing.T) {
	t.Parallel()
	c, v := instructed(t, t.TempDir(), &setClock{at: clock(t, "10:00")})
	one := begin(t, c.in(t, code(c.codes["s001"])), false, "plain jetty-deck")
	other := begin(t, c.in(t, code(c.codes["s002"])), false, "plain jetty-deck")
	one.sees("? ")
	other.sees("? ")
	v.types("hMind the couple.\r")
	v.sees("Told to s001: Mind the couple.")
	one.sees("From your instructor: Mind the couple.")
	v.types("\x1b[B\x1b[BhAnd you?\r")
	v.sees("s003 is not here")
	one.types("0\n")
	one.sees("right")
	other.types("5\n0\n")
	other.sees("right")
	v.sees("after Ax")
	v.types("t")
	v.sees("1 of 2")
	if strings.Contains(other.out.String(), "Mind") {
		t.Error("another hears it")
	}
}
