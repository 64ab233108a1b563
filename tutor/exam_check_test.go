package tutor

import (
	"strings"
	"testing"

	"unpin/problems"
	"unpin/tutor/record"
)

// A check earns its mark where it is a sum that was not used and comes to what it says with the student's own values, whether they are
// right or not. The values by hand, jetty deck: ΣM about B is 8·Ay − 20·5.5 + 12·1.5 = 0 at Ay = 11.5; with Ay = 10 it is −12 kN·m.
func TestCheckInExam(t *testing.T) {
	t.Parallel()
	right := []string{"ABC M A: RB*8 - 20*2.5 - 12*9.5 = 0", "20.5", "ABC y: Ay + RB - 20 - 12 = 0", "11.5", "ABC x: Ax = 0", "0"}
	wrong := []string{"ABC M A: RB*8 - 20*2.5 - 12*9.5 = 0", "20.5", "ABC y: Ay + RB - 20 - 12 = 0", "10", "ABC x: Ax = 0", "0"}
	for _, r := range []struct {
		lines []string
		check string
		want  string
	}{
		{right, "whole M B = 0", "check 1 of 1"},
		{right, "ABC M (11, 0) = 0 kN m", "check 1 of 1"},
		{wrong, "whole M B = -12", "check 1 of 1"},
		{wrong, "whole M B = 12 kN m", "check 1 of 1"}, // clockwise positive
		{wrong, "whole M B = 0", "check 0 of 1"},
		{right, "ABC M A = 0", "check 0 of 1"}, // it gave RB
		{right, "ABC y = 0", "check 0 of 1"},
		{right, "tell", "check 0 of 1"},
		{[]string{"ABC M A: RB*8 - 20*2.5 - 12*9.5 = 0", "20.5", "ABC y: Ay + RB - 20 - 12 = 0", "tell", "ABC x: Ax = 0", "0"}, "whole M B = 0", "check 0 of 1"},
	} {
		l, err := lesson(t, "jetty-deck", Blank).Anew(Blank, true)
		if err != nil {
			t.Fatal(err)
		}
		for _, line := range r.lines {
			if reply := l.Type(line); reply.Kind != Noted && reply.Kind != Told {
				t.Fatalf("%s: %q", line, reply.Lines)
			}
		}
		for _, odd := range []string{"whole M B", "whole M Z = 0", "= 0", "whole M B = x"} {
			if reply := l.Type(odd); reply.Kind != Unread {
				t.Errorf("%s: %q", odd, reply.Lines)
			}
		}
		l.Type(r.check)
		handIn(l)
		if marks := strings.Join(l.Marks(), "\n"); !strings.Contains(marks, r.want) {
			t.Errorf("%s: not %s in\n%s", r.check, r.want, marks)
		}
	}
}

// An exam that was left before its check, or in it, goes on there.
func TestCheckTakenUpAgain(t *testing.T) {
	t.Parallel()
	s := record.At(t.TempDir() + "/practice.jsonl")
	p, _ := problems.Library("jetty-deck")
	exam := func() *Lesson {
		l, err := New(p.Asking([]string{"reactions"}), Plan, true)
		if err != nil {
			t.Fatal(err)
		}
		l.Keep(s, clock(), noComplaint(t))
		return l
	}
	l := exam()
	for q, asking := l.Now(); asking && q.Kind != CheckSum; q, asking = l.Now() {
		line := map[Kind]string{ForceValue: "1", TermSign: "+", TermArm: "2", TermSize: "3"}[q.Kind]
		if q.Kind == ChooseSum {
			line = choiceText(l, l.route.expertStep().Sums[0])
		}
		if r := l.Type(line); r.Kind != Noted {
			t.Fatalf("%s: %q", line, r.Lines)
		}
	}
	again := exam()
	again.Type("resume")
	if q, _ := again.Now(); q.Kind != CheckSum {
		t.Fatalf("it goes on at %q", q.Name)
	}
	again.Type("whole M A = 0")
	if n := exam().Earlier(); n != 0 {
		t.Errorf("of an exam that is over %d answers are offered again", n)
	}
}
