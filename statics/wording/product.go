package wording

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A sumFactor is one factor of a term: a name, or a number and what it measures.
type sumFactor struct {
	name string
	n    exact.Num
	d    notation.Dimension
	out  bool // the number came out of a sum before
}

// Product is a term of a sum as the sum is written, without its sign: "4·6·3", "Cy·8".
func (w sums) Product(s statics.Sum, t statics.Term) string { return w.product(s, t, nil) }

// Factors is of how many factors the product of a term is, as the sum is written.
func (w sums) Factors(s statics.Sum, t statics.Term) int { return len(w.productFactors(s, t, nil)) }

// product writes a term as the product of its factors, its arm last.
func (w sums) product(s statics.Sum, t statics.Term, known func(int) (exact.Num, bool)) string {
	all := w.productFactors(s, t, known)
	return w.factors(all, w.inFull(all))
}

// productFactors are the factors of a term as a product.
func (w sums) productFactors(s statics.Sum, t statics.Term, known func(int) (exact.Num, bool)) []sumFactor {
	all := loadFactors(w.a, t)
	if t.Force != statics.None {
		all = forceFactors(w.a, t, known)
	}
	if s.Moment && t.What != statics.TurnOnly {
		all = append(all, sumFactor{n: t.Arm, d: notation.Length})
	}
	return all
}

// inFull reports whether all numbers among factors are written in full.
func (w sums) inFull(all []sumFactor) bool {
	return !slices.ContainsFunc(all, func(f sumFactor) bool {
		return f.name == "" && !w.st.IsFull(f.n) && (f.d != notation.Pure || !strings.Contains(w.st.Coefficient(f.n), "/"))
	})
}

// factors writes a product, in a line in which all numbers stand in full or not.
func (w sums) factors(all []sumFactor, inFull bool) string {
	var texts []string
	for _, f := range all {
		texts = append(texts, w.factor(f, len(all) == 1, inFull))
	}
	return strings.Join(texts, w.times())
}

// factor writes one factor of a product: in brackets if it is negative, so that a value found earlier keeps its own sign
// beside that of the term, and unless it is alone if it is a multiple of letters.
func (w sums) factor(f sumFactor, alone, inFull bool) string {
	switch {
	case f.name != "":
		return f.name
	case f.d == notation.Pure:
		return w.st.Coefficient(f.n)
	}
	text := w.st.Given(f.n, f.d)
	if f.out {
		text = w.found(f.n, f.d, inFull)
	}
	if text = w.number(text); w.spoken {
		return text
	}
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
			all[0] = sumFactor{n: v, d: notation.ForceDimension(a.Forces[t.Force]), out: true}
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
	x := a.Actions[t.Action]
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
