package tutor

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics/judging"
)

var update = flag.Bool("update", false, "rewrite the transcripts")

// lesson begins a lesson on a problem of the library.
func lesson(t testing.TB, name string, level Level) *Lesson {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("no problem %q in the library", name)
	}
	l, err := New(p, level, false)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// play answers every question of a lesson by say, and fails where want does not like the reply.
func play(t *testing.T, l *Lesson, say func(Question) string, want func(judging.Verdict) bool) {
	t.Helper()
	for {
		q, asking := l.Now()
		if !asking {
			return
		}
		line := say(q)
		if r := l.Type(line); r.Kind != Judged || !want(r.Verdict) {
			t.Fatalf("%s answered %q: %v", q.Name, line, r.Lines)
		}
	}
}

// inWords is the answer to a question that is answered by a word or a whole number.
func inWords(q Question) (string, bool) {
	positive := q.truth.Sign() > 0
	switch q.Kind {
	case TermSign:
		return map[bool]string{true: "+", false: "-"}[positive], true
	case ShapeDegree:
		return q.truth.String(), true
	case ShapeSlope:
		return map[bool]string{true: "rises", false: "falls"}[positive], true
	}
	return "", false
}

func TestLibraryWorkedRight(t *testing.T) {
	t.Parallel()
	for _, name := range problems.Names() {
		for _, level := range []Level{Values, Terms} {
			exactly := func(q Question) string {
				if word, ok := inWords(q); ok {
					return word
				}
				return q.truth.Decimal(30)
			}
			t.Run(name+"/"+level.String()+"/exact", func(t *testing.T) {
				t.Parallel()
				play(t, lesson(t, name, level), exactly, judging.Verdict.Exactly)
			})
			t.Run(name+"/"+level.String()+"/three figures", func(t *testing.T) {
				t.Parallel()
				play(t, lesson(t, name, level), func(q Question) string {
					if word, ok := inWords(q); ok {
						return word
					}
					return q.truth.Figures(3)
				}, judging.Verdict.Right)
			})
		}
		t.Run(name+"/fractions", func(t *testing.T) {
			t.Parallel()
			play(t, lesson(t, name, Values), func(q Question) string {
				return strings.ReplaceAll(q.truth.String(), "sqrt", "sqrt")
			}, func(v judging.Verdict) bool { return v == judging.Exact })
		})
	}
}

func TestOppositeSenseIsNotYet(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Values)
		for {
			q, asking := l.Now()
			if !asking {
				break
			}
			if !q.truth.IsZero() && q.Kind != ZeroPlace {
				if r := l.Type(q.truth.Neg().Decimal(20)); r.Verdict != judging.OtherSense {
					t.Fatalf("%s: %s turned round: %v", name, q.Name, r.Lines)
				}
			}
			l.Type("tell")
		}
	}
}

func TestNonsenseMovesNothing(t *testing.T) {
	t.Parallel()
	for _, line := range []string{"", "what", "1e9", "3 m", "((", "12 parsecs", "9,500", "\xff", strings.Repeat("9", 5000), "1/0"} {
		l := lesson(t, problems.Names()[0], Values)
		r := l.Type(line)
		if at, _ := l.Position(); at != 0 || r.Kind != Unread || len(r.Lines) == 0 {
			t.Errorf("%.20q: kind %v at %d: %v", line, r.Kind, at, r.Lines)
		}
	}
}

func TestCommands(t *testing.T) {
	t.Parallel()
	l := lesson(t, problems.Names()[0], Values)
	first, _ := l.Now()
	if r := l.Type("back"); r.Kind != Unread {
		t.Errorf("back at the first question: %v", r)
	}
	for n := range 4 {
		if r := l.Type("hint"); r.Kind != Hinted || len(r.Lines) != 1 {
			t.Errorf("hint %d: %v", n, r)
		}
	}
	if r := l.Type("TELL"); r.Kind != Told || !strings.HasPrefix(r.Lines[0], "told") {
		t.Errorf("tell: %v", r)
	}
	if r := l.Type("back"); r.Kind != WentBack {
		t.Errorf("back: %v", r)
	}
	if q, _ := l.Now(); q.Name != first.Name {
		t.Errorf("back leads to %s", q.Name)
	}
	if r := l.Type("quit"); r.Kind != Leaving {
		t.Errorf("quit: %v", r)
	}
}

// Transcripts are dialogues by line: what is typed in NAME.in, what is seen in NAME.out.
func TestTranscripts(t *testing.T) {
	t.Parallel()
	inputs, err := filepath.Glob("testdata/*.in")
	if err != nil || len(inputs) == 0 {
		t.Fatal("no transcripts", err)
	}
	for _, in := range inputs {
		t.Run(filepath.Base(in), func(t *testing.T) {
			t.Parallel()
			transcript(t, in)
		})
	}
}

func transcript(t *testing.T, in string) {
	data, err := os.ReadFile(in)
	if err != nil {
		t.Fatal(err)
	}
	head, typed, _ := strings.Cut(string(data), "\n")
	words := strings.Fields(head) // problem, level, and perhaps exam
	level, err := ParseLevel(words[1])
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	l := lesson(t, words[0], level)
	if len(words) > 2 {
		if l, err = l.Anew(level, words[2] == "exam"); err != nil {
			t.Fatal(err)
		}
	}
	if err := Plain(l, strings.NewReader(typed), &out); err != nil {
		t.Fatal(err)
	}
	golden := strings.TrimSuffix(in, ".in") + ".out"
	if *update {
		if err := os.WriteFile(golden, out.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(out.Bytes(), want) {
		t.Errorf("the dialogue changed; it is now\n%s", out.String())
	}
}

func TestPlainIsASCII(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		for _, level := range []Level{Read, Values, Terms} {
			var out bytes.Buffer
			if err := Plain(lesson(t, name, level), strings.NewReader(strings.Repeat("tell\n", 500)), &out); err != nil {
				t.Fatal(err)
			}
			for i, b := range out.Bytes() {
				if b >= 0x80 {
					t.Fatalf("%s, %s: byte %d is not ASCII: %.40s", name, level, i, out.Bytes()[max(i-20, 0):])
				}
			}
			if !strings.Contains(out.String(), "All done.") {
				t.Errorf("%s, %s does not end", name, level)
			}
		}
	}
}
