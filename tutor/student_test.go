package tutor

import (
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// A student who writes the right sum with the values found so far, and rounds every result to three figures, is right at
// every step; sums solved together are taken as solved exactly and then rounded.
func TestThreeFiguresCarriedThrough(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Values)
		mine := append([]exact.Num(nil), l.about.solution.Values...)
		for {
			q, asking := l.Now()
			if !asking || q.Kind != ForceValue {
				break
			}
			value := mine[q.Force]
			if step := l.about.solution.Plan[q.Step]; len(step.Sums) == 1 {
				value = fromSum(t, step.Sums[0], q.Force, mine)
			}
			typed := value.Figures(3)
			mine[q.Force] = exact.MustParse(typed)
			if r := l.Type(typed); r.Kind != Judged || !r.Verdict.Right() {
				t.Errorf("%s: %s = %s (exactly %s): %v", name, q.Name, typed, l.about.solution.Values[q.Force], r.Lines)
				l.Type("tell")
			}
		}
	}
}

// fromSum is the value of a force that a sum gives with the other forces as they are.
func fromSum(t *testing.T, s statics.Sum, force int, values []exact.Num) exact.Num {
	t.Helper()
	with := append([]exact.Num(nil), values...)
	with[force] = exact.Num{}
	x, err := s.Residual(with).Neg().Quo(s.Factor(force))
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// Values in other units of the same or the other system are right.
func TestOtherUnits(t *testing.T) {
	t.Parallel()
	pound := exact.MustParse("0.0044482216152605") // kN, NIST Special Publication 811, appendix B
	perPound, err := exact.Int(1).Quo(pound)
	if err != nil {
		t.Fatal(err)
	}
	rows := []struct {
		problem, unit string
		per           exact.Num // of that unit in one of the problem's
	}{
		{"jetty-deck", "N", exact.Int(1000)},
		{"quay-gantry", "lb", perPound},
		{"sawmill-portal", "lb", exact.Int(1000)},
		{"sawmill-portal", "kN", exact.Int(1000).Mul(pound)},
	}
	for _, r := range rows {
		l := lesson(t, r.problem, Values)
		for {
			q, asking := l.Now()
			if !asking || q.Kind != ForceValue {
				break
			}
			if l.about.solution.Forces[q.Force].Couple {
				l.Type("tell")
				continue
			}
			typed := q.truth.Mul(r.per).Figures(4) + " " + r.unit
			if reply := l.Type(typed); reply.Kind != Judged || !reply.Verdict.Exactly() {
				t.Fatalf("%s: %s = %s: %v", r.problem, q.Name, typed, reply.Lines)
			}
		}
	}
}

// A sense word and the sign that goes with it come to the same.
func TestSenseWords(t *testing.T) {
	t.Parallel()
	l := lesson(t, "quay-gantry", Values)
	for {
		q, asking := l.Now()
		if !asking || q.Kind != ForceValue {
			return
		}
		f := l.about.solution.Forces[q.Force]
		word := map[bool]string{true: "up", false: "down"}[q.truth.Sign() > 0]
		switch {
		case f.Couple:
			word = map[bool]string{true: "ccw", false: "clockwise"}[q.truth.Sign() > 0]
		case f.Along.Y.IsZero():
			word = map[bool]string{true: "right", false: "left"}[q.truth.Sign() > 0]
		}
		if r := l.Type(q.truth.Abs().Decimal(20) + " " + word); r.Kind != Judged || r.Verdict != judging.Exact {
			t.Fatalf("%s %s: %v", q.Name, word, r.Lines)
		}
	}
}
