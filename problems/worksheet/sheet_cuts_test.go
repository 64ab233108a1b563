package worksheet

import (
	"regexp"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// TestCuts puts the true values into every sum that a sheet prints for N, V and M, read as a person reads it: each comes to
// zero, and has the value that it is to give. Half of the frames are in other conventions.
func TestCuts(t *testing.T) {
	t.Parallel()
	sums, n := 0, 0
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		if s.Values == nil || p.Units.Letters() {
			return
		}
		c := p.Conventions
		c.Decimal = notation.DecimalPoint
		if n++; n%2 == 0 {
			c.Shear = notation.CounterClockwiseShear
		}
		p = p.In(c)
		solved := problems.Solved{Problem: p, Solution: s}
		d := answering{newDocument(p, s, true), solved.Items()}
		for _, m := range d.members() {
			for _, c := range d.cuts(m) {
				for i, sum := range c.sums {
					sums++
					checkCut(t, d, c, c.gives[i].name, sum)
				}
			}
		}
	})
	if sums < 600 && !testing.Short() {
		t.Errorf("only %d sums", sums)
	}
}

// sumTerm is a term of a sum as it is printed in characters: a sign, then what is multiplied.
var sumTerm = regexp.MustCompile(`([-+]?) ?([A-Za-z0-9_.*/()]+)`)

func checkCut(t *testing.T, d answering, c cut, gives, sum string) {
	t.Helper()
	left, zero := strings.CutSuffix(strings.ReplaceAll(sum, "−", "-"), " = 0")
	terms := sumTerm.FindAllStringSubmatch(left, -1)
	if !zero || len(terms) == 0 {
		t.Errorf("%s: %q is no sum", d.p.Name, sum)
		return
	}
	total, largest, has := exact.Num{}, exact.Int(1), false
	for _, term := range terms {
		product := exact.Int(1)
		if term[1] == "-" {
			product = exact.Int(-1)
		}
		for factor := range strings.SplitSeq(term[2], "*") {
			value, ok := d.valueOf(c, factor)
			if !ok {
				t.Errorf("%s: in %q nothing is called %q", d.p.Name, sum, factor)
				return
			}
			has = has || factor == gives
			product = product.Mul(value)
		}
		total, largest = total.Add(product), exact.Max(largest, product.Abs())
	}
	if off := total.Abs(); !has || off.Cmp(largest.Mul(exact.MustParse("0.005"))) > 0 {
		t.Errorf("%s, %s at %s: %q comes to %s, and has %s: %v", d.p.Name, d.Frame.Members[c.kept.Member].Name, c.station.At, sum, off, gives, has)
	}
}

// valueOf is what a factor of a printed sum stands for.
func (d answering) valueOf(c cut, factor string) (exact.Num, bool) {
	switch factor {
	case "N":
		return c.station.N, true
	case "V":
		return d.st.Shear.Value(c.station.V), true
	case "M":
		return c.station.M, true
	}
	for i, f := range d.Forces {
		if f.Name == factor {
			return d.Values[i], true
		}
	}
	x, err := exact.Parse(factor)
	return x, err == nil
}
