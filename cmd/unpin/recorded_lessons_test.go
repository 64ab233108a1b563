package main

import (
	"fmt"
	"math/big"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/tutor"
)

// lessonJobs record lessons on a problem at every rung: in each, a list of wrong values is typed to every question, or to
// every third where the same is asked in much the same way at another rung; then hints, and then the right value or tell.
// Where sums are chosen, a lesson more is taken with sums in an order of its own; and exams.
func lessonJobs(t *testing.T, s subject) []func(*recorder) {
	var jobs []func(*recorder)
	for _, rung := range tutor.Levels() {
		every := 3
		if rung == "values" || rung == "terms" {
			every = 1
		}
		jobs = append(jobs, func(r *recorder) {
			answers := tellAll(rung, s.word)
			recordLesson(t, r, s, rung, "wrong", takeLesson(answers.wrong(every), "--rung", rung, s.word))
		})
	}
	for _, rung := range []string{"order", "blank"} {
		jobs = append(jobs, func(r *recorder) { recordOwnOrder(t, r, s, rung) })
	}
	for _, rung := range []string{"plan", "blank"} {
		jobs = append(jobs, func(r *recorder) { recordOwnExam(t, r, s, rung) })
	}
	for _, rung := range []string{"values", "terms"} {
		jobs = append(jobs, func(r *recorder) {
			answers := tellAll(rung, s.word)
			recordLesson(t, r, s, rung, "exam", takeLesson(answers.exam, "--rung", rung, "--exam", s.word))
		})
	}
	return jobs
}

// recordLesson records what a lesson said and, as codes, what it made of each line.
func recordLesson(t *testing.T, r *recorder, s subject, rung, kind string, after *student) {
	name := "lessons/" + s.name + "/" + rung + "-" + kind
	r.add(name+".txt", after.transcript.Bytes())
	r.add(name+".codes", []byte(codes(t, s.word, rung, kind == "exam", after.typed)))
}

// answers are what the questions of a lesson come to, by number and by name.
type answers struct {
	byNumber []string // told of each question
	byName   map[string]string
}

// tellAll asks a lesson to tell everything.
func tellAll(rung, word string) answers {
	s := takeLesson(func(asked) string { return "tell" }, "--rung", rung, word)
	a := answers{byName: map[string]string{}}
	for _, q := range s.told[:min(s.asked, len(s.told))] {
		a.byNumber = append(a.byNumber, q.text)
		a.byName[q.name] = q.text
	}
	return a
}

// wrong types wrong values and hint to every so many questions, then what is right. What comes again at the end
// is told after one try.
func (a answers) wrong(every int) func(asked) string {
	return func(q asked) string {
		if q.number >= len(a.byNumber) {
			return []string{"7.77", "tell"}[min(q.tries, 1)]
		}
		text := a.byNumber[q.number]
		var lines []string
		if q.number%every == 0 {
			lines = wrongLines(q, text)
		}
		lines = append(lines, rightLine(q, text), "tell")
		return lines[min(q.tries, len(lines)-1)]
	}
}

// exam types right values, wrong ones and nothing in turn.
func (a answers) exam(q asked) string {
	if q.number >= len(a.byNumber) || q.number%3 == 2 {
		return "tell"
	}
	if q.number%3 == 1 {
		return wrongLines(q, a.byNumber[q.number])[min(q.tries, 1)] // an exam asks again what it cannot read
	}
	return rightLine(asked{unit: q.unit}, a.byNumber[q.number])
}

