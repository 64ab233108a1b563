package database

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"
)

// names are the learners of seats, in their order, each with the host's name.
func names(t *testing.T, db *DB, learner string) string {
	t.Helper()
	seats, err := db.Seats(context.Background(), learner)
	if err != nil {
		t.Fatal(err)
	}
	var all []string
	for i, s := range seats {
		if i > 0 && s.Place <= seats[i-1].Place {
			t.Errorf("%+v comes after %+v", s, seats[i-1])
		}
		all = append(all, s.Learner+"@"+s.Name)
	}
	return strings.Join(all, " ")
}

// Seats are seen as long as their host says that it is there; a host of the same name takes the place of one before.
func TestSeats(t *testing.T) {
	t.Parallel()
	for kind, address := range kinds(t) {
		t.Run(kind, func(t *testing.T) {
			t.Parallel()
			db, ctx := opened(t, address(t)), context.Background()
			must := func(err error) {
				t.Helper()
				if err != nil {
					t.Fatal(err)
				}
			}
			up := map[string]string{"h1": "mill", "h2": "quay"} // who says that it is there, however slow the machine is
			beat := func() {
				for host, name := range up {
					must(db.Beat(ctx, host, name))
				}
			}
			want := func(learner, text string) {
				t.Helper()
				beat()
				if got := names(t, db, learner); got != text {
					t.Errorf("seated are %q, not %q", got, text)
				}
			}
			beat()
			must(db.Sit(ctx, "t1", "s1", "h1"))
			must(db.Sit(ctx, "t2", "s2", "h2"))
			must(db.Sit(ctx, "t3", "s1", "h2"))
			must(db.Sit(ctx, "t3", "s1", "h2"))
			must(db.Sit(ctx, "t4", "s3", "nobody"))
			want("", "s1@mill s2@quay s1@quay")
			want("s1", "s1@mill s1@quay")
			must(db.Leave(ctx, "t1"))
			must(db.Leave(ctx, "t1"))
			want("", "s2@quay s1@quay")
			delete(up, "h2")
			must(db.do(ctx, `UPDATE hosts SET seen = seen - $1 WHERE host = $2`, (Absent + time.Second).Microseconds(), "h2"))
			want("", "")
			if hosts, err := db.Hosts(ctx); err != nil || fmt.Sprint(hosts) != "map[h1:mill]" {
				t.Errorf("%v %v", hosts, err)
			}
			up["h2"] = "quay"
			want("", "s2@quay s1@quay")
			delete(up, "h2")
			must(db.do(ctx, `UPDATE hosts SET seen = seen + $1 WHERE host = $2`, time.Hour.Microseconds(), "h2")) // the clock was put back
			want("", "")
			up["h2"] = "quay"
			want("", "s2@quay s1@quay")
			must(db.Depart(ctx, "h3", "quay"))
			want("", "")
			must(db.Fade(ctx))
			must(db.Beat(ctx, "nobody", "late"))
			want("", "")
		})
	}
}

// Who follows what is added reads every line of everybody, once and in its place.
func TestSince(t *testing.T) {
	t.Parallel()
	for kind, address := range kinds(t) {
		t.Run(kind, func(t *testing.T) {
			t.Parallel()
			db, ctx := opened(t, address(t)), context.Background()
			for i := range 10 {
				if err := db.Log(fmt.Sprint("s", i%3)).Append(fmt.Append(nil, i)); err != nil {
					t.Fatal(err)
				}
			}
			place, read := int64(0), 0
			for {
				all, err := db.Since(ctx, place, 4)
				if err != nil {
					t.Fatal(err)
				}
				for _, a := range all {
					if a.Place <= place || string(a.Line) != fmt.Sprint(read) || a.Learner != fmt.Sprint("s", read%3) {
						t.Errorf("%+v comes as line %d", a, read)
					}
					place = a.Place
					read++
				}
				if len(all) < 4 {
					break
				}
			}
			if last, err := db.Last(ctx); read != 10 || err != nil || last != place {
				t.Errorf("%d lines are read, to %d; the last is %d: %v", read, place, last, err)
			}
			if now, err := db.Now(ctx); err != nil || time.Since(now).Abs() > time.Minute {
				t.Errorf("it is %v: %v", now, err)
			}
		})
	}
}

// Of many who offer a note at once all have the same one.
func TestFirstNote(t *testing.T) {
	t.Parallel()
	for kind, address := range kinds(t) {
		t.Run(kind, func(t *testing.T) {
			t.Parallel()
			at := address(t)
			got := make(chan string, 6)
			for i := range 6 {
				db := opened(t, at)
				go func() {
					text, err := db.FirstNote("", "secret", fmt.Append(nil, "secret ", i))
					if err != nil {
						t.Error(err)
					}
					got <- string(text)
				}()
			}
			first := <-got
			for range 5 {
				if text := <-got; text != first || !strings.HasPrefix(text, "secret ") {
					t.Errorf("%q, and %q", text, first)
				}
			}
		})
	}
}

// Who listens hears who told something; cut off, it hears of that by nobody, and goes on.
func TestListen(t *testing.T) {
	t.Parallel()
	address, postgres := kinds(t)["PostgreSQL"]
	if !postgres {
		t.Skip("no PostgreSQL")
	}
	db := opened(t, address(t))
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	heard := make(chan string, 10)
	go db.Listen(ctx, func(by string) { heard <- by })
	hears := func(want string) {
		t.Helper()
		select {
		case by := <-heard:
			if by != want {
				t.Errorf("heard %q, not %q", by, want)
			}
		case <-time.After(time.Minute):
			t.Fatalf("%q is not heard", want)
		}
	}
	hears("")
	if err := db.Tell(ctx, "mill"); err != nil {
		t.Fatal(err)
	}
	hears("mill")
	if err := db.do(ctx, `SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()`); err != nil {
		t.Fatal(err)
	}
	hears("")
	if err := db.Tell(ctx, "quay"); err != nil {
		t.Fatal(err)
	}
	hears("quay")
}
