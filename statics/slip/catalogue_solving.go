package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// What can go wrong between a sum that stands and its unknown: one product, one term, the division.
var solvingSlips = []Slip{
	{ID: "term-dropped", Group: Algebra, About: Presence, Needs: Moving, Source: "GD", find: termDropped,
		Says: "Every term of a sum stays in it until the sum is solved: which terms are in your calculation?"},
	{ID: "minus-not-put-in", Group: Algebra, About: Sense, Needs: Copying, Source: "GD, TB", find: minusNotPutIn,
		Says: "A negative value is put in with its minus sign: which values were put in?"},
	{ID: "factors-added", InSteps: true, Group: Algebra, About: Size, Needs: Multiplying, Source: "DV", find: factorsAdded,
		Says: "The factors of a term are multiplied, not added: how large is each product?"},
	{ID: "factor-dropped", General: true, Group: Algebra, About: Size, Needs: Multiplying, Source: "GD", find: factorDropped,
		Says: "Each factor of a term counts in its product: how large is each product?"},
	{ID: "product-times-ten", InSteps: true, Group: Algebra, About: Size, Needs: Multiplying, Source: "GD", find: productTimesTen,
		Says: "The decimal point of a product follows from its factors: about how large must each product be?"},
	{ID: "figure-miscopied", Slight: true, Group: Algebra, About: Size, Needs: Copying, Source: "GD", find: figureMiscopied,
		Says: "Each number goes in figure for figure as it is given: which number in your working differs from the sum?"},
	{ID: "product-figure-off", Slight: true, Group: Algebra, About: Size, Needs: Multiplying, Source: "GD", find: productFigureOff,
		Says: "A product that is worked out twice shows where a figure is off: how large is each product?"},
	{ID: "division-inverted", Group: Algebra, About: Answer, Needs: Dividing, Source: "DV", find: divisionInverted,
		Says: "The known terms are divided by what multiplies the unknown, not the other way round: what is divided by what?"},
	{ID: "divided-by-another-number", Group: Algebra, About: Size, Needs: Dividing, Source: "GD", find: dividedByAnotherNumber,
		Says: "What the unknown is multiplied by divides the known terms: which number stands beside the unknown?"},
	{ID: "one-term-divided", Group: Algebra, About: Answer, Needs: Dividing, Source: "DV", find: oneTermDivided,
		Says: "Dividing a sum divides each of its terms: which terms are divided?"},
}

// termDropped is told from a term that was never put in only where the sum stands.
func termDropped(s *setting) []change {
	if !s.question.Stands {
		return nil
	}
	return s.known().each(only(without))
}

// minusNotPutIn puts a negative value in without its sign.
func minusNotPutIn(s *setting) []change {
	if !s.question.Stands {
		return nil
	}
	return s.known().filter(func(t statics.Term) bool {
		return t.Force != statics.None && s.question.Values[t.Force].Sign() < 0
	}).each(only(turned))
}

// factors lists what a known term is the product of, as it is written: half a triangle's, the intensity and the length of
// a distributed load, or the size of a force; the component's ratio; the arm. None of them is negative.
func (s *setting) factors(t statics.Term) []exact.Num {
	var all []exact.Num
	var force exact.Num
	ratio := t.Size
	if t.Force != statics.None {
		force = s.question.Values[t.Force].Abs()
		all = append(all, force)
	} else if x := s.action(t); x.Shape.Spread() {
		force = x.Size.Abs()
		length := over(x.Size, x.Intensity).Abs()
		if x.Shape != statics.Uniform {
			all, length = append(all, half), length.Mul(two)
		}
		all = append(all, x.Intensity.Abs(), length)
		ratio = over(t.Size, force)
	} else {
		force = x.Size.Abs()
		all = append(all, force)
		ratio = over(t.Size, force)
	}
	if !ratio.Equal(one) {
		all = append(all, ratio)
	}
	if s.sum.Moment && !isCouple(t) {
		all = append(all, t.Arm)
	}
	return all
}

// productOf multiplies numbers.
func productOf(list []exact.Num) exact.Num {
	p := one
	for _, x := range list {
		p = p.Mul(x)
	}
	return p
}

