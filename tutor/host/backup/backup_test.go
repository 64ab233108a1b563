package backup

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"unpin/tutor/record"
	"unpin/tutor/record/database"
)

var made atomic.Int64

// stores are new and empty ones, by kind; PostgreSQL where UNPIN_TEST_POSTGRES names a server on which databases may be made.
func stores(t *testing.T) map[string]func() *database.DB {
	all := map[string]func() *database.DB{"SQLite": func() *database.DB { return opened(t, filepath.Join(t.TempDir(), DatabaseName)) }}
	server := os.Getenv("UNPIN_TEST_POSTGRES")
	if server == "" {
		return all
	}
	all["PostgreSQL"] = func() *database.DB {
		admin, err := sql.Open("pgx", server)
		if err != nil {
			t.Fatal(err)
		}
		name := fmt.Sprintf("unpin_backup_%d_%d", os.Getpid(), made.Add(1))
		if _, err := admin.Exec("CREATE DATABASE " + name); err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() {
			admin.Exec("DROP DATABASE " + name + " WITH (FORCE)")
			admin.Close()
		})
		at, _ := url.Parse(server)
		at.Path = "/" + name
		return opened(t, at.String())
	}
	return all
}

func opened(t *testing.T, at string) *database.DB {
	t.Helper()
	db, err := database.Open(context.Background(), at)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { db.Close() })
	return db
}

// lines are those of a learner.
func lines(t *testing.T, db *database.DB, learner string) (all []string) {
	t.Helper()
	for line, err := range db.Log(learner).Lines(0) {
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, string(line.Text))
	}
	return all
}

// A backup in the middle of work, restored into another store, has every line that was acknowledged before it, each learner's without a
// gap; the restored one goes on.
func TestInTheMiddle(t *testing.T) {
	t.Parallel()
	kinds := stores(t)
	for from, first := range kinds {
		for to, second := range kinds {
			t.Run(from+" to "+to, func(t *testing.T) { inTheMiddle(t, first(), second()) })
		}
	}
}

// learners is how many are at work in the test.
const learners = 6

func inTheMiddle(t *testing.T, db, other *database.DB) {
	ctx := context.Background()
	folder := t.TempDir()
	write(t, folder, map[string]string{"roster.csv": "id\ns0\n", "sets/week-5.yaml": "id: x\n", "host-key": "secret\n", DatabaseName + "-wal": "not this", "codes.csv.12.part": "nor this"})
	if err := db.Log("").SetNote("secret", []byte("a\x00\xffb")); err != nil {
		t.Fatal(err)
	}
	var acknowledged [learners]atomic.Int64
	var group sync.WaitGroup
	done := make(chan struct{})
	for w := range learners {
		group.Go(func() {
			log := db.Log(fmt.Sprint("s", w))
			for i := 0; ; i++ {
				select {
				case <-done:
					return
				default:
				}
				if err := log.Append(fmt.Appendf(nil, `{"n":%d,"text":"Σ 𝑥 '%s"}`, i, strings.Repeat("y", i%200))); err != nil {
					t.Error(err)
					return
				}
				acknowledged[w].Store(int64(i + 1))
			}
		})
	}
	var before [learners]int64
	for w := range before {
		for ; before[w] < 3 && !t.Failed(); time.Sleep(time.Millisecond) { // so that all are in the middle of it
			before[w] = acknowledged[w].Load()
		}
	}
	var file bytes.Buffer
	whole, err := Write(ctx, &file, folder, db, time.Now())
	close(done)
	group.Wait()
	if err != nil || whole.Files != 3 || whole.Notes != 1 || whole.Lines < learners {
		t.Fatalf("%+v %v", whole, err)
	}
	if checked, err := Check(bytes.NewReader(file.Bytes())); err != nil || checked != whole {
		t.Fatalf("%+v %v", checked, err)
	}
	into := t.TempDir()
	if err := errors.Join(Files(bytes.NewReader(file.Bytes()), into), Fill(ctx, bytes.NewReader(file.Bytes()), other)); err != nil {
		t.Fatal(err)
	}
	if text, err := os.ReadFile(filepath.Join(into, "sets", "week-5.yaml")); err != nil || string(text) != "id: x\n" {
		t.Errorf("%q %v", text, err)
	}
	if text, err := other.Log("").Note("secret"); err != nil || string(text) != "a\x00\xffb" {
		t.Errorf("%q %v", text, err)
	}
	for w := range learners {
		name := fmt.Sprint("s", w)
		was, is := lines(t, db, name), lines(t, other, name)
		if int64(len(is)) < before[w] || len(is) > len(was) || strings.Join(is, "\n") != strings.Join(was[:len(is)], "\n") {
			t.Errorf("%s: %d lines, %d were acknowledged before, %d at the end", name, len(is), before[w], len(was))
		}
		if err := other.Log(name).Append([]byte(`"more"`)); err != nil {
			t.Fatal(err)
		}
		if after := lines(t, other, name); len(after) != len(is)+1 || after[len(is)] != `"more"` {
			t.Errorf("%s: after one more there are %d", name, len(after))
		}
	}
	if err := Fill(ctx, bytes.NewReader(file.Bytes()), other); !errors.Is(err, database.ErrNotEmpty) {
		t.Errorf("it is filled twice: %v", err)
	}
}

