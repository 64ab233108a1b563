package variant

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Where a problem does not say what may vary, sensible changes are found for it, by its numbers that are written as decimals
// or fractions, perhaps with a unit:
//
//   - each given number, each size of a load, each distance along a member changes by itself;
//   - joints at one level, that is with one x or one y, move together, so that what is upright and what is level stays so;
//   - levels at which an inclined member ends change by one factor for all of them, so that slopes stay, and if the feet are at
//     no such level they may all be lifted.
//
// A value v changes by steps from 0.6 v to 1.5 v. The step is the largest of 1, 2, 2.5, 5 times a power of ten that v is a
// multiple of and that is no more than v/5.

// found lists sensible changes of a problem.
func found(p *problems.Problem) []Change {
	f := finder{problem: p, numbers: p.Numbers(), levels: map[string]int{}}
	var all []Change
	for i, n := range f.numbers {
		lead, ok := leading(n.Text)
		if !ok || lead.value.IsZero() {
			continue
		}
		switch n.Role {
		case problems.GivenNumber:
			all = f.add(all, n.Name, i, lead)
		case problems.LoadSize:
			all = f.add(all, fmt.Sprintf("the %s %s", n.Name, n.Text), i, lead)
		case problems.Distance:
			all = f.add(all, fmt.Sprintf("the distance %s", n.Text), i, lead)
		default:
			all = f.addLevel(all, i, lead)
		}
	}
	for _, at := range f.levels {
		if at != stepless && at < len(all) {
			all[at].Name += " (" + notation.List(f.jointsOf(all[at].numbers)) + ")"
		}
	}
	if f.inclined != nil {
		all = append(all, f.scaled())
	}
	return all
}

