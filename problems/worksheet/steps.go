package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// steps writes the plan, step by step, with what each gives.
func (d *document) steps() {
	d.section("Solution")
	if short := d.shortcut(); short != nil {
		plain := d.Solution
		d.Solution = short
		defer func() { d.Solution = plain }()
	}
	known := make([]bool, len(d.Forces))
	for n, step := range d.Plan {
		if n > 0 {
			d.blank()
		}
		d.step(n+1, step, known)
		for _, i := range step.Gives {
			known[i] = true
		}
	}
}

func (d *document) step(n int, step statics.Step, known []bool) {
	isKnown := func(i int) bool { return known[i] }
	reason := wording.New(d.Assembly, d.st).Because(step, isKnown)
	title := wording.Capital(d.sumTitle(step.Sums[0]))
	switch {
	case len(step.Sums) > 1:
		title = wording.Capital(wording.Count(len(step.Sums))) + " sums solved together"
	case step.Check:
		title = "Check: " + d.sumTitle(step.Sums[0])
	}
	d.numbered(fmt.Sprintf("%-4s", fmt.Sprintf("%d.", n)), title)
	d.because("    ", reason)
	for k, s := range step.Sums {
		indent := "      "
		if len(step.Sums) > 1 {
			d.because(fmt.Sprintf("    (%d) ", k+1), wording.Capital(d.sumTitle(s)))
			indent += "  "
		}
		d.equation(indent, s, step, known)
	}
	if len(step.Sums) > 1 {
		d.because("    ", "From these sums:")
	}
	for _, i := range step.Gives {
		d.conclude("      ", d.found(i))
	}
	if w := d.Split(&step, known); w != nil {
		d.wayRound(w, step.Gives, known)
	}
}

// sumTitle is the free body of a sum and its name.
func (d *document) sumTitle(s statics.Sum) string {
	return wording.Body(d.Assembly, s.Body) + ", " + wording.New(d.Assembly, d.st).SumTitle(s)
}

// equation writes a sum in symbols, with the values found before put in, and gathered.
func (d *document) equation(indent string, s statics.Sum, step statics.Step, known []bool) {
	value := func(i int) (exact.Num, bool) { return d.Values[i], known[i] }
	symbols := wording.New(d.Assembly, d.st).Symbols(s)
	if len(step.Gives) == 1 && symbols == d.found(step.Gives[0]) { // Ax = 0, and nothing else
		return
	}
	d.equate(indent, symbols)
	if numbers := wording.New(d.Assembly, d.st).Numbers(s, value); numbers != symbols {
		d.equate(indent, numbers)
	}
	switch {
	case step.Check:
		d.equate(indent, d.added(s))
	case step.Relation:
		d.equate(indent, "kept for later")
	default:
		if text := d.gathered(s, step.Gives, len(step.Sums) > 1); text != "" {
			d.equate(indent, text)
		}
	}
}

// added is the sum of the closing check, term by term.
func (d *document) added(s statics.Sum) string {
	dim := notation.Force
	if s.Moment {
		dim = notation.Moment
	}
	var b strings.Builder
	for _, t := range s.Terms {
		if t.Why != statics.Counts {
			continue
		}
		v := t.Amount(d.Values)
		if s.Moment {
			v = d.st.Moments.Value(v)
		}
		d.addTerm(&b, v, d.st.Given(v.Abs(), dim))
	}
	if d.anyInexact() {
		return b.String() + " = 0 within the figures carried: the check holds."
	}
	return b.String() + " = 0: the check holds."
}

// addTerm adds a term with its sign.
func (d *document) addTerm(b *strings.Builder, v exact.Num, size string) {
	switch {
	case b.Len() == 0 && v.Sign() < 0:
		b.WriteString("−")
	case b.Len() == 0:
	case v.Sign() < 0:
		b.WriteString(" − ")
	default:
		b.WriteString(" + ")
	}
	b.WriteString(size)
}

// gathered is a sum with all that is known on the right: "Dy·6 = 92". It is empty where that shows no more than the
// result itself will.
func (d *document) gathered(s statics.Sum, gives []int, always bool) string {
	var left strings.Builder
	var right exact.Num
	dim := notation.Force
	if s.Moment {
		dim = notation.Moment
	}
	flip := d.st.Moments == notation.ClockwiseMoments && s.Moment
	plain := true
	for _, i := range gives {
		k := s.Factor(i)
		if k.IsZero() {
			continue
		}
		right = right.Add(k.Mul(d.Values[i]))
		if len(gives) == 1 && k.Sign() < 0 || len(gives) > 1 && flip {
			k = k.Neg()
		}
		plain = plain && k.Abs().Equal(exact.Int(1))
		d.addTerm(&left, k, d.product(i, k.Abs(), s.Moment))
	}
	if !always && (plain || right.IsZero()) {
		return ""
	}
	if len(gives) == 1 && s.Factor(gives[0]).Sign() < 0 || len(gives) > 1 && flip {
		right = right.Neg()
	}
	return left.String() + " = " + d.st.Given(right, dim)
}

// product is force i times a factor.
func (d *document) product(i int, k exact.Num, moment bool) string {
	f := d.Forces[i]
	dim := notation.Pure
	if moment && !f.Couple {
		dim = notation.Length
	}
	if dim == notation.Pure && k.Equal(exact.Int(1)) {
		return f.Name
	}
	text := d.st.Given(k, dim)
	if strings.ContainsAny(text, " /") {
		text = "(" + text + ")"
	}
	return f.Name + "·" + text
}

// found is a force that has come out: its value, the exact value where that was rounded, and what it means.
func (d *document) found(i int) string {
	f, v := d.Forces[i], d.Values[i]
	dim := notation.ForceDimension(f)
	text := f.Name + " = " + d.result(v, dim)
	if exactly := d.exactly(v, dim); exactly != "" {
		text += " (exactly " + exactly + ")"
	}
	if acts := d.acts(i); acts != "" {
		text += ": " + acts
	}
	if d.pullsAway(i) {
		text += " (the roller pulls)"
	}
	return text
}

// pullsAway reports whether a force is that of a roller that holds the frame back.
func (d *document) pullsAway(i int) bool {
	f := d.Forces[i]
	if f.Kind != statics.Reaction || f.Couple || d.Values[i].Sign() >= 0 {
		return false
	}
	for _, s := range d.Frame.Supports {
		if s.Joint == f.Joint && s.Kind == statics.Roller {
			return true
		}
	}
	return false
}

// acts is how a force really acts: "up on part CD, down on part BC"; empty for nought.
func (d *document) acts(i int) string {
	f, v := d.Forces[i], d.Values[i]
	if v.IsZero() {
		return ""
	}
	if f.Kind == statics.MemberPull {
		return notation.SenseOf(f, v)
	}
	text := notation.SenseOf(f, v) + " on " + d.bodyName(f.On)
	if f.By != statics.None {
		text += ", " + notation.SenseOf(f, v.Neg()) + " on " + d.bodyName(f.By)
	}
	return text
}
