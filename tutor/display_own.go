package tutor

import (
	"strings"

	"unpin/statics/notation"
)

// ownEquations are, in an exam, the sums of the question's step as the student set them down, right or wrong.
func (d Display) ownEquations(q Question) []string {
	var all []string
	if d.LevelOf(q.Step) == Blank {
		at, _ := d.lesson.Position()
		for n, other := range d.lesson.Asked()[:at] {
			if typed, _, _, _ := d.lesson.Standing(n); other.Kind == TypeSum && typed != "" {
				all = append(all, typed)
			}
		}
		return all[max(0, len(all)-len(d.step(q.Step).Sums)):]
	}
	for n := range d.step(q.Step).Sums {
		all = append(all, d.ownSum(q.Step, n))
	}
	return all
}

// ownSum is sum n of step i in the terms that were typed; what was left open is a question mark.
func (d Display) ownSum(i, n int) string {
	text := ""
	for _, t := range d.TermsAsked(i, n) {
		size := t.size
		if size == "" {
			size = t.source
		}
		sign := strings.ReplaceAll(t.sign, "-", "−")
		if sign == "" {
			sign = "(+ or −)"
		}
		text += " " + sign + " " + orMark(size)
		if t.asksArm {
			text += " × " + orMark(t.arm)
		}
	}
	text = strings.TrimPrefix(text, " + ")
	text = strings.TrimSpace(text) + " = 0"
	if d.ascii {
		return notation.ASCII(text)
	}
	return text
}

// orMark is a text, or a question mark where there is none.
func orMark(text string) string {
	if text == "" {
		return "?"
	}
	return text
}
