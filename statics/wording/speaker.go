package wording

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Speaker says what there is to say of one assembly, in one set of conventions.
type Speaker struct {
	a      *statics.Assembly
	st     notation.Style
	spoken bool
}

// New is the speaker of an assembly, in the form that the style asks for: with the signs of mathematics, or in ASCII.
func New(a *statics.Assembly, st notation.Style) Speaker { return Speaker{a: a, st: st} }

// Spoken is the same speaker for a reader who hears it: signs are words.
func (w Speaker) Spoken() Speaker {
	w.spoken = true
	return w
}

// either is the first text, or the second where there are no signs beyond ASCII.
func (w Speaker) either(signs, plain string) string {
	if w.st.ASCII || w.spoken {
		return plain
	}
	return signs
}

// joint is the name of a joint.
func (w Speaker) joint(j int) string { return w.a.Frame.Joints[j].Name }

// member is the name of a member.
func (w Speaker) member(m int) string { return w.a.Frame.Members[m].Name }

// names are the names of forces.
func (w Speaker) names(forces []int) []string {
	var names []string
	for _, i := range forces {
		names = append(names, w.a.Forces[i].Name)
	}
	return names
}

var (
	one  = exact.Int(1)
	half = over(one, exact.Int(2))
)

// over is a / b; where b is zero, which no load that acts has, zero.
func over(a, b exact.Num) exact.Num {
	q, err := a.Quo(b)
	if err != nil {
		return exact.Num{}
	}
	return q
}
