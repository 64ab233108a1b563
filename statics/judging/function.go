package judging

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// An Along is N, V or M along one stretch of a member, asked for as a function of the distance x from the member's first joint.
type Along struct {
	judge    Judge
	member   int
	in       statics.Stretch
	quantity statics.Quantity
}

// Along is what a function for a quantity on a stretch is held against.
func (j Judge) Along(member int, in statics.Stretch, q statics.Quantity) Along {
	return Along{j, member, in, q}
}

// truth is the function itself, by the signs of package statics.
func (a Along) truth() exact.Poly {
	return []exact.Poly{statics.AxialForce: a.in.N, statics.ShearForce: a.in.V, statics.BendingMoment: a.in.M}[a.quantity]
}

// ReadFunction reads a line as the function, whatever stands before its equals sign; its coefficients are turned into the
// signs of package statics. The error is a sentence for the student.
func (j Judge) ReadFunction(q Asked, line string) (exact.Poly, error) {
	f, err := notation.ReadFunction(j.Decimals(q.withoutName(line)), j.Style.Units, q.Dim)
	if err != nil {
		return nil, Placed(line, err)
	}
	if q.Shear {
		f = f.Scale(j.Style.Shear.Value(one))
	}
	return f, nil
}

// A place of a stretch at which a function is judged.
type place struct {
	x    exact.Num
	side statics.Side
}

// places are the start of the stretch, its middle and its end.
func (a Along) places() [3]place {
	middle := a.in.From.Add(a.in.Until).Mul(half)
	return [3]place{{a.in.From, statics.After}, {middle, statics.Both}, {a.in.Until, statics.Before}}
}

// caseAt is the case of the value at a place.
func (a Along) caseAt(p place) *Case {
	return a.judge.Section(a.member, statics.Station{At: p.x, Side: p.side, InternalForces: a.in.At(p.x)}, a.quantity)
}

// fits reports whether a function has the right value at a place: by the allowances of a value there, or by what three
// figures in each of its coefficients leave open.
func (a Along) fits(f exact.Poly, p place) bool {
	v, c := f.At(p.x), a.caseAt(p)
	if c.Verdict(Typed{Value: v, Written: v, Unit: one}).Right() {
		return true
	}
	open, power := exact.Num{}, one
	for _, factor := range a.truth() {
		open, power = open.Add(OnlyLong(factor).Mul(power)), power.Mul(p.x)
	}
	return v.Sub(c.Truth).Abs().Cmp(open) <= 0
}

// right reports whether a function is right: its degree is, and its values at both ends and in the middle are.
func (a Along) right(f exact.Poly) bool {
	if f.Degree() != a.truth().Degree() {
		return false
	}
	for _, p := range a.places() {
		if !a.fits(f, p) {
			return false
		}
	}
	return true
}

// Find judges a function and says what is wrong with it, in one sentence without a number.
func (a Along) Find(f exact.Poly) Finding {
	letter := a.quantity.Letter()
	wrong := func(says string) Finding { return Finding{Verdict: Wrong, Says: says} }
	switch length := a.judge.Solution.Frame.Length(a.member); {
	case f.Add(a.truth().Scale(one.Neg())).Trim().Degree() == 0 && f.At(a.in.From).Equal(a.truth().At(a.in.From)):
		return Finding{Verdict: Exact}
	case a.right(f):
		return Finding{Verdict: ToFigures}
	case a.right(f.Scale(one.Neg())):
		return Finding{Verdict: OtherSense, Says: "the size is right all along, but not the sense: in which sense does " + letter + " count as positive?"}
	case a.right(f.Shift(a.in.From.Neg())):
		return wrong("x is the distance from the first joint of the member, all along it: from where is your x measured?")
	case a.right(reflected(f, length)):
		return wrong("x runs from the first joint of the member, not from its last: from which end is your x measured?")
	case f.Degree() != a.truth().Degree():
		return wrong(a.degreeWrong(f))
	}
	return a.valuesWrong(f)
}

// reflected is a function measured from the other end of a length.
func reflected(f exact.Poly, length exact.Num) exact.Poly {
	g := f.Shift(length) // of −x
	out := make(exact.Poly, len(g))
	for i, c := range g {
		if out[i] = c; i%2 == 1 {
			out[i] = c.Neg()
		}
	}
	return out
}

// degreeWrong says why a function is of another degree.
func (a Along) degreeWrong(f exact.Poly) string {
	loaded := a.in.V.Degree() > 0 || a.quantity == statics.AxialForce && a.in.N.Degree() > 0
	switch {
	case f.Degree() < a.truth().Degree() && loaded:
		return "the load on this stretch acts on the kept piece up to the cut, so it is in the function: how much of it does a piece of length x hold?"
	case a.quantity == statics.BendingMoment:
		return "M is one degree above V: of which degree is V on this stretch?"
	case loaded:
		return "the degree follows from the load on the stretch: of which degree is its resultant up to the cut, as x grows?"
	}
	return "without a load along it a stretch has a constant " + a.quantity.Letter() + ": what could change it here?"
}

// valuesWrong says where a function of the right degree is off.
func (a Along) valuesWrong(f exact.Poly) Finding {
	wrong := func(says string) Finding { return Finding{Verdict: Wrong, Says: says} }
	letter, at := a.quantity.Letter(), a.places()
	start, middle, end := a.fits(f, at[0]), a.fits(f, at[1]), a.fits(f, at[2])
	shear := a.judge.Along(a.member, a.in, statics.ShearForce)
	if a.quantity == statics.BendingMoment && shear.right(f.Derivative().Scale(one.Neg())) {
		rises := "V is the slope of M: where V is positive, M rises along x: which way does your M go?"
		if a.judge.Style.Shear == notation.CounterClockwiseShear {
			rises = "minus V is the slope of M: where V is positive, M falls along x: which way does your M go?"
		}
		return wrong(rises)
	}
	switch {
	case start && end && !middle:
		return wrong("it is right at both ends of the stretch, but not between them: on which side of its chord does " + letter + " run?")
	case start:
		return wrong("it is right where the stretch begins, but not where it ends: what changes " + letter + " in between?")
	case end:
		return wrong("it is right where the stretch ends, but not where it begins: what is " + letter + " there?")
	case f.Derivative().Add(a.truth().Derivative().Scale(one.Neg())).Trim().Degree() == 0 && f.Degree() > 0 &&
		f.Derivative().At(a.in.From).Equal(a.truth().Derivative().At(a.in.From)),
		a.quantity == statics.BendingMoment && shear.right(f.Derivative()):
		return wrong("its slope is right all along, so what is off is the value from which it starts: what is " + letter + " where the stretch begins?")
	}
	v := f.At(at[0].x)
	if c := a.caseAt(at[0]); !c.OnlyZero() {
		if found := c.Find(Wrong, Typed{Value: v, Written: v, Unit: one}); found.Says != "" {
			found.Says = "it is off at both ends of the stretch; where it begins, " + found.Says
			return found
		}
	}
	return wrong("it is off at both ends of the stretch: what does the kept piece give for " + letter + " where the stretch begins?")
}
