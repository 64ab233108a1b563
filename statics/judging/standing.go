package judging

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/slip"
)

// What is said where the sum stands on the page, printed or written and found right: its terms stand, and what is left is
// to put numbers in, to multiply, to take terms across, and to divide. No story of choosing or measuring is told there;
// where only such a slip leads to a value, the term that it would change is asked about.

// findStanding says which slip in the solving a wrong value came from, or asks about what stands there.
func (c *Case) findStanding(f *Finding, v Typed, d slip.Diagnosis) {
	pairs := c.pairs(v)
	excluded := slip.Diagnose(v.Readings(), c.excluded()...).Matches
	if asks := c.withExcluded(d.Matches, excluded); len(asks) > 0 && f.Verdict == Wrong {
		f.Says = opening(f.Verdict, len(asks)) + putAll(asks)
		return
	}
	if f.Verdict == Wrong && c.crowded(d, excluded) {
		f.Says = manyWays + askStanding + "?"
		return
	}
	if s := d.Named(); s != nil && !(s.Seldom && f.Verdict == Wrong && v.figures() <= 3) {
		f.Says = c.named(s, d.Matches)
		if len(pairs) > 0 && f.Verdict == Wrong {
			f.Says = oneOrTwo + putAll(c.withStandingPairs(d.Matches, pairs))
		}
		return
	}
	if asks := c.standing(d.Matches); len(asks) > 0 {
		if f.Verdict == OtherSense {
			asks = asks[:min(len(asks), mostOfSense)]
		}
		f.Says = opening(f.Verdict, len(asks)) + putAll(asks)
		return
	}
	if f.Verdict != Wrong && f.Verdict != Close || c.Coarse(v) {
		return
	}
	if len(pairs) == 1 {
		f.Says = "two things at once may have led here: " + putAll(c.standing(pairs[0][:]))
		f.note(pairs[0][0].Slip.ID + "+" + pairs[0][1].Slip.ID)
		return
	}
	if c.step.Written {
		excluded = nil
	}
	f.Says = c.otherwise(f.Verdict, excluded, slip.Diagnose(v.Readings(), c.slight()...).Matches)
}

// withStandingPairs is what there is to ask about one slip and about pairs; about the one alone where that is too much.
func (c *Case) withStandingPairs(one []slip.Candidate, pairs []slip.Pair) []query {
	if asks := c.standing(oneAndPairs(one, pairs)); len(asks) > 1 {
		return asks
	}
	return c.standing(one)
}

// opening begins a question about so many things.
func opening(v Verdict, things int) string {
	switch {
	case v == OtherSense:
		return onlySense
	case things == 1:
		return oneThing
	}
	return manyWays
}

func joined(asks []string) string { return strings.Join(asks, ", and ") + "?" }

// named is what one slip says; where it is in one term, its question is about that term as it is printed.
func (c *Case) named(s *slip.Slip, matches []slip.Candidate) string {
	if terms := c.termsOf(matches); len(terms) > 0 && len(terms) <= mostThings && s.About != slip.Answer {
		return lowerFirst(c.judge.inStyle(s.Principle())) + ": " + putAll(askEach(terms))
	}
	if ask := c.asks(s); ask == askBack {
		return onlySense + ask + "?"
	}
	return lowerFirst(c.judge.inStyle(s.Says))
}

// askBack is asked of a value in the opposite sense, where the unknown's own term has no minus that could have been lost.
const askBack = "with this value put back, do the terms of the sum cancel"

// asks is what a slip in no term asks where the sum stands.
func (c *Case) asks(s *slip.Slip) string {
	if c.positive(s) {
		return askBack
	}
	return s.Asks()
}

// positive reports whether a slip is about a minus of the unknown's own term, and the sum as printed has none there.
func (c *Case) positive(s *slip.Slip) bool {
	if s != slip.ByID("unknown-turned") || len(c.step.Sums) > 1 {
		return false
	}
	return c.step.Written || !slices.ContainsFunc(c.step.Sums[0].Terms(), func(t statics.Term) bool {
		return t.Why == statics.Counts && t.Force != statics.None && !c.step.Known(t.Force) && c.judge.ShownSign(c.step.Sums[0], t) < 0
	})
}

// withExcluded is what there is to ask about slips in the solving and about others, in other terms, that lead to the same
// value; nothing where there are none, or more than fits one question.
func (c *Case) withExcluded(matches, excluded []slip.Candidate) []query {
	asks := c.standing(matches)
	if len(matches) == 0 || len(asks) > mostThings {
		return nil
	}
	elsewhere := slices.DeleteFunc(slices.Clone(excluded), func(x slip.Candidate) bool {
		return slices.ContainsFunc(matches, func(m slip.Candidate) bool {
			return m.Slip.About != slip.Answer && m.Sum == x.Sum && meets(m.Terms, x.Terms)
		})
	})
	all := slices.Concat(asks, c.outside(elsewhere))
	if len(all) == len(asks) || len(all) > mostThings {
		return nil
	}
	return all
}

