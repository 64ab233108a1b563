package host

import (
	"strings"
	"testing"
	"time"

	"github.com/hinshun/vt10x"
)

// anExam is one of half an hour, opened by hand.
func anExam(t *testing.T) Set {
	return setOf(t, "w3", "minutes: 30", "level: values", "opens: 2026-12-05T10:00+01:00")
}

// screen is what stands on a terminal of 80 by 24 cells by now.
func (v *seen) screen() string {
	terminal := vt10x.New(vt10x.WithSize(80, 24))
	terminal.Write([]byte(v.out.String()))
	return terminal.String()
}

// asked counts the questions that were asked of a name.
func (v *seen) asked(name string) int { return strings.Count(v.out.String(), "? "+name+" [") }

// again waits until a question is asked for the nth time.
func (v *seen) again(name string, n int) {
	v.t.Helper()
	v.seesTimes("? "+name+" [", n)
}

// orders something about the exam, as an instructor does.
func (c *class) orders3(t *testing.T, now *setClock, o order) {
	t.Helper()
	o.At, o.Set = now.now(), "w3"
	if err := c.Host.orders.add(o); err != nil {
		t.Fatal(err)
	}
}

// An exam is begun once that is said, survives a dropped line and a host that is started anew with the same clock, says the time by a
// word from beside, is handed in at its end, and tells marks once the time of everybody is over.
func TestExamByLine(t *testing.T) {
	t.Parallel()
	folder, now := t.TempDir(), &setClock{at: clock(t, "10:00")}
	c := openedWith(t, folder, []Set{anExam(t)}, now.now)
	word := func(id, words, typed string) string {
		v := begin(t, c.in(t, code(c.codes[id])), false, words)
		v.types(typed)
		v.ends()
		return v.out.String()
	}
	if text := word("s001", "plain w3", ""); !strings.Contains(text, "there is no problem w3") {
		t.Errorf("before it is open\n%s", text)
	}
	c.orders3(t, now, order{Do: openSet})
	if text := word("s001", "plain w3", "no\n"); !strings.Contains(text, "you have 30 minutes, until Friday 4 December 2026, 10:30 UTC+01:00") || !strings.Contains(text, "It is not begun") {
		t.Errorf("before it is begun\n%s", text)
	}
	v := begin(t, c.in(t, code(c.codes["s001"])), false, "plain w3")
	v.types("begin\n1\n0\n")
	v.sees("noted")
	v.again("RB", 1)
	now.move(10 * time.Minute)
	if text := word("s001", "time", ""); !strings.Contains(text, "The set w3: 20 minutes left, until Friday 4 December 2026, 10:30 UTC+01:00") {
		t.Errorf("the time is\n%s", text)
	}
	v.types("time\n")
	v.sees("20 minutes left")
	v.Session.Close() // the line drops
	waits(t, "the seat is given up", func() bool { return c.seats.count() == 0 })
	c.stop()
	<-c.stopped
	c.stopped <- nil
	c = openedWith(t, folder, []Set{anExam(t)}, now.now)
	v = begin(t, c.in(t, code(c.codes["s001"])), false, "plain")
	v.sees("20 minutes")
	v.types("1\n")
	v.again("RB", 1)
	if v.asked("Ax") != 0 {
		t.Errorf("it is asked again\n%s", v.out.String())
	}
	v.types("1234567\n")
	now.move(20 * time.Minute)
	v.types("1\n")
	v.sees("The time is over")
	v.sees("The marks are told once the time of everybody is over.")
	if text := v.out.String(); strings.Contains(text, "points") && strings.Contains(text, "right") {
		t.Errorf("marks are told\n%s", text)
	}
	v.ends()
	c.orders3(t, now, order{Do: closeSet})
	if text := word("s001", "plain w3", ""); !strings.Contains(text, "In all") || !strings.Contains(text, "of 18 points") {
		t.Errorf("after the end\n%s", text)
	}
}

// While it is paused nothing is taken, and the time stands; what is given and closed by hand reaches who is writing.
func TestExamIsOrdered(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	c := openedWith(t, t.TempDir(), []Set{anExam(t)}, now.now)
	c.orders3(t, now, order{Do: openSet})
	v := begin(t, c.in(t, code(c.codes["s002"])), false, "plain w3")
	v.types("begin\n1\n")
	v.again("Ax", 1)
	c.orders3(t, now, order{Do: pauseSet})
	v.sees("is paused by your instructor")
	v.types("0\n")
	v.sees("nothing is taken until it goes on, and your time stands still.\n? Ax")
	now.move(time.Hour)
	v.types("time\n")
	v.sees("45 minutes left")
	c.orders3(t, now, order{Do: goOn})
	v.sees("you have the time of the pause back")
	v.types("0\n")
	v.sees("noted")
	c.orders3(t, now, order{Do: giveBack, Who: "s001", Minutes: 7})
	c.orders3(t, now, order{Do: giveBack, Who: "s002", Minutes: 5})
	v.sees("Your instructor gives you 5 minutes more.")
	if strings.Contains(v.out.String(), "7 minutes") {
		t.Error("what is given to one is told to another")
	}
	v.types("time\n")
	v.sees("50 minutes left")
	c.orders3(t, now, order{Do: closeSet})
	v.sees("Your instructor has closed the exam: the paper is handed in as it stands.")
	v.ends()
}

