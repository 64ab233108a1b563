package database

import (
	"bufio"
	"context"
	"database/sql"
	"encoding/json"
	"flag"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"unpin/tutor/record"
	"unpin/tutor/record/logtest"
)

// server is the variable with the address of a PostgreSQL server on which databases may be made; without it those tests are left out.
const server = "UNPIN_TEST_POSTGRES"

// kinds are the databases to test with: a new and empty one at each call, by its address.
func kinds(t testing.TB) map[string]func(testing.TB) string {
	all := map[string]func(testing.TB) string{
		"SQLite": func(t testing.TB) string { return filepath.Join(t.TempDir(), "a class's #1.db") },
	}
	if os.Getenv(server) == "" {
		t.Log("no PostgreSQL: " + server + " names no server")
	} else {
		all["PostgreSQL"] = newPostgres
	}
	return all
}

var made atomic.Int64

// newPostgres makes a database on the server.
func newPostgres(t testing.TB) string {
	t.Helper()
	admin, err := sql.Open("pgx", os.Getenv(server))
	if err != nil {
		t.Fatal(err)
	}
	defer admin.Close()
	name := fmt.Sprintf("unpin_%d_%d", os.Getpid(), made.Add(1))
	if _, err := admin.Exec("CREATE DATABASE " + name); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		admin, err := sql.Open("pgx", os.Getenv(server))
		if err == nil {
			_, err = admin.Exec("DROP DATABASE " + name + " WITH (FORCE)")
			admin.Close()
		}
		if err != nil {
			t.Error(err)
		}
	})
	at, err := url.Parse(os.Getenv(server))
	if err != nil {
		t.Fatal(err)
	}
	at.Path = "/" + name
	return at.String()
}

// opened is a database that is closed at the end of the test.
func opened(t testing.TB, address string) *DB {
	t.Helper()
	db, err := Open(context.Background(), address)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { db.Close() })
	return db
}

func TestLogsKeep(t *testing.T) {
	t.Parallel()
	for name, address := range kinds(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			logtest.Keeps(t, func(t testing.TB) (record.Log, func() record.Log) {
				at := address(t)
				again := func() record.Log { return opened(t, at).Log("s017") }
				return again(), again
			})
		})
	}
}

// What one learner does never shows in the log of another, whatever their names.
func TestLearnersApart(t *testing.T) {
	t.Parallel()
	names := []string{"s1", "s17", "S1", "", "s1' OR '1'='1", "s1%", "ş1", "s1 "}
	for kind, address := range kinds(t) {
		t.Run(kind, func(t *testing.T) {
			t.Parallel()
			db := opened(t, address(t))
			for _, name := range names {
				if err := db.Learner(name).Add(record.Record{Run: "r", Typed: name}); err != nil {
					t.Fatal(err)
				}
			}
			if err := db.Learner("S1").Erase(); err != nil {
				t.Fatal(err)
			}
			for _, name := range names {
				all, _, err := db.Learner(name).Records()
				if want := map[bool]int{true: 0, false: 1}[name == "S1"]; err != nil || len(all) != want || want == 1 && all[0].Typed != name {
					t.Errorf("%q has %v: %v", name, all, err)
				}
			}
			if all, err := db.Learners(context.Background()); err != nil || len(all) != len(names)-1 {
				t.Errorf("%q: %v", all, err)
			}
		})
	}
}

// Many programs that open a new database at once make its tables once; tables of a later version are left alone.
func TestMigrations(t *testing.T) {
	t.Parallel()
	for kind, address := range kinds(t) {
		t.Run(kind, func(t *testing.T) {
			t.Parallel()
			at := address(t)
			t.Run("at once", func(t *testing.T) {
				for i := range 8 {
					t.Run(strconv.Itoa(i), func(t *testing.T) {
						t.Parallel()
						if err := opened(t, at).Learner("s").Add(record.Record{Run: "r"}); err != nil {
							t.Error(err)
						}
					})
				}
			})
			db := opened(t, at)
			if all, _, err := db.Learner("s").Records(); err != nil || len(all) != 8 {
				t.Errorf("%d records: %v", len(all), err)
			}
			if _, err := db.sql.Exec(`INSERT INTO schema_version (version) VALUES (99)`); err != nil {
				t.Fatal(err)
			}
			if newer, err := Open(context.Background(), at); err == nil || !strings.Contains(err.Error(), "newer version of unpin") {
				newer.Close()
				t.Errorf("tables of version 99 are used: %v", err)
			}
		})
	}
}

