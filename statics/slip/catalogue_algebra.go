package slip

import (
	"slices"
	"sync"

	"unpin/statics"
	"unpin/statics/exact"
)

var algebraSlips = []Slip{
	{ID: "other-face", Group: Algebra, About: Answer, Needs: Reporting, Source: "SD6", find: otherFace,
		Says: "The size is right, but the two bodies at a joint receive opposite forces: on which body is this force asked for?"},
	{ID: "minus-dropped", Group: Algebra, About: Answer, Needs: Reporting, Source: "GD", find: minusDropped,
		Says: "The size is right, but a negative value means that the force acts opposite to its assumed sense: which sign does the sum give?"},
	{ID: "unknown-turned", Group: Algebra, About: Answer, Needs: Moving, Source: "GD", find: unknownTurned,
		Says: "The size is right, but the unknown's own term has a sign too: which sign does the unknown's term have?"},
	{ID: "moved-with-its-sign", Group: Algebra, About: Sense, Needs: Moving, Source: "GD", find: movedWithItsSign,
		Says: "A term changes its sign when it crosses the equals sign: what is now on each side?"},
	{ID: "not-divided", Group: Algebra, About: Answer, Needs: Dividing, Source: "GD", find: notDivided,
		Says: "The known terms give the unknown's whole term, not yet the unknown itself: what is left to divide by?"},
	{ID: "multiplied-for-divided", Group: Algebra, About: Answer, Needs: Dividing, Source: "DV", find: multipliedForDivided,
		Says: "What multiplies the unknown on one side divides the terms on the other: what does the division give?"},
	{ID: "divided-by-another-arm", Group: Algebra, About: Answer, Needs: Measuring, Source: "GD", find: dividedByAnotherArm,
		Says: "The unknown has an arm of its own, from the centre to its line of action: which distance is the arm of the unknown?"},
	{ID: "other-unknown-dropped", Group: Algebra, About: Answer, Needs: Moving, Source: "GD", find: otherUnknownDropped,
		Says: "Unknowns solved together must satisfy all of their sums: what does each sum give with the values put back?"},
	{ID: "data-digits-swapped", Seldom: true, Group: Algebra, About: Size, Needs: Copying, Source: "GD", find: dataDigitsSwapped,
		Says: "Numbers that are copied must stay as they are: which number differs from the one given?"},
	{ID: "answer-digits-swapped", Seldom: true, Group: Algebra, About: Answer, Needs: Reporting, Source: "GD", find: answerDigitsSwapped,
		Says: "The digits are right, but not in this order: in which order did your working give the digits?"},
	{ID: "power-of-ten", Group: Algebra, About: Answer, Needs: Reporting, Source: "GD", find: powerOfTen,
		Says: "The digits are right, but the place of the decimal point is not: where does the decimal point belong in the units used here?"},
	{ID: "one-term-in-other-unit", Group: Algebra, About: Size, Needs: Measuring, Source: "GD", find: oneTermInOtherUnit,
		Says: "Quantities are added only in one system of units: which term is in another system?"},
	{ID: "inches-and-feet", Group: Algebra, About: Answer, Needs: Reporting, Source: "GD", find: inchesAndFeet,
		Says: "Lengths are added only in one unit: are all lengths in feet, or all in inches?"},
	{ID: "mass-for-weight", Seldom: true, Group: Algebra, About: Answer, Needs: Reporting, Source: "GD", find: massForWeight,
		Says: "A mass becomes a weight when multiplied by gravity, but a force needs no such factor: are the loads given as forces?"},
	{ID: "pounds-and-newtons", Seldom: true, Group: Algebra, About: Answer, Needs: Reporting, Source: "GD", find: poundsAndNewtons,
		Says: "Forces are added only in one system of units: which system of units do the data use?"},
}

// numbers reads some numbers.
func numbers(texts ...string) []exact.Num {
	var all []exact.Num
	for _, t := range texts {
		all = append(all, exact.MustParse(t))
	}
	return all
}

// If the sense alone is wrong, one of three slips says so: a pin force is asked for one of its faces, a negative value
// may have lost its sign, and what is left is a term of the wrong sense.
func (s *setting) face() bool { return s.Assembly.Forces[s.question.Force].By != statics.None }

func otherFace(s *setting) []change {
	if !s.face() {
		return nil
	}
	return s.finally(one.Neg())
}

func minusDropped(s *setting) []change {
	if s.cut != nil || s.face() || s.right.Sign() >= 0 {
		return nil
	}
	return s.finally(one.Neg())
}

func unknownTurned(s *setting) []change {
	if s.cut != nil || s.face() || s.right.Sign() <= 0 {
		return nil
	}
	return s.finally(one.Neg())
}

// movedWithItsSign is told from a term written with the wrong sense only where the terms were written.
func movedWithItsSign(s *setting) []change {
	if !s.question.Stands {
		return nil
	}
	return s.known().each(only(turned))
}

// factor is what the unknown asked for is multiplied by, without its sign.
func (s *setting) factor() exact.Num { return s.sum.Factor(s.question.Force).Abs() }

// divides reports whether the one sum is of moments in which the unknown has an arm.
func (s *setting) divides() bool {
	return len(s.question.Sums) == 1 && s.sum.Moment && !s.factor().Equal(one) && !s.Assembly.Forces[s.question.Force].Couple
}

