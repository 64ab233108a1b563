package host

import (
	"bytes"
	"context"
	"strings"
	"testing"
	"time"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/tutor/marking"
)

// setOf reads a set of two problems of the library with more lines.
func setOf(t *testing.T, id string, lines ...string) Set {
	t.Helper()
	text := "id: " + id + "\ntitle: The set " + id + "\nseed: 4711\n" + strings.Join(lines, "\n") + "\nproblems: [{problem: jetty-deck, points: 8, find: [reactions]}, {problem: sawmill-portal}]\n"
	s, err := problems.ReadSet(id+".yaml", []byte(text), problems.Beside("."))
	if err != nil {
		t.Fatal(err)
	}
	return Set{s, marking.DefaultScheme()}
}

// Each learner has the copies that vary and sheet give them, whoever comes first, and has them again after a restart; what no set
// opens is not there.
func TestSetsAreHandedOut(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	sets := []Set{setOf(t, "w1"), setOf(t, "w2", "opens: 2100-01-01T10:00+01:00"), setOf(t, "w3", "minutes: 30")}
	batch, err := variant.OfSet(sets[0].Set)
	if err != nil {
		t.Fatal(err)
	}
	all, err := batch.Handouts(context.Background(), variant.Class{Students: threeStudents}, nil)
	if err != nil {
		t.Fatal(err)
	}
	for range 2 {
		c := openedWith(t, folder, sets, nil)
		for _, at := range []int{2, 0} {
			who := threeStudents[at]
			got, err := c.handed(c.sets[0], who)
			if err != nil || len(got) != 2 {
				t.Fatal(got, err)
			}
			for i, copied := range got {
				want, err := batch[i].At(all[at].Copies[i].Draw)
				if err != nil || copied.code != all[at].Copies[i].Code || !bytes.Equal([]byte(copied.Problem.Source()), []byte(want.Source())) {
					t.Errorf("%s has the copy %s of %s", who.ID, copied.code, copied.Name)
				}
			}
		}
		v := begin(t, c.in(t, code(c.codes["s001"])), false, "plain")
		v.sees("? problem")
		if text := v.out.String(); !strings.Contains(text, "\n2: w1/sawmill-portal: ") || strings.Contains(text, "w2/") || strings.Contains(text, "w3/") {
			t.Errorf("the list is\n%s", text)
		}
		v.types("w1/jetty-deck\n")
		v.sees("? Ax")
		v.Session.Close()
		c.stop()
		<-c.stopped
		c.stopped <- nil
	}
}

// A set lies in the list of the screen under its title, with what there is to know of it.
func TestSetsOnTheScreen(t *testing.T) {
	t.Parallel()
	c := openedWith(t, t.TempDir(), []Set{setOf(t, "w1", "closes: 2100-01-01T10:00+01:00"), setOf(t, "w3", "minutes: 30")}, nil)
	var titles []string
	for _, e := range c.entriesFor("s002", nil)() {
		if e.Set != nil && e.Problem == nil {
			titles = append(titles, e.Set.Title+": "+strings.Join(e.Set.Says, " "))
		}
	}
	want := []string{"The set w1: 2 problems, 18 points. It closes on Friday 1 January 2100, 10:00 UTC+01:00.",
		"The set w3: An exam: 2 problems, 18 points, 45 minutes. It is opened by your instructor.", "Other problems: Problems to practise with, in their own numbers."}
	if strings.Join(titles, "\n") != strings.Join(want, "\n") {
		t.Errorf("headings\n%s", strings.Join(titles, "\n"))
	}
	v := begin(t, c.in(t, code(c.codes["s002"])), true, "")
	v.sees("The set w1")
	v.sees("The set w3")
}

// An order is kept, read again, and read by another host on the same database.
func TestOrdersAreKept(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	sets := []Set{setOf(t, "w3", "minutes: 30")}
	first, second := openedWith(t, folder, sets, nil), openedWith(t, folder, sets, nil)
	if first.hours(first.sets[0]).at(time.Now()) != before {
		t.Fatal("it is open")
	}
	if err := first.orders.add(order{At: time.Now(), By: "k", Set: "w3", Do: openSet}); err != nil {
		t.Fatal(err)
	}
	if err := second.orders.read(); err != nil {
		t.Fatal(err)
	}
	for _, c := range []*class{first, second} {
		if c.hours(c.sets[0]).at(time.Now()) != running {
			t.Error("it is not open")
		}
	}
}
