package worksheet

import "math"

// filled are the pages of the composed strips with what is left free on them as room to work in: the last room grows to the end of the
// last page, and other pages that are half empty, since a figure did not fit, get a room of their own.
func (c paperComposer) filled() [][]placed {
	pages := c.pages()
	if c.isStub(pages) {
		pages = c.without(pages)
	}
	for k := len(pages) - 2; k >= 0; k-- {
		if page := pages[k]; c.isOpen(page) {
			c.grow(page[len(page)-1].index+1, c.freeRows(page)-1, len(pages))
		}
	}
	at := len(c.strips) - 1
	for at >= 0 && (!c.strips[at].room || c.strips[at].with) { // not the room of a step, whose result stands beneath
		at--
	}
	if at >= 0 {
		c.grow(at, c.freeRows(pages[len(pages)-1]), len(pages))
	}
	return c.pages()
}

// freeRows is how many rows of a room what is left free of a page has.
func (c paperComposer) freeRows(page []placed) int {
	end := page[len(page)-1]
	return int((c.size.Height - c.foot - end.y - end.height) / dotRow)
}

// grow puts rows of a room before a strip, if the pages do not become more.
func (c paperComposer) grow(before, rows, pages int) {
	if rows < 1 {
		return
	}
	whole := c.strips
	grown := append([]strip{}, whole[:before]...)
	for range rows {
		grown = append(grown, strip{height: dotRow, room: true, draw: c.dots})
	}
	if c.strips = append(grown, whole[before:]...); len(c.pages()) != pages {
		c.strips = whole
	}
}

// without are the pages with less room to work in, where that saves the last page, on which there is little.
func (c paperComposer) without(pages [][]placed) [][]placed {
	whole := c.strips
	for _, share := range [...]float64{0.1, 0.2, 0.3} {
		c.strips = c.lessRoom(whole, share)
		if fewer := c.pages(); len(fewer) < len(pages) {
			return fewer
		}
	}
	c.strips = whole
	return c.pages()
}

// halfPage are strips without some rows of the room of the step that begins at one of them, where that lets two such steps stand on one
// page of large print: else each would go on on the next page, with what it gives.
func halfPage(strips []strip, begun int, tall float64) []strip {
	over := -tall
	var rows []int
	for i := begun; i < len(strips); i++ {
		if over += strips[i].above + strips[i].height; strips[i].room {
			rows = append(rows, i)
		}
	}
	spare := int(math.Ceil(over / dotRow))
	if over <= 0 || len(rows)-spare < halfPageRoom {
		return strips
	}
	from := rows[len(rows)-1-spare] // what follows stays with the last row
	return append(strips[:from:from], strips[from+spare:]...)
}

// halfPageRoom is how many rows the room of a step keeps so.
const halfPageRoom = 4

// leastRoom is how many rows a room keeps.
const leastRoom = 3

// lessRoom are strips with a share of the rows of each room left out.
func (c paperComposer) lessRoom(strips []strip, share float64) []strip {
	var all []strip
	for i := 0; i < len(strips); i++ {
		end := i
		for end < len(strips) && strips[end].room {
			end++
		}
		if end == i {
			all = append(all, strips[i])
			continue
		}
		rows := end - i
		keep := max(min(rows, leastRoom), rows-int(math.Ceil(share*float64(rows))))
		all = append(all, strips[i:i+keep-1]...)
		all = append(all, strips[end-1]) // what follows stays with the last one
		i = end - 1
	}
	return all
}
