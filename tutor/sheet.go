package tutor

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// A sheet is what is asked and how far the student is with it.
type sheet struct {
	about     *matter
	exam      bool // no verdict and no help until the end
	questions []Question
	answers   []answer // of each question
	at        int      // the question in hand; past the last at the end
}

// known is the value of force i on the student's sheet: the exact one, once the student has found it or been told. The
// sums of a worked step to read are all known.
func (sh *sheet) known(i int) (exact.Num, bool) {
	for n, q := range sh.questions {
		switch a := sh.answers[n]; {
		case q.Kind == ForceValue && q.Force == i && !sh.exam && (a.accepted || a.told):
			return sh.about.solution.Values[i], true
		case q.Kind == Reading && n < sh.at && q.Step != statics.None && slices.Contains(sh.about.solution.Plan[q.Step].Gives, i):
			return sh.about.solution.Values[i], true
		}
	}
	return exact.Num{}, false
}

// standing is how question n stands: what was typed for it, whether it is settled, and how.
func (sh *sheet) standing(n int) (typed string, settled bool, told bool, v judging.Verdict) {
	a := sh.answers[n]
	return a.typed, a.accepted || a.told || sh.exam && a.tries > 0, a.told, a.verdict
}

// score is how many questions were right at the first try without help, of those that ask for a value.
func (sh *sheet) score() (first, of int) {
	for i, q := range sh.questions {
		if q.Kind != Reading {
			of++
		}
		if a := sh.answers[i]; a.first && a.accepted && !a.told {
			first++
		}
	}
	return first, of
}

// knownForce reports whether a force is on the student's sheet.
func (sh *sheet) knownForce(i int) bool {
	_, known := sh.known(i)
	return known
}

// settledForce reports whether the value of a force is asked for no more: it is known or, in an exam, answered or left open.
func (sh *sheet) settledForce(i int) bool {
	if !sh.exam {
		return sh.knownForce(i)
	}
	return slices.ContainsFunc(sh.answersFor(i), func(a answer) bool { return a.tries > 0 || a.told })
}

// answersFor lists the answers for the value of a force.
func (sh *sheet) answersFor(i int) []answer {
	var all []answer
	for n, q := range sh.questions {
		if q.Kind == ForceValue && q.Force == i {
			all = append(all, sh.answers[n])
		}
	}
	return all
}

// putIn lists the values that a student may put into an equation in an exam for the forces settled so far: the exact ones,
// or what was typed for them.
func (sh *sheet) putIn() []func(int) (exact.Num, bool) {
	truth := func(i int) (exact.Num, bool) { return sh.about.solution.Values[i], sh.settledForce(i) }
	typed := func(i int) (exact.Num, bool) {
		value, settled := truth(i)
		for _, a := range sh.answersFor(i) {
			if a.tries > 0 {
				value = a.value
			}
		}
		return value, settled
	}
	return []func(int) (exact.Num, bool){truth, typed}
}

func (sh *sheet) allKnown() bool {
	for i := range sh.about.solution.Forces {
		if asksFor(sh.about, i) && !sh.settledForce(i) {
			return false
		}
	}
	return true
}

// ask adds questions.
func (sh *sheet) ask(more ...Question) {
	sh.questions = append(sh.questions, more...)
	sh.answers = append(sh.answers, make([]answer, len(more))...)
}

// own lists the values of the forces as the student has them: what was typed and accepted, else the exact one.
func (sh *sheet) own() []exact.Num {
	own := append([]exact.Num(nil), sh.about.solution.Values...)
	for i, q := range sh.questions {
		if a := sh.answers[i]; q.Kind == ForceValue && a.accepted {
			own[q.Force] = a.value
		}
	}
	return own
}

// foundAlong lists N, V and M along the members as the student has them: what was typed and accepted.
func (sh *sheet) foundAlong() []judging.Found {
	var all []judging.Found
	for i, q := range sh.questions {
		if a := sh.answers[i]; q.Kind == SectionPart && a.accepted && i != sh.at {
			all = append(all, judging.Found{Member: q.Member, Station: q.Station, Quantity: q.Quantity, Value: a.value})
		}
	}
	return all
}

// begun reports whether anything was answered.
func (sh *sheet) begun() bool {
	for n := range sh.at {
		if sh.questions[n].Kind != Reading {
			return true
		}
	}
	return false
}

// inHand is how far the student is with the question in hand.
func (sh *sheet) inHand() *answer { return &sh.answers[sh.at] }

// goOn goes on to the next question that is not settled by a function for its stretch.
func (sh *sheet) goOn() {
	for sh.at++; sh.at < len(sh.answers) && sh.answers[sh.at].along; {
		sh.at++
	}
}

// enter enters what was typed for the question in hand, where it stands; in an exam it is entered however it came out.
func (sh *sheet) enter(line string, r ruling) {
	a := sh.inHand()
	a.slips = append(a.slips, r.slips...)
	if !r.verdict.Right() && !sh.exam {
		a.missed = append(a.missed, wrongLine{line, r.slips})
		return
	}
	a.typed, a.value, a.verdict = strings.TrimSpace(line), r.value, r.verdict
	a.accepted = r.verdict.Right()
	if sh.exam {
		a.says = r.says
	}
	a.first = a.tries == 1 && a.unaided()
}

// dropLast takes the question in hand off the sheet and opens the one before it again.
func (sh *sheet) dropLast() {
	sh.at--
	sh.questions, sh.answers = sh.questions[:sh.at+1], sh.answers[:sh.at+1]
	a := sh.inHand()
	a.accepted, a.told, a.typed = false, false, ""
}
