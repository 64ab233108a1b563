package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// readChoice reads a free body and a sum as a student names them: "CDE M C", "whole, moments about A", "part AB x",
// "pin C y", "AB + BC M (8, 20/3)", "CDE F along [4, 3]", "CDE F perpendicular to RD". In a frame of one part the body may be left
// out. The error says what is missing and how it is written.
func (m *matter) readChoice(line string) (statics.Sum, error) {
	c := chooser{about: m, words: choiceWords(line)}
	body, err := c.body()
	if err != nil {
		return statics.Sum{}, err
	}
	return c.sum(body)
}

// choiceWords are the words of a line without those that only join others.
func choiceWords(line string) []string {
	line = strings.NewReplacer("Σ", " ", "(", " ( ", ")", " ) ", "[", " ( ", "]", " ) ", ",", " ", ";", " ", ":", " ", "=", " ").Replace(line)
	fill := []string{"part", "parts", "sum", "of", "about", "on", "the", "and", "+", "along", "to", "in", "for", "forces", "body", "free", "0"}
	var words []string
	within := false
	for _, w := range strings.Fields(line) {
		within = w == "(" || within && w != ")"
		if within || !slices.Contains(fill, strings.ToLower(w)) {
			words = append(words, w)
		}
	}
	return words
}

// A chooser takes words from the front of a choice.
type chooser struct {
	about *matter
	words []string
}

// next takes the next word, or "".
func (c *chooser) next() string {
	if len(c.words) == 0 {
		return ""
	}
	w := c.words[0]
	c.words = c.words[1:]
	return w
}

// has takes the next word if it is one of those.
func (c *chooser) has(words ...string) bool {
	if len(c.words) > 0 && slices.Contains(words, strings.ToLower(c.words[0])) {
		c.words = c.words[1:]
		return true
	}
	return false
}

// body takes the names of bodies.
func (c *chooser) body() (statics.FreeBody, error) {
	a := c.about.solution.Assembly
	if c.has("whole", "all", "everything") {
		c.has("frame")
		return a.Whole(), nil
	}
	var body statics.FreeBody
	for len(c.words) > 0 {
		b := c.oneBody()
		if b == statics.None {
			break
		}
		body = append(body, b)
	}
	slices.Sort(body)
	body = slices.Compact(body)
	switch {
	case len(body) > 0:
		return body, nil
	case a.Bodies() == 1:
		return a.Whole(), nil
	}
	return nil, fmt.Errorf("begin with a free body: %s, or several joined by +, or whole", strings.Join(c.about.bodyNames(), ", "))
}

// oneBody takes the name of a part or pin, or leaves the words as they are and gives None.
func (c *chooser) oneBody() int {
	words := c.words
	name := c.next()
	if strings.EqualFold(name, "pin") {
		name = "pin " + c.next()
	}
	for b := range c.about.solution.Bodies() {
		if strings.EqualFold(strings.TrimSuffix(c.about.solution.BodyName(b), "+"), strings.TrimSuffix(name, "+")) {
			return b
		}
	}
	c.words = words
	return statics.None
}

// bodyNames lists the parts and pins.
func (m *matter) bodyNames() []string {
	var names []string
	for b := range m.solution.Bodies() {
		names = append(names, m.solution.BodyName(b))
	}
	return names
}

// sum takes what sum of a body is meant.
func (c *chooser) sum(body statics.FreeBody) (statics.Sum, error) {
	a := c.about.solution.Assembly
	var s statics.Sum
	var err error
	switch {
	case c.has("x", "fx", "horizontal"):
		s = a.ForceSum(body, statics.Vector{X: exact.Int(1)})
	case c.has("y", "fy", "vertical"):
		s = a.ForceSum(body, statics.Vector{Y: exact.Int(1)})
	case c.has("m", "moment", "moments"):
		s, err = c.moments(body)
	case c.has("f", "force"):
		s, err = c.direction(body)
	default:
		return s, fmt.Errorf("after the free body comes the sum: x, y, M and a joint, M (x, y), or F along [dx, dy]")
	}
	if err == nil && len(c.words) > 0 {
		err = fmt.Errorf("%q is not understood after the sum", strings.Join(c.words, " "))
	}
	return s, err
}

// moments takes a centre.
func (c *chooser) moments(body statics.FreeBody) (statics.Sum, error) {
	a := c.about.solution.Assembly
	if len(body) == 1 && a.IsPin(body[0]) {
		return statics.Sum{}, fmt.Errorf("all forces on a pin pass through it, so it has no sum of moments: take x or y")
	}
	if c.has("(") {
		x, y, err := c.pair()
		return a.MomentSum(body, statics.Point{X: x, Y: y}), err
	}
	name := c.next()
	for _, j := range a.Frame.Joints {
		if j.Name == name || strings.EqualFold(j.Name, name) {
			return a.MomentSum(body, j.At), nil
		}
	}
	return statics.Sum{}, fmt.Errorf("moments are taken about a joint or a point: M A, or M (2, 3)")
}

// direction takes a direction.
func (c *chooser) direction(body statics.FreeBody) (statics.Sum, error) {
	a := c.about.solution.Assembly
	if c.has("perpendicular") || c.has("square") {
		name := c.next()
		for _, f := range a.Forces {
			if !f.Couple && notation.NameMatches(name, f.Name) {
				return a.ForceSum(body, f.Along.Left()), nil
			}
		}
		return statics.Sum{}, fmt.Errorf("name the force that the sum is perpendicular to: F perpendicular to RD")
	}
	if !c.has("(") {
		return statics.Sum{}, fmt.Errorf("a sum of forces goes along x, y or a direction: F along [4, 3]")
	}
	x, y, err := c.pair()
	if err == nil && x.IsZero() && y.IsZero() {
		err = fmt.Errorf("[0, 0] is no direction")
	}
	if err != nil {
		return statics.Sum{}, err
	}
	return a.ForceSum(body, meantDirection(a, statics.Vector{X: x, Y: y})), nil
}

// meantDirection is a typed direction, or that along or perpendicular to a force which it is but for the last of many
// decimals: else what is meant to drop out would stay with a factor of next to nothing.
func meantDirection(a *statics.Assembly, v statics.Vector) statics.Vector {
	hair := v.Length().Mul(exact.MustParse("0.000000000001"))
	for _, f := range a.Forces {
		u := f.Along
		if f.Couple {
			continue
		}
		for _, w := range []statics.Vector{u, u.Left()} {
			switch {
			case w.Cross(v).Abs().Cmp(hair.Mul(w.Length())) > 0:
			case w.Dot(v).Sign() < 0:
				return w.Neg()
			default:
				return w
			}
		}
	}
	return v
}

// pair takes two numbers and a closing bracket.
func (c *chooser) pair() (x, y exact.Num, err error) {
	units := c.about.problem.Units
	for _, n := range []*exact.Num{&x, &y} {
		if *n, err = notation.ReadNumber(c.next(), nil, units, notation.Pure); err != nil {
			return x, y, fmt.Errorf("a point or direction is two numbers in brackets: (2, 3)")
		}
	}
	if !c.has(")") {
		return x, y, fmt.Errorf("a point or direction is two numbers in brackets: (2, 3)")
	}
	return x, y, nil
}
