package marking

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics/notation"
)

// A lineReader reads answers line by line: heads such as student: s017 open a paper, and lines such as Cy = 9.5 kN up are
// its answers. Heads that follow each other are of one paper; the student stays until another is named.
type lineReader struct {
	answers *Answers
	paper   *Paper
	began   map[string]bool // the heads of the paper in hand, while no answer has come
}

// heads are the words that open a paper.
var heads = map[string]func(p *Paper, text string) error{
	"student": func(p *Paper, text string) error { return readID(&p.Student, "student", text) },
	"problem": func(p *Paper, text string) error { return readID(&p.Problem, "problem", text) },
	"code":    func(p *Paper, text string) error { return readID(&p.Code, "code", strings.ToUpper(text)) },
	"attempt": func(p *Paper, text string) error { return readAttempt(&p.Attempt, text) },
}

func (r *lineReader) read(number int, line string) {
	text := withoutComment(line)
	if text == "" {
		return
	}
	word, rest, isHead := strings.Cut(text, ":")
	word = strings.ToLower(strings.TrimSpace(word))
	if set := heads[word]; isHead && set != nil {
		r.open(number, word)
		if err := set(r.paper, strings.TrimSpace(rest)); err != nil {
			r.answers.fault(number, line, "%v", err)
		}
		return
	}
	if isHead && (r.paper != nil || word == "conventions") && slices.Contains(aboutPaper, word) {
		if r.paper == nil {
			r.begin(number)
		}
		if err := r.about(word, strings.TrimSpace(rest)); err != nil {
			r.answers.fault(number, line, "%v", err)
		}
		return
	}
	entry, why := entryOf(number, text)
	if why != "" {
		r.answers.fault(number, line, "%s", why)
		return
	}
	if r.paper == nil {
		r.begin(number)
	}
	r.began = nil
	r.paper.Entries = append(r.paper.Entries, entry)
}

// mostWork is the most lines of working on a paper.
const mostWork = 4000

// aboutPaper are the words of lines about a paper that is open.
var aboutPaper = []string{"level", "work", "conventions"}

// about takes a line of the working of an exam, the level at which it was written, or the conventions of the paper.
func (r *lineReader) about(word, text string) error {
	switch {
	case word == "conventions":
		own, err := notation.ReadPreferences(text)
		r.paper.Conventions = r.paper.Conventions.With(own)
		return err
	case word == "level" && !slices.Contains(problems.SetLevels, text):
		return fmt.Errorf("level is one of %s", strings.Join(problems.SetLevels, ", "))
	case word == "level":
		r.paper.Level = text
	case len(r.paper.Work) == mostWork:
		return fmt.Errorf("a paper has at most %d lines of working", mostWork)
	default:
		r.paper.Work = append(r.paper.Work, text)
	}
	return nil
}

// open has a paper ready for a head: a new one where the one in hand has answers, or has this head already.
func (r *lineReader) open(number int, word string) {
	if r.paper == nil || r.began == nil || r.began[word] {
		last := r.paper
		r.begin(number)
		if last != nil && word != "student" {
			r.paper.Student, r.paper.Attempt = last.Student, last.Attempt
		}
	}
	r.began[word] = true
}

func (r *lineReader) begin(number int) {
	r.paper, r.began = &Paper{Attempt: 1, Line: number}, map[string]bool{}
	r.answers.Papers = append(r.answers.Papers, r.paper)
}

// wordsForHeads are words that people write for the heads of a paper, and forms of a line without its sign.
var wordsForHeads = map[string]string{"name": "student", "id": "student", "pupil": "student", "candidate": "student", "task": "problem", "question": "problem", "exercise": "problem"}

var (
	twoSigns   = notation.Pattern(`^(?:[A-Z][\w.]*|[NVM]\s*\([^()]*\))\s*=[^=]*=`)
	headForm   = notation.Pattern(`^(?i)(student|problem|code|attempt|level|work|conventions)\s+(\S.*)$`)
	answerForm = notation.Pattern(`^([A-Z][\w.]*|[NVM]\s*\([^()]*\)|(?:max|min)\s+M\s*\([^()]*\))\s*:?\s+([-+−]?[0-9].*)$`)
)

// noAnswer says what is wrong with a line without an equals sign, and what would be right.
func noAnswer(text string) string {
	if head := headForm().FindStringSubmatch(text); head != nil {
		word := strings.ToLower(head[1])
		return fmt.Sprintf("a colon is missing: write %s: %s", word, head[2])
	}
	word, rest, _ := strings.Cut(text, ":")
	if head := wordsForHeads[strings.ToLower(strings.TrimSpace(word))]; head != "" && strings.TrimSpace(rest) != "" {
		return fmt.Sprintf("no line begins with %s: write %s: %s", strings.TrimSpace(word), head, strings.TrimSpace(rest))
	}
	if answer := answerForm().FindStringSubmatch(text); answer != nil {
		return fmt.Sprintf("an equals sign is missing: write %s = %s", answer[1], answer[2])
	}
	return "this is no answer: write what it is of, =, and the value, as in Cy = 9.5 kN up"
}

// entryOf reads a line as an answer; the second result says why it is none.
func entryOf(number int, text string) (Entry, string) {
	at := strings.LastIndex(text, "=")
	switch {
	case at < 0:
		return Entry{}, noAnswer(text)
	case twoSigns().MatchString(text):
		return Entry{}, "there is more than one equals sign: write what it is of, one =, and the value, as in Cy = 9.5 kN up"
	}
	e := Entry{Line: number, Quantity: strings.TrimSpace(text[:at]), Value: strings.TrimSpace(text[at+1:])}
	switch {
	case e.Quantity == "":
		return e, "nothing stands before the equals sign: write what the value is of, as in Cy = 9.5 kN up"
	case e.Value == "":
		return e, "nothing stands after the equals sign: write the value, or leave out the line"
	}
	return e, ""
}