// products alters the product of each known term that has several factors, to each of some others.
func (s *setting) products(ways func(factors []exact.Num) []exact.Num) []change {
	return s.known().each(func(t statics.Term) []statics.Term {
		factors := s.factors(t)
		if len(factors) < 2 {
			return nil
		}
		var all []statics.Term
		for _, p := range distinct(ways(factors)) {
			all = append(all, sized(t, over(p, productOf(factors))))
		}
		return all
	})
}

// factorsAdded adds two neighbouring factors, or all before one to all after it; where the sum does not stand, the arm.
func factorsAdded(s *setting) []change {
	return s.products(func(f []exact.Num) []exact.Num {
		last := len(f) - 1
		ways := []exact.Num{productOf(f[:last]).Add(f[last])}
		if !s.question.Stands {
			return ways
		}
		for i := range last {
			rest := productOf(f[:i]).Mul(productOf(f[i+2:]))
			ways = append(ways, rest.Mul(f[i].Add(f[i+1])), productOf(f[:i+1]).Add(productOf(f[i+1:])))
		}
		return ways
	})
}

func factorDropped(s *setting) []change {
	if !s.question.Stands {
		return nil // there a length or an arm left out is another slip
	}
	return s.products(func(f []exact.Num) []exact.Num {
		var ways []exact.Num
		for i := range f {
			ways = append(ways, over(productOf(f), f[i]))
		}
		return ways
	})
}

// factorsWritten writes one number of a known term anew, each in several ways, as it stands in the sum.
func (s *setting) factorsWritten(ways func(text string) []exact.Num) []change {
	return s.known().each(func(t statics.Term) []statics.Term {
		var all []statics.Term
		for i, f := range s.factors(t) {
			if t.Force != statics.None && i == 0 || f.Equal(half) {
				continue // a name, and the half of a triangle
			}
			for _, v := range ways(onPage(f)) {
				all = append(all, sized(t, over(v, f)))
			}
		}
		return all
	})
}

// figureMiscopied takes one of the first two figures of a number for one more or one less.
func figureMiscopied(s *setting) []change {
	if !s.question.Stands {
		return nil
	}
	return s.factorsWritten(figureOff)
}

// productFigureOff does so with what a term comes to, in three figures, or with the value of a force that stands alone.
func productFigureOff(s *setting) []change {
	if !s.question.Stands {
		return nil
	}
	return s.known().each(func(t statics.Term) []statics.Term {
		amount := s.amount(t).Abs()
		var all []statics.Term
		for _, v := range figureOff(amount.Figures(3)) {
			all = append(all, sized(t, over(v, amount)))
		}
		return all
	})
}

func productTimesTen(s *setting) []change {
	return s.products(func(f []exact.Num) []exact.Num {
		return []exact.Num{productOf(f).Mul(tens()[0]), over(productOf(f), tens()[0])}
	})
}

func divisionInverted(s *setting) []change {
	if !s.divides() || s.right.IsZero() {
		return nil
	}
	return []change{given(over(one, s.right))}
}

// dividedByAnotherNumber divides by another factor that stands in the sum.
func dividedByAnotherNumber(s *setting) []change {
	if !s.question.Stands || !s.divides() {
		return nil
	}
	var all []exact.Num
	for _, t := range s.known().list() {
		for _, f := range s.factors(t) {
			if !f.Equal(s.factor()) {
				all = append(all, f)
			}
		}
	}
	own := s.own()
	var changes []change
	for _, f := range distinct(all) {
		changes = append(changes, own.together(func(t statics.Term) statics.Term { return sized(t, over(f, s.factor())) })...)
	}
	return changes
}

// oneTermDivided divides one term, or all but one, by the unknown's arm.
func oneTermDivided(s *setting) []change {
	known := s.known()
	if !s.divides() || !s.question.Stands || len(known.at) < 2 {
		return nil
	}
	all := known.each(only(func(t statics.Term) statics.Term { return sized(t, s.factor()) }))
	if len(known.at) > 2 {
		for _, alone := range known.at {
			rest := terms{in: s}
			for _, i := range known.at {
				if i != alone {
					rest.at = append(rest.at, i)
				}
			}
			all = append(all, rest.together(func(t statics.Term) statics.Term { return sized(t, s.factor()) })...)
		}
	}
	return all
}
