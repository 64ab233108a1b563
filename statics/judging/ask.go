package judging

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// A Finding is what is made of an answer.
type Finding struct {
	Verdict Verdict
	// Says is one sentence to the student, the principle first and no number in it: the one slip that a wrong answer came
	// from, or a question that tells several apart. It is empty where a value fits none.
	Says  string
	Slips []string // the slips that lead to the answer, by their IDs; two that only together do, as "one+other"
}

// note adds a slip, once.
func (f *Finding) note(id string) {
	if !slices.Contains(f.Slips, id) {
		f.Slips = append(f.Slips, id)
	}
}

// Find is what is made of a value that was found wrong, or in the opposite sense.
func (c *Case) Find(verdict Verdict, v Typed) Finding {
	f := Finding{Verdict: verdict}
	switch {
	case c.inOtherUnit(v):
		f.Says = otherUnit
		return f
	case c.ofOtherUnknown(v):
		f.Says = otherUnknown
		return f
	}
	if c.term != nil {
		c.findInTerm(&f, v)
		return f
	}
	d := c.Diagnosis(v)
	if c.step != nil && verdict == OtherSense { // a sign is the story; a figure that makes the same by chance is none
		d = d.Likelier()
	}
	for _, m := range d.Matches {
		f.note(m.Slip.ID)
	}
	if c.step != nil {
		c.findStanding(&f, v, d)
	} else {
		c.findAnywhere(&f, v, d)
	}
	if f.Says == "" && verdict == Wrong && c.Coarse(v) {
		f.Says = "three figures are asked for: what are the figures after these two?"
	}
	return f
}

// otherUnit is said of a number that is right but for the unit typed with it.
const otherUnit = "the number is right, but its unit is not: in which unit does it come out?"

// inOtherUnit reports whether a value was typed with a unit in which it is not right, and would be right without it.
func (c *Case) inOtherUnit(v Typed) bool {
	if v.Unit.IsZero() || v.Unit.Equal(one) {
		return false
	}
	bare := v
	bare.Value, bare.Unit = v.Written, one
	return c.Verdict(bare).Right() && !v.Written.IsZero()
}

// otherUnknown is said of the value of the other unknown of sums that are solved together.
const otherUnknown = "sums solved together give a value for each of their unknowns: to which of them does this one belong?"

// ofOtherUnknown reports whether a value is that of another unknown that the same sums give.
func (c *Case) ofOtherUnknown(v Typed) bool {
	return c.step != nil && slices.ContainsFunc(c.step.Gives, func(g int) bool {
		value := c.judge.Solution.Values[g]
		return !value.IsZero() && !value.Equal(c.Truth) && v.Means(value)
	})
}

// findAnywhere says which slip of all a wrong value came from, or asks.
func (c *Case) findAnywhere(f *Finding, v Typed, d slip.Diagnosis) {
	if v.Value.IsZero() && len(c.judge.things(d.Matches)) > mostThings && gathered(c.judge.things(d.Matches)) == nil {
		d = d.OfZero()
	}
	if s := d.Named(); s != nil && f.Verdict == Wrong {
		if pairs := c.pairs(v); len(pairs) > 0 {
			f.Says = oneOrTwo + askAll(c.withPairs(d.Matches, pairs))
			return
		}
	}
	f.Says = c.judge.slipSays(f.Verdict, d)
	if s := d.Named(); s != nil && f.Verdict == Wrong && c.section != nil {
		if rivals := c.rivals(v, d); len(rivals) > 0 || v.figures() <= 3 && doubtful(s) {
			things := c.judge.things(slices.Concat(d.Matches, rivals))
			f.Says = opening(Wrong, len(things)) + askAll(things)
		}
	}
	if f.Says == "" && f.Verdict == Wrong {
		c.findPair(f, v)
	}
}

// doubtful reports whether a slip is seldom or one of measuring in a single term, of which there are so many at N, V and M that
// a number of three figures soon fits one. There it is asked about; what only a section knows is told.
func doubtful(s *slip.Slip) bool {
	measured := s.About == slip.Size || s.About == slip.Arm || s.About == slip.Line
	return s.Seldom || measured && s.Group != slip.Internal
}

// rivals lists the slips that hardly anyone makes at a section and that lead to a value as one slip in a term does; none where
// more would have to be asked than fits one question.
func (c *Case) rivals(v Typed, d slip.Diagnosis) []slip.Candidate {
	if d.Named().About == slip.Answer {
		return nil
	}
	rivals := slip.Diagnose(v.Readings(), c.section.unlikely()...).Matches
	if len(c.judge.things(slices.Concat(d.Matches, rivals))) > mostThings {
		return nil
	}
	return rivals
}

// slipSays is what a diagnosis of a wrong value says to the student: the one slip, a question that tells several apart,
// or, where the value fits none, nothing.
func (j Judge) slipSays(v Verdict, d slip.Diagnosis) string {
	if s := d.Named(); s != nil {
		return lowerFirst(j.inStyle(s.Says))
	}
	switch things := j.things(d.Matches); {
	case len(things) == 0:
		return ""
	case v == OtherSense:
		return onlySense + askSense(things)
	case len(things) == 1:
		return oneThing + askAll(things)
	default:
		return manyWays + askAll(things)
	}
}

