package kept

import (
	"context"
	"errors"
	"fmt"
	"iter"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"unpin/tutor/record"
	"unpin/tutor/record/database"
	"unpin/tutor/record/logtest"
)

// A broken base is one that can be cut off.
type broken struct {
	*database.DB
	mutex sync.Mutex
	cut   error // what everything ends with, or nil
	half  bool  // what is added comes in, and is reported not to have
}

var errCut = errors.New("the line is cut")

func (b *broken) fault() error {
	b.mutex.Lock()
	defer b.mutex.Unlock()
	return b.cut
}

func (b *broken) breaks(err error, half bool) {
	b.mutex.Lock()
	defer b.mutex.Unlock()
	b.cut, b.half = err, half
}

func (b *broken) Log(learner string) record.Log { return brokenLog{b.DB.Log(learner), b} }

func (b *broken) Alive(ctx context.Context) error {
	return errors.Join(b.fault(), b.DB.Alive(ctx))
}

func (b *broken) AppendOnce(ctx context.Context, learner string, line []byte) error {
	if strings.Contains(string(line), "poison") {
		return errPoison
	}
	if err := b.fault(); err != nil {
		return err
	}
	return b.DB.AppendOnce(ctx, learner, line)
}

var errPoison = errors.New("this line is refused")

type brokenLog struct {
	record.Log
	b *broken
}

func (l brokenLog) Append(line []byte) error {
	if err := l.b.fault(); err != nil && !l.b.half {
		return err
	}
	return errors.Join(l.b.fault(), l.Log.Append(line))
}

func (l brokenLog) Note(name string) ([]byte, error) {
	if err := l.b.fault(); err != nil {
		return nil, err
	}
	return l.Log.Note(name)
}

func (l brokenLog) Lines(from int64) iter.Seq2[record.Line, error] {
	return func(yield func(record.Line, error) bool) {
		for line, err := range l.Log.Lines(from) {
			if cut := l.b.fault(); cut != nil {
				yield(record.Line{}, cut)
				return
			}
			if !yield(line, err) {
				return
			}
		}
		if cut := l.b.fault(); cut != nil {
			yield(record.Line{}, cut)
		}
	}
}

// opened is a keeper before a base in a folder.
func opened(t testing.TB, folder, host string) (*Keeper, *broken) {
	t.Helper()
	data, err := database.Open(context.Background(), filepath.Join(folder, "class.db"))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { data.Close() })
	b := &broken{DB: data}
	return New(b, folder, host, func(err error) bool { return errors.Is(err, errCut) }, func(log string) string { return strings.TrimSuffix(log, " exam") }, func(State) {}), b
}

// Before a base that is there, logs are as without.
func TestKeeps(t *testing.T) {
	t.Parallel()
	logtest.Keeps(t, func(t testing.TB) (record.Log, func() record.Log) {
		folder := t.TempDir()
		again := func() record.Log {
			k, _ := opened(t, folder, fmt.Sprint("h", time.Now().UnixNano()))
			k.Remember("s017")
			return k.Log("s017")
		}
		return again(), again
	})
}

// texts are the lines of a log, from a place on.
func texts(log record.Log, from int64) (all []string, err error) {
	for line, err := range log.Lines(from) {
		if err != nil {
			return all, err
		}
		all = append(all, string(line.Text))
	}
	return all, nil
}

// settles waits until nothing waits.
func settles(t *testing.T, k *Keeper) {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	go k.Run(ctx)
	for end := time.Now().Add(time.Minute); k.State().Away; time.Sleep(10 * time.Millisecond) {
		if time.Now().After(end) {
			t.Fatal("it stays away")
		}
	}
}

// While the base is away what is added is kept, and is read by who is at work; back again it is in the base, each line once and in its order.
func TestAway(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	k, b := opened(t, folder, "one")
	forget := k.Remember("s1")
	defer forget()
	log, other := k.Log("s1"), k.Log("s2")
	var want []string
	add := func(n int) {
		for range n {
			line := fmt.Sprintf(`{"n":%d}`, len(want))
			if err := log.Append([]byte(line)); err != nil {
				t.Fatal(err)
			}
			if want = append(want, line); len(want)%3 == 0 {
				if err := other.Append([]byte(line)); err != nil {
					t.Fatal(err)
				}
			}
		}
	}
	reads := func(log record.Log) {
		t.Helper()
		if got, err := texts(log, 0); err != nil || strings.Join(got, "\n") != strings.Join(want, "\n") {
			t.Fatalf("read %d of %d lines: %v", len(got), len(want), err)
		}
	}
	add(10)
	reads(log)
	add(5)
	for round := range 3 {
		b.breaks(errCut, round == 2) // the third time one comes in without an answer
		add(10)
		reads(log)
		if _, err := texts(other, 0); !errors.Is(err, ErrAway) {
			t.Errorf("who is not at work reads: %v", err)
		}
		if err := log.SetNote("x", []byte("y")); !errors.Is(err, ErrAway) {
			t.Errorf("a note is kept: %v", err)
		}
		if s := k.State(); !s.Away || s.Waiting < 13 {
			t.Errorf("%+v", s)
		}
		b.breaks(nil, false)
		settles(t, k)
		reads(b.DB.Log("s1"))
		add(3)
		reads(log)
	}
	if _, err := os.Stat(k.spill.path); err == nil {
		t.Error("the file stays")
	}
	if got, err := texts(b.DB.Log("s2"), 0); err != nil || len(got) != len(want)/3 {
		t.Errorf("another has %d of %d: %v", len(got), len(want)/3, err)
	}
}

