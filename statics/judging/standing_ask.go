package judging

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics/notation"
	"unpin/statics/slip"
)

// A query is what is asked about one term of what stands, or about several in one.
type query struct {
	one, many string // with %s for what it is about; one alone where that is no term
	of        string // the term as it is printed
}

// plain is a query that is about no one term.
func plain(text string) query { return query{one: text} }

// putAll puts several questions into one sentence; what is asked of several terms is asked once, where it is first asked.
func putAll(all []query) string {
	var asks []string
	for i, q := range all {
		same := func(o query) bool { return o.one == q.one }
		if slices.IndexFunc(all, same) < i {
			continue
		}
		var of []string
		for _, o := range all {
			if same(o) && !slices.Contains(of, o.of) {
				of = append(of, o.of)
			}
		}
		switch {
		case q.many == "":
			asks = append(asks, q.one)
		case len(of) == 1:
			asks = append(asks, fmt.Sprintf(q.one, of[0]))
		default:
			asks = append(asks, fmt.Sprintf(q.many, notation.List(of)))
		}
	}
	return joined(asks)
}

// askEach asks about each of some terms; about those of what is asked for, by which the rest is divided, in one.
func askEach(terms []*standingTerm) []query {
	var asks []query
	var own []string
	for _, t := range terms {
		if t.own {
			own = append(own, t.text)
		} else {
			asks = append(asks, t.ask())
		}
	}
	if len(own) > 0 {
		asks = append(asks, plain("with "+notation.List(own)+" in the sum, what do you divide by"))
	}
	return asks
}

// ask asks about a term, other than one of what is asked for alone, what the slips in it are about.
func (t *standingTerm) ask() query {
	var one, many []string
	it, they := "%s", "%s" // at first by its text
	add := func(ask, askMany string) {
		one, many = append(one, strings.Replace(ask, "IT", it, 1)), append(many, strings.Replace(askMany, "THEY", they, 1))
		it, they = "it", "they"
	}
	multiplied := t.works[slip.Multiplying] || t.works[slip.Measuring] || t.works[slip.Choosing]
	asItStands := func() { add("is IT in your working as it stands", "are THEY in your working as they stand") }
	switch copied := t.works[slip.Copying]; {
	case t.unknown:
		asItStands()
	case t.named && !t.several && (copied || multiplied):
		add("which value goes in for IT", "which values go in for THEY")
	case t.named && copied:
		add("which value goes into IT", "which values go into THEY")
	case t.several && (copied || multiplied):
		add("what is the product IT", "what are the products THEY")
	case copied || multiplied:
		asItStands()
	}
	switch crossed := t.works[slip.Moving] || t.works[slip.Dividing]; {
	case crossed && t.dropped && t.named && !t.several:
		add("is the value of IT in your calculation", "are the values of THEY in your calculation")
	case crossed && t.dropped:
		add("is IT in your calculation", "are THEY in your calculation")
	case crossed:
		add("which sign does IT have on the other side", "which signs do THEY have on the other side")
	}
	return query{one: notation.List(one), many: strings.Join(many, ", and "), of: t.text}
}
