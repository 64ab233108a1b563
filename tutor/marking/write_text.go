package marking

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// words are what a person reads of each verdict.
var words = map[string]string{
	Right:   "right",
	Rounded: "right (rounded)",
	Carried: "carried",
	Close:   "close, but further off than rounding explains",
	Sense:   "the size is right, the sense is not",
	Unit:    "the number is right, the unit is not",
	Slip:    "mistake",
	Wrong:   "wrong",
	Missing: "missing",
}

// Words are what a person reads of a verdict.
func Words(verdict string) string { return words[verdict] }

// Text is a result as the student reads it: a line for each value, then where the trouble began. True values stand there
// only where they are to be told.
func (r *Result) Text(tell bool) string {
	var text strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&text, format+"\n", args...) }
	line("%s: %s of %s marks", r.head(), Points(r.Got), Points(r.Of))
	if r.given() == 0 {
		line("Nothing was answered.")
	}
	width := r.width()
	if r.given() > 0 {
		line("  %-*s  %s", width, asTyped, "what became of it")
	}
	for _, a := range r.Answers {
		if a.Verdict == Missing {
			continue
		}
		line("  %-*s  %s", width, a.Name+" = "+a.Given, r.verdictText(a, tell))
	}
	if missing := r.missingText(); missing != "" && r.given() > 0 {
		line("Missing: %s.", missing)
	}
	for _, text := range unreadText(r.Unread) {
		line("Unread, %s.", text)
	}
	for _, said := range r.Story() {
		line("%s", said)
	}
	for _, s := range r.sums() {
		line("%s\n  %s\n  With your numbers: %s", s.title, s.symbols, s.numbers)
	}
	for _, said := range r.Working {
		line("Working: %s", said)
	}
	if tell {
		for _, a := range r.Answers {
			if a.Asked && a.Verdict != Right {
				line("%s is %s.", a.Name, r.Marker.judge.Style.Result(r.Marker.shownValue(a), a.Item.Dim))
			}
		}
	}
	return text.String()
}

// head names a paper.
func (r *Result) head() string {
	var parts []string
	for _, word := range []string{r.Paper.Student, r.Marker.Title, r.Paper.Code} {
		if word != "" {
			parts = append(parts, word)
		}
	}
	if r.Paper.Attempt > 1 {
		parts = append(parts, fmt.Sprintf("attempt %d", r.Paper.Attempt))
	}
	return strings.Join(parts, ", ")
}

func (r *Result) given() int {
	n := 0
	for _, a := range r.Answers {
		if a.Verdict != Missing {
			n++
		}
	}
	return n
}

// asTyped heads what students wrote, which is shown as they typed it; all else is in the signs of the trade.
const asTyped = "as typed"

func (r *Result) width() int {
	width := len(asTyped)
	for _, a := range r.Answers {
		if a.Verdict != Missing {
			width = max(width, min(36, len([]rune(a.Name+" = "+a.Given))))
		}
	}
	return width
}

// missing counts what is missing, and tells whether none of it has any weight.
func (r *Result) missing() (n int, light bool) {
	light = true
	for _, a := range r.Answers {
		if a.Verdict == Missing {
			n, light = n+1, light && a.Of.IsZero()
		}
	}
	return n, light
}

// missingText tells what is missing, without the places of what was to be found.
func (r *Result) missingText() string {
	var forces, members []string
	n := 0
	for _, a := range r.Answers {
		switch {
		case a.Verdict != Missing:
		case a.Item.Member < 0:
			forces = append(forces, a.Name)
		default:
			n++
			if name := r.Marker.Frame.Members[a.Item.Member].Name; !contains(members, name) {
				members = append(members, name)
			}
		}
	}
	if n > 0 {
		forces = append(forces, fmt.Sprintf("%s along %s", wording.Counted(n, "value"), notation.List(members)))
	}
	return notation.List(forces)
}

// verdictText is what stands behind a value.
func (r *Result) verdictText(a Answer, tell bool) string {
	text := words[a.Verdict]
	switch {
	case a.Verdict == Carried:
		text += ": follows from your " + notation.List(a.From)
	case a.Verdict == Unit, a.Verdict == Sense && strings.HasPrefix(a.Says, "the size is right"):
		text = a.Says
	case a.Says != "":
		text += ": " + a.Says
	}
	if !a.Asked {
		text += " (not asked for)"
	}
	switch {
	case a.Remark == "":
	case strings.HasSuffix(text, "?"):
		text += " (" + a.Remark + ")"
	default:
		text += "; " + a.Remark
	}
	return text
}

// Story says where the trouble began, a sentence each: how many mistakes, what follows from them, which sums they violate.
func (r *Result) Story() []string {
	var all []string
	if len(r.Faults) > 0 {
		all = append(all, r.mistakes()+".")
	}
	for _, a := range r.Answers {
		if len(a.Violates) == 0 {
			continue
		}
		v := a.Violates[0]
		all = append(all, fmt.Sprintf("With your %s, %s comes to %s in place of zero.", a.Name, v.Name, r.comesTo(v)))
	}
	return all
}

// mistakes is one sentence: one mistake, in Cy; Dx and M follow from it.
func (r *Result) mistakes() string {
	var in, follow []string
	for _, a := range r.Answers {
		switch {
		case contains(r.Faults, a.Name):
			in = append(in, a.Name+orText(a.Or))
		case a.Verdict == Carried:
			follow = append(follow, a.Name)
		}
	}
	text := fmt.Sprintf("%s mistake, in %s", wording.Capital(wording.Count(len(in))), notation.List(in))
	if len(in) > 1 {
		text = fmt.Sprintf("%s mistakes, in %s", wording.Capital(wording.Count(len(in))), notation.List(in))
	}
	switch {
	case len(follow) == 1:
		text += "; " + follow[0] + " follows from what you had"
	case len(follow) > 1 && len(in) == 1:
		text += "; " + notation.List(follow) + " follow from it"
	case len(follow) > 1:
		text += "; " + notation.List(follow) + " follow from them"
	}
	return text
}

// orText names what may stand in the place of a fault.
func orText(names []string) string {
	switch n := len(names); n {
	case 0:
		return ""
	case 1:
		return " (or " + names[0] + ")"
	default:
		return " (or " + strings.Join(names[:n-1], ", ") + " or " + names[n-1] + ")"
	}
}

func contains(list []string, word string) bool {
	for _, w := range list {
		if w == word {
			return true
		}
	}
	return false
}

// shownValue is the true value in the conventions of the problem.
func (m *Marker) shownValue(a Answer) exact.Num {
	if a.Item.Dim == notation.Force && m.asked(a.Item, spot{}).Shear {
		return m.judge.Style.Shear.Value(a.Item.Value)
	}
	return a.Item.Value
}

// Points are points as they are written: three decimal places at most.
func Points(n exact.Num) string { return decimals(n, 3) }

// inTable are points in a table, with so many places that a column of them adds up to what a paper is worth.
func inTable(n exact.Num) string { return decimals(n, 6) }

// decimals is a number with so many decimal places at most.
func decimals(n exact.Num, most int) string {
	text := n.Places(most)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}
