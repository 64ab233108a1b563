package tutor

import (
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

// ownForms are the forms in which the program itself tells the answer to a question, and its opposite where there is one.
func ownForms(l *Lesson, q Question) (right, opposite []string) {
	w, size := l.about.words(), q.truth.Abs().String()
	switch {
	case q.Kind == ForceValue:
		for i, value := range []int{1, -1} {
			v := q.truth.Abs()
			if q.truth.Sign()*value < 0 {
				v = v.Neg()
			}
			for _, acts := range strings.Split(w.Acts(q.Force, v), ", ") {
				form := size + " " + acts
				if i == 0 {
					right = append(right, form, q.Name+" = "+form, "= "+form)
				} else {
					opposite = append(opposite, form)
				}
			}
		}
		return right, opposite
	case q.Kind != SectionPart:
		return nil, nil
	}
	across := l.Display(false).ShearDirection(q.Member)
	words := [...][2]string{
		{"tension", "compression"},
		{notation.DirectionWord(across), notation.DirectionWord(across.Neg())},
		{w.TensionSide(q.Member, q.truth.Abs()), w.TensionSide(q.Member, q.truth.Abs().Neg())},
	}[q.Quantity]
	if q.truth.Sign() < 0 {
		words[0], words[1] = words[1], words[0]
	}
	letter := q.Quantity.Letter() + " = "
	right, opposite = []string{size + " " + words[0], letter + size + " " + words[0], "= " + q.truth.String(), letter + q.truth.String()}, []string{size + " " + words[1]}
	switch q.Quantity {
	case statics.BendingMoment:
		right, opposite = append(right, size+" tension "+words[0]), append(opposite, size+" tension "+words[1], size+" compression "+words[0])
	case statics.ShearForce:
		turns := []string{"cw", "ccw"} // of the piece, whatever is positive
		if q.truth.Sign() < 0 {
			turns = []string{"ccw", "cw"}
		}
		right, opposite = append(right, size+" "+turns[0]), append(opposite, size+" "+turns[1])
	}
	return right, opposite
}

// Every form in which the program tells a value is read as that value, and in the opposite sense it is the opposite.
func TestOwnFormsAreRead(t *testing.T) {
	t.Parallel()
	read := 0
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Values)
		for {
			q, asking := l.Now()
			if !asking {
				break
			}
			if !q.truth.IsZero() {
				right, opposite := ownForms(l, q)
				for _, line := range right {
					if v, err := l.bench().read(q, line); err != nil || !v.Value.Equal(q.truth) {
						t.Errorf("%s, %s: %q is read as %v, want %v: %v", name, q.Name, line, v.Value, q.truth, err)
					}
				}
				for _, line := range opposite {
					if v, err := l.bench().read(q, line); err != nil || !v.Value.Equal(q.truth.Neg()) {
						t.Errorf("%s, %s: %q is read as %v, want %v: %v", name, q.Name, line, v.Value, q.truth.Neg(), err)
					}
				}
				read += len(right) + len(opposite)
			}
			l.Type("tell")
		}
	}
	if read < 1000 {
		t.Errorf("only %d forms were read", read)
	}
}

// Rows: a problem, a question, what is typed there, and what is said; nothing where it is right.
func TestFormsOfAnswers(t *testing.T) {
	t.Parallel()
	rows := [][4]string{
		{"jetty-deck", "RB", "20.5 on ABC", ""},
		{"jetty-deck", "RB", "20.5 up on CD", "RB acts on ABC, not on CD"},
		{"jetty-deck", "RB", "20.5 top", "the side that is stretched is named for a bending moment"},
		{"jetty-deck", "RB", "164 x 1/8", ""},
		{"jetty-deck", "Ay", "20.5 left", "it is up or down"},
	}
	for _, r := range rows {
		l := lesson(t, r[0], Values)
		for q, asking := l.Now(); asking && q.Name != r[1]; q, asking = l.Now() {
			l.Type("tell")
		}
		reply := l.Type(r[2])
		if r[3] == "" && reply.Verdict != judging.Exact || r[3] != "" && (reply.Kind != Unread || !strings.Contains(reply.Lines[0], r[3])) {
			t.Errorf("%q for %s: %v", r[2], r[1], reply.Lines)
		}
	}
}
