package wording

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// base is what a speaker rests on: the assembly and the form, the names of things, and the signs between them.
type base struct {
	a      *statics.Assembly
	st     notation.Style
	spoken bool
	short  bool // a number that came out has as few figures as those beside it
}

// either is the first text, or the second where there are no signs beyond ASCII.
func (w base) either(signs, plain string) string {
	if w.st.ASCII || w.spoken {
		return plain
	}
	return signs
}

// joint is the name of a joint.
func (w base) joint(j int) string { return w.a.Frame.Joints[j].Name }

// member is the name of a member.
func (w base) member(m int) string { return w.a.Frame.Members[m].Name }

// names are the names of forces.
func (w base) names(forces []int) []string {
	var names []string
	for _, i := range forces {
		names = append(names, w.a.Forces[i].Name)
	}
	return names
}

// members are the names of members.
func (w base) members(list []int) []string {
	var names []string
	for _, m := range list {
		names = append(names, w.member(m))
	}
	return names
}

// number is the text of a number; spoken, its minus is a word.
func (w base) number(text string) string {
	if size, negative := strings.CutPrefix(text, "-"); negative && w.spoken {
		return "minus " + size
	}
	return text
}

// found is a number that came out, in a line in which all numbers stand in full or not.
func (w base) found(n exact.Num, d notation.Dimension, inFull bool) string {
	if w.short && !inFull {
		return w.st.Among(n, d)
	}
	return w.st.Given(n, d)
}

// add adds a term with its sign.
func (w base) add(b *strings.Builder, negative bool, size string) {
	minus := w.either("−", "-")
	if w.spoken {
		minus = "minus"
	}
	switch {
	case b.Len() == 0 && negative && w.spoken:
		b.WriteString("minus ")
	case b.Len() == 0 && negative:
		b.WriteString(minus)
	case b.Len() == 0:
	case negative:
		b.WriteString(" " + minus + " ")
	case w.spoken:
		b.WriteString(" plus ")
	default:
		b.WriteString(" + ")
	}
	b.WriteString(size)
}

// times is the sign between two factors.
func (w base) times() string {
	if w.spoken {
		return " times "
	}
	return w.either("·", "*")
}

// equals is the sign between two sides.
func (w base) equals() string {
	if w.spoken {
		return " equals "
	}
	return " = "
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
