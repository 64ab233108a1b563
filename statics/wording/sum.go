package wording

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// SumTitle names a sum and its positive sense: "ΣM about C (counter-clockwise +)", "ΣFx (right +)".
func (w Speaker) SumTitle(s statics.Sum) string {
	sense := w.positiveSense(s)
	return w.SumName(s) + w.either(" ("+sense+" +)", ", "+sense+" positive")
}

// SumName names a sum: "ΣM about C", "ΣFx", "ΣF square to RD"; in ASCII "sum of moments about C".
func (w Speaker) SumName(s statics.Sum) string {
	if s.Moment {
		return w.either("ΣM", "sum of moments") + " about " + w.centre(s)
	}
	switch {
	case s.Along.Y.IsZero():
		return w.either("ΣFx", "sum of horizontal forces")
	case s.Along.X.IsZero():
		return w.either("ΣFy", "sum of vertical forces")
	}
	name := w.either("ΣF", "sum of forces")
	for _, t := range s.Terms {
		if t.Force != statics.None && t.Why == statics.SquareTo {
			return name + " square to " + w.a.Forces[t.Force].Name
		}
	}
	return name + " along " + w.st.Pair(s.Along.X, s.Along.Y, notation.Pure)
}

// BodyAndSum is the free body of a sum and the sum: "part CD, ΣM about C (counter-clockwise +)".
func (w Speaker) BodyAndSum(s statics.Sum) string { return Body(w.a, s.Body) + ", " + w.SumTitle(s) }

// centre is the centre of a moment sum: the name of its joint, or its place, "(8, 19.67)".
func (w Speaker) centre(s statics.Sum) string {
	if s.Centre != statics.None {
		return w.joint(s.Centre)
	}
	return w.st.Pair(s.About.X, s.About.Y, notation.Length)
}

// positiveSense is the sense that counts as positive in a sum.
func (w Speaker) positiveSense(s statics.Sum) string {
	if s.Moment {
		return w.st.Moments.Positive().String()
	}
	return notation.DirectionWord(s.Along)
}

// turn is the sense of a turn of that sign, counter-clockwise positive.
func turn(sign int) string {
	if sign < 0 {
		return notation.Clockwise.String()
	}
	return notation.CounterClockwise.String()
}

// Symbols is a sum with its forces by name and its loads by numbers: "Dy·6 − 4·6·3 − 10·2 = 0". Only the terms that
// count are in it.
func (w Speaker) Symbols(s statics.Sum) string { return w.Numbers(s, nil) }

// Numbers is Symbols with the values of the forces that known knows put in: "Cy + 15.33 − 24 − 10 = 0". A negative value
// stands in brackets, so that the sign of the term and that of the value are both seen. Known may be nil.
func (w Speaker) Numbers(s statics.Sum, known func(force int) (exact.Num, bool)) string {
	var b strings.Builder
	for _, t := range s.Terms {
		if t.Why != statics.Counts {
			continue
		}
		sign := t.Sign
		if s.Moment {
			sign = w.st.Moments.Sign(sign)
		}
		w.add(&b, sign < 0, w.product(s, t, known))
	}
	if b.Len() == 0 {
		b.WriteString("0")
	}
	return b.String() + w.equals() + "0"
}

// add adds a term with its sign.
func (w Speaker) add(b *strings.Builder, negative bool, size string) {
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
func (w Speaker) times() string {
	if w.spoken {
		return " times "
	}
	return w.either("·", "*")
}

// equals is the sign between two sides.
func (w Speaker) equals() string {
	if w.spoken {
		return " equals "
	}
	return " = "
}

// A sumFactor is one factor of a term: a name, or a number and what it measures.
type sumFactor struct {
	name string
	n    exact.Num
	d    notation.Dimension
}

// product writes a term as the product of its factors, its arm last.
func (w Speaker) product(s statics.Sum, t statics.Term, known func(int) (exact.Num, bool)) string {
	all := loadFactors(w.a, t)
	if t.Force != statics.None {
		all = forceFactors(w.a, t, known)
	}
	if s.Moment && t.What != statics.TurnOnly {
		all = append(all, sumFactor{n: t.Arm, d: notation.Length})
	}
	var texts []string
	for _, f := range all {
		texts = append(texts, w.factor(f, len(all) == 1))
	}
	return strings.Join(texts, w.times())
}

// factor writes one factor of a product: in brackets if it is negative, so that a value found earlier keeps its own sign
// beside that of the term, and unless it is alone if it is a multiple of letters.
func (w Speaker) factor(f sumFactor, alone bool) string {
	switch {
	case f.name != "":
		return f.name
	case f.d == notation.Pure:
		return w.st.Coefficient(f.n)
	}
	text := w.st.Given(f.n, f.d)
	if f.n.Sign() < 0 || !alone && strings.ContainsAny(text, "/ ") {
		return "(" + text + ")"
	}
	return text
}

// forceFactors are an unknown's name, or its value where that is known, and the component of it that the term is about.
func forceFactors(a *statics.Assembly, t statics.Term, known func(int) (exact.Num, bool)) []sumFactor {
	all := []sumFactor{{name: a.Forces[t.Force].Name}}
	if known != nil {
		if v, ok := known(t.Force); ok {
			all[0] = sumFactor{n: v, d: notation.ForceDimension(a.Forces[t.Force])}
		}
	}
	if !t.Size.Equal(one) {
		all = append(all, sumFactor{n: t.Size})
	}
	return all
}

// loadFactors are the factors of a load's force or couple and the component of it that the term is about.
func loadFactors(a *statics.Assembly, t statics.Term) []sumFactor {
	if t.Action == statics.None {
		return nil
	}
	x := a.Loads[t.Action]
	var all []sumFactor
	switch x.Shape {
	case statics.Turning:
		return []sumFactor{{n: x.Size.Abs(), d: notation.Moment}}
	case statics.AtPoint:
		all = []sumFactor{{n: x.Size.Abs(), d: notation.Force}}
	default:
		if x.Shape != statics.Uniform {
			all = []sumFactor{{n: half}}
		}
		all = append(all, sumFactor{n: x.Intensity.Abs(), d: notation.Intensity}, sumFactor{n: loadedLength(x), d: notation.Length})
	}
	if part := shareOf(x, t); !part.Equal(one) {
		all = append(all, sumFactor{n: part})
	}
	return all
}
