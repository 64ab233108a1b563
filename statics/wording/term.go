package wording

import (
	"fmt"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// componentNames are the components that a term of two is about.
var componentNames = map[statics.Component]string{statics.Horizontal: "horizontal", statics.Vertical: "vertical"}

// Source names the force or load that a term comes from: "Ay", "the 5 kN load on AB".
func (w sums) Source(t statics.Term) string {
	if t.Force != statics.None {
		return w.a.Forces[t.Force].Name
	}
	return w.Action(t.Action)
}

// Component is Source with the component that a term of two is about: "the horizontal component of the 5 kN load on AB".
func (w sums) Component(t statics.Term) string {
	if name, ok := componentNames[t.What]; ok {
		return "the " + name + " component of " + w.Source(t)
	}
	return w.Source(t)
}

// Term is one term of a sum in words: "4 kN/m over 6 m (24 kN) × 3 m, clockwise", "0.8 of RD, up". For a term that does
// not count it says why.
func (w sums) Term(s statics.Sum, t statics.Term) string {
	if t.Why != statics.Counts {
		return w.absence(s, []statics.Term{t})
	}
	text := w.TermSize(t)
	if s.Moment && t.What != statics.TurnOnly {
		text = fmt.Sprintf("%s %s %s", text, w.across(), w.st.WithUnit(t.Arm, notation.Length))
	}
	return text + ", " + TermSense(s, t)
}

// TermSense is the sense of a term that counts: "clockwise", "up".
func TermSense(s statics.Sum, t statics.Term) string {
	switch {
	case s.Moment || t.What == statics.TurnOnly:
		return Turn(t.Sign)
	case t.Sign < 0:
		return notation.DirectionWord(s.Along.Neg())
	}
	return notation.DirectionWord(s.Along)
}

// TermActs tells how one term acts in a sum, with the value of its force where known knows it: "Dy, 15.3 kN, has an arm of
// 6 m and turns counter-clockwise", whatever turn the sum counts as positive.
func (w sums) TermActs(s statics.Sum, t statics.Term, known func(force int) (exact.Num, bool)) string {
	text, sign := w.Component(t), t.Sign
	if t.Force != statics.None {
		value, ok := known(t.Force)
		switch {
		case ok && value.IsZero():
			return text + " is 0"
		case ok:
			text += ", " + w.st.Result(value.Abs(), notation.ForceDimension(w.a.Forces[t.Force])) + ","
			sign *= value.Sign()
		}
	}
	if s.Moment {
		if t.What != statics.TurnOnly {
			text += " has an arm of " + w.st.WithUnit(t.Arm, notation.Length) + " and"
		}
		return text + " turns " + Turn(sign)
	}
	along := s.Along
	if sign < 0 {
		along = along.Neg()
	}
	return text + " acts " + notation.DirectionWord(along)
}

// across is the sign between a force and its arm.
func (w sums) across() string {
	if w.spoken {
		return "times"
	}
	return w.either("×", "x")
}

// TermSize is the force of a term that counts, in words, without arm and sense: "4 kN/m over 6 m (24 kN)".
func (w sums) TermSize(t statics.Term) string {
	part := ""
	if name, ok := componentNames[t.What]; ok {
		part = "the " + name + " component "
	}
	if t.Force != statics.None {
		name := w.a.Forces[t.Force].Name
		if !t.Size.Equal(one) {
			name = w.st.Coefficient(t.Size) + w.times() + name
		}
		return part + name
	}
	x := w.a.Actions[t.Action]
	switch {
	case x.Shape == statics.Turning:
		return "the couple " + w.st.WithUnit(x.Size.Abs(), notation.Moment)
	case shareOf(x, t).Equal(one):
		return w.loadSize(x)
	case part == "":
		return w.loadSize(x) + ", of which " + w.st.WithUnit(t.Size, notation.Force)
	}
	return part + "of " + w.loadSize(x) + ", " + w.st.WithUnit(t.Size, notation.Force)
}

// loadSize is the size of a load: "10 kN", "4 kN/m over 6 m (24 kN)", "half of 6 kN/m over 2 m of run (6 kN)".
func (w sums) loadSize(x statics.Action) string {
	if x.Shape == statics.AtPoint {
		return w.st.WithUnit(x.Size.Abs(), notation.Force)
	}
	text := fmt.Sprintf("%s over %s%s (%s)", w.st.WithUnit(x.Intensity.Abs(), notation.Intensity),
		w.st.WithUnit(loadedLength(x), notation.Length), perText(w.a, x), w.st.WithUnit(x.Size.Abs(), notation.Force))
	if x.Shape != statics.Uniform {
		return "half of " + text
	}
	return text
}

// shareOf is how much of a load's force a term is about.
func shareOf(x statics.Action, t statics.Term) exact.Num { return over(t.Size, x.Size.Abs()) }

// loadedLength is the length on which the intensity of a spread action is counted: of the member, its run or its rise.
func loadedLength(x statics.Action) exact.Num {
	length := over(x.Size.Abs(), x.Intensity.Abs())
	if x.Shape != statics.Uniform {
		length = length.Mul(exact.Int(2))
	}
	return length
}
