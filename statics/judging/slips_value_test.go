package judging

import (
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/slip"
)

// A tally is what became of the slips of one kind that students made, as they read it.
type tally struct {
	hidden  int // the slip gives the right number
	named   int // it is said, and nothing else
	asked   int // a question of up to three things asks for what it is about
	broadly int // it fits with so many others that only the whole sum is asked for
	missed  int // no slip is spoken of
	wrong   int // another slip is named, or others are asked about
}

func (t tally) found() int { return t.named + t.asked }
func (t tally) seen() int  { return t.found() + t.broadly + t.missed + t.wrong }

func (t *tally) add(u tally) {
	t.hidden += u.hidden
	t.named += u.named
	t.asked += u.asked
	t.broadly += u.broadly
	t.missed += u.missed
	t.wrong += u.wrong
}

// A student makes slips and types their values.
type student struct {
	own   int // figures to which values found before were rounded; 0 for exact ones
	typed int // figures of what is typed
}

// exactly is more figures than any number has that is written down.
const exactly = 40

// outcome is what the lesson says to the value of a slip.
func (s student) outcome(t testing.TB, l *sheet, q question, held *Case, c slip.Candidate) tally {
	text := c.Value.Figures(s.typed)
	if c.Whole {
		text = c.Value.Decimal(exactly)
	}
	if c.Value.Abs().Cmp(powerOfTen(-9)) < 0 {
		text = "0" // what is left of an angle that is held to 34 figures
	}
	v := l.read(t, q, text)
	verdict := held.Verdict(v)
	switch {
	case verdict.Exactly():
		return tally{hidden: 1}
	case verdict.Right():
		return tally{missed: 1}
	}
	text = held.Find(verdict, v).Says
	if held.step != nil {
		return heardStanding(text, c, held)
	}
	return heard(text, c, l)
}

// heardStanding is what a text says of a slip where the sum stands.
func heardStanding(text string, c slip.Candidate, held *Case) tally {
	of := []slip.Candidate{c}
	says := func(ask string) bool { return strings.Contains(text, ask) }
	terms := held.termsOf(of)
	switch {
	case text == "":
		return tally{missed: 1}
	case text == held.named(c.Slip, of):
		return tally{named: 1}
	case says("term by term"):
		return tally{broadly: 1}
	case len(terms) == 0 && says(held.asks(c.Slip)), len(terms) > 0 && says(" "+terms[0].text):
		return tally{asked: 1}
	}
	return tally{wrong: 1}
}

// heard is what a text says of a slip.
func heard(text string, c slip.Candidate, l *sheet) tally {
	about := l.things([]slip.Candidate{c})[0]
	aspect := " count"
	if about.who != "" && c.Slip.About != slip.Presence {
		aspect = about.word(c.Slip.About)
	}
	switch {
	case text == "":
		return tally{missed: 1}
	case text == lowerFirst(c.Slip.Says):
		return tally{named: 1}
	case strings.HasSuffix(text, askBroadly):
		return tally{broadly: 1}
	case about.who == "" && strings.Contains(text, about.ask), about.who != "" && strings.Contains(text, about.who) && strings.Contains(text, aspect):
		return tally{asked: 1}
	}
	return tally{wrong: 1}
}

// bySlip is what became of the slips that students made, each at one step of a lesson, typing only the value; where the
// terms were not asked for, and where they were.
func (s student) bySlip(t testing.TB) map[*slip.Slip]*tally {
	by := map[*slip.Slip]*tally{}
	for _, row := range slip.Catalogue() {
		by[row] = &tally{}
	}
	eachSlippery(t, s.own, func(l *sheet, q question) {
		right := l.ownValue(q)
		for _, written := range []bool{true, false} {
			if written && q.step == statics.None {
				continue
			}
			held := l.caseWith(q, written)
			last := func(lists [][]slip.Candidate) []slip.Candidate {
				if held.section != nil { // whichever piece the student keeps
					return slices.Concat(lists[len(lists)-2:]...)
				}
				return slices.Clone(lists[len(lists)-1])
			}
			for _, c := range append(last(held.lists()), last(held.slight())...) {
				if c.Value.Equal(right) {
					by[c.Slip].hidden++
					continue
				}
				by[c.Slip].add(s.outcome(t, l, q, held, c))
			}
		}
	})
	return by
}

// byValue measures how many slips are found by the value alone, together and in the mean of the rows of the catalogue.
func (s student) byValue(t testing.TB, name string) ([]measure, map[*slip.Slip]*tally) {
	var all, slight tally
	var rates, occur, weak float64
	by := s.bySlip(t)
	for row, of := range by {
		if row.Slight {
			slight.add(*of)
		}
		if of.seen() == 0 || row.Slight {
			continue
		}
		all.add(*of)
		rate := 100 * float64(of.found()) / float64(of.seen())
		rates, occur = rates+rate, occur+1
		if rate < 95 {
			weak++
		}
	}
	return []measure{
		{what: name + ": named or asked about", count: all.found(), of: all.seen(), least: 95},
		{what: "— the mean over the slips", count: int(occur), rate: rates / occur, least: 95},
		{what: "— slips of which fewer than 95 % are", count: int(weak), of: int(occur), open: true},
		{what: "— named, and nothing else", count: all.named, of: all.seen(), open: true},
		{what: "— among more than three things, so that only the whole sum is asked for", count: all.broadly, of: all.seen(), open: true},
		{what: "— passed over", count: all.missed, of: all.seen(), open: true},
		{what: "— taken for another", count: all.wrong, of: all.seen(), most: 1},
		{what: "— slight ones, where the sum stands (beside the others): asked about", count: slight.found(), of: slight.seen(), least: 75},
		{what: "— slight ones taken for another", count: slight.wrong, of: slight.seen(), open: true},
		{what: "— hidden: the right number by a slip (beside the others)", count: all.hidden, of: all.seen() + all.hidden, open: true},
	}, by
}
