package wording

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Symbols is a sum with its forces by name and its loads by numbers: "Dy·6 − 4·6·3 − 10·2 = 0". Only the terms that
// count are in it.
func (w sums) Symbols(s statics.Sum) string { return w.Numbers(s, nil) }

// Numbers is Symbols with the values of the forces that known knows put in: "Cy + 15.33 − 24 − 10 = 0". A negative value
// stands in brackets, so that the sign of the term and that of the value are both seen. Known may be nil.
func (w sums) Numbers(s statics.Sum, known func(force int) (exact.Num, bool)) string {
	var terms [][]sumFactor
	var b strings.Builder
	inFull := true
	for _, t := range s.Terms() {
		if t.Why == statics.Counts {
			terms = append(terms, w.productFactors(s, t, known))
			inFull = inFull && w.inFull(terms[len(terms)-1])
		}
	}
	for _, t := range s.Terms() {
		if t.Why != statics.Counts {
			continue
		}
		w.add(&b, (t.Sign < 0) != w.reversed(s), w.factors(terms[0], inFull))
		terms = terms[1:]
	}
	if b.Len() == 0 {
		b.WriteString("0")
	}
	return b.String() + w.equals() + "0"
}

// Added is a sum as it adds up with the values of all forces, term by term: "12 − 8 − 4 = 0".
func (w sums) Added(s statics.Sum, values []exact.Num) string {
	var b strings.Builder
	inFull := !slices.ContainsFunc(s.Terms(), func(t statics.Term) bool { return t.Why == statics.Counts && !w.st.IsFull(t.Amount(values)) })
	for _, t := range s.Terms() {
		if t.Why != statics.Counts {
			continue
		}
		v := t.Amount(values)
		if s.Moment {
			v = w.st.Moments.Value(v)
		}
		w.add(&b, v.Sign() < 0, w.found(v.Abs(), sumDimension(s), inFull))
	}
	return b.String() + w.equals() + "0"
}

// reversed reports whether the terms of a sum are written with the other sign.
func (w sums) reversed(s statics.Sum) bool {
	return s.Moment && w.st.Moments == notation.ClockwiseMoments
}

// sumDimension is what the terms of a sum measure.
func sumDimension(s statics.Sum) notation.Dimension {
	if s.Moment {
		return notation.Moment
	}
	return notation.Force
}

// Gathered is a sum with all that is known on the right: "Dy·6 = 92". Gives are its unknowns, of which values has the
// values. A single unknown stands there with a plus.
func (w sums) Gathered(s statics.Sum, gives []int, values []exact.Num) string {
	var left strings.Builder
	var right exact.Num
	turned := w.reversed(s)
	if len(gives) == 1 {
		turned = s.Factor(gives[0]).Sign() < 0
	}
	for _, i := range gives {
		k := s.Factor(i)
		if k.IsZero() {
			continue
		}
		right = right.Add(k.Mul(values[i]))
		w.add(&left, (k.Sign() < 0) != turned, w.multiple(i, k.Abs(), s.Moment))
	}
	if turned {
		right = right.Neg()
	}
	return left.String() + w.equals() + w.number(w.st.Given(right, sumDimension(s)))
}

// Moved is a sum with its known terms taken to the right, each as it is written, and the values put in that known knows:
// "Dy·6 = 4·6·3 + 10·2". Gives are its unknowns; a single one stands with a plus. Known may be nil.
func (w sums) Moved(s statics.Sum, gives []int, known func(force int) (exact.Num, bool)) string {
	var left, right strings.Builder
	turned := w.reversed(s)
	if len(gives) == 1 {
		turned = s.Factor(gives[0]).Sign() < 0
	}
	for _, t := range s.Terms() {
		switch negative := (t.Sign < 0) != turned; {
		case t.Why != statics.Counts:
		case slices.Contains(gives, t.Force):
			w.add(&left, negative, w.product(s, t, nil))
		default:
			w.add(&right, !negative, w.product(s, t, known))
		}
	}
	for _, side := range []*strings.Builder{&left, &right} {
		if side.Len() == 0 {
			side.WriteString("0")
		}
	}
	return left.String() + w.equals() + right.String()
}

// multiple is force i times a positive factor, which is an arm in a moment sum.
func (w sums) multiple(i int, k exact.Num, moment bool) string {
	f := w.a.Forces[i]
	dim := notation.Pure
	if moment && !f.Couple {
		dim = notation.Length
	}
	if dim == notation.Pure && k.Equal(one) {
		return f.Name
	}
	text := w.st.Given(k, dim)
	if strings.ContainsAny(text, " /") {
		text = "(" + text + ")"
	}
	return f.Name + w.times() + text
}
