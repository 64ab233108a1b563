package main

import "math"

// A uniform load over members of one part that lie in one line is worked as one: its length is that of all of them, and its
// resultant acts in their middle.

// acting gives what a load brings to a sum of its part, with the members that it runs on over; nothing where it was brought
// with a member before.
func (f *frame) acting(l *load) []*share {
	run := f.run(l)
	switch {
	case len(run) < 2:
		return l.whole()
	case run[0] != l:
		return nil
	}
	s0, s1 := math.Inf(1), math.Inf(-1)
	for _, o := range run {
		for _, end := range []vec{o.m.A, o.m.B} {
			s := end.sub(l.m.A).dot(l.m.u)
			s0, s1 = math.Min(s0, s), math.Max(s1, s)
		}
	}
	q := l.per * l.w0
	return []*share{{l: l, shape: "uniform", force: l.dir.times(q * (s1 - s0)), at: l.m.at((s0 + s1) / 2), s0: s0, s1: s1, q0: q, q1: q, w: l.w0}}
}

// run lists the loads of one entry that follow each other in line on one part, a load among them.
func (f *frame) run(l *load) []*load {
	var run []*load
	found := false
	for _, o := range f.loads {
		if o.entry != l.entry || o.kind != "uniform" || !o.several {
			continue
		}
		if n := len(run); n > 0 && !run[n-1].goesOn(o) {
			if found {
				return run
			}
			run = nil
		}
		run, found = append(run, o), found || o == l
	}
	return run
}

// goesOn tells whether the next member of a walk lies in line with this one, on the same part.
func (l *load) goesOn(o *load) bool {
	return l.part == o.part && zero(l.m.u.cross(o.m.u))
}
