package tutor

import (
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// The degree of M is one above that of V wherever V is not nought throughout, and the slope goes the way of the shear.
func TestShapesFollowFromEachOther(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Terms)
		for i, q := range l.sheet.questions {
			if q.Kind != ShapeDegree || q.Quantity != statics.BendingMoment || q.Stretch.V.Trim().At(q.Stretch.Until).IsZero() && q.Stretch.V.Degree() == 0 {
				continue
			}
			shear := l.sheet.questions[i-1]
			if !q.truth.Equal(shear.truth.Add(exact.Int(1))) {
				t.Errorf("%s: %s is %s, but %s is %s", name, q.Name, q.truth, shear.Name, shear.truth)
			}
			if i+1 < len(l.sheet.questions) && l.sheet.questions[i+1].Kind == ShapeSlope {
				rise := q.Stretch.V.At(q.Stretch.Until).Cmp(q.Stretch.V.At(q.Stretch.From))
				if l.sheet.questions[i+1].truth.Sign() != rise {
					t.Errorf("%s: %s: %s", name, l.sheet.questions[i+1].Name, l.sheet.questions[i+1].truth)
				}
			}
		}
	}
}

// The place of no shear is asked before the moment there, is a zero of the shear, and is told from one measured from the
// other end.
func TestZeroPlaces(t *testing.T) {
	t.Parallel()
	asked := 0
	for _, name := range librarytest.Names() {
		terms := lesson(t, name, Terms)
		for i, q := range terms.sheet.questions[1:] { // how V and M run and where M peaks comes before any value
			if last := terms.sheet.questions[i]; (q.Kind == ZeroPlace || q.Kind == ShapeDegree) && last.Kind == SectionPart && last.Member == q.Member {
				t.Errorf("%s: after %s comes %s", name, last.Name, q.Name)
			}
		}
		l := lesson(t, name, Values)
		for i, q := range l.sheet.questions {
			if q.Kind != ZeroPlace {
				continue
			}
			asked++
			if v := q.Stretch.V.At(q.truth); !v.IsZero() {
				t.Errorf("%s: %s = %s, where V = %s", name, q.Name, q.truth, v)
			}
			if next := l.sheet.questions[i+1]; next.Kind != SectionPart || !next.Station.At.Equal(q.truth) {
				t.Errorf("%s: after %s comes %s", name, q.Name, next.Name)
			}
			l.sheet.at = i
			other := l.about.solution.Diagrams[q.Member].Length.Sub(q.truth)
			if r := l.Type(other.Decimal(20)); !other.Equal(q.truth) && !strings.Contains(r.Lines[0], "which end") {
				t.Errorf("%s: %s = %s: %v", name, q.Name, other, r.Lines)
			}
		}
	}
	if asked == 0 {
		t.Error("no problem of the library has a place of no shear")
	}
}

func TestShapeWords(t *testing.T) {
	t.Parallel()
	l := lesson(t, problems.Names()[0], Terms)
	for i, q := range l.sheet.questions {
		if !q.Shape() || q.Kind == ZeroPlace {
			continue
		}
		l.sheet.at = i
		if r := l.Type("perhaps"); r.Kind != Unread {
			t.Errorf("%s: perhaps: %v", q.Name, r.Lines)
		}
		wrong := map[Kind]string{ShapeDegree: "9", ShapeSlope: map[bool]string{true: "falls", false: "rises"}[q.truth.Sign() > 0]}[q.Kind]
		if r := l.Type(wrong); r.Verdict != judging.Wrong {
			t.Errorf("%s: %s: %v", q.Name, wrong, r.Lines)
		}
		right, _ := inWords(q)
		if r := l.Type(right); r.Verdict != judging.Exact {
			t.Errorf("%s: %s: %v", q.Name, right, r.Lines)
		}
	}
}
