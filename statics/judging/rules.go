package judging

// The rules of judging, in their order.

// Verdict judges a typed value.
func (c *Case) Verdict(v Typed) Verdict {
	switch {
	case v.Value.Equal(c.Truth):
		return Exact
	case c.OnlyZero():
		return Wrong
	case v.roundedFrom(c.Truth):
		return ToFigures
	case c.rounded(v):
		return Rounded
	case c.sensed && !c.Truth.IsZero() && c.met(v.neg()):
		return OtherSense
	case c.close(v):
		return Close
	}
	return Wrong
}

// OnlyZero reports whether nothing but 0 can be right, since on one side of a section every term is zero: a moment at a
// pin, at a free end, at a roller where one member ends.
func (c *Case) OnlyZero() bool {
	if c.section == nil || !c.Truth.IsZero() {
		return false
	}
	return c.section.empty(c.balances())
}

// rounded reports whether v satisfies one of the sums within its allowance. No sign is demanded.
func (c *Case) rounded(v Typed) bool {
	for _, b := range c.balances() {
		if b.fits(v.Value, 1) && (!b.guarded || v.Means(b.gives) || !nearer(c.slipValues(), v.Value, b.gives)) {
			return true
		}
	}
	return false
}

// met reports whether v is the true value or what a sum gives with the student's own values, or either of them rounded.
func (c *Case) met(v Typed) bool {
	if v.Means(c.Truth) {
		return true
	}
	for _, b := range c.balances() {
		if !b.gives.IsZero() && v.Means(b.gives) {
			return true
		}
	}
	return false
}

// close reports whether v comes of no slip and yet lies within three allowances of a sum, or within 2 % of the truth.
func (c *Case) close(v Typed) bool {
	return c.near(v) && len(c.TermSlips(v)) == 0 && len(c.Diagnosis(v).Matches) == 0
}

func (c *Case) near(v Typed) bool {
	if v.Value.Sub(c.Truth).Abs().Cmp(c.Truth.Abs().Mul(percent).Mul(two)) <= 0 {
		return true
	}
	for _, b := range c.balances() {
		if b.fits(v.Value, 3) {
			return true
		}
	}
	return false
}

// Coarse reports whether v is the truth rounded to two figures, where it has more.
func (c *Case) Coarse(v Typed) bool {
	rounded := c.Truth.Rounded(2)
	return !rounded.Equal(c.Truth) && v.Value.Equal(rounded)
}
