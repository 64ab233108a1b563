package notation

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
)

// SumTitle names a sum and its positive sense: "ΣM about C (counter-clockwise +)", "ΣFx (right +)".
func SumTitle(a *statics.Assembly, s statics.Sum, st Style) string {
	if st.ASCII {
		return SumName(a, s, st) + ", " + st.positiveSense(s) + " positive"
	}
	return SumName(a, s, st) + " (" + st.positiveSense(s) + " +)"
}

// SumName names a sum: "ΣM about C", "ΣFx", "ΣF square to RD"; in ASCII "sum of moments about C".
func SumName(a *statics.Assembly, s statics.Sum, st Style) string {
	if s.Moment {
		return st.either("ΣM", "sum of moments") + " about " + CentreText(a, s, st)
	}
	switch {
	case s.Along.Y.IsZero():
		return st.either("ΣFx", "sum of horizontal forces")
	case s.Along.X.IsZero():
		return st.either("ΣFy", "sum of vertical forces")
	}
	name := st.either("ΣF", "sum of forces")
	for _, t := range s.Terms {
		if t.Force != statics.None && t.Why == statics.SquareTo {
			return name + " square to " + a.Forces[t.Force].Name
		}
	}
	return name + " along " + st.pair(s.Along.X, s.Along.Y, Pure)
}

// either is the first text, or in ASCII the second.
func (st Style) either(text, ascii string) string {
	if st.ASCII {
		return ascii
	}
	return text
}

// positiveSense is the sense that counts as positive in a sum.
func (st Style) positiveSense(s statics.Sum) string {
	if s.Moment {
		return turnWord(1, st.ClockwisePositive)
	}
	return DirectionWord(s.Along)
}

// turnWord is the sense of a turn of that sign, counter-clockwise positive unless flipped.
func turnWord(sign int, flipped bool) string {
	if (sign > 0) != flipped {
		return CounterClockwise.String()
	}
	return Clockwise.String()
}

// DirectionWord is the sense of a direction: "right", "up", "down to the left". It is empty for no direction.
func DirectionWord(v statics.Vector) string { return towards(v.X.Sign(), v.Y.Sign()).String() }

// CentreText is the centre of a moment sum: the name of its joint, or its place, "(8, 19.67)".
func CentreText(a *statics.Assembly, s statics.Sum, st Style) string {
	if s.Centre != statics.None {
		return a.Frame.Joints[s.Centre].Name
	}
	return st.pair(s.About.X, s.About.Y, Length)
}

// pair is two numbers as a point or direction.
func (st Style) pair(x, y exact.Num, d Dimension) string {
	separator := ", "
	if st.Comma {
		separator = "; "
	}
	return "(" + st.Given(x, d) + separator + st.Given(y, d) + ")"
}

// SumSymbols is the sum with its forces by name and its loads by numbers: "Dy·6 − 4·6·3 − 10·2 = 0". Only the terms
// that count are in it.
func SumSymbols(a *statics.Assembly, s statics.Sum, st Style) string {
	return SumNumbers(a, s, nil, st)
}

// SumNumbers is SumSymbols with the values of the forces that known knows put in: "Cy + 15.33 − 24 − 10 = 0". A
// negative value stands in brackets, so that the sign of the term and that of the value are both seen. Known may be nil.
func SumNumbers(a *statics.Assembly, s statics.Sum, known func(force int) (exact.Num, bool), st Style) string {
	var b strings.Builder
	for _, t := range s.Terms {
		if t.Why != statics.Counts {
			continue
		}
		negative := t.Sign < 0
		if s.Moment && st.ClockwisePositive {
			negative = !negative
		}
		b.WriteString(st.joint(negative, b.Len() == 0))
		b.WriteString(st.product(a, s, t, known))
	}
	if b.Len() == 0 {
		return "0 = 0"
	}
	return b.String() + " = 0"
}

// joint is the sign before a term.
func (st Style) joint(negative, first bool) string {
	switch {
	case first && negative:
		return st.sign("-")
	case first:
		return ""
	case negative:
		return st.sign(" - ")
	}
	return " + "
}

// A sumFactor is one factor of a term: a name, or a number and what it measures.
type sumFactor struct {
	name string
	n    exact.Num
	d    Dimension
}

// product writes a term as the product of its factors, its arm last.
func (st Style) product(a *statics.Assembly, s statics.Sum, t statics.Term, known func(int) (exact.Num, bool)) string {
	all := loadFactors(a, t)
	if t.Force != statics.None {
		all = forceFactors(a, t, known)
	}
	if s.Moment && t.What != statics.TurnOnly {
		all = append(all, sumFactor{n: t.Arm, d: Length})
	}
	var texts []string
	for _, f := range all {
		texts = append(texts, st.factor(f, len(all) == 1))
	}
	return strings.Join(texts, st.either("·", "*"))
}