// crowded reports whether a slip in the division or in the answer's figures fits, of which there are many, and more slips in
// other terms as well than fit one question: then it is not told.
func (c *Case) crowded(d slip.Diagnosis, excluded []slip.Candidate) bool {
	s := d.Named()
	return s != nil && (s.Needs == slip.Dividing || s.Seldom) && len(c.standing(d.Matches))+len(c.outside(excluded)) > mostThings
}

// askStanding asks for all of a sum that stands.
const askStanding = "term by term, what is each product, and which sign does it have on the other side"

// meets reports whether two lists have an item in common.
func meets(a, b []int) bool {
	return slices.ContainsFunc(a, func(i int) bool { return slices.Contains(b, i) })
}

// outside is what there is to ask about slips in what stands: about each term that they change, and what they ask
// themselves where they change none.
func (c *Case) outside(matches []slip.Candidate) []query {
	asks := askEach(c.termsOf(matches))
	for _, m := range matches {
		ask := plain(m.Slip.Asks())
		if m.Slip.About == slip.Presence {
			ask = plain("is it certain that nothing else goes in")
		}
		if len(m.Terms) == 0 && !slices.Contains(asks, ask) {
			asks = append(asks, ask)
		}
	}
	return asks
}

// otherwise asks about the terms that slips would change which cannot have been made, and about those with a figure that
// may be off; or nothing where there are none.
func (c *Case) otherwise(verdict Verdict, excluded, slight []slip.Candidate) string {
	for _, matches := range [][]slip.Candidate{slices.Concat(excluded, slight), excluded, slight} {
		asks := c.outside(matches)
		if len(asks) == 0 || len(asks) > mostThings || len(c.termsOf(matches)) == 0 && !asksItself(matches) {
			continue
		}
		if len(c.termsOf(matches)) == 0 {
			return "the sum stands, and it alone gives the value: " + putAll(asks)
		}
		if c.step.Written && verdict == Wrong {
			return opening(Wrong, len(asks)) + putAll(asks)
		}
		return AsItIs + putAll(asks)
	}
	if len(excluded) == 0 {
		return ""
	}
	ask := "what does it give, solved term by term"
	if slices.ContainsFunc(excluded, func(m slip.Candidate) bool { return m.Slip.About != slip.Presence }) {
		return AsItIs + ask + "?"
	}
	if s := (slip.Diagnosis{Matches: excluded}).Named(); s != nil && s.About == slip.Presence {
		ask = s.Asks()
	}
	return "the sum is complete as it stands, and nothing else goes in: " + ask + "?"
}

// AsItIs begins a question about what stands.
const AsItIs = "the sum holds as it stands, so each number in it goes in as it is: "

// asksItself reports whether a slip is in no term and asks for more than what goes in.
func asksItself(matches []slip.Candidate) bool {
	return slices.ContainsFunc(matches, func(m slip.Candidate) bool { return len(m.Terms) == 0 && m.Slip.About != slip.Presence })
}

// A standingTerm is a term as it stands on the page, with the kinds of work in it that slips are about.
type standingTerm struct {
	sum, term int
	text      string // as it is printed: "4*3*9.5"
	several   bool   // it is a product
	named     bool   // it holds a force by name, whose value is put in
	unknown   bool   // that force is not known yet
	own       bool   // it is the term of what is asked for, in the one sum
	works     map[slip.Work]bool
	dropped   bool
}

// termsOf lists the terms that the candidates change, each once.
func (c *Case) termsOf(matches []slip.Candidate) []*standingTerm {
	var all []*standingTerm
	for _, m := range matches {
		for _, i := range m.Terms {
			if c.step.Sums[m.Sum].Terms()[i].Why != statics.Counts {
				continue // it does not stand there
			}
			at := slices.IndexFunc(all, func(t *standingTerm) bool { return t.sum == m.Sum && t.term == i })
			if at < 0 {
				at, all = len(all), append(all, c.standingTerm(m.Sum, i))
			}
			all[at].works[m.Slip.Needs] = true
			all[at].dropped = all[at].dropped || m.Slip.About == slip.Presence
		}
	}
	return all
}

func (c *Case) standingTerm(sum, term int) *standingTerm {
	s := c.step.Sums[sum]
	t := s.Terms()[term]
	text := c.judge.say().Product(s, t)
	unknown := t.Force != statics.None && !c.step.Known(t.Force)
	return &standingTerm{
		sum:     sum,
		term:    term,
		text:    text,
		several: strings.ContainsAny(text, "*·"),
		named:   t.Force != statics.None,
		unknown: unknown,
		own:     unknown && len(c.step.Sums) == 1,
		works:   map[slip.Work]bool{},
	}
}

// standing lists what there is to ask about slips where the sum stands: each term once, and what a slip in none asks.
func (c *Case) standing(matches []slip.Candidate) []query {
	var asks []query
	add := func(ask query) {
		if !slices.Contains(asks, ask) {
			asks = append(asks, ask)
		}
	}
	var inTerms []slip.Candidate
	for _, m := range matches {
		if len(m.Terms) == 0 {
			add(plain(c.asks(m.Slip)))
		} else {
			inTerms = append(inTerms, m)
		}
	}
	for _, ask := range askEach(c.termsOf(inTerms)) {
		add(ask)
	}
	if len(asks) > mostThings {
		return []query{plain(askStanding)}
	}
	return asks
}
