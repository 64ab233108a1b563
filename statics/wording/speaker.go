package wording

import (
	"unpin/statics"
	"unpin/statics/notation"
)

// A Speaker says what there is to say of one assembly, in one set of conventions. It is built up in layers, each of which
// uses those beneath: numbers and names, places, what is given, loads as they act, forces, sums; itself it says steps,
// sections and conventions.
type Speaker struct{ sums }

// The layers of a Speaker.
type (
	places  struct{ base }
	givens  struct{ places }
	actions struct{ givens }
	forces  struct{ actions }
	sums    struct{ forces }
)

// New is the speaker of an assembly, in the form that the style asks for: with the signs of mathematics, or in ASCII.
func New(a *statics.Assembly, st notation.Style) Speaker {
	return Speaker{sums{forces{actions{givens{places{base{a: a, st: st}}}}}}}
}

// Short is the same speaker for a page on which numbers that came out have few figures where they are carried on.
func (w Speaker) Short() Speaker {
	w.short = true
	return w
}

// Spoken is the same speaker for a reader who hears it: signs are words, and supports, connections and loads are told by
// what they do.
func (w Speaker) Spoken() Speaker {
	w.spoken = true
	return w
}
