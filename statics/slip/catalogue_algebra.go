package slip

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
)

var algebraSlips = []Slip{
	{ID: "other-face", Group: Algebra, About: Answer, Source: "SD6", find: otherFace,
		Says: "The size is right, but what one part gets from a pin the other gives, so on which part is this force asked for?"},
	{ID: "minus-dropped", Group: Algebra, About: Answer, Source: "GD", find: minusDropped,
		Says: "The size is right, and a negative value says that the force acts against its arrow, so what sign does the sum give?"},
	{ID: "unknown-turned", Group: Algebra, About: Answer, Source: "GD", find: unknownTurned,
		Says: "The size is right, but the unknown's own term has a sense too, so does the unknown count with the sum or against it?"},
	{ID: "moved-with-its-sign", Group: Algebra, About: Sense, Source: "GD", find: movedWithItsSign,
		Says: "A term changes its sign when it crosses the equals sign, so what stands on the other side?"},
	{ID: "not-divided", Group: Algebra, About: Answer, Source: "GD", find: notDivided,
		Says: "The terms make up what the unknown's own term must balance, so what is left to divide by to get the unknown itself?"},
	{ID: "multiplied-for-divided", Group: Algebra, About: Answer, Source: "DV", find: multipliedForDivided,
		Says: "What multiplies the unknown divides the rest, so on which side does the unknown's factor divide?"},
	{ID: "divided-by-another-arm", Group: Algebra, About: Answer, Source: "GD", find: dividedByAnotherArm,
		Says: "The unknown has an arm of its own, from the centre to its line, so which distance is the unknown's own arm?"},
	{ID: "other-unknown-dropped", Group: Algebra, About: Answer, Source: "GD", find: otherUnknownDropped,
		Says: "Values solved together must satisfy both sums, so what do both values come to when put back into each sum?"},
	{ID: "data-digits-swapped", Group: Algebra, About: Size, Source: "GD", find: dataDigitsSwapped,
		Says: "Figures copied from the data must be the same on paper, so compare each load with what is given: which one differs?"},
	{ID: "answer-digits-swapped", Group: Algebra, About: Answer, Source: "GD", find: answerDigitsSwapped,
		Says: "The figures are the right ones but not in their order, so what did your own working give?"},
	{ID: "power-of-ten", Group: Algebra, About: Answer, Source: "GD", find: powerOfTen,
		Says: "The figures are right but not the place of the decimal point, so which unit does each quantity come in?"},
	{ID: "one-term-in-other-unit", Group: Algebra, About: Size, Source: "GD", find: oneTermInOtherUnit,
		Says: "Every quantity goes into one system of units before anything is added, so which term is not in it yet?"},
	{ID: "inches-and-feet", Group: Algebra, About: Answer, Source: "GD", find: inchesAndFeet,
		Says: "Lengths go into one unit before anything is added, so are they all in feet or all in inches?"},
	{ID: "mass-for-weight", Group: Algebra, About: Answer, Source: "GD", find: massForWeight,
		Says: "A force is not a mass, and data given as forces need no further factor, so are the loads given as forces?"},
	{ID: "pounds-and-newtons", Group: Algebra, About: Answer, Source: "GD", find: poundsAndNewtons,
		Says: "All forces go into one system of units before anything is added, so which system of units do the data use?"},
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
	if !s.question.Written {
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

// dividedByAnotherArm takes for the unknown the distance from another joint to its line, or to another joint.
func dividedByAnotherArm(s *setting) []change {
	if len(s.question.Sums) > 1 || !s.sum.Moment {
		return nil
	}
	own := s.own().filter(func(t statics.Term) bool { return !isCouple(t) })
	return own.each(func(t statics.Term) []statics.Term {
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

// otherUnknownDropped takes from one of several sums solved together what it gives if the other unknowns were nought.
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

// dataDigitsSwapped exchanges two neighbouring figures of a point load or couple, or of a uniform intensity.
func dataDigitsSwapped(s *setting) []change {
	var all []change
	loads := s.known().filter(isLoad)
	for _, g := range loads.grouped(byAction) {
		x := s.action(g.first())
		data := x.Size
		if x.Shape == statics.Uniform {
			data = x.Intensity
		} else if x.Shape.Spread() {
			continue
		}
		for _, v := range digitsSwapped(data.Abs()) {
			all = append(all, g.altered(func(t statics.Term) statics.Term { return sized(t, over(v, data.Abs())) })...)
		}
	}
	return all
}

func answerDigitsSwapped(s *setting) []change {
	if s.n > 0 {
		return nil
	}
	var all []change
	for _, v := range digitsSwapped(s.right.Abs()) {
		if s.right.Sign() < 0 {
			v = v.Neg()
		}
		all = append(all, change{giver: nobody, given: &v})
	}
	return all
}

// digitsSwapped lists the numbers that come from a decimal of at most five figures by exchanging two neighbours.
func digitsSwapped(n exact.Num) []exact.Num {
	text := n.Decimal(6)
	if !n.Terminates() || len(strings.Trim(strings.ReplaceAll(text, ".", ""), "0")) > 5 {
		return nil
	}
	var all []exact.Num
	figures := []byte(text)
	for i := range figures {
		j := i + 1
		if j < len(figures) && figures[j] == '.' {
			j++
		}
		if figures[i] == '.' || j >= len(figures) || figures[i] == figures[j] {
			continue
		}
		other := append([]byte(nil), figures...)
		other[i], other[j] = figures[j], figures[i]
		if v, err := exact.Parse(string(other)); err == nil && !v.IsZero() {
			all = append(all, v)
		}
	}
	return all
}

// tens are the powers of ten by which a decimal point is misplaced.
var tens = numbers("10", "100", "1000", "0.1", "0.01", "0.001")

func powerOfTen(s *setting) []change { return s.finally(tens...) }

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
var gravity = numbers("9.81", "32.2")

// massForWeight multiplies or divides by the acceleration of gravity, as it is rounded in either system.
func massForWeight(s *setting) []change {
	if s.question.Customary {
		return s.finally(gravity[1], over(one, gravity[1]))
	}
	return s.finally(gravity[0], over(one, gravity[0]))
}

// pound is the newtons in a pound of force, NIST Special Publication 811, appendix B.
var pound = exact.MustParse("4.4482216152605")

// poundsAndNewtons multiplies or divides by them.
func poundsAndNewtons(s *setting) []change {
	return s.finally(pound, over(one, pound))
}