func notDivided(s *setting) []change {
	if !s.divides() {
		return nil
	}
	return s.finally(s.factor())
}

func multipliedForDivided(s *setting) []change {
	if !s.divides() {
		return nil
	}
	return s.finally(s.factor().Square())
}

// dividedByAnotherArm takes for the unknown the distance from another joint to its line, or to another joint; where two sums
// stand, for each of the unknowns.
func dividedByAnotherArm(s *setting) []change {
	if len(s.question.Sums) > 1 && !s.question.Stands || !s.sum.Moment {
		return nil
	}
	own := s.where(func(t statics.Term) bool {
		return t.Why == statics.Counts && !isCouple(t) && s.question.unknownAt(t) != statics.None
	})
	if len(s.question.Sums) > 1 {
		return own.armsElsewhere()
	}
	return append(own.whole(), own.armsElsewhere()...)
}

// armsElsewhere gives each of the terms the distance from another joint to its line or to another joint, that along its
// force, or the straight one.
func (ts terms) armsElsewhere() []change {
	s := ts.in
	return ts.each(func(t statics.Term) []statics.Term {
		var ways []statics.Term
		for _, d := range distinct(append(s.distances(t.At, t.Toward), s.distances(s.sum.About, t.Toward)...)) {
			ways = append(ways, armed(t, d))
		}
		if from := s.sum.About.To(t.At); !slanting(t.Toward) && slanting(from) {
			ways = append(ways, armed(t, over(from.Dot(t.Toward).Abs(), t.Toward.Length())), armed(t, from.Length()))
		}
		return ways
	})
}

// otherUnknownDropped takes from one of several sums solved together what it gives if the other unknowns were zero.
func otherUnknownDropped(s *setting) []change {
	k := s.sum.Factor(s.question.Force)
	if len(s.question.Sums) < 2 || k.IsZero() {
		return nil
	}
	var rest exact.Num
	for _, t := range s.known().list() {
		rest = rest.Add(s.amount(t))
	}
	x := over(rest.Neg(), k)
	return []change{given(x)}
}

// closeTo reports whether a number is another, if there is one, to one in a hundred.
func closeTo(v exact.Num, other []exact.Num) bool {
	return slices.ContainsFunc(other, func(n exact.Num) bool { return v.Sub(n).Abs().Mul(hundred).Cmp(n) <= 0 })
}

var hundred = exact.Int(100)

// dataDigitsSwapped exchanges two neighbouring figures of a point load or couple, or of an intensity; where the sum stands,
// of any number in it, if that makes more of a difference than rounding.
func dataDigitsSwapped(s *setting) []change {
	if s.question.Stands {
		return s.factorsWritten(func(text string) []exact.Num {
			return slices.DeleteFunc(digitsSwapped(text), func(v exact.Num) bool { return closeTo(v, read(text)) })
		})
	}
	var all []change
	for _, g := range s.known().filter(isLoad).grouped(byAction) {
		x := s.action(g.first())
		data := x.Size
		if x.Shape.Spread() {
			data = x.Intensity
		}
		for _, v := range digitsSwapped(inFull(data.Abs())) {
			all = append(all, g.altered(func(t statics.Term) statics.Term { return sized(t, over(v, data.Abs())) })...)
		}
	}
	return all
}

// answerDigitsSwapped exchanges two neighbouring figures of the answer in full, and of what it is rounded to, zeros among
// them where the sum stands.
func answerDigitsSwapped(s *setting) []change {
	if s.n > 0 || s.right.IsZero() {
		return nil
	}
	var all []change
	for _, v := range answersSwapped(s.right, s.question.Stands) {
		c := given(v)
		c.whole = true
		all = append(all, c)
	}
	return all
}

// tens are the powers of ten by which a decimal point is misplaced.
var tens = sync.OnceValue(func() []exact.Num { return numbers("10", "100", "1000", "0.1", "0.01", "0.001") })

func powerOfTen(s *setting) []change { return s.finally(tens()...) }

// metric and customary are the factors between one unit and the next.
var (
	metric    = numbers("1000", "0.001")
	customary = numbers("1000", "0.001", "12", "1/12")
)

func oneTermInOtherUnit(s *setting) []change {
	factors := metric
	if s.question.Customary {
		factors = customary
	}
	return s.known().each(func(t statics.Term) []statics.Term {
		var ways []statics.Term
		for _, f := range factors {
			ways = append(ways, sized(t, f))
		}
		return ways
	})
}

func inchesAndFeet(s *setting) []change {
	if !s.question.Customary {
		return nil
	}
	dozen := exact.Int(12)
	return s.finally(dozen, over(one, dozen))
}

// gravity is its acceleration as it is rounded, in metres and in feet.
var gravity = sync.OnceValue(func() []exact.Num { return numbers("9.81", "32.2") })

// massForWeight multiplies or divides by the acceleration of gravity, as it is rounded in either system.
func massForWeight(s *setting) []change {
	if s.question.Customary {
		return s.finally(gravity()[1], over(one, gravity()[1]))
	}
	return s.finally(gravity()[0], over(one, gravity()[0]))
}

// pound is the newtons in a pound of force, NIST Special Publication 811, appendix B.
var pound = sync.OnceValue(func() exact.Num { return exact.MustParse("4.4482216152605") })

// poundsAndNewtons multiplies or divides by them.
func poundsAndNewtons(s *setting) []change {
	return s.finally(pound(), over(one, pound()))
}
