package judging

import (
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// Range is from where to where a value is taken as right where nobody sees how it is written, by the rules of Verdict:
// what is true to half a unit in its third figure, and what a sum gives to within rounding on the way, in the sum of a step
// no nearer to a slip. It is for a judge of exact values, without any of the student's own. Of a place where the shear is
// zero it takes the shear as straight.
func (c *Case) Range() (low, high exact.Num) {
	low, high = c.Truth, c.Truth
	if c.OnlyZero() {
		return low, high
	}
	for _, b := range c.balances() {
		from, until := b.gives.Sub(b.reach), b.gives.Add(b.reach)
		if b.guarded {
			from, until = c.halfway(b.gives, from, until)
		}
		low, high = exact.Min(low, from), exact.Max(high, until)
	}
	own := thirdFigure(c.Truth)
	return exact.Min(low, c.Truth.Sub(own)), exact.Max(high, c.Truth.Add(own))
}

// halfway is a range around a value that ends half way to the nearest slip on either side.
func (c *Case) halfway(value, low, high exact.Num) (from, until exact.Num) {
	for _, s := range c.slipValues() {
		switch middle := value.Add(s).Mul(half); s.Cmp(value) {
		case -1:
			low = exact.Max(low, middle)
		case 1:
			high = exact.Min(high, middle)
		}
	}
	return low, high
}

// Hidden lists the slips whose value lies in the range of what is taken as right, so that nobody would see them, each once.
// Figures exchanged or copied amiss may lie beyond the third, whatever the numbers of the problem are; of these only the
// very value counts. Where the truth is zero, what only stretches or turns it round is left out, and so is all where nothing
// but zero can be right: it shows with no numbers.
func (c *Case) Hidden() []*slip.Slip {
	if c.OnlyZero() {
		return nil
	}
	low, high := c.Range()
	var all []*slip.Slip
	seen := map[*slip.Slip]bool{}
	for _, list := range c.lists() {
		for _, x := range list {
			exactly := x.Slip.Needs == slip.Copying || x.Slip.Needs == slip.Reporting
			switch {
			case seen[x.Slip], x.Value.Cmp(low) < 0, x.Value.Cmp(high) > 0:
			case exactly && !x.Value.Equal(c.Truth):
			case c.Truth.IsZero() && x.Value.IsZero() && (x.Slip.Group == slip.Algebra || x.Slip.About == slip.Answer):
			default:
				seen[x.Slip] = true
				all = append(all, x.Slip)
			}
		}
	}
	return all
}
