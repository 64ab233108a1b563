//go:build unix

package record

import (
	"bufio"
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"
)

// TestMain makes this program a writer of records where the environment asks for one.
func TestMain(m *testing.M) {
	if path := os.Getenv("RECORD_TEST_WRITER"); path != "" {
		writeRecords(path, os.Getenv("RECORD_TEST_LIMIT"))
		return
	}
	os.Exit(m.Run())
}

// writeRecords adds records until it is killed, or one cannot be added, and says of each that is kept, by its number. No
// file grows beyond the limit, if there is one, as on a disk that is full.
func writeRecords(path, limit string) {
	if n, err := strconv.ParseUint(limit, 10, 63); err == nil {
		if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: n, Max: n}); err != nil {
			fmt.Println(err)
			return
		}
	}
	s := At(path)
	for i := 0; ; i++ {
		if err := s.Add(Record{Run: "a", Number: i, Typed: strings.Repeat("x", i%300)}); err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(i)
	}
}

// writer is this program as a writer of records.
func writer(path, limit string) *exec.Cmd {
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), "RECORD_TEST_WRITER="+path, "RECORD_TEST_LIMIT="+limit)
	return cmd
}

// checkKept makes sure that all records up to a number are there, in order, and that what comes after them is kept too.
func checkKept(t *testing.T, path string, last int) {
	t.Helper()
	s := At(path)
	if err := s.Add(Record{Run: "b", Typed: "after"}); err != nil {
		t.Fatal(err)
	}
	all, passed, err := s.Records()
	if err != nil || passed.Torn > 1 || passed.Long+passed.Newer > 0 {
		t.Fatalf("%+v %v", passed, err)
	}
	if n := len(all); n < last+2 || all[n-1].Typed != "after" {
		t.Fatalf("%d records, the last number known to be kept is %d", n, last)
	}
	for i, r := range all[:len(all)-1] {
		if r.Number != i {
			t.Fatalf("record %d has the number %d", i, r.Number)
		}
	}
}

// TestKilled kills programs while they write, a few hundred times: nothing that was kept is lost, and one line at most is torn.
func TestKilled(t *testing.T) {
	t.Parallel()
	runs := 200
	if testing.Short() {
		runs = 20
	}
	random := rand.New(rand.NewPCG(1, 2))
	for run := range runs {
		path := filepath.Join(t.TempDir(), strconv.Itoa(run), "practice.jsonl")
		cmd := writer(path, "")
		out, err := cmd.StdoutPipe()
		if err == nil {
			err = cmd.Start()
		}
		if err != nil {
			t.Fatal(err)
		}
		lines, last := bufio.NewScanner(out), -1
		for range 1 + random.IntN(60) {
			if lines.Scan() {
				last, err = strconv.Atoi(lines.Text())
			}
			if err != nil {
				t.Fatal(err)
			}
		}
		cmd.Process.Kill()
		for lines.Scan() { // what it said before it ended
			if n, err := strconv.Atoi(lines.Text()); err == nil {
				last = n
			}
		}
		cmd.Wait()
		checkKept(t, path, last)
	}
}

// TestDiskFull lets a file grow to a limit only: the record that has no room is told of, those before it stay, and so do
// those that come when there is room again.
func TestDiskFull(t *testing.T) {
	t.Parallel()
	for limit := 1; limit < 6000; limit += 97 {
		path := filepath.Join(t.TempDir(), "practice.jsonl")
		out, err := writer(path, strconv.Itoa(limit)).Output()
		if err != nil {
			t.Fatal(err)
		}
		lines := bytes.Split(bytes.TrimSpace(out), []byte("\n"))
		if told := string(lines[len(lines)-1]); !strings.HasPrefix(told, "progress cannot be kept: ") {
			t.Fatalf("limit %d: %s", limit, told)
		}
		checkKept(t, path, len(lines)-2)
	}
}

// FuzzRecords reads files of any content: no panic, and what can be read is found again when it is written.
func FuzzRecords(f *testing.F) {
	f.Add([]byte(`{"v":2,"run":"a","typed":"1"}` + "\n" + `{"v":2,"run`))
	f.Add([]byte("\n\x00\n{}\n[]\n{\"v\":99}\n"))
	f.Fuzz(func(t *testing.T, content []byte) {
		path := filepath.Join(t.TempDir(), "content.jsonl")
		if err := os.WriteFile(path, content, 0o600); err != nil {
			t.Fatal(err)
		}
		all, _, err := At(path).Records()
		if err != nil {
			t.Fatal(err)
		}
		s := At(filepath.Join(t.TempDir(), "practice.jsonl"))
		for _, r := range all {
			if err := s.Add(r); err != nil && len(content) < longest/8 {
				t.Fatal(err)
			}
		}
		again, passed, err := s.Records()
		if err != nil || passed != (Passed{}) || len(again) != len(all) && len(content) < longest/8 {
			t.Fatalf("%d of %d records, %+v, %v", len(again), len(all), passed, err)
		}
	})
}
