package host

import (
	"context"
	"database/sql"
	"fmt"
	"net/url"
	"regexp"
	"strings"
	"testing"
	"time"

	"unpin/tutor/record/database"
)

// databaseClock puts a clock of the test's into a PostgreSQL database, in place of its server's: so much ahead of it.
func databaseClock(t *testing.T, address string) (ahead func(time.Duration)) {
	t.Helper()
	db, err := sql.Open("pgx", address)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { db.Close() })
	do := func(statement string) {
		t.Helper()
		if _, err := db.Exec(statement); err != nil {
			t.Fatal(err)
		}
	}
	at, err := url.Parse(address)
	if err != nil {
		t.Fatal(err)
	}
	do("CREATE SCHEMA clocks")
	ahead = func(by time.Duration) {
		do(fmt.Sprintf("CREATE OR REPLACE FUNCTION clocks.clock_timestamp() RETURNS timestamptz LANGUAGE sql VOLATILE AS $$ SELECT pg_catalog.clock_timestamp() + interval '%d seconds' $$", by/time.Second))
	}
	ahead(0)
	do("ALTER DATABASE " + strings.TrimPrefix(at.Path, "/") + ` SET search_path = clocks, pg_catalog, public`)
	return ahead
}

// Two hosts whose machines have clocks of their own, seven hours ahead and two days behind, go by the database's: an exam has the same
// end at both, what is done is kept at that time wherever it is done, and in its order. That clock is put back in the middle: both follow.
func TestClocksOfTwo(t *testing.T) {
	t.Parallel()
	address := newPostgres(t)
	ahead := databaseClock(t, address)
	ahead(3 * time.Hour)
	with := func(name string, off time.Duration) *class {
		return openedOn(t, t.TempDir(), address, Options{Name: name, Sets: []Set{anExam(t)}, machine: func() time.Time { return time.Now().Add(off) }})
	}
	a, b := with("mill", 7*time.Hour), with("quay", -48*time.Hour)
	a.makeCodes(t)
	b.codes = a.codes
	near := func(by time.Duration) {
		t.Helper()
		for _, c := range []*class{a, b} {
			if off := c.o.Clock().Sub(time.Now().Add(by)).Abs(); off > 10*time.Second { // hours apart, were it another clock
				t.Errorf("%s is off by %v", c.hub.name, off)
			}
		}
	}
	waits(t, "each knows of the other", func() bool { return a.hub.several() && b.hub.several() })
	near(3 * time.Hour)
	if err := a.orders.add(order{At: a.o.Clock(), Set: "w3", Do: openSet}); err != nil {
		t.Fatal(err)
	}
	a.hub.changed()
	waits(t, "it is open at the other", func() bool { return b.hours(b.sets[0]).at(b.o.Clock()) == running })
	there := begin(t, b.in(t, code(b.codes["s001"])), false, "plain w3")
	there.types("begin\n1\n0\n")
	there.sees("noted")
	end := func(v *seen) string { return regexp.MustCompile(`until (\d\S+ \d\d:\d\d)`).FindString(v.out.String()) }
	here := begin(t, a.in(t, code(a.codes["s001"])), false, "plain")
	here.sees("? problem")
	here.types("1\n12\n")
	here.sees("noted")
	if end(there) != end(here) || end(here) == "" {
		t.Errorf("it ends %s, and %s at the other", end(there), end(here))
	}
	ahead(time.Hour)
	for _, c := range []*class{a, b} {
		if err := c.setClock(t.Context()); err != nil {
			t.Fatal(err)
		}
	}
	near(time.Hour)
	waits(t, "each is there by the new time", func() bool {
		hosts, err := a.o.Data.Hosts(t.Context())
		return err == nil && len(hosts) == 2
	})
	here.types("13\n")
	here.seesTimes("noted", 2)
	inOrder(t, address, time.Now())
}

// inOrder makes sure that three answers are kept, in the order in which they were given, each at the time that the database's clock
// showed then.
func inOrder(t *testing.T, address string, now time.Time) {
	t.Helper()
	data, err := database.Open(context.Background(), address)
	if err != nil {
		t.Fatal(err)
	}
	defer data.Close()
	all, _, err := data.Learner(logName("s001", "w3")).Records()
	var typed []string
	for _, r := range all {
		if r.Kind != "" || r.Typed == "" || r.Typed == "resume" {
			continue
		}
		by := 3 * time.Hour
		if typed = append(typed, r.Typed); len(typed) == 3 {
			by = time.Hour
		}
		if off := now.Add(by).Sub(r.At).Abs(); off > 2*time.Minute {
			t.Errorf("%q is kept at %v, %v off", r.Typed, r.At, off)
		}
	}
	if err != nil || strings.Join(typed, " ") != "0 12 13" {
		t.Errorf("kept are %q: %v", typed, err)
	}
}
