package host

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"unpin/tutor/record"
)

// The first visit says in a line what is kept; the page has the day of each exam; practice is erased by the learner, to the last byte,
// and of that learner alone; exams stay.
func TestPrivacy(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	c := openedWith(t, folder, []Set{setOf(t, "w3", "minutes: 30", "keep: 2100-06-30")}, nil)
	say := func(id, words, typed string) (string, int) {
		v := begin(t, c.in(t, code(c.codes[id])), false, words)
		v.types(typed)
		code := v.ends()
		return v.out.String(), code
	}
	if text, _ := say("s001", "plain jetty-deck", "1234567\nquit\n"); !strings.Contains(text, privacyLine) {
		t.Errorf("the first visit says\n%s", text)
	}
	if text, _ := say("s001", "plain jetty-deck", "quit\n"); strings.Contains(text, privacyLine) {
		t.Errorf("the second visit says\n%s", text)
	}
	say("s002", "plain jetty-deck", "7654321\nquit\n")
	if err := c.storeOf("s001", "w3").Add(record.Record{Run: "r", Exam: true, Typed: "24681357"}); err != nil {
		t.Fatal(err)
	}
	if text, _ := say("s001", "privacy", ""); !strings.Contains(text, "The set w3: kept until Wednesday 30 June 2100.") {
		t.Errorf("the page is\n%s", text)
	}
	if text, code := say("s001", "record --erase", "no\n"); code != 1 || !strings.Contains(text, "Nothing was erased") {
		t.Errorf("%d:\n%s", code, text)
	}
	if text, code := say("s001", "record --erase", "erase\n"); code != 0 || !strings.Contains(text, "Your practice is erased.") {
		t.Errorf("%d:\n%s", code, text)
	}
	if text, _ := say("s001", "record --export", ""); strings.Contains(text, "1234567") || !strings.Contains(text, "24681357") {
		t.Errorf("kept is\n%s", text)
	}
	if _, code := say("s002", "record --erase --yes now", ""); code != 2 {
		t.Errorf("bad use ends with %d", code)
	}
	whole := func() (all []byte) {
		files, err := filepath.Glob(filepath.Join(folder, "class.db*"))
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range files {
			data, err := os.ReadFile(name)
			if err != nil && !os.IsNotExist(err) {
				t.Fatal(err)
			}
			all = append(all, data...)
		}
		return all
	}
	if all := whole(); bytes.Contains(all, []byte("1234567")) || !bytes.Contains(all, []byte("7654321")) || !bytes.Contains(all, []byte("24681357")) {
		t.Error("in the files something is left of what was erased, or too much is gone")
	}
}

// After the day of its set an exam is erased, with what was ordered about it; others stay.
func TestPurge(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	c := openedWith(t, t.TempDir(), []Set{setOf(t, "w3", "minutes: 30", "keep: 2026-12-05"), setOf(t, "w4", "minutes: 30")}, now.now)
	for _, set := range []string{"w3", "w4"} {
		if err := c.storeOf("s002", set).Add(record.Record{Run: "r", Exam: true, Typed: "1"}); err != nil {
			t.Fatal(err)
		}
		if err := c.orders.add(order{Set: set, Do: setExtra, Who: "s002", Percent: 50}); err != nil {
			t.Fatal(err)
		}
	}
	left := func(set string) (int, int) {
		all, _, err := c.storeOf("s002", set).Records()
		if err != nil {
			t.Fatal(err)
		}
		return len(all), len(c.orders.of(set))
	}
	for _, r := range []struct {
		by   time.Duration
		want int
	}{{24 * time.Hour, 1}, {24 * time.Hour, 0}} {
		now.move(r.by)
		if err := keepingOf(c.Host).purge(t.Context()); err != nil {
			t.Fatal(err)
		}
		if lines, orders := left("w3"); lines != r.want || orders != r.want {
			t.Errorf("at %s %d lines and %d orders are left", now.now(), lines, orders)
		}
	}
	if lines, orders := left("w4"); lines != 1 || orders != 1 {
		t.Errorf("of another set %d lines and %d orders are left", lines, orders)
	}
}
