package tutor

import (
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/tutor/record"
)

// letLine takes a force in the other sense than now.
func letLine(f statics.Force) string {
	word := map[bool]string{true: "left", false: "right"}[f.Along.X.Sign() > 0]
	if f.Couple || f.Kind == statics.MemberPull || f.Along.X.IsZero() {
		word = notation.Acting(f, exact.Int(-1)).String()
	}
	return "let " + f.Name + " " + word
}

// Whatever senses are assumed, and whenever, the lesson is worked to its end by them, values and sums; assumed once more
// the other way, all is as it was given.
func TestAnySenses(t *testing.T) {
	t.Parallel()
	for n, name := range librarytest.Names() {
		for _, level := range []Level{Plan, Blank} {
			random := rand.New(rand.NewPCG(2, uint64(n)))
			l := lesson(t, name, level)
			given := *l.about.solution
			next := func() statics.Sum {
				if f := l.about.solution.Forces[random.IntN(len(given.Forces))]; l.Type(letLine(f)).Kind != Listed {
					t.Fatalf("%s: %s: %v", name, letLine(f), l.Type(letLine(f)).Lines)
				}
				return anySum(l, random)
			}
			if !followed(t, l, next) {
				t.Errorf("%s, %s: no end", name, level)
			}
			for _, f := range l.about.solution.Forces {
				if f.Turned {
					l.Type(letLine(f))
				}
			}
			if !slices.EqualFunc(l.about.solution.Values, given.Values, exact.Num.Equal) || len(l.about.assumedLines()) > 0 {
				t.Errorf("%s, %s: turned round and back, the values are %v", name, level, l.about.solution.Values)
			}
		}
	}
}

// A sum of a turned force is that of the frame as given, with the force's own term turned.
func TestTurnedSums(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Values)
		a := l.about.solution.Assembly
		for i := range a.Forces {
			for _, j := range a.Frame.Joints {
				s := a.MomentSum(a.Whole(), j.At)
				turned := s.Again(a.Turn(i))
				for k := range a.Forces {
					want := s.Factor(k)
					if k == i {
						want = want.Neg()
					}
					if !turned.Factor(k).Equal(want) {
						t.Fatalf("%s, about %s: %s turned gives %s the factor %s", name, j.Name, a.Forces[i].Name, a.Forces[k].Name, turned.Factor(k))
					}
				}
			}
		}
	}
}

// What is said of a wrong N, V or M does not depend on the senses assumed.
func TestSectionsWithSensesAssumed(t *testing.T) {
	t.Parallel()
	plain, turned := lesson(t, "quay-gantry", Plan), lesson(t, "quay-gantry", Plan)
	for _, l := range []*Lesson{plain, turned} {
		for q, _ := l.Now(); q.Kind != SectionPart; q, _ = l.Now() {
			l.Type("tell")
		}
	}
	for _, f := range turned.about.solution.Forces {
		turned.Type(letLine(f))
	}
	for {
		q, asking := plain.Now()
		if !asking {
			return
		}
		for _, wrong := range []string{"21", q.truth.Add(exact.Int(9)).Decimal(4), q.truth.Mul(exact.Int(2)).Decimal(4), q.truth.Neg().Decimal(4)} {
			if x, y := plain.Type(wrong), turned.Type(wrong); !slices.Equal(x.Lines, y.Lines) {
				t.Errorf("%s = %s: %v, but with senses assumed %v", q.Name, wrong, x.Lines, y.Lines)
			}
		}
		plain.Type("tell")
		turned.Type("tell")
	}
}

// Senses assumed are taken up again with the work that rests on them.
func TestSensesResumed(t *testing.T) {
	t.Parallel()
	s, now := record.At(filepath.Join(t.TempDir(), "practice.jsonl")), clock()
	first := lesson(t, "quay-gantry", Blank)
	first.Keep(s, now, noComplaint(t))
	for _, line := range []string{"let Cx left", "CD M D", "4.5Cx = 9*1.5", "3", "let Dx left", "let Dx right", "CD x", "Cx + Dx = 9", "let Dx left"} {
		if r := first.Type(line); r.Kind == Unread || r.Kind == Judged && !r.Verdict.Right() {
			t.Fatalf("%s: %v", line, r.Lines)
		}
	}
	again := lesson(t, "quay-gantry", Blank)
	again.Keep(s, now, noComplaint(t))
	again.Type("resume")
	if at, _ := again.Position(); at != 5 {
		t.Errorf("taken up at %d", at)
	}
	if r := again.Type("-6"); !r.Verdict.Exactly() {
		t.Errorf("Dx as assumed: %v", r.Lines)
	}
}

// Where the plan is given, an unknown keeps its sense.
func TestLetOnlyWhereThePlanIsOnesOwn(t *testing.T) {
	t.Parallel()
	l := lesson(t, "quay-gantry", Values)
	if r := l.Type("let Cx left"); r.Kind != Unread || l.about.solution.Forces[5].Turned {
		t.Errorf("%v", r.Lines)
	}
}

// A value against the sense that was assumed is told by that sense, not asked for the part.
func TestAgainstAssumedSense(t *testing.T) {
	t.Parallel()
	l := lesson(t, "quay-gantry", Plan)
	typeAll(l, "let Dy down", "tell")
	for q, asking := l.Now(); asking && q.Name != "Dy"; q, asking = l.Now() {
		l.Type("tell")
	}
	q, _ := l.Now()
	r := l.Type(q.truth.Neg().String())
	if want := "not yet: the size is right. You took Dy down on CD"; r.Verdict != judging.OtherSense || !strings.HasPrefix(r.Lines[0], want) {
		t.Errorf("%v, want %s", r.Lines, want)
	}
}

// The third hint at a value that was told and is asked again does not hold the value.
func TestHintHoldsNoAnswer(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Values)
	typeAll(l, "0", "tell", "back", "hint", "hint")
	if r := l.Type("hint"); !strings.Contains(r.Lines[0], "RB") || strings.Contains(r.Lines[0], "20.5") {
		t.Error(r.Lines)
	}
}
