package problems

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"unpin/statics/notation"
)

// A Search is what is typed to find problems: words that a problem must hold, each of them. After grade stands a number, or two
// as in 3-5, and only problems of these grades are found; after skill stands a word of a skill that a problem must exercise.
type Search struct {
	words, skills []string
	grades        [][2]int // each from, and up to
}

// SearchFor reads what is typed. A lone grade or skill at its end asks for nothing yet.
func SearchFor(typed string) Search {
	var s Search
	all := strings.Fields(strings.ToLower(typed))
	for i := 0; i < len(all); i++ {
		next := ""
		if i+1 < len(all) {
			next = all[i+1]
		}
		grades, graded := gradesOf(next)
		switch {
		case all[i] == "grade" && graded:
			s.grades = append(s.grades, grades)
			i++
		case all[i] == "skill" && next != "":
			s.skills = append(s.skills, next)
			i++
		case (all[i] == "grade" || all[i] == "skill") && next == "":
		default:
			s.words = append(s.words, all[i])
		}
	}
	return s
}

// gradesOf reads a grade, or two with a dash between; one whose end is still to be typed is the one grade.
func gradesOf(text string) ([2]int, bool) {
	first, last, _ := strings.Cut(text, "-")
	from, err := strconv.Atoi(first)
	if err != nil {
		return [2]int{}, false
	}
	if last == "" {
		return [2]int{from, from}, true
	}
	upTo, err := strconv.Atoi(last)
	return [2]int{from, upTo}, err == nil
}

// Asks reports whether anything is asked for.
func (s Search) Asks() bool { return len(s.words)+len(s.skills)+len(s.grades) > 0 }

// A Fit is how well a problem fits what is sought.
type Fit int

// The fits, the best first.
const (
	InTitle Fit = iota // words of the name or the title begin so
	InText             // words of the text, the skills, the unit or the grade do
	Within             // it stands within words
	NoFit
)

// leastWithin is how many letters a word needs to be sought within others: of fewer nearly every text has some.
const leastWithin = 3

// Fit is how a problem that is listed under a name fits, as its worst word does. Of a file that is no problem only the name is known.
func (s Search) Fit(name string, p *Problem) Fit {
	title, text, skills, grade := name, "", "", 0
	if p != nil {
		title += " " + p.Title
		skills, grade = strings.Join(p.Skills, " "), p.Grade
		text = strings.Join([]string{p.Text, p.Units.Of(notation.Force), skills, "grade " + strconv.Itoa(grade)}, " ")
	}
	for _, g := range s.grades {
		if grade < g[0] || grade > g[1] {
			return NoFit
		}
	}
	if slices.ContainsFunc(s.skills, func(w string) bool { return !begins(skills, w) && !strings.Contains(skills, w) }) {
		return NoFit
	}
	title, text = strings.ToLower(title), strings.ToLower(text)
	worst := InTitle
	for _, w := range s.words {
		fit := NoFit
		switch {
		case begins(title, w):
			fit = InTitle
		case begins(text, w):
			fit = InText
		case len([]rune(w)) >= leastWithin && strings.Contains(title+" "+text, w):
			fit = Within
		}
		worst = max(worst, fit)
	}
	return worst
}

// begins reports whether a word of a text begins so, where one ends at a sign or a blank; or the whole text does.
func begins(text, start string) bool {
	words := strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	return strings.HasPrefix(text, start) || slices.ContainsFunc(words, func(w string) bool { return strings.HasPrefix(w, start) })
}