// What begins a question about one thing, about several that lead to the same, and about a sense.
const (
	onlySense = "the size is right, but not the sense: "
	oneThing  = "one thing is worth a second look: "
	manyWays  = "a value like this can come about in more than one way: "
)

// oneOrTwo begins a question where a value fits one slip, and two common ones at once as well.
const oneOrTwo = "one thing or two at once may have led here: "

// withPairs lists what there is to ask about one slip and about pairs of slips; about the one alone where that is too much.
func (c *Case) withPairs(one []slip.Candidate, pairs []slip.Pair) []thing {
	if things := c.judge.things(oneAndPairs(one, pairs)); len(things) <= mostThings {
		return things
	}
	return c.judge.things(one)
}

// oneAndPairs lists one slip and those of pairs.
func oneAndPairs(one []slip.Candidate, pairs []slip.Pair) []slip.Candidate {
	all := slices.Clone(one)
	for _, p := range pairs {
		all = append(all, p[:]...)
	}
	return all
}

// findPair asks about two slips at once, where one pair alone would lead to the value.
func (c *Case) findPair(f *Finding, v Typed) {
	pairs := c.pairs(v)
	asks := c.judge.pairAsks(pairs)
	if len(asks) != 1 {
		return
	}
	f.Says = "two things at once may have led here: " + asks[0]
	for _, p := range pairs {
		f.note(p[0].Slip.ID + "+" + p[1].Slip.ID)
	}
}

// pairs lists the pairs of slips that a value agrees with.
func (c *Case) pairs(v Typed) []slip.Pair {
	var pairs []slip.Pair
	for i, t := range c.targets {
		pairs = append(pairs, slip.Pairs(v.Readings(), t.Value(), c.lists()[i])...)
	}
	return pairs
}

// pairAsks asks for what each pair is about, once.
func (j Judge) pairAsks(pairs []slip.Pair) []string {
	var asks []string
	for _, p := range pairs {
		if ask := askAll(j.things(p[:])); !slices.Contains(asks, ask) {
			asks = append(asks, ask)
		}
	}
	return asks
}

// A thing is one thing to ask for: what the terms of a giver are like in each aspect that slips are about, or where the
// slip is in no single term, what it asks for itself.
type thing struct {
	who     string // the giver, or empty
	force   bool   // it is a force with a value, not a load
	beyond  bool   // it acts on the other of two pieces than that which is shown
	aspects [slip.Answer]bool
	ask     string
}

// things lists what there is to ask for, each giver once.
func (j Judge) things(matches []slip.Candidate) []thing {
	var all []thing
	for _, m := range matches {
		t := thing{who: j.slipGiver(m.Giver), force: m.Giver.Force != statics.None}
		if t.who == "" || m.Slip.About == slip.Answer {
			t = thing{ask: m.Slip.Asks()}
		}
		i := slices.IndexFunc(all, func(u thing) bool { return t.who == u.who && t.ask == u.ask })
		if i < 0 {
			i, all = len(all), append(all, t)
		}
		if t.who != "" {
			all[i].aspects[m.Slip.About] = true
			all[i].beyond = j.piece != nil && !j.piece(m.Giver)
		}
	}
	for i := range all {
		if t := &all[i]; t.beyond && !t.aspects[slip.Presence] { // whether it counts is still to be said
			t.who += beyondCut
		}
	}
	return all
}

// beyondCut tells of what acts on the other piece that it is not in the figure of the one that is kept.
const beyondCut = " beyond the cut"

// asks asks for a thing of some givers that have the same aspects, or what it asks for itself.
func (t thing) asks(givers []string) string {
	if t.who == "" {
		return t.ask
	}
	var what []string
	for _, aspect := range []slip.Aspect{slip.Arm, slip.Sense, slip.Size} {
		if t.aspects[aspect] {
			what = append(what, t.word(aspect))
		}
	}
	var how []string
	if len(what) > 0 {
		how = append(how, "with what "+notation.List(what))
	}
	if t.aspects[slip.Line] {
		how = append(how, t.word(slip.Line))
	}
	with, who, do := notation.List(how), listed(givers), "does "
	if len(givers) > 1 || strings.HasPrefix(givers[0], "the two ") { // the two pulls of a rope
		do = "do "
	}
	switch {
	case with == "" && len(givers) > 1:
		return "which of " + who + " count in this sum"
	case with == "":
		return "does " + who + " count in this sum"
	case t.aspects[slip.Presence]:
		return do + who + " count in this sum and " + with
	}
	return with + " " + do + who + " enter"
}

// listed names givers, those beyond the cut last and that said once.
func listed(givers []string) string {
	var near, far []string
	for _, g := range givers {
		if name, beyond := strings.CutSuffix(g, beyondCut); beyond {
			far = append(far, name)
		} else {
			near = append(near, g)
		}
	}
	switch {
	case len(far) == 0:
		return notation.List(near)
	case len(near) == 0:
		return notation.List(far) + beyondCut
	}
	return strings.Join(near, ", ") + " and, beyond the cut, " + notation.List(far)
}

