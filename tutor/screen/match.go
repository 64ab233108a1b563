package screen

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"unpin/statics/notation"
)

// A match is how well a problem fits what is typed to find it.
type match int

// The matches, the best first.
const (
	inTitle match = iota // words of the name or the title begin so
	inText               // words of the text, the skills, the unit or the grade do
	within               // it stands within words
	noMatch
)

// leastWithin is how many letters a word needs to be sought within others: of fewer nearly every text has some.
const leastWithin = 3

// matchOf is how an entry fits words, as its worst does.
func matchOf(e Entry, words []string) match {
	title, text := e.Name, ""
	if p := e.Problem; p != nil {
		title += " " + p.Title
		text = strings.Join([]string{p.Text, p.Units.Of(notation.Force), strings.Join(p.Skills, " "), "grade " + strconv.Itoa(p.Grade)}, " ")
	}
	title, text = strings.ToLower(title), strings.ToLower(text)
	worst := inTitle
	for _, w := range words {
		m := noMatch
		switch {
		case begins(title, w):
			m = inTitle
		case begins(text, w):
			m = inText
		case len([]rune(w)) >= leastWithin && strings.Contains(title+" "+text, w):
			m = within
		}
		worst = max(worst, m)
	}
	return worst
}

// begins reports whether a word of a text begins so, where one ends at a sign or a blank; or the whole text does.
func begins(text, start string) bool {
	words := strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	return strings.HasPrefix(text, start) || slices.ContainsFunc(words, func(w string) bool { return strings.HasPrefix(w, start) })
}