// write writes files.
func write(t *testing.T, folder string, files map[string]string) {
	t.Helper()
	for name, text := range files {
		path := filepath.Join(folder, filepath.FromSlash(name))
		if err := errors.Join(os.MkdirAll(filepath.Dir(path), 0o700), os.WriteFile(path, []byte(text), 0o600)); err != nil {
			t.Fatal(err)
		}
	}
}

// What has been practised reads the same from a restored store, with the brief that is kept of many lines.
func TestBriefHolds(t *testing.T) {
	t.Parallel()
	ctx := context.Background()
	db, other := opened(t, filepath.Join(t.TempDir(), "a.db")), opened(t, filepath.Join(t.TempDir(), "b.db"))
	at := time.Date(2026, 11, 28, 10, 0, 0, 0, time.UTC)
	for i := range 2100 {
		line, _ := json.Marshal(record.Record{Version: 2, At: at.Add(time.Duration(i) * time.Second), Run: fmt.Sprint("r", i/30), Problem: "p", Frame: fmt.Sprint("f", i/100), Question: "Cy", Outcome: record.Exact})
		if err := db.Log("s1").Append(line); err != nil {
			t.Fatal(err)
		}
	}
	read := func(db *database.DB) string {
		past, err := db.Learner("s1").Past()
		if err != nil {
			t.Fatal(err)
		}
		all, err := past.Of("f3")
		if err != nil {
			t.Fatal(err)
		}
		text, _ := json.Marshal(all)
		return string(text)
	}
	want := read(db)
	var file bytes.Buffer
	if _, err := Write(ctx, &file, t.TempDir(), db, at); err != nil {
		t.Fatal(err)
	}
	if err := Fill(ctx, &file, other); err != nil {
		t.Fatal(err)
	}
	if note, err := other.Log("s1").Note("lately"); err != nil || note == nil {
		t.Errorf("the brief is missing: %v", err)
	}
	if got := read(other); got != want || !strings.Contains(got, `"r10"`) {
		t.Errorf("it reads otherwise: %d and %d bytes", len(got), len(want))
	}
}

// unpacked is what was compressed: some bits of a compressed file mean nothing.
func unpacked(file []byte) []byte {
	zip, err := gzip.NewReader(bytes.NewReader(file))
	if err != nil {
		return nil
	}
	text, _ := io.ReadAll(zip)
	return text
}

// A file that is torn or changed anywhere is refused, and fills nothing.
func TestDamaged(t *testing.T) {
	t.Parallel()
	ctx := context.Background()
	db := opened(t, filepath.Join(t.TempDir(), "a.db"))
	for i := range 300 {
		if err := db.Log("s1").Append(fmt.Appendf(nil, `{"n":%d,"x":"%x"}`, i, i*i*7919)); err != nil {
			t.Fatal(err)
		}
	}
	folder := t.TempDir()
	write(t, folder, map[string]string{"roster.csv": "id\ns1\n"})
	var file bytes.Buffer
	if _, err := Write(ctx, &file, folder, db, time.Now()); err != nil {
		t.Fatal(err)
	}
	whole := file.Bytes()
	for n := 0; n < len(whole); n += 37 {
		if _, err := Check(bytes.NewReader(whole[:n])); err == nil {
			t.Errorf("its first %d bytes of %d count as whole", n, len(whole))
		}
		changed := bytes.Clone(whole)
		changed[n] ^= 0x10
		if _, err := Check(bytes.NewReader(changed)); err == nil && !bytes.Equal(unpacked(changed), unpacked(whole)) {
			t.Errorf("with byte %d of %d changed it counts as whole", n, len(whole))
		}
	}
	empty := opened(t, filepath.Join(t.TempDir(), "b.db"))
	if err := Fill(ctx, bytes.NewReader(whole[:len(whole)-200]), empty); err == nil || len(lines(t, empty, "s1")) > 0 {
		t.Errorf("a torn one fills: %v", err)
	}
}

// An archive that somebody else has made writes nothing beside the folder.
func TestHostileArchive(t *testing.T) {
	t.Parallel()
	parent := t.TempDir()
	for _, name := range []string{"folder/../out", "folder//etc/out", "folder/" + DatabaseName, "folder/a/../../out", "folder/."} {
		var file bytes.Buffer
		zip := gzip.NewWriter(&file)
		w := &writer{tar: tar.NewWriter(zip), sum: discard{}, now: time.Now()}
		begins, _ := json.Marshal(head{Version: version})
		err := errors.Join(w.add(headName, 0o600, begins), w.add(name, 0o600, []byte("x")), w.tar.Close(), zip.Close())
		if err != nil {
			t.Fatal(err)
		}
		folder := filepath.Join(parent, "in")
		os.Mkdir(folder, 0o700)
		if err := Files(&file, folder); err == nil {
			t.Errorf("%s is written", name)
		}
	}
	filepath.WalkDir(parent, func(path string, entry fs.DirEntry, _ error) error {
		if !entry.IsDir() {
			t.Errorf("there is %s", path)
		}
		return nil
	})
	for _, text := range []string{"", "nonsense", strings.Repeat("\x1f\x8b", 100)} {
		if _, err := Check(strings.NewReader(text)); err == nil {
			t.Errorf("%.20q is a backup", text)
		}
	}
}

// discard is a digest of nothing.
type discard struct{ io.Writer }

func (discard) Write(b []byte) (int, error) { return len(b), nil }
func (discard) Sum([]byte) []byte           { return nil }
func (discard) Reset()                      {}
func (discard) Size() int                   { return 0 }
func (discard) BlockSize() int              { return 1 }