// wrongLines are what is typed before the right answer, of which text is told: wrong values, three hints, and where it is
// an amount one that is nearly right.
func wrongLines(q asked, text string) []string {
	switch q.unit {
	case "+ or -":
		return without([]string{"+", "-", "banana", "hint", "hint", "hint"}, lastWord(text))
	case "0, 1, 2 or 3":
		return without([]string{"0", "1", "2", "3", "banana", "hint", "hint", "hint"}, lastWord(text))
	case "rises or falls":
		return without([]string{"rises", "falls", "banana", "hint", "hint", "hint"}, lastWord(text))
	case "free body and sum":
		return []string{"banana", "whole z", "nobody x", "hint", "hint", "hint"}
	}
	t, ok := amount(text)
	if section.MatchString(q.name) && ok && t.Sign() != 0 { // a function too, for the stretch
		return []string{q.name[:1] + "(x) = 3x - 2", "0", "7.77", "banana", "hint", "hint", "hint", q.name[:1] + "(x) = " + decimal(t)}
	}
	if !ok || t.Sign() == 0 {
		return []string{"7.77", "-0.5", "banana", "hint", "hint", "hint"}
	}
	times := func(factor string) string {
		f, _ := new(big.Rat).SetString(factor)
		return decimal(f.Mul(f, t))
	}
	return []string{"0", times("-1"), times("2"), times("1.02"), "7.77", "banana", "hint", "hint", "hint", times("1.006")}
}

// rightLine is the right answer: as it was told, to three figures, or tell, in turn.
func rightLine(q asked, text string) string {
	t, isAmount := amount(text)
	switch {
	case q.unit == "free body and sum" || q.number%3 == 2:
		return "tell"
	case slices.Contains([]string{"+ or -", "0, 1, 2 or 3", "rises or falls"}, q.unit):
		return lastWord(text)
	case !isAmount:
		return "tell"
	case q.number%3 == 1:
		return threeFigures(t)
	}
	return decimal(t)
}

func without(lines []string, right string) []string {
	return slices.DeleteFunc(lines, func(l string) bool { return l == right })
}

// lastWord is the last word of a line, without its full stop.
func lastWord(line string) string {
	words := strings.Fields(strings.TrimSuffix(line, "."))
	return words[len(words)-1]
}

// told amounts stand after an equals sign, with a decimal point or comma.
var equals = regexp.MustCompile(`= (-?[0-9]+(?:[.,][0-9]+)?(?:/[0-9]+)?)`)

// amount is the number that a line tells.
func amount(line string) (*big.Rat, bool) {
	found := equals.FindStringSubmatch(line)
	if found == nil {
		return nil, false
	}
	return new(big.Rat).SetString(strings.ReplaceAll(found[1], ",", "."))
}

// decimal writes a number as a person would, with up to nine decimals.
func decimal(r *big.Rat) string {
	if r.IsInt() {
		return r.Num().String()
	}
	return strings.TrimRight(r.FloatString(9), "0")
}

// threeFigures is a number rounded to three significant figures, or to the unit.
func threeFigures(r *big.Rat) string {
	for places := range 9 {
		text := r.FloatString(places)
		if len(strings.TrimLeft(strings.NewReplacer(".", "", "-", "").Replace(text), "0")) >= 3 {
			return text
		}
	}
	return decimal(r)
}

// recordOwnOrder records a lesson in which sums are chosen in an order of its own, and their equations are typed, first
// with a term turned round or left out. What the equations are is told in a first go.
func recordOwnOrder(t *testing.T, r *recorder, s subject, rung string) {
	values := tellAll("values", s.word)
	sums := sumsOf(s.word)
	first := takeLesson(values.ownOrder(sums, nil), "--rung", rung, s.word)
	var equations []string
	for _, q := range first.told {
		if strings.HasPrefix(q.unit, "all terms") {
			equation, _, _ := strings.Cut(q.text, ";")
			equations = append(equations, equation)
		}
	}
	recordLesson(t, r, s, rung, "own", takeLesson(values.ownOrder(sums, equations), "--rung", rung, s.word))
}

// ownOrder chooses three sums more at each choice and then has one told; it types equations if they are known.
func (a answers) ownOrder(sums, equations []string) func(asked) string {
	chosen, written := 0, 0
	return func(q asked) string {
		switch {
		case q.unit == "free body and sum" && q.tries < 3:
			chosen++
			return sums[chosen%len(sums)]
		case strings.HasPrefix(q.unit, "all terms"):
			if q.tries == 0 {
				written++
			}
			lines := []string{"tell"}
			if written <= len(equations) {
				lines = append(falseEquations(equations[written-1]), "hint", "hint", "hint", equations[written-1], "tell")
			}
			return lines[min(q.tries, len(lines)-1)]
		case q.tries == 0 && a.byName[q.name] != "":
			return rightLine(q, a.byName[q.name])
		}
		return "tell"
	}
}

