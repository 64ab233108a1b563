package host

import (
	"path/filepath"
	"strings"
	"testing"
	"time"

	"unpin/tutor/record"
)

// The database is away in the middle of an exam: answers are taken, another problem of the paper can be opened, and all of it is kept.
func TestExamWhileAway(t *testing.T) {
	t.Parallel()
	cable, address := newCable(t, newPostgres(t))
	folder, now := t.TempDir(), &setClock{at: clock(t, "10:00")}
	c := openedOn(t, folder, address, Options{Sets: []Set{anExam(t)}, Clock: now.now})
	c.makeCodes(t)
	c.orders3(t, now, order{Do: openSet})
	v := begin(t, c.in(t, code(c.codes["s001"])), false, "plain w3")
	notes := func(n int) {
		t.Helper()
		v.seesTimes("noted", n)
	}
	v.types("begin\n1\n0\n")
	notes(1)
	cable.set(true, false)
	now.move(time.Minute)
	v.types("12\n")
	notes(2)
	v.types("problems\n2\n0\n")
	notes(3)
	v.types("problems\n1\n13\n") // back in the first, where it was
	notes(4)
	v.types("time\n")
	v.sees("29 minutes left")
	if s := c.keep.State(); !s.Away || s.Waiting < 3 {
		t.Errorf("%+v", s)
	}
	cable.set(false, false)
	v.sees("The class's store is back")
	all, _, err := record.On(c.keep.Log(logName("s001", "w3"))).Records()
	answers := ""
	for _, r := range all {
		if r.Kind == "" && r.Typed != "" {
			answers += r.Typed + " "
		}
	}
	if err != nil || !strings.Contains(answers, "0 12 0 13") {
		t.Errorf("kept are %q: %v", answers, err)
	}
	if left, _ := filepath.Glob(filepath.Join(folder, "waiting-*")); len(left) > 0 {
		t.Errorf("left: %q", left)
	}
}