// word is what an aspect of a term is called: a load has a size, a known force a value; its line is asked for whole.
func (t thing) word(a slip.Aspect) string {
	switch {
	case a == slip.Arm:
		return "arm"
	case a == slip.Sense:
		return "sense"
	case a == slip.Line && t.force:
		return "along which line"
	case a == slip.Line:
		return "in which direction"
	case t.force:
		return "value"
	}
	return "size"
}

// mostThings is how many things one question may ask for.
const mostThings = 3

// askBroadly asks for everything, where more would have to be asked than fits one question.
const askBroadly = "written out, which terms are in the sum, and with which arms and senses?"

// askAll puts up to three things to ask into one question; of more, all givers into one, and beside them what two slips in no
// giver's term ask.
func askAll(things []thing) string {
	if len(things) > mostThings {
		if things = gathered(things); things == nil {
			return askBroadly
		}
	}
	return joined(alike(things))
}

// alike asks for each thing; what is asked of several givers is asked once.
func alike(things []thing) []string {
	var kinds []string
	same := map[string][]thing{} // of which the same is asked
	for _, t := range things {
		kind := t.asks([]string{""})
		if same[kind] == nil {
			kinds = append(kinds, kind)
		}
		same[kind] = append(same[kind], t)
	}
	var asks []string
	for _, kind := range kinds {
		var givers []string
		for _, t := range same[kind] {
			givers = append(givers, t.who)
		}
		asks = append(asks, same[kind][0].asks(givers))
	}
	return asks
}

// mostOfSense is how much is asked where only the sense is not right.
const mostOfSense = 2

// askSense asks for at most two things where the size is right: what the sign of the answer means, and whether and with what
// sense forces enter. Only where neither is in question, what else leads to the value.
func askSense(things []thing) string {
	if len(things) <= mostOfSense {
		return askAll(things)
	}
	var own, givers, others []thing
	for _, t := range things {
		switch {
		case t.who == "":
			own = append(own, t)
		case t.aspects[slip.Sense] || t.aspects[slip.Presence]:
			givers = append(givers, t)
		default:
			others = append(others, t)
		}
	}
	own = areaThenSide(own)
	first := min(len(own), 1)
	if len(givers) > 1 && len(givers) >= len(own) { // so many that the sense of one is no likely story
		first = len(own)
	}
	asks := slices.Concat(alike(own[:first]), onlySenses(givers), alike(own[first:]), alike(others))
	return joined(asks[:min(len(asks), mostOfSense)])
}

// areaThenSide makes one question of the sign of an area and of the side in tension, which follows from it.
func areaThenSide(own []thing) []thing {
	at := func(id string) int {
		return slices.IndexFunc(own, func(t thing) bool { return t.ask == slip.ByID(id).Asks() })
	}
	area, side := at("area-sign-lost"), at("moment-side")
	if area < 0 || side < 0 {
		return own
	}
	own[side].ask = own[area].ask + ", and so " + own[side].ask
	return slices.Delete(own, area, area+1)
}

// onlySenses asks in one whether and with what sense givers enter, of forces with what value too; of a single one all that is
// in question.
func onlySenses(givers []thing) []string {
	if len(givers) < 2 {
		return alike(givers)
	}
	all := thing{force: !slices.ContainsFunc(givers, func(t thing) bool { return !t.force })}
	var names []string
	for _, t := range givers {
		names = append(names, t.who)
		for _, a := range []slip.Aspect{slip.Sense, slip.Presence, slip.Size} {
			all.aspects[a] = all.aspects[a] || t.aspects[a] && (a != slip.Size || all.force)
		}
	}
	if len(names) > mostGivers {
		names = []string{"all loads and forces"}
	}
	all.who = names[0]
	return []string{all.asks(names)}
}

// mostGivers is how many givers one question may ask about.
const mostGivers = 5

// gathered lets the same be asked of all givers; nil where that is still too much.
func gathered(things []thing) []thing {
	var givers, own []thing
	var aspects [slip.Answer]bool
	for _, t := range things {
		if t.who == "" {
			own = append(own, t)
			continue
		}
		givers = append(givers, t)
		for a, is := range t.aspects {
			aspects[a] = aspects[a] || is
		}
	}
	if len(givers) > mostGivers || len(own) >= mostThings {
		return nil
	}
	for i := range givers {
		givers[i].aspects = aspects
	}
	return append(givers, own...)
}

// slipGiver names what a changed term comes from, or nothing.
func (j Judge) slipGiver(g slip.Giver) string {
	switch {
	case g.Force != statics.None:
		return j.Solution.Forces[g.Force].Name
	case g.Load != statics.None:
		return j.say().Whole(g.Load)
	}
	return ""
}

// lowerFirst begins a sentence in the small, as it stands after a verdict.
func lowerFirst(s string) string {
	r, size := utf8.DecodeRuneInString(s)
	return string(unicode.ToLower(r)) + s[size:]
}
