package screen

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/tutor"
)

// TestTermsAreNotTold looks at the figure and the sheet of each term of every problem of the library: the arm asked for
// stands as a question mark, its sum is not written out, and no resultant is drawn.
func TestTermsAreNotTold(t *testing.T) {
	t.Parallel()
	for _, e := range Library() {
		for _, exam := range []bool{false, true} {
			m := New(Options{Lesson: lesson(t, e.Name, tutor.Terms, exam)})
			size(m, 100, 30)
			c := m.course
			for {
				q, asking := c.l.Now()
				if !asking || q.Step == statics.None {
					break
				}
				checkTerm(t, c, q, e.Name)
				press(m, "tell", "enter")
			}
		}
	}
}

func checkTerm(t *testing.T, c *course, q tutor.Question, problem string) {
	t.Helper()
	scene := c.figures().Draw(c.shown())
	var texts []string
	for _, d := range scene.Dimensions {
		texts = append(texts, d.Text)
	}
	for _, n := range scene.Notes {
		texts = append(texts, n.Text)
	}
	arms := slices.ContainsFunc(texts, func(s string) bool { return strings.HasPrefix(s, "arm") })
	asks := slices.Contains(texts, "arm ?")
	resultants := slices.ContainsFunc(scene.Arrows, func(a figure.Arrow) bool { return a.Role == figure.ResultantMark })
	told := q.Kind == tutor.ForceValue && !c.l.Exam()
	if q.Kind == tutor.TermArm && asks == c.l.Exam() || c.l.Exam() && arms || !told && resultants {
		t.Errorf("%s, %s, exam %v: the figure has %q, resultants: %v", problem, q.Name, c.l.Exam(), texts, resultants)
	}
	if sheet := plainSheet(c); c.l.Exam() && strings.Contains(sheet, " = 0") && !strings.HasSuffix(c.shows().StepTitle(q.Step), "kept for later") {
		last := sheet[strings.LastIndex(sheet, "\n\n")+1:]
		if strings.Contains(last, " = 0") {
			t.Errorf("%s, %s: the sheet of an exam tells\n%s", problem, q.Name, last)
		}
	}
}

// plainSheet is the sheet as text.
func plainSheet(c *course) string {
	var b strings.Builder
	for _, l := range c.sheet.lines {
		b.WriteString(strings.TrimRight(plainText(l), " ") + "\n")
	}
	return b.String()
}

// TestSheetIsKept walks at random to and fro through lessons, and holds the sheet, of which finished pages are kept, to
// one that is written anew.
func TestSheetIsKept(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(1, 2))
	for i, name := range shelf {
		m := New(Options{Lesson: lesson(t, name, tutor.Level(i%5), i == 1)})
		size(m, 120, 40)
		for range 120 {
			switch move := random.IntN(10); {
			case move < 5:
				press(m, "tell", "enter")
			case move < 7:
				press(m, "back", "enter")
			case move < 8:
				press(m, "77", "enter")
			case move < 9:
				size(m, 80+random.IntN(60), 20+random.IntN(30))
			default:
				press(m, "let space Ay space down", "enter", "enter")
			}
			if m.view != working {
				break
			}
			c := *m.course
			c.binder = binder{}
			if want := writeSheet(&c.panes, c.sheet.width, c.sheet.spacious); !reflect.DeepEqual(want.lines, m.course.sheet.lines) {
				t.Fatalf("%s, level %s: the sheet is\n%s\nin place of\n%s", name, c.l.Level(), plainSheet(m.course), plainSheet(&course{panes: panes{sheet: want}}))
			}
		}
	}
}
