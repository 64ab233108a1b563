package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

// follows reports whether a value is what the student's own sums give: an equation that was typed before it, or the terms of its
// step.
func (e *exam) follows(n int, q Question, a answer) bool {
	if q.Kind != ForceValue {
		return false
	}
	for k, other := range e.sheet.questions[:n] {
		if other.Kind == TypeSum && e.sheet.answers[k].tries > 0 && e.closes(e.sheet.answers[k].typed, q, a) {
			if !e.sheet.answers[k].verdict.Right() {
				e.result.BeginsIn(e.of[q.Name].Name)
			}
			return true
		}
	}
	if !e.closesTerms(n, q, a) {
		return false
	}
	for k, other := range e.sheet.questions[:n] {
		if v := e.sheet.answers[k]; other.Step == q.Step && other.ofTerm() && v.tries > 0 && !v.verdict.Right() {
			e.result.BeginsIn(e.of[q.Name].Name)
		}
	}
	return true
}

// closes reports whether a value closes an equation as it was typed, with the student's own values in it.
func (e *exam) closes(text string, q Question, a answer) bool {
	typed, err := notation.ReadSum(e.bench().judge().Decimals(text), e.about.problem.Units, e.about.namesForce)
	if err != nil {
		return false
	}
	var rest, factor exact.Num
	side := func(terms []notation.TypedTerm, sign int64) {
		for _, t := range terms {
			value := t.Value.Mul(exact.Int(sign))
			f, turn := judging.ForceMeant(e.about.solution.Assembly, t.Force)
			switch {
			case t.Force == "":
				rest = rest.Add(value)
			case f == q.Force:
				factor = factor.Add(value.Mul(exact.Int(int64(turn))))
			case f != statics.None:
				rest = rest.Add(value.Mul(exact.Int(int64(turn))).Mul(e.own(f)))
			}
		}
	}
	side(typed.Left, 1)
	side(typed.Right, -1)
	return gives(rest, factor, a.value)
}

// closesTerms reports whether a value closes the one sum of its step, in the terms as they were typed.
func (e *exam) closesTerms(n int, q Question, a answer) bool {
	step := e.about.solution.Plan[q.Step]
	if len(step.Sums) != 1 {
		return false
	}
	sum := step.Sums[0]
	terms, asked := slices.Clone(sum.Terms()), false
	for k, other := range e.sheet.questions[:n] {
		v := e.sheet.answers[k]
		if other.Step != q.Step || !other.ofTerm() || v.tries == 0 {
			continue
		}
		asked = true
		t := &terms[other.Term]
		switch other.Kind {
		case TermSize:
			t.Size = v.value
		case TermArm:
			t.Arm = v.value
		case TermSign:
			if v.value.Sign() != 0 && (v.value.Sign() > 0) != (e.about.shownSign(sum, *t) > 0) {
				t.Sign = -t.Sign
			}
		}
	}
	var rest, factor exact.Num
	for _, t := range terms {
		switch {
		case t.Force == q.Force:
			factor = factor.Add(t.Value())
		case t.Force != statics.None:
			rest = rest.Add(t.Value().Mul(e.own(t.Force)))
		default:
			rest = rest.Add(t.Value())
		}
	}
	return asked && gives(rest, factor, a.value)
}

// own is the value of a force as the student has it.
func (e *exam) own(f int) exact.Num {
	for _, values := range e.sheet.putIn()[1:] {
		if v, settled := values(f); settled {
			return v
		}
	}
	return e.about.solution.Values[f]
}

// gives reports whether rest + factor × value = 0, but for a half per cent of the value: half a unit in the third figure.
func gives(rest, factor, value exact.Num) bool {
	v, err := rest.Neg().Quo(factor)
	return err == nil && !v.IsZero() && v.Sub(value).Abs().Mul(exact.Int(200)).Cmp(v.Abs()) <= 0
}