// The board says how far the class is with an exam.
func TestStandingOfAnExam(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	c, board := instructed(t, t.TempDir(), now, anExam(t))
	c.orders3(t, now, order{Do: openSet})
	for id, typed := range map[string]string{"s001": "begin\n1\n0\n", "s002": "begin\nhand in\nhand in\n"} {
		v := begin(t, c.in(t, code(c.codes[id])), false, "plain w3")
		v.types(typed)
		v.sees(map[string]string{"s001": "noted", "s002": "The paper is handed in"}[id])
	}
	board.types("s")
	board.sees("w3: 1 not begun, 1 writing, 1 handed in; The set w3")
}

// In an exam nothing helps, not even what is asked for beside it; and nobody sees what another writes.
func TestNothingHelpsInAnExam(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	c := openedWith(t, t.TempDir(), []Set{anExam(t)}, now.now)
	c.orders3(t, now, order{Do: openSet})
	v := begin(t, c.in(t, code(c.codes["s001"])), false, "plain w3")
	v.types("begin\n2\n")
	v.again("Ey", 1)
	v.types("hint\nexample\nnew\nrestart\nlevel read\nresume\n7654321\n")
	v.sees("noted")
	for _, bad := range []string{"right", "not yet", "from another problem", "Begun anew"} {
		if strings.Contains(strings.ReplaceAll(v.out.String(), "right positive", ""), "\n"+bad) {
			t.Errorf("%q is said\n%s", bad, v.out.String())
		}
	}
	for _, words := range []string{"record", "record --export", "record --erase --yes"} {
		w := begin(t, c.in(t, code(c.codes["s001"])), false, words)
		if got := w.ends(); got != 1 || !strings.Contains(w.out.String(), "You are in an exam") {
			t.Errorf("%s: %d\n%s", words, got, w.out.String())
		}
	}
	other := begin(t, c.in(t, code(c.codes["s001"])), false, "plain jetty-deck")
	other.sees("one paper")
	other.types("quit\n")
	other.ends()
	for _, words := range []string{"record --export", "record", "privacy", "time", "plain w3"} {
		w := begin(t, c.in(t, code(c.codes["s002"])), false, words)
		if words == "plain w3" {
			w.types("no\n")
		}
		if w.ends(); strings.Contains(w.out.String(), "7654321") {
			t.Errorf("%s shows the paper of another:\n%s", words, w.out.String())
		}
	}
}

// On the screen an exam is begun by two enters, and its head tells the time.
func TestExamOnTheScreen(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	c := openedWith(t, t.TempDir(), []Set{anExam(t)}, now.now)
	c.orders3(t, now, order{Do: openSet})
	v := begin(t, c.in(t, code(c.codes["s002"])), true, "")
	v.sees("The set w3")
	for range 12 { // what is offered for today stands before it
		shown := v.screen()
		if strings.Contains(shown, "An exam:") {
			break
		}
		v.types("\x1b[B")
		waits(t, "the next row is in hand", func() bool { return v.screen() != shown })
	}
	v.types("\r")
	v.sees("you have 45 minutes")
	v.types("\r")
	v.sees("exam, values, 45 minutes left")
	v.sees("problem 1 of 2") // the list is there
	v.types("\r")
	waits(t, "the task is shown", func() bool { return !strings.Contains(v.screen(), "Hand in the paper") })
	v.types("\r")
	v.sees("Ax [kN]")
	c.orders3(t, now, order{Do: giveBack, Minutes: 5})
	v.sees("gives everybody 5 minutes more")
	v.types("\x1b")
	v.sees("50 minutes left")
	c.orders3(t, now, order{Do: closeSet})
	v.sees("the paper is handed in as it stands")
	v.types("\x1b\x1b")
	v.sees("Choose a problem")
}

// An exam that is opened at one host is begun at another, goes on at the first with the same clock, and is paused for it from the second.
func TestExamOnTwoHosts(t *testing.T) {
	t.Parallel()
	for name, store := range stores {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			now, address := &setClock{at: clock(t, "10:00")}, store(t)
			with := func(name string) *class {
				return openedOn(t, t.TempDir(), address, Options{Name: name, Sets: []Set{anExam(t)}, Clock: now.now})
			}
			a, b := with("mill"), with("quay")
			a.makeCodes(t)
			b.codes = a.codes
			waits(t, "each knows of the other", func() bool { return a.hub.several() && b.hub.several() })
			a.orders3(t, now, order{Do: openSet})
			a.hub.changed()
			waits(t, "it is open at the other", func() bool { return b.hours(b.sets[0]).at(now.now()) == running })
			there := begin(t, b.in(t, code(b.codes["s001"])), false, "plain w3")
			there.types("begin\n1\n0\n")
			there.sees("noted")
			now.move(10 * time.Minute)
			here := begin(t, a.in(t, code(a.codes["s001"])), false, "plain")
			there.sees("goes on there")
			here.sees("20 minutes")
			here.types("1\n")
			here.again("RB", 1)
			b.orders3(t, now, order{Do: pauseSet})
			b.hub.changed()
			here.sees("is paused by your instructor")
			b.orders3(t, now, order{Do: goOn})
			b.hub.changed()
			here.sees("goes on; you have")
			here.types("5\n6\nhand in\nhand in\n")
			here.sees("The paper is handed in.")
		})
	}
}
