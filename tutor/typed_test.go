package tutor

import (
	"fmt"
	"strings"
	"testing"

	"unpin/problems"
)

// typedForms are ways of writing a number, good ones and bad, that are typed at every kind of question.
var typedForms = []string{"-9.5", "+9.5", "−9.5", "9,5", ".5", "1e1", "9.5 kN", "9.5 m", "9.5 kNm", "9.5 cw", "9.5 up", "9.5 left", "9.5 tension", "x", "2x + 1", "9.5 9.5"}

// typedKinds are a question of each kind: a problem, a level, whether it is an exam, and the question.
var typedKinds = []struct {
	problem string
	level   Level
	exam    bool
	at      string
}{
	{"jetty-deck", Values, false, "RB"},
	{"mill-bridge", Values, false, "MA"},
	{"harbour-sign", Values, false, "Ax"},
	{"sawmill-portal", Values, false, "Cy"},
	{"jetty-deck", Values, false, "N(AB, 0)"},
	{"jetty-deck", Values, false, "V(AB, 0"},
	{"jetty-deck", Values, false, "M(AB, 2.5"},
	{"mill-bridge", Values, false, "x of V"},
	{"jetty-deck", Terms, false, "force 2"},
	{"jetty-deck", Terms, false, "arm 2"},
	{"jetty-deck", Terms, false, "sign 2"},
	{"mill-bridge", Terms, false, "couple"},
	{"jetty-deck", Plan, false, "sum"},
	{"jetty-deck", Plan, false, "degree of V"},
	{"mill-bridge", Plan, false, "slope of M"},
	{"jetty-deck", Plan, false, "V(AB, 0"},
	{"jetty-deck", Blank, false, "equation"},
	{"jetty-deck", Values, true, "RB"},
	{"jetty-deck", Terms, true, "arm 1"},
	{"jetty-deck", Plan, true, "sum"},
	{"jetty-deck", Blank, true, "equation"},
}

// TestTypedAnywhere types each form at each kind of question: testdata/typed.txt has what is replied. Nothing is passed over in
// silence, and a line that cannot be read is no try.
func TestTypedAnywhere(t *testing.T) {
	t.Parallel()
	var all strings.Builder
	for _, k := range typedKinds {
		kind := fmt.Sprintf("%s, %s%s, %s", k.problem, k.level, map[bool]string{true: ", exam"}[k.exam], k.at)
		fmt.Fprintf(&all, "# %s\n", kind)
		for _, form := range typedForms {
			l := upTo(t, k.problem, k.level, k.exam, k.at)
			tries := l.sheet.inHand().tries
			r := l.Type(form)
			if len(r.Lines) == 0 && !k.exam {
				t.Errorf("%s: nothing is said to %q", kind, form)
			}
			if r.Kind == Unread && l.sheet.inHand().tries != tries {
				t.Errorf("%s: %q cannot be read and is a try", kind, form)
			}
			fmt.Fprintf(&all, "%s | %s\n", form, strings.Join(r.Lines, " / "))
		}
	}
	golden(t, "typed.txt", []byte(all.String()))
}

// upTo is a lesson at the first question of a name; what comes before is told.
func upTo(t *testing.T, problem string, level Level, exam bool, at string) *Lesson {
	t.Helper()
	p, ok := problems.Library(problem)
	if !ok {
		t.Fatalf("no problem %q in the library", problem)
	}
	l, err := New(p, level, exam)
	if err != nil {
		t.Fatal(err)
	}
	for q, asking := l.Now(); asking; q, asking = l.Now() {
		switch {
		case strings.HasPrefix(q.Name, at):
			return l
		case q.Kind == ChooseSum && at == "equation":
			l.Type("ABC M A")
		default:
			l.Type("tell")
		}
	}
	t.Fatalf("%s at %s never asks for %s", problem, level, at)
	return nil
}
