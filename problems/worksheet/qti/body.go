package qti

import (
	"strings"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/wording"
)

// statement is the problem: its text, the figure, and what that shows in words.
func (i *item) statement() []*element {
	var all []*element
	for line := range strings.Lines(i.Problem.Text) {
		if text := oneLine(line); text != "" {
			all = append(all, el("p", text))
		}
	}
	list := el("ul")
	for _, w := range figure.Describe(i.Assembly, figure.Options{Style: i.Problem.Style(false)}) {
		list.add(el("li", w))
	}
	all = append(all, el("div", el("img", at("src", i.id+".svg"), at("alt", "The frame as given; a list below tells all of it in words."))),
		el("h3", "The frame in words"), list, el("p", "Units: "+i.say.Units()+"."))
	if i.Code != "" {
		all = append(all, el("p", "Code of this copy: "+i.Code))
	}
	return append(all, el("p", el("small", wording.Caution)))
}

// howToType says how answers are written.
const howToType = "Give each answer with three significant figures or more, and with a decimal point: 12.5, not 12,5. A minus, as in -3, " +
	"means the sense opposite to the positive one."

// entries are the answers to fill in: the forces, then member by member what is asked along it.
func (i *item) entries() []*element {
	how := howToType
	if i.Problem.Units.Letters() {
		how += " A fraction is typed as a decimal: 0.375 for 3/8."
	}
	all := []*element{el("h3", "Answers"), el("p", how)}
	for n, a := range i.answers {
		switch {
		case n > 0 && i.answers[n-1].member == a.member:
		case a.member == statics.None:
			all = append(all, el("h4", "Forces"))
		default:
			all = append(all, el("h4", i.say.Member(a.member)), el("p", i.say.SectionSigns(a.member)))
		}
		all = append(all, i.entry(a))
	}
	return all
}

// pattern is what a number looks like, as an expression that XML Schema, Perl and ECMAScript (with its flag v, by which
// browsers read it) take alike.
const pattern = `[ ]*[+\-]?([0-9]+(\.[0-9]*)?|\.[0-9]+)[ ]*`

// entry is one answer to fill in, with what is told of it.
func (i *item) entry(a answer) *element {
	sense, unit := "", ""
	if a.sense != "" {
		sense = ", " + a.sense
	}
	if a.unit != "" {
		unit = ", in " + a.unit
	}
	box := el("textEntryInteraction", at("responseIdentifier", a.id), at("expectedLength", "10"), at("patternMask", pattern))
	name := a.label + sense + unit
	if i.version == V21 {
		box.add(at("label", name))
	} else {
		box.add(at("aria-label", name), at("data-patternmask-message", "Type a number with a decimal point, as 12.5 or -3."))
	}
	line := el("p", el("strong", a.label), sense+": ", box)
	if a.unit != "" {
		line.add(" " + a.unit)
	}
	return el("div", line, i.told(a))
}

// told are the texts of what is told of an answer, each shown where it holds.
func (i *item) told(a answer) []*element {
	show := func(id, says string) *element {
		text := el("p", says)
		if i.version == V30 {
			text = el("contentBody", text)
		}
		return el("feedbackBlock", at("outcomeIdentifier", ofAnswer+a.id), at("identifier", id), at("showHide", "show"), text)
	}
	all := []*element{show(isRight, "Right.")}
	for _, f := range a.feedback {
		all = append(all, show(f.id, "Not yet: "+f.says))
	}
	return append(all, show(isWrong, "Not yet."))
}
