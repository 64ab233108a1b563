package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"unpin/problems"
)

// Many problems in one go say what each says alone, one after the other, and the exit code is the worst: of files in folders,
// of the library, each of these twice at the same time, of what is refused and of what cannot be read.
func TestManySayWhatEachSays(t *testing.T) {
	t.Parallel()
	folders := []string{"../../testdata/examples", "../../testdata/refused", "../../testdata/broken"}
	words := problems.Names()
	if testing.Short() {
		words = words[:6]
	}
	words = slices.Concat(words, words)
	alone := slices.Clone(words)
	for _, folder := range folders {
		files, err := filepath.Glob(folder + "/*.yaml")
		if err != nil || len(files) == 0 {
			t.Fatalf("no files in %s: %v", folder, err)
		}
		alone = append(alone, files...)
	}
	for _, c := range []struct {
		args, between, open, close string
	}{
		{"solve --as text", "\n\n", "", ""},
		{"solve --as markdown", "\n", "", ""},
		{"solve --as json", ",\n", "[", "]\n"},
		{"inspect", "\n", "", ""},
		{"inspect --brief", "", "", ""},
		{"inspect --as json", "", "", ""},
	} {
		t.Run(c.args, func(t *testing.T) {
			t.Parallel()
			args, worst := strings.Fields(c.args), done
			var said []string
			for _, word := range alone {
				text, code := printed(append(slices.Clone(args), word))
				if worst = max(worst, code); text == "" {
					continue
				}
				if c.close != "" {
					text = strings.TrimSpace(text)
				}
				said = append(said, text)
			}
			want := c.open + strings.Join(said, c.between) + c.close
			got, code := printed(slices.Concat(args, words, folders))
			if code != worst {
				t.Errorf("exit code %d, the worst is %d", code, worst)
			}
			if got != want {
				t.Errorf("%d bytes are not the %d bytes that each says alone", len(got), len(want))
			}
		})
	}
}

// printed is what a command line prints, and its exit code.
func printed(args []string) (string, int) {
	var out bytes.Buffer
	code := run(args, strings.NewReader(""), &out, io.Discard)
	return out.String(), code
}

// Jobs are taken in their order though later ones end first; only so many are begun before the first is taken, whatever their
// number; those that are alone are never two at a time.
func TestInOrder(t *testing.T) {
	t.Parallel()
	const n = 300
	var begun, lonely, most atomic.Int64
	var taken []int
	alone := func(i int) bool { return i%50 < 3 }
	work := func(i int) int {
		begun.Add(1)
		if alone(i) {
			if lonely.Add(1) > 1 {
				t.Errorf("job %d is not alone", i)
			}
			defer lonely.Add(-1)
		}
		time.Sleep(time.Duration((n-i)%7) * 100 * time.Microsecond)
		return i
	}
	err := inOrder(n, alone, work, func(i int) error {
		most.Store(max(most.Load(), begun.Load()-int64(len(taken))))
		taken = append(taken, i)
		return nil
	})
	if err != nil || len(taken) != n || !slices.IsSorted(taken) {
		t.Errorf("%d of %d were taken, in order: %v; error %v", len(taken), n, slices.IsSorted(taken), err)
	}
	if limit := int64(2*runtime.GOMAXPROCS(0) + 2); most.Load() > limit {
		t.Errorf("%d jobs were begun and not taken, more than %d", most.Load(), limit)
	}
}

// An error of take ends the work, and a panic of a job reaches the caller, who has a word for it.
func TestInOrderEnds(t *testing.T) {
	t.Parallel()
	full := errors.New("full")
	never := func(int) bool { return false }
	var begun atomic.Int64
	count := func(i int) int { return int(begun.Add(1)) }
	if err := inOrder(100_000, never, count, func(int) error { return full }); err != full {
		t.Errorf("the error is %v, want %v", err, full)
	}
	if n := begun.Load(); n > int64(2*runtime.GOMAXPROCS(0)+2) {
		t.Errorf("%d jobs were begun after the first could not be taken", n)
	}
	defer func() {
		if fault := recover(); fault != "seven" {
			t.Errorf("the panic is %v", fault)
		}
	}()
	err := inOrder(10, never, func(i int) int {
		if i == 7 {
			panic("seven")
		}
		return i
	}, func(int) error { return nil })
	t.Errorf("there was no panic; error %v", err)
}

// A disk that is full ends the work at once.
func TestManyOntoFullDisk(t *testing.T) {
	t.Parallel()
	if _, err := os.Stat("/dev/full"); err != nil {
		t.Skip("there is no device that is always full here")
	}
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Fatal(err)
	}
	defer full.Close()
	for _, command := range []string{"inspect", "solve"} {
		var errs bytes.Buffer
		code := run([]string{command, "jetty-deck", "jetty-deck", "jetty-deck"}, strings.NewReader(""), full, &errs)
		if code != badIn || strings.Count(errs.String(), "no space left") != 1 {
			t.Errorf("%s: exit code %d, and it says:\n%s", command, code, errs.String())
		}
	}
}

// BenchmarkMany is a folder of 200 beams in one process.
func BenchmarkMany(b *testing.B) {
	folder := b.TempDir()
	for i := range 200 {
		if err := os.WriteFile(filepath.Join(folder, fmt.Sprintf("%03d.yaml", i)), []byte(beamOf(3)), 0o600); err != nil {
			b.Fatal(err)
		}
	}
	for _, args := range []string{"inspect --brief", "solve --as text", "solve --as json"} {
		b.Run(strings.ReplaceAll(args, " ", "_"), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if code := run(append(strings.Fields(args), folder), strings.NewReader(""), io.Discard, os.Stderr); code != done {
					b.Fatalf("exit code %d", code)
				}
			}
		})
	}
}