// What is no database, or cannot be reached, is told at the opening.
func TestNoDatabase(t *testing.T) {
	t.Parallel()
	text := filepath.Join(t.TempDir(), "text.db")
	if err := os.WriteFile(text, []byte(strings.Repeat("this is no database\n", 500)), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, address := range []string{text, t.TempDir(), filepath.Join(text, "below"), "postgres://nobody@127.0.0.1:1/none?connect_timeout=2", "postgres://%zz"} {
		if db, err := Open(context.Background(), address); err == nil {
			db.Close()
			t.Errorf("%s is opened", address)
		}
	}
}

// TestMain makes this program a writer of records where the environment asks for one.
func TestMain(m *testing.M) {
	if address := os.Getenv("DATABASE_TEST_WRITER"); address != "" {
		writeRecords(address)
		return
	}
	os.Exit(m.Run())
}

// writeRecords adds records until it is killed, and says of each that is kept, by its number.
func writeRecords(address string) {
	db, err := Open(context.Background(), address)
	for i := 0; err == nil; i++ {
		if err = db.Learner("s").Add(record.Record{Run: "a", Number: i, Typed: strings.Repeat("x", i%300)}); err == nil {
			fmt.Println(i)
		}
	}
	fmt.Println(err)
}

// settled waits until a server has done what a program had asked for that was killed.
func settled(t *testing.T, db *DB) {
	t.Helper()
	for db.Shared() {
		var busy int
		if err := db.sql.QueryRow(`SELECT count(*) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid() AND state <> 'idle'`).Scan(&busy); err != nil {
			t.Fatal(err)
		}
		if busy == 0 {
			return
		}
		time.Sleep(10 * time.Millisecond)
	}
}

// Programs are killed while they write, again and again into one database: nothing that was kept is lost, each numbers on from what
// it says, and nothing stays locked.
func TestKilledWriters(t *testing.T) {
	t.Parallel()
	runs := 20
	if testing.Short() {
		runs = 4
	}
	for kind, address := range kinds(t) {
		t.Run(kind, func(t *testing.T) {
			t.Parallel()
			at, kept := address(t), 0
			for run := range runs {
				last := killed(t, at, 1+run*3%40)
				settled(t, opened(t, at))
				all, passed, err := opened(t, at).Learner("s").Records()
				if err != nil || passed != (record.Passed{}) || len(all) < kept+last+1 || len(all) > kept+last+2 {
					t.Fatalf("%d records after %d and %d more: %+v %v", len(all), kept, last+1, passed, err)
				}
				for i, r := range all[kept:] {
					if r.Number != i {
						t.Fatalf("record %d has the number %d", i, r.Number)
					}
				}
				kept = len(all)
			}
		})
	}
}

// killed kills a writer after so many lines, and returns the last number that it said.
func killed(t *testing.T, address string, after int) int {
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), "DATABASE_TEST_WRITER="+address)
	out, err := cmd.StdoutPipe()
	if err == nil {
		err = cmd.Start()
	}
	if err != nil {
		t.Fatal(err)
	}
	lines, last := bufio.NewScanner(out), -1
	for n := 0; lines.Scan(); n++ {
		if last, err = strconv.Atoi(lines.Text()); err != nil {
			t.Fatal(lines.Text())
		}
		if n == after {
			cmd.Process.Kill()
		}
	}
	cmd.Wait()
	return last
}

var records = flag.Int("records", 20_000, "lines of all learners in BenchmarkOpening")

// BenchmarkOpening opens the practice of one of three hundred learners, with a record of work on one problem, and adds a line.
func BenchmarkOpening(b *testing.B) {
	for name, address := range kinds(b) {
		at := address(b)
		db := opened(b, at)
		fill(b, db)
		again := opened(b, at)
		b.Run(name+"/open", func(b *testing.B) {
			for b.Loop() {
				db, err := Open(context.Background(), at)
				if err == nil {
					_, err = db.Learner("s017").Past()
					db.Close()
				}
				if err != nil {
					b.Fatal(err)
				}
			}
		})
		b.Run(name+"/past", func(b *testing.B) {
			for b.Loop() {
				past, err := again.Learner("s017").Past()
				if err == nil {
					_, err = past.Of("v3:7")
				}
				if err != nil {
					b.Fatal(err)
				}
			}
		})
		b.Run(name+"/add", func(b *testing.B) {
			for b.Loop() {
				if err := again.Learner("s018").Add(record.Record{Run: "r", Typed: "46.4 up"}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// fill adds lines of three hundred learners in turn, in one go.
func fill(t testing.TB, db *DB) {
	tx, err := db.sql.Begin()
	if err != nil {
		t.Fatal(err)
	}
	defer tx.Rollback()
	for from := 0; from < *records; from += 1000 {
		var rows []string
		for i := from; i < min(from+1000, *records); i++ {
			line, _ := json.Marshal(record.Record{Version: 2, Run: fmt.Sprint("2026-11-28T08:00:00.123456789Z ", i/18000), Problem: "p", Frame: fmt.Sprint("v3:", i/300%80),
				Level: "gradual", Number: i / 300 % 60, Question: "V(BC, 2.4 before)", Key: "2.1 arm 3", Typed: "46.4 up", Outcome: record.Exact})
			rows = append(rows, fmt.Sprintf("('s%03d', '%s')", i%300, line))
		}
		if _, err := tx.Exec("INSERT INTO lines (learner, line) VALUES " + strings.Join(rows, ", ")); err != nil {
			t.Fatal(err)
		}
	}
	if err := tx.Commit(); err != nil {
		t.Fatal(err)
	}
}
