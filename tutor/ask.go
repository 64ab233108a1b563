package tutor

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// What slips say: the one that a wrong value came from, or a question that tells several apart.

// slipOr says which slip a wrong value came from, or asks; if it fits none, it says where to look.
func (l *Lesson) slipOr(q Question, v Verdict, typed Typed, where func(Question, Verdict) string) string {
	if l.passesNoCouple(q) {
		if l.answers[l.at].tries > 1 {
			return where(q, v)
		}
		return noCouple
	}
	lists := l.allCandidates(q)
	d := slip.Diagnose(typed.places(), lists...)
	says := l.slipSays(v, d)
	for _, m := range d.Matches {
		l.trace(m.Slip.ID)
	}
	if says == "" && v == Wrong {
		says = l.pairText(q, typed, lists)
	}
	if says == "" {
		return where(q, v)
	}
	return says
}

// noCouple is said of a wrong moment at an end that is free or can turn: whatever led to it, this it missed.
const noCouple = "an end that is free or can turn passes no couple, so what moment can be left at this end of the member?"

// passesNoCouple reports whether a question is for the moment at such an end.
func (l *Lesson) passesNoCouple(q Question) bool {
	if q.Kind != SectionPart || q.Quantity != BendingMoment || !q.truth.IsZero() {
		return false
	}
	switch l.spotOf(q) {
	case pinned, supported, free:
		return true
	}
	return false
}

// slipSays is what a diagnosis of a wrong value says to the student: the one slip, a question that tells several apart,
// or, where the value fits none, nothing.
func (l *Lesson) slipSays(v Verdict, d slip.Diagnosis) string {
	if s := d.Named(); s != nil {
		return lowerFirst(s.Says)
	}
	switch things := l.things(d.Matches); {
	case len(things) == 0:
		return ""
	case v == OtherSense:
		return "the size is right, but not the sense: " + askAll(things)
	case len(things) == 1:
		return "one thing is worth a second look: " + askAll(things)
	default:
		return "a value like this can come about in more than one way: " + askAll(things)
	}
}

// trace notes a slip that leads to the line in hand, once.
func (l *Lesson) trace(id string) {
	if !slices.Contains(l.traced, id) {
		l.traced = append(l.traced, id)
	}
}

// pairText asks about two slips at once, where one pair alone would lead to the value.
func (l *Lesson) pairText(q Question, v Typed, lists [][]slip.Candidate) string {
	var pairs []slip.Pair
	for i, t := range l.targets(q) {
		pairs = append(pairs, slip.Pairs(v.places(), t.Value(), lists[i])...)
	}
	if asks := l.pairAsks(pairs); len(asks) == 1 {
		for _, p := range pairs {
			l.trace(p[0].Slip.ID + "+" + p[1].Slip.ID)
		}
		return "two things at once may have led here: " + asks[0]
	}
	return ""
}

// pairAsks asks for what each pair is about, once.
func (l *Lesson) pairAsks(pairs []slip.Pair) []string {
	var asks []string
	for _, p := range pairs {
		if ask := askAll(l.things(p[:])); !slices.Contains(asks, ask) {
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
	aspects [slip.Answer]bool
	ask     string
}

// things lists what there is to ask for, each giver once.
func (l *Lesson) things(matches []slip.Candidate) []thing {
	var all []thing
	for _, m := range matches {
		t := thing{who: l.slipGiver(m.Giver), force: m.Giver.Force != statics.None}
		if t.who == "" || m.Slip.About == slip.Answer {
			t = thing{ask: m.Slip.Asks()}
		}
		i := slices.IndexFunc(all, func(u thing) bool { return t.who == u.who && t.ask == u.ask })
		if i < 0 {
			i, all = len(all), append(all, t)
		}
		if t.who != "" {
			all[i].aspects[m.Slip.About] = true
		}
	}
	return all
}

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
	with, who, do := "with what "+notation.List(what), notation.List(givers), "does "
	if len(givers) > 1 {
		do = "do "
	}
	switch {
	case len(what) == 0 && len(givers) > 1:
		return "which of " + who + " count in this sum"
	case len(what) == 0:
		return "does " + who + " count in this sum"
	case t.aspects[slip.Presence]:
		return do + who + " count in this sum and " + with
	}
	return with + " " + do + who + " enter"
}

// word is what an aspect of a term is called: a load has a size, a known force a value.
func (t thing) word(a slip.Aspect) string {
	switch {
	case a == slip.Arm:
		return "arm"
	case a == slip.Sense:
		return "sense"
	case t.force:
		return "value"
	}
	return "size"
}

// mostThings is how many things one question may ask for.
const mostThings = 3

// askBroadly asks for everything, where more would have to be asked than fits one question.
const askBroadly = "written out, which terms are in the sum, and with which arms and senses?"

// askAll puts up to three things to ask into one question, and one of its own in the place of more.
// What is asked of several givers is asked once.
func askAll(things []thing) string {
	if len(things) > mostThings {
		return askBroadly
	}
	var kinds []string
	alike := map[string][]thing{} // of which the same is asked
	for _, t := range things {
		kind := t.asks([]string{""})
		if alike[kind] == nil {
			kinds = append(kinds, kind)
		}
		alike[kind] = append(alike[kind], t)
	}
	var asks []string
	for _, kind := range kinds {
		var givers []string
		for _, t := range alike[kind] {
			givers = append(givers, t.who)
		}
		asks = append(asks, alike[kind][0].asks(givers))
	}
	return strings.Join(asks, ", and ") + "?"
}

// slipGiver names what a changed term comes from, or nothing.
func (l *Lesson) slipGiver(g slip.Giver) string {
	switch {
	case g.Force != statics.None:
		return l.Solution.Forces[g.Force].Name
	case g.Load != statics.None:
		for i, x := range l.Solution.Loads {
			if x.Load == g.Load {
				return wording.New(l.Solution.Assembly, l.style()).Action(i)
			}
		}
	}
	return ""
}

// lowerFirst begins a sentence in the small, as it stands after a verdict.
func lowerFirst(s string) string {
	r, size := utf8.DecodeRuneInString(s)
	return string(unicode.ToLower(r)) + s[size:]
}