// Of who is at work every log is remembered that was read, each by itself.
func TestLogsOfOne(t *testing.T) {
	t.Parallel()
	k, b := opened(t, t.TempDir(), "one")
	forget := k.Remember("s1")
	one, exam, unread := k.Log("s1"), k.Log("s1 exam"), k.Log("s1 unread exam")
	for i := range 6 {
		if err := []record.Log{one, exam}[i%2].Append([]byte(fmt.Sprint(i))); err != nil {
			t.Fatal(err)
		}
	}
	texts(one, 0)
	texts(exam, 0)
	b.breaks(errCut, false)
	if err := exam.Append([]byte("6")); err != nil {
		t.Fatal(err)
	}
	for want, log := range map[string]record.Log{"0 2 4": one, "1 3 5 6": exam} {
		if got, err := texts(log, 0); err != nil || strings.Join(got, " ") != want {
			t.Errorf("%q, not %q: %v", got, want, err)
		}
	}
	if _, err := texts(unread, 0); !errors.Is(err, ErrAway) {
		t.Errorf("a log that was never read is: %v", err)
	}
	forget()
	if _, err := texts(one, 0); !errors.Is(err, ErrAway) {
		t.Errorf("who has left is remembered: %v", err)
	}
}

// Lines that wait when a host is killed are taken up by the next in its folder, once; a torn one was never acknowledged.
func TestTakenUp(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	k, b := opened(t, folder, "one")
	if err := k.Log("s1").Append([]byte("0")); err != nil {
		t.Fatal(err)
	}
	b.breaks(errCut, false)
	for i := range 5 {
		if err := k.Log("s1").Append([]byte(fmt.Sprint(i))); err != nil { // 0 once more: it may have come in before
			t.Fatal(err)
		}
	}
	file, err := os.OpenFile(k.spill.path, os.O_APPEND|os.O_WRONLY, 0)
	if err != nil {
		t.Fatal(err)
	}
	file.WriteString(`{"learner": "s1", "line": "torn`)
	file.Close()
	next, again := opened(t, folder, "two")
	if n, err := next.TakeUp(context.Background(), func(host string) bool { return host == "one" }); err != nil || n != 0 {
		t.Errorf("%d lines are taken from one that is there: %v", n, err)
	}
	for range 2 {
		if _, err := next.TakeUp(context.Background(), func(string) bool { return false }); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := texts(again.DB.Log("s1"), 0); err != nil || strings.Join(got, " ") != "0 1 2 3 4" {
		t.Errorf("%q %v", got, err)
	}
	if left, _ := filepath.Glob(filepath.Join(folder, "waiting*")); len(left) > 0 {
		t.Errorf("left: %q", left)
	}
}

// A line that the base refuses holds up nobody, and is kept aside.
func TestRefused(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	k, b := opened(t, folder, "one")
	b.breaks(errCut, false)
	for _, line := range []string{"a", "poison", "b"} {
		if err := k.Log("s1").Append([]byte(line)); err != nil {
			t.Fatal(err)
		}
	}
	b.breaks(nil, false)
	settles(t, k)
	if got, err := texts(b.DB.Log("s1"), 0); err != nil || strings.Join(got, " ") != "a b" {
		t.Errorf("%q %v", got, err)
	}
	if text, err := os.ReadFile(k.spill.path + ".refused"); err != nil || !strings.Contains(string(text), "poison") {
		t.Errorf("%q %v", text, err)
	}
}

// What cannot be kept is told: no room for the file, and more than is bounded.
func TestNotKept(t *testing.T) {
	t.Parallel()
	k, b := opened(t, t.TempDir(), "one")
	k.spill.path = filepath.Join(t.TempDir(), "nowhere", "file")
	b.breaks(errCut, false)
	if err := k.Log("s1").Append([]byte("a")); !errors.Is(err, ErrAway) {
		t.Errorf("kept in no file: %v", err)
	}
	k.spill.path = filepath.Join(t.TempDir(), "file")
	k.size = mostWaiting
	if err := k.Log("s1").Append([]byte("a")); err == nil {
		t.Error("kept beyond the bound")
	}
}

// Of a learner with a long record the lines are not held; what is added is kept all the same.
func TestMemoryIsBounded(t *testing.T) {
	t.Parallel()
	k, b := opened(t, t.TempDir(), "one")
	defer k.Remember("s1")()
	log := k.Log("s1")
	for range 12 {
		if err := log.Append([]byte(strings.Repeat("x", 200<<10))); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := texts(log, 0); err != nil || len(got) != 12 || k.mind("s1").size > mostRemembered {
		t.Fatalf("%d lines, %d bytes: %v", len(got), k.mind("s1").size, err)
	}
	b.breaks(errCut, false)
	if _, err := texts(log, 0); !errors.Is(err, ErrAway) {
		t.Errorf("all is read: %v", err)
	}
	if err := log.Append([]byte("more")); err != nil {
		t.Error(err)
	}
	b.breaks(nil, false)
	settles(t, k)
	if got, err := texts(log, 0); err != nil || len(got) != 13 {
		t.Errorf("%d lines: %v", len(got), err)
	}
}
