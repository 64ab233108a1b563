package tutor

import (
	"strings"
	"testing"
)

// In an exam the sum in hand stands as it was set down, and nowhere as it is right, until the end.
func TestOwnSumsInExams(t *testing.T) {
	t.Parallel()
	rows := []struct {
		level Level
		typed []string
		want  string
	}{
		{Terms, []string{"+", "1", "7", "+", "21", "tell", "-", "13", "9", "+"}, "RB × 7 − 21 × ? + 13 × 9 = 0"},
		{Plan, []string{"ABC M A", "7", "+", "21", "2", "-", "13", "9", "-"}, "RB × 7 − 21 × 2 − 13 × 9 = 0"},
		{Blank, []string{"ABC M A", "7RB = 21*2 + 117"}, "7RB = 21*2 + 117"},
	}
	for _, r := range rows {
		l, err := lesson(t, "jetty-deck", r.level).Anew(r.level, true)
		if err != nil {
			t.Fatal(err)
		}
		for _, line := range r.typed {
			l.Type(line)
		}
		d := l.Display(false)
		if got := strings.Join(d.Equations(), "; "); got != r.want {
			t.Errorf("%s: %s; want %s", r.level, got, r.want)
		}
		for _, s := range d.Step(d.StepInHand()).Sums {
			if s.Symbols != "" {
				t.Errorf("%s: the sheet shows %s", r.level, s.Symbols)
			}
		}
		if q, _ := l.Now(); q.Name != "RB" {
			t.Errorf("%s: %s is asked", r.level, q.Name)
		}
	}
}
