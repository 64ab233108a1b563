// Package logtest holds every kind of log to what record.Log promises.
package logtest

import (
	"bytes"
	"fmt"
	"strings"
	"sync"
	"testing"

	"unpin/tutor/record"
)

// Keeps tries the promises on logs that open makes, a new and empty one at each call; the function that comes with a log opens
// the same one once more.
func Keeps(t *testing.T, open func(testing.TB) (record.Log, func() record.Log)) {
	for _, row := range []struct {
		name string
		try  func(*testing.T, record.Log, func() record.Log)
	}{
		{"nothing is there at first", nothingAtFirst},
		{"lines in their order, from any place on", inOrder},
		{"notes", notes},
		{"writers at once", writersAtOnce},
		{"a reader beside writers", readerBeside},
		{"a clock that jumps", clockJumps},
		{"two machines with clocks of their own", twoClocks},
		{"erased", erased},
	} {
		t.Run(row.name, func(t *testing.T) {
			t.Parallel()
			log, again := open(t)
			row.try(t, log, again)
		})
	}
}

// read lists the lines from a place on.
func read(t testing.TB, log record.Log, from int64) (all []record.Line) {
	t.Helper()
	for line, err := range log.Lines(from) {
		if err != nil {
			t.Fatal(err)
		}
		line.Text = bytes.Clone(bytes.TrimSpace(line.Text))
		all = append(all, line)
	}
	return all
}

// add appends lines, each one that must be kept.
func add(t testing.TB, log record.Log, lines ...string) {
	t.Helper()
	for _, line := range lines {
		if err := log.Append([]byte(line)); err != nil {
			t.Fatal(err)
		}
	}
}

func nothingAtFirst(t *testing.T, log record.Log, _ func() record.Log) {
	note, err := log.Note("a note")
	if note != nil || err != nil || len(read(t, log, 0)) > 0 {
		t.Errorf("a new log is not empty: %q %v", note, err)
	}
	var out bytes.Buffer
	if err := log.Export(&out); err != nil || out.Len() > 0 {
		t.Errorf("a new log exports %q %v", out.String(), err)
	}
	if err := log.Erase(); err != nil {
		t.Error(err)
	}
}

func inOrder(t *testing.T, log record.Log, again func() record.Log) {
	var want []string
	for i := range 40 {
		want = append(want, fmt.Sprintf(`{"n":%d,"text":"%s · Σ 𝑥 '; drop --"}`, i, strings.Repeat("x", i*i)))
	}
	want = append(want, strings.Repeat("y", 1<<20-1))
	add(t, log, want...)
	for _, log := range []record.Log{log, again()} {
		all := read(t, log, 0)
		if len(all) != len(want) {
			t.Fatalf("%d lines of %d", len(all), len(want))
		}
		for i, line := range all {
			if string(line.Text) != want[i] || line.Long != (len(want[i]) >= 1<<20) || line.Next <= line.At || i > 0 && line.At < all[i-1].Next {
				t.Fatalf("line %d is %.40q at %d to %d", i, line.Text, line.At, line.Next)
			}
			if i%10 == 0 {
				if rest := read(t, log, line.At); len(rest) != len(want)-i || string(rest[0].Text) != want[i] {
					t.Errorf("from %d on there are %d lines", line.At, len(rest))
				}
			}
		}
		if rest := read(t, log, all[len(all)-1].Next); len(rest) > 0 {
			t.Errorf("behind the last there are %d", len(rest))
		}
		var out bytes.Buffer
		if err := log.Export(&out); err != nil || out.String() != strings.Join(want, "\n")+"\n" {
			t.Errorf("%d bytes are exported: %v", out.Len(), err)
		}
	}
}

func notes(t *testing.T, log record.Log, again func() record.Log) {
	for _, text := range [][]byte{[]byte("one"), []byte("a\x00\xff\n"), nil, []byte("two"), nil, nil} {
		if err := log.SetNote("a note", text); err != nil {
			t.Fatal(err)
		}
		for _, log := range []record.Log{log, again()} {
			if got, err := log.Note("a note"); err != nil || !bytes.Equal(got, text) || (got == nil) != (text == nil) {
				t.Errorf("kept %q, read %q: %v", text, got, err)
			}
		}
	}
	if log.Place("a note") == "" {
		t.Error("no place is told")
	}
}

// each is how many lines a writer writes.
const each = 100

// write has some writers write, each through a log of its own.
func write(t *testing.T, writers int, again func() record.Log) {
	var group sync.WaitGroup
	for w := range writers {
		log := again()
		group.Go(func() {
			for i := range each {
				if err := log.Append(fmt.Appendf(nil, "%d %d", w, i)); err != nil {
					t.Error(err)
				}
			}
		})
	}
	group.Wait()
}

// inTurn makes sure that every writer's lines are whole and in order.
func inTurn(t *testing.T, all []record.Line, writers int) {
	t.Helper()
	next := map[int]int{}
	for _, line := range all {
		var w, i int
		if _, err := fmt.Sscanf(string(line.Text), "%d %d", &w, &i); err != nil || i != next[w] {
			t.Fatalf("%q comes in place of line %d of writer %d: %v", line.Text, next[w], w, err)
		}
		next[w]++
	}
	if len(all) != writers*each {
		t.Fatalf("%d lines of %d", len(all), writers*each)
	}
}

func writersAtOnce(t *testing.T, log record.Log, again func() record.Log) {
	write(t, 3, again)
	inTurn(t, read(t, log, 0), 3)
}

// A reader that goes on from where it was misses nothing: no line comes in before one that it has read.
func readerBeside(t *testing.T, log record.Log, again func() record.Log) {
	done := make(chan struct{})
	go func() {
		defer close(done)
		write(t, 2, again)
	}()
	var all []record.Line
	from, last := int64(0), false
	for !last {
		select {
		case <-done:
			last = true
		default:
		}
		for _, line := range read(t, log, from) {
			if line.Next > line.At {
				all, from = append(all, line), line.Next
			}
		}
	}
	inTurn(t, all, 2)
}

func erased(t *testing.T, log record.Log, again func() record.Log) {
	add(t, log, "one", "two")
	if err := log.SetNote("a note", []byte("stays")); err != nil {
		t.Fatal(err)
	}
	if err := log.Erase(); err != nil {
		t.Fatal(err)
	}
	if left := read(t, again(), 0); len(left) > 0 {
		t.Errorf("%d lines are left", len(left))
	}
	add(t, log, "three")
	if all := read(t, again(), 0); len(all) != 1 || string(all[0].Text) != "three" {
		t.Errorf("after it %v", all)
	}
	if note, _ := again().Note("a note"); string(note) != "stays" {
		t.Errorf("the note is %q", note)
	}
}
