package marking

import (
	"unpin/statics/slip"
)

// What is wrong without a mistake of the catalogue is told in a report as well: a sense, a unit, and a wrong value that several papers
// have alike. These stand for mistakes there; the catalogue has none of these names.
var (
	senseTurned = &slip.Slip{ID: "sense", Group: slip.Algebra, Says: "The size is right and the sense is not: which sense counts as positive, and which one does the sum give?"}
	unitOdd     = &slip.Slip{ID: "unit", Group: slip.Algebra, Says: "The number is right and the unit is not: what is measured here?"}
	alikeWrong  = &slip.Slip{ID: "same-wrong-value", Says: "Several have the same wrong value, and no known mistake leads to it: what did they do?"}
)

// slipOf is the mistake that a row of marks tells; nil where it tells none.
func (c *counting) slipOf(r markRow) *slip.Slip {
	switch s := c.slips[r.slip]; {
	case s != nil:
		return s
	case r.verdict == Sense:
		return senseTurned
	case r.verdict == Unit:
		return unitOdd
	}
	return nil
}

// noteUnnamed keeps a row whose value is wrong without a known mistake.
func (c *counting) noteUnnamed(r markRow) {
	if _, _, part := partOf(r.quantity); part || r.verdict != Wrong && r.verdict != Close && r.verdict != Slip {
		return
	}
	key := doubted{r.problem, r.copyOf, r.quantity, sizeOf(r.given)}
	c.unnamed[key] = append(c.unnamed[key], r)
}

// countUnnamed has wrong values count as a mistake that Few papers or more have alike.
func (c *counting) countUnnamed() {
	for _, rows := range c.unnamed {
		if len(rows) < Few {
			continue
		}
		for _, r := range rows {
			c.mistake(r, alikeWrong)
		}
	}
}