// recordOwnExam records an exam in which sums are chosen in an order of its own; of what is asked of them some is right, some
// wrong, and some left open.
func recordOwnExam(t *testing.T, r *recorder, s subject, rung string) {
	values := tellAll("values", s.word)
	next := values.ownOrder(sumsOf(s.word), nil)
	choices := 0
	answer := func(q asked) string {
		line := next(q)
		if q.unit == "free body and sum" { // an exam takes every choice, so that they would never end
			if choices++; choices > 12 {
				return "tell"
			}
		}
		word, found := map[string]string{"+ or -": "+", "0, 1, 2 or 3": "1", "rises or falls": "falls"}[q.unit]
		switch {
		case strings.HasPrefix(q.unit, "free body, sum"):
			return "whole M (1, 2) = 2.5"
		case line != "tell" || q.number%3 == 2 || q.unit == "free body and sum" || strings.HasPrefix(q.unit, "all terms"):
			return line
		case section.MatchString(q.name) && q.number%2 == 0 && q.tries == 0:
			return q.name[:1] + "(x) = 3x - 2"
		case found:
			return word
		}
		return "2.5"
	}
	recordLesson(t, r, s, rung, "exam", takeLesson(answer, "--rung", rung, "--exam", s.word))
}

// section is the name of a question for N, V or M at a place.
var section = regexp.MustCompile(`^[NVM]\(`)

// falseEquations are an equation with its first term turned round, without it, and without sense.
func falseEquations(equation string) []string {
	turned, negative := strings.CutPrefix(equation, "-")
	if !negative {
		turned = "-" + equation
	}
	lines := []string{turned, "banana", "0 = 0"}
	if next := strings.IndexAny(equation, "+-"); next > 0 {
		lines = append(lines, strings.TrimPrefix(equation[next:], "+ "))
	}
	return lines
}

// walk is a part's name with its joints in walking order, as it stands in the list of parts.
var walk = regexp.MustCompile(`[A-Z][a-z0-9']*`)

// sumsOf lists sums of the whole and of each part, those of a part about its first and last joint.
func sumsOf(word string) []string {
	joints := func(part string) []string { return walk.FindAllString(part, -1) }
	var sums []string
	for _, part := range partsOf(word) {
		ends := joints(part)
		sums = append(sums, part+" x", part+" M "+ends[len(ends)-1], "whole M "+ends[0], part+" y", part+" M "+ends[0])
	}
	return append(sums, "whole x", "whole y", "whole M (1, 2)", "whole F along [4, 3]")
}

// codes types the same lines to a lesson once more and lists what it made of each: the number of the question, the line,
// the verdict and the slips found, or what kind of reply it was.
func codes(t *testing.T, word, rung string, exam bool, lines []string) string {
	p, err := find(word, nil)
	if err != nil {
		t.Error(err)
		return ""
	}
	level, err := tutor.ParseLevel(rung)
	if err != nil {
		t.Error(err)
		return ""
	}
	l, err := tutor.New(p, level, exam)
	if err != nil {
		t.Error(err)
		return ""
	}
	var list strings.Builder
	var again []*tutor.Lesson
	for first := true; ; {
		for q, asking := l.Now(); asking && q.Kind == tutor.Reading; q, asking = l.Now() {
			if l.Type("").Kind == tutor.Unread { // it asks why
				l.Type("tell")
			}
		}
		if _, asking := l.Now(); !asking {
			if first {
				again, first = l.Again(), false
			}
			if len(again) == 0 {
				return list.String()
			}
			l, again = again[0], again[1:]
			continue
		}
		if len(lines) == 0 {
			return list.String()
		}
		at, _ := l.Position()
		reply := l.Type(lines[0])
		code := "reply " + strconv.Itoa(int(reply.Kind))
		if reply.Kind == tutor.Judged {
			code = reply.Verdict.Code() + " " + strings.Join(slices.Sorted(slices.Values(reply.Slips)), ",")
		}
		fmt.Fprintf(&list, "%d | %s | %s\n", at, lines[0], strings.TrimSpace(code))
		lines = lines[1:]
	}
}
