package worksheet

// press makes pages of the document. Where its last page would hold but a few lines, or one before it, since a figure takes the
// next, smaller figures save it, or else more is brought over to the last from the page before. Of a long document a page more
// or less is not worth setting it again.
func (c *composer) press() [][]placed {
	pages := c.compose(1)
	least := c.sparse(pages)
	if least == 0 || len(pages) > longDocument {
		return pages
	}
	size := 1.0
	least += len(pages)
	for _, smaller := range [...]float64{0.92, 0.84} {
		fewer := c.compose(smaller)
		if n := len(fewer) + c.sparse(fewer); n < least {
			pages, size, least = fewer, smaller, n
		}
		if least == len(pages) {
			return pages
		}
	}
	pages = c.compose(size)
	if c.isStub(pages) {
		c.broken = c.earlier()
		pages = c.pages()
		c.broken = 0
	}
	return pages
}

// sparse is how many pages hold but a few lines.
func (c *composer) sparse(pages [][]placed) int {
	n := 0
	for i := range pages {
		if c.isStub(pages[:i+1]) {
			n++
		}
	}
	return n
}

// longDocument is a number of pages.
const longDocument = 100

// stub is the share of a page that is filled on a last page with little on it, and half the least share of the page before
// that.
const stub = 0.3

// isStub reports whether little stands on the last of these pages, if they are several.
func (c *composer) isStub(pages [][]placed) bool {
	last := pages[len(pages)-1]
	if len(pages) == 1 || len(last) == 0 {
		return false
	}
	end := last[len(last)-1]
	return end.y+end.height-c.top < stub*c.tall()
}

// tall is the height of the text of a page.
func (c *composer) tall() float64 { return c.size.Height - c.top - c.foot }

// headed is the room above a strip from which on it begins something of its own.
const headed = 8.0

// earlier is the last strip at which the last page may begin with more than a stub on it, where that leaves the page before
// well filled; else 0.
func (c *composer) earlier() int {
	pages := c.pages()
	if len(pages) < 2 {
		return 0
	}
	moved := 0.0
	for i := len(c.strips) - 1; i > 0; i-- {
		moved += c.strips[i].above + c.strips[i].height
		if moved < stub*c.tall() || c.strips[i].above < headed || c.strips[i-1].with {
			continue
		}
		for _, s := range pages[len(pages)-2] {
			if s.index == i && s.y-c.top >= 2*stub*c.tall() {
				return i
			}
		}
		return 0
	}
	return 0
}