// factor writes one factor of a product: in brackets if it is negative, so that a value found earlier keeps its own sign
// beside that of the term, and unless it is alone if it is a multiple of letters.
func (st Style) factor(f sumFactor, alone bool) string {
	switch {
	case f.name != "":
		return f.name
	case f.d == Pure:
		return st.share(f.n)
	}
	text := st.Given(f.n, f.d)
	if f.n.Sign() < 0 || !alone && strings.ContainsAny(text, "/ ") {
		return "(" + text + ")"
	}
	return text
}

// forceFactors are an unknown's name, or its value where that is known, and the share of it that the term is about.
func forceFactors(a *statics.Assembly, t statics.Term, known func(int) (exact.Num, bool)) []sumFactor {
	all := []sumFactor{{name: a.Forces[t.Force].Name}}
	if known != nil {
		if v, ok := known(t.Force); ok {
			all[0] = sumFactor{n: v, d: ForceDimension(a.Forces[t.Force])}
		}
	}
	if !t.Size.Equal(one) {
		all = append(all, sumFactor{n: t.Size})
	}
	return all
}

// ForceDimension is what the value of a force measures.
func ForceDimension(f statics.Force) Dimension {
	if f.Couple {
		return Moment
	}
	return Force
}

// loadFactors are the factors of a load's force or couple and the share of it that the term is about.
func loadFactors(a *statics.Assembly, t statics.Term) []sumFactor {
	if t.Action == statics.None {
		return nil
	}
	x := a.Loads[t.Action]
	var all []sumFactor
	switch x.Shape {
	case statics.Turning:
		return []sumFactor{{n: x.Size.Abs(), d: Moment}}
	case statics.AtPoint:
		all = []sumFactor{{n: x.Size.Abs(), d: Force}}
	default:
		if x.Shape != statics.Uniform {
			all = []sumFactor{{n: half}}
		}
		all = append(all, sumFactor{n: x.Intensity.Abs(), d: Intensity}, sumFactor{n: loadedLength(x), d: Length})
	}
	if share := shareOf(x, t); !share.Equal(one) {
		all = append(all, sumFactor{n: share})
	}
	return all
}

// shareOf is how much of a load's force a term is about.
func shareOf(x statics.Action, t statics.Term) exact.Num { return over(t.Size, x.Size.Abs()) }

var half = over(one, exact.Int(2))

// loadedLength is the length on which the intensity of a spread action is counted: of the member, its run or its rise.
func loadedLength(x statics.Action) exact.Num {
	length := over(x.Size.Abs(), x.Intensity.Abs())
	if x.Shape != statics.Uniform {
		length = length.Mul(exact.Int(2))
	}
	return length
}

// TermText is one term of a sum in words: "4 kN/m over 6 m (24 kN) × 3 m, clockwise", "0.8 of RD, up". For a term that
// does not count it says why.
func TermText(a *statics.Assembly, s statics.Sum, t statics.Term, st Style) string {
	if t.Why != statics.Counts {
		return absenceClause(a, s, []statics.Term{t}, st)
	}
	text := st.giver(a, t)
	switch {
	case t.What == statics.TurnOnly:
		return text + ", " + turnWord(t.Sign, false)
	case s.Moment:
		return fmt.Sprintf("%s %s %s, %s", text, st.either("×", "x"), st.WithUnit(t.Arm, Length), turnWord(t.Sign, false))
	}
	along := s.Along
	if t.Sign < 0 {
		along = along.Neg()
	}
	return text + ", " + DirectionWord(along)
}

// giver is the force of a term in words, without arm and sense.
func (st Style) giver(a *statics.Assembly, t statics.Term) string {
	part := ""
	if name, ok := componentNames[t.What]; ok {
		part = "the " + name + " component "
	}
	if t.Force != statics.None {
		name := a.Forces[t.Force].Name
		if !t.Size.Equal(one) {
			name = st.share(t.Size) + st.either("·", "*") + name
		}
		return part + name
	}
	x := a.Loads[t.Action]
	switch {
	case x.Shape == statics.Turning:
		return "the couple " + st.WithUnit(x.Size.Abs(), Moment)
	case shareOf(x, t).Equal(one):
		return st.sizeText(a, x)
	case part == "":
		return st.sizeText(a, x) + ", of which " + st.WithUnit(t.Size, Force)
	}
	return part + "of " + st.sizeText(a, x) + ", " + st.WithUnit(t.Size, Force)
}

var componentNames = map[statics.Component]string{statics.Horizontal: "horizontal", statics.Vertical: "vertical"}

// sizeText is the size of a load: "10 kN", "4 kN/m over 6 m (24 kN)", "half of 6 kN/m over 2 m of run (6 kN)".
func (st Style) sizeText(a *statics.Assembly, x statics.Action) string {
	if x.Shape == statics.AtPoint {
		return st.WithUnit(x.Size.Abs(), Force)
	}
	text := fmt.Sprintf("%s over %s%s (%s)", st.WithUnit(x.Intensity.Abs(), Intensity), st.WithUnit(loadedLength(x), Length),
		perText(a, x), st.WithUnit(x.Size.Abs(), Force))
	if x.Shape != statics.Uniform {
		return "half of " + text
	}
	return text
}
