package tutor

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// What slips say: the one that a wrong value came from, or a question that tells several apart.

// slipOr says which slip a wrong value came from, or asks; if it fits none, it says where to look.
func (l *Lesson) slipOr(q Question, v Verdict, typed Typed, where func(Question, Verdict) string) string {
	says := l.slipSays(v, l.diagnose(q, typed))
	if says == "" && v == Wrong {
		says = l.pairText(q, typed)
	}
	if says == "" {
		return where(q, v)
	}
	return says
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

// pairText asks about two slips at once, where one pair alone would lead to the value.
func (l *Lesson) pairText(q Question, v Typed) string {
	var pairs []slip.Pair
	for _, t := range l.targets(q) {
		pairs = append(pairs, slip.Pairs(v.places(), t.Value(), t.Candidates())...)
	}
	if asks := l.pairAsks(pairs); len(asks) == 1 {
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

// presenceOnly reports whether the one question is whether a giver counts.
func (t thing) presenceOnly() bool {
	return t.who != "" && t.aspects == [slip.Answer]bool{slip.Presence: true}
}

// asks asks for a thing.
func (t thing) asks() string {
	if t.who == "" {
		return t.ask
	}
	var what []string
	for aspect, word := range map[slip.Aspect]string{slip.Size: sizeWord(t.force), slip.Arm: "arm", slip.Sense: "sense"} {
		if t.aspects[aspect] {
			what = append(what, word)
		}
	}
	slices.Sort(what)
	with := "with what " + notation.List(what)
	switch {
	case len(what) == 0:
		return "does " + t.who + " count in this sum"
	case t.aspects[slip.Presence]:
		return "does " + t.who + " count in this sum, and " + with
	}
	return with + " does " + t.who + " enter"
}

// sizeWord is what the size of a term is called: a load has a size, a known force a value.
func sizeWord(force bool) string {
	if force {
		return "value"
	}
	return "size"
}

// mostThings is how many things one question may ask for.
const mostThings = 3

// askBroadly asks for everything, where more would have to be asked than fits one question.
const askBroadly = "written out, which terms are in the sum, and with which arms and senses?"

// askAll puts up to three things to ask into one question, and one of its own in the place of more. Givers that may or
// may not count come first, together.
func askAll(things []thing) string {
	if len(things) > mostThings {
		return askBroadly
	}
	var givers, asks []string
	for _, t := range things {
		if t.presenceOnly() {
			givers = append(givers, t.who)
		} else {
			asks = append(asks, t.asks())
		}
	}
	switch len(givers) {
	case 0:
	case 1:
		asks = append([]string{"does " + givers[0] + " count in this sum"}, asks...)
	default:
		asks = append([]string{"which of " + notation.List(givers) + " count in this sum"}, asks...)
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
				return notation.ActionText(l.Solution.Assembly, i, l.style())
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