// jointsOf names the joints of some coordinates, each once.
func (f *finder) jointsOf(numbers []int) []string {
	var names []string
	for _, number := range numbers {
		if name := f.numbers[number].Name; !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// stepless stands for the place of a level that has no steps.
const stepless = -1

// finder is the work of finding changes.
type finder struct {
	problem  *problems.Problem
	numbers  []problems.Number
	levels   map[string]int // the place in the list of the change of a level
	inclined []int          // the numbers of levels at which inclined members end
}

// A lead is the number with which a text begins, and what follows: a unit or nothing.
type lead struct {
	value    exact.Num
	rest     string
	fraction bool
}

var leadText = notation.Pattern(`^(-?[0-9]+(?:\.[0-9]+)?(?:/[0-9]+)?)( ?[A-Za-z][A-Za-z·/]*)?$`)

// leading parts a text into number and unit.
func leading(text string) (lead, bool) {
	parts := leadText().FindStringSubmatch(text)
	if parts == nil {
		return lead{}, false
	}
	v, err := exact.Parse(parts[1])
	return lead{v, parts[2], strings.Contains(parts[1], "/")}, err == nil
}

// with is the text with another number.
func (l lead) with(v exact.Num) string { return written(v, l.fraction) + l.rest }

// add adds the change of a single number, if it has steps.
func (f *finder) add(all []Change, name string, number int, l lead) []Change {
	values := around(l.value)
	c := Change{Name: name, numbers: []int{number}, own: slices.IndexFunc(values, l.value.Equal)}
	for _, v := range values {
		c.Choices, c.texts = append(c.Choices, l.with(v)), append(c.texts, []string{l.with(v)})
	}
	if len(c.Choices) < 2 {
		return all
	}
	return append(all, c)
}

// addLevel adds the change of a level, or joins a number to it.
func (f *finder) addLevel(all []Change, number int, l lead) []Change {
	n := f.numbers[number]
	axis := map[problems.Role]string{problems.Abscissa: "x", problems.Ordinate: "y"}[n.Role]
	key := axis + " = " + n.Value.String()
	if f.meetsInclined(n) {
		f.inclined = append(f.inclined, number)
		return all
	}
	at, known := f.levels[key]
	switch {
	case !known && len(around(l.value)) < 2:
		f.levels[key] = stepless
		return all
	case !known:
		f.levels[key] = len(all)
		return f.add(all, map[string]string{"x": "the position x = ", "y": "the level y = "}[axis]+n.Text, number, l)
	case at == stepless:
		return all
	}
	c := &all[at]
	c.numbers = append(c.numbers, number)
	for i, v := range around(l.value) {
		c.texts[i] = append(c.texts[i], l.with(v))
	}
	return all
}

// meetsInclined reports whether an inclined member ends at the level of a number.
func (f *finder) meetsInclined(n problems.Number) bool {
	frame := f.problem.Frame
	for _, m := range frame.Members {
		a, b := frame.Joints[m.From].At, frame.Joints[m.To].At
		if a.X.Equal(b.X) || a.Y.Equal(b.Y) {
			continue
		}
		if n.Role == problems.Abscissa && (n.Value.Equal(a.X) || n.Value.Equal(b.X)) ||
			n.Role == problems.Ordinate && (n.Value.Equal(a.Y) || n.Value.Equal(b.Y)) {
			return true
		}
	}
	return false
}

// factors are those by which what is inclined is taken.
var factors = []exact.Num{exact.MustParse("1"), exact.MustParse("0.5"), exact.MustParse("0.75"), exact.MustParse("1.25"), exact.MustParse("1.5"), exact.MustParse("2")}

// scaled is the change of all levels at which inclined members end; the first choice leaves them.
func (f *finder) scaled() Change {
	c := Change{Name: "the inclined part (" + notation.List(f.jointsOf(f.inclined)) + ")", numbers: f.inclined}
	lifts := f.lifts()
	for _, k := range factors {
		for _, lift := range lifts {
			var texts []string
			for _, number := range f.inclined {
				n := f.numbers[number]
				l, _ := leading(n.Text)
				v := l.value.Mul(k)
				if n.Role == problems.Ordinate {
					v = v.Add(lift)
				}
				texts = append(texts, l.with(v))
			}
			c.Choices = append(c.Choices, fmt.Sprintf("%s times, raised by %s", k.Decimal(6), lift.Decimal(6)))
			c.texts = append(c.texts, texts)
		}
	}
	return c
}

// lifts are how much higher what is inclined may lie: by nothing where a member at y = 0 is inclined, or where units differ.
func (f *finder) lifts() []exact.Num {
	lifts := []exact.Num{{}}
	low := exact.Num{}
	for _, number := range f.inclined {
		n := f.numbers[number]
		if l, _ := leading(n.Text); n.Role == problems.Ordinate {
			if l.rest != "" {
				return lifts
			}
			if low.IsZero() || n.Value.Cmp(low) < 0 {
				low = n.Value
			}
		}
	}
	if low.Sign() <= 0 || f.meetsInclined(problems.Number{Role: problems.Ordinate}) {
		return lifts
	}
	for _, v := range around(low) {
		if lift := v.Sub(low); !lift.IsZero() {
			lifts = append(lifts, lift)
		}
	}
	return lifts
}

// around lists the values that a value may change to, itself included; none but itself where it has no step.
func around(v exact.Num) []exact.Num {
	size := v.Abs()
	step, ok := stepOf(size)
	if !ok {
		return []exact.Num{v}
	}
	low, high := size.Mul(exact.MustParse("0.6")), size.Mul(exact.MustParse("1.5"))
	var all []exact.Num
	for x := step; x.Cmp(high) <= 0; x = x.Add(step) {
		if x.Cmp(low) >= 0 {
			all = append(all, exact.Int(int64(v.Sign())).Mul(x))
		}
	}
	return all
}

// niceDigits are the steps that people count in, falling, up to a power of ten.
var niceDigits = []exact.Num{exact.MustParse("5"), exact.MustParse("2.5"), exact.MustParse("2"), exact.MustParse("1")}

// stepOf is the step of a positive value, and whether there is one of at most 50 in it.
func stepOf(v exact.Num) (exact.Num, bool) {
	five, tenth := exact.Int(5), exact.MustParse("0.1")
	power := exact.Int(1)
	for power.Cmp(v) < 0 {
		power = power.Mul(exact.Int(10))
	}
	for range 5 {
		for _, digit := range niceDigits {
			step := digit.Mul(power)
			times, err := v.Quo(step)
			if err == nil && times.IsInt() && times.Cmp(five) >= 0 && times.Cmp(exact.Int(50)) <= 0 {
				return step, true
			}
		}
		power = power.Mul(tenth)
	}
	return exact.Num{}, false
}
