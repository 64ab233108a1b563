package marking

import (
	"strings"
	"testing"
)

// TestExchanged: where the columns of a table are exchanged, it is said so once, and not once a line that 20.5 is no quantity.
func TestExchanged(t *testing.T) {
	t.Parallel()
	m := markerOf(t, "jetty-deck")
	a, err := ReadAnswers("table", strings.NewReader("student,problem,quantity,value\n"+
		"a,jetty-deck,20.5,RB\na,jetty-deck,11.5,Ay\na,jetty-deck,0,Ax\na,jetty-deck,Q,RB\na,jetty-deck,-18,\"M(BC, 0)\"\n"))
	if err != nil || len(a.Papers) != 1 {
		t.Fatal(err, len(a.Papers))
	}
	r := m.Mark(a.Papers[0], DefaultScheme(), ten)
	got := strings.Join(unreadText(r.Unread), "\n")
	want := "lines 2 to 4 and 6: 20.5 = RB and 3 answers like it: quantity and value stand in each other's place: write first what it is of\n" +
		"line 5: Q = RB: Q is no quantity of this problem: write a force (Ax, Ay and RB) or a place along a member, such as M(AB, 0)"
	if got != want {
		t.Errorf("got\n%s\nnot\n%s", got, want)
	}
}

func TestLines(t *testing.T) {
	t.Parallel()
	for _, k := range []struct {
		lines []int
		want  string
	}{
		{[]int{3}, "line 3"}, {[]int{3, 4}, "lines 3 and 4"}, {[]int{3, 4, 5}, "lines 3 to 5"}, {[]int{3, 7, 8, 9, 12}, "lines 3, 7 to 9 and 12"},
	} {
		if got := Lines(k.lines); got != k.want {
			t.Errorf("%v are %q, not %q", k.lines, got, k.want)
		}
	}
}
