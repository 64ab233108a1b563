package screen

// A binder keeps the lines of the steps and members that are finished, in order, so that only the one in hand has to be
// written when something changes. They change only by going back to them, and at the end of an exam.
type binder struct {
	pages    [][]line
	finished int // how many pages are
	bound
}

// A bound is what all lines of a binder rest on.
type bound struct {
	senses           any // others once an unknown is taken in the other sense
	width            int
	spacious, hiding bool
}

// open keeps of the pages those that are finished and as they should be.
func (b *binder) open(as bound, finished int) {
	if b.bound != as {
		b.pages = nil
	}
	b.pages, b.bound, b.finished = b.pages[:min(len(b.pages), finished)], as, finished
}

// writeSheet writes the sheet of a lesson: every step up to the one in hand, then what is known along the members.
func writeSheet(c *panes, width int, spacious bool) sheet {
	s := sheet{width: width, changes: c.changes, spacious: spacious}
	shows := c.shows()
	w := writer{&s, c, shows}
	steps, members := min(shows.StepInHand()+1, shows.Steps()), shows.MembersBegun()
	c.binder.open(bound{shows.Senses(), width, spacious, shows.Hiding()}, shows.StepInHand()+max(len(members)-1, 0))
	for i := range steps {
		if i > 0 {
			w.add(nil)
		}
		s.starts = append(s.starts, len(s.lines))
		w.page(i, func(w writer) { w.step(i) })
	}
	for i, m := range members {
		w.page(steps+i, func(w writer) { w.member(m) })
	}
	w.kept()
	return s
}

// page adds page n: as it is kept if it is finished, else written anew.
func (w writer) page(n int, write func(writer)) {
	b := &w.c.binder
	if n >= len(b.pages) {
		alone := sheet{width: w.width, spacious: w.spacious}
		write(writer{&alone, w.c, w.shows})
		if n >= b.finished {
			w.add(alone.lines...)
			return
		}
		b.pages = append(b.pages, alone.lines)
	}
	w.add(b.pages[n]...)
}
