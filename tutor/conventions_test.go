package tutor

import (
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/tutor/record"
)

// shearBeam is a beam of 8 m with 20 kN at 2 m, on which V is 15 kN and then −5 kN.
const shearBeam = `title: Beam
units: kN m
joints: {A: [0, 0], B: [8, 0]}
members: [AB]
supports: {A: pin, B: {roller: up}}
loads: [{point: 20, to: down, on: AB, at: 2}]
`

// beamAt is a lesson on the beam, at the question of that name.
func beamAt(t *testing.T, ask, name string, level Level) *Lesson {
	t.Helper()
	p, err := problems.Read("beam", []byte(shearBeam+ask))
	if err != nil {
		t.Fatal(err)
	}
	l, err := New(p, level, false)
	if err != nil {
		t.Fatal(err)
	}
	for q, asking := l.Now(); asking && q.Name != name; q, asking = l.Now() {
		l.Type("tell")
	}
	if q, _ := l.Now(); q.Name != name {
		t.Fatalf("there is no question %s", name)
	}
	return l
}

// What the lesson says of V, it says in the sense that the problem asks for.
func TestShearOfTheProblem(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ ask, right, opposite, sum, side, told string }{
		{"", "15", "-15", "write 15 - V = 0;", "push up", "= 15 kN"},
		{"ask: {shear: ccw}", "-15", "15", "write 15 + V = 0;", "push down", "= -15 kN"},
	} {
		l := beamAt(t, c.ask, "V(AB, 0)", Values)
		if r := l.Type(c.opposite); r.Verdict.Right() {
			t.Errorf("%s: %s is right", c.ask, c.opposite)
		}
		l.Type("hint")
		l.Type("hint")
		for text, want := range map[string]string{
			l.Type("hint").Lines[0]: c.sum, l.teller().memberLines(0)[0]: c.side,
		} {
			if !strings.Contains(text, want) {
				t.Errorf("%s: %q is not in %q", c.ask, want, text)
			}
		}
		if r := l.Type(c.right); r.Verdict != judging.Exact {
			t.Errorf("%s: %s is not right: %v", c.ask, c.right, r.Lines)
		}
		if r := beamAt(t, c.ask, "V(AB, 0)", Values).Type("tell"); !strings.Contains(r.Lines[0], c.told) {
			t.Errorf("%s: %v", c.ask, r.Lines)
		}
		if rule := l.about.sectionRule(l.sheet.questions[l.sheet.at-1]); !strings.Contains(rule, c.side) {
			t.Errorf("%s: %s", c.ask, rule)
		}
	}
}

// The line mode keeps the signs of the JSON and says so; work in one sense of V is not taken up in the other.
func TestPlainKeepsTheSignsOfJSON(t *testing.T) {
	t.Parallel()
	p, err := problems.Read("beam", []byte(shearBeam+"ask: {shear: ccw, two-force: shortcut}"))
	if err != nil {
		t.Fatal(err)
	}
	l, err := NewPlain(p, Values, false)
	if err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	if err := Plain(l, strings.NewReader(strings.Repeat("tell\n", 20)), &out); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"V is positive here where it turns a piece clockwise, not", "Two-force members are parts like all others here", "told: V(AB, 0) = 15 kN"} {
		if strings.Count(out.String(), want) != 1 {
			t.Errorf("%q is not there once:\n%s", want, out.String())
		}
	}
	screen, err := New(p, Values, false)
	if err != nil {
		t.Fatal(err)
	}
	if record.Fingerprint(screen.about.problem) == record.Fingerprint(l.about.problem) || bareFrame(screen.about.problem) != bareFrame(l.about.problem) {
		t.Error("work in other signs is taken up, or the frame is another")
	}
	usual, err := NewPlain(p.In(notation.Conventions{Figures: 3}), Values, false)
	if err != nil || len(usual.notes) > 0 || record.Fingerprint(usual.about.problem) != record.Fingerprint(l.about.problem) {
		t.Errorf("by usual conventions %v, %v", usual.notes, err)
	}
}

// Where the problem prints decimal commas, one before three digits is read as such; elsewhere it is asked about.
func TestDecimalCommaOfTheProblem(t *testing.T) {
	t.Parallel()
	for ask, want := range map[string]ReplyKind{"": Unread, "ask: {decimal: comma}": Judged} {
		if r := beamAt(t, ask, "V(AB, 0)", Values).Type("15,000"); r.Kind != want {
			t.Errorf("%s: %v", ask, r.Lines)
		}
	}
}
