package main

import "math"

// guess is a wrong value with the mistake behind it; about says which printed product or whose force it concerns.
type guess struct {
	kind  string
	value float64
	about []string
	text  string // as it is typed, where its figures are the mistake
	side  string // of a section: start or end, whichever piece was kept
}

// sectionGuesses lists wrong values of N, V or M at a cut.
func (t *task) sectionGuesses(s section, known map[string]float64) []guess {
	var all []guess
	side := "end"
	if s.start {
		side = "start"
	}
	e := t.cut(s.m, s.x, s.what, s.start)
	own := e.total(known)
	add := func(kind string, v float64, about ...*load) {
		all = append(all, guess{kind: sectionHead + kind, value: v, about: loadNames(about), side: side})
	}
	for _, a := range e.alterations(known) {
		all = append(all, guess{kind: sectionHead + a.kind, value: e.apply(a).total(known), about: a.names(), side: side})
	}
	if !zero(own) {
		add("sign reversed", -own)
	}
	at := func(x float64, what string) float64 { return t.cut(s.m, x, what, true).total(known) }
	switch s.what {
	case "N":
		add("N and V exchanged", at(s.x, "V"))
		add("N and V exchanged", -at(s.x, "V"))
	case "V":
		add("N and V exchanged", at(s.x, "N"))
		add("N and V exchanged", -at(s.x, "N"))
	}
	t.onCutMember(e, own, known, add)
	t.steps(s, own, known, add)
	t.axes(e, known, add)
	if s.what == "M" {
		t.areas(s, known, add)
	}
	return all
}

// onCutMember: loads of the cut member that are not, or not wholly, on the kept piece.
func (t *task) onCutMember(e *equation, own float64, known map[string]float64, add func(string, float64, ...*load)) {
	s := e.section
	full := func(l *load) float64 {
		c := *e
		c.terms = nil
		shares := l.whole()
		for _, sh := range shares {
			c.act(nil, sh, sh.force, sh.at, sh.couple, sh.shape == "couple")
		}
		return c.total(known)
	}
	for _, l := range t.frame.loads {
		if l.m != s.m {
			continue
		}
		part := 0.0
		for _, tm := range e.terms {
			if tm.sh != nil && tm.sh.l == l {
				part += tm.size()
			}
		}
		whole := full(l)
		switch {
		case l.kind == "point" || l.kind == "couple":
			if (l.s < s.x) != s.start && !l.joint {
				add("load beyond the cut", own+whole, l)
			}
		case s.x <= l.s0+1e-6 && s.start || s.x >= l.s1-1e-6 && !s.start:
			add("load beyond the cut", own+whole, l)
		case s.x > l.s0+1e-6 && s.x < l.s1-1e-6:
			add("whole load for a partial piece", own-part+whole, l)
			if s.start == (l.s0+(l.s1-l.s0)/2 < s.x) {
				add("resultant before cutting", own-part+whole, l)
			} else {
				add("resultant before cutting", own-part, l)
			}
		}
	}
}

// steps: what happens to V and M at a point load or a couple.
func (t *task) steps(s section, own float64, known map[string]float64, add func(string, float64, ...*load)) {
	for _, l := range t.frame.loads {
		if l.m != s.m || l.joint || math.Abs(l.s-s.x) > 1e-6 || s.x < l.s {
			continue
		}
		before := t.cut(s.m, l.s-1e-9, s.what, s.start).total(known)
		switch {
		case differ(own, before) && !zero(own-before):
			add("no step", before, l)
			add("step the wrong way", 2*before-own, l)
		case l.kind == "couple" && s.what == "V":
			add("step in V at a couple", own+l.size, l)
			add("step in V at a couple", own-l.size, l)
		case l.kind == "point" && s.what == "M":
			add("step in M at a point load", own+l.size, l)
			add("step in M at a point load", own-l.size, l)
		}
		if l.kind == "point" && s.what == "V" {
			add("shear read as the load there", l.size, l)
			add("shear read as the load there", -l.size, l)
		}
	}
}

// axes: the sums of an inclined member not turned into its axes, and the corner where it begins.
func (t *task) axes(e *equation, known map[string]float64, add func(string, float64, ...*load)) {
	s := e.section
	if s.what != "M" && !zero(s.m.u.x) && !zero(s.m.u.y) {
		c := *e
		c.terms, c.along = nil, vec{sign(s.m.u.x), 0}
		if s.what == "V" {
			c.along = vec{0, sign(s.m.u.x)}
		}
		c.actOnPiece()
		add("not turned into the member's axes", c.total(known))
	}
	end, joint := s.m.length, s.m.b
	if s.start {
		end, joint = 0, s.m.a
	}
	if math.Abs(s.x-end) > 1e-6 {
		return
	}
	for _, n := range t.frame.members {
		if n == s.m || n.part != s.m.part || n.a != joint && n.b != joint {
			continue
		}
		x := 1e-9
		if n.b == joint {
			x = n.length - 1e-9
		}
		v := t.cut(n, x, s.what, true).total(known)
		if s.what == "M" {
			if !zero(v) {
				add("moment does not turn the corner", 0)
			}
			continue
		}
		if zero(n.u.cross(s.m.u)) {
			continue
		}
		add("N and V of the member before the corner", v)
	}
}

// areas: M found from the area of V between places, wrongly.
func (t *task) areas(s section, known map[string]float64, add func(string, float64, ...*load)) {
	at := func(x float64, what string) float64 { return t.cut(s.m, x, what, true).total(known) }
	own := at(s.x, "M")
	for _, l := range t.frame.loads {
		if l.m != s.m || l.kind != "uniform" && l.kind != "ramp" || s.x < l.s0+1e-3 || s.x > l.s1+1e-6 {
			continue
		}
		m0 := at(l.s0+1e-9, "M")
		v0, v1 := at(l.s0+1e-9, "V"), at(s.x, "V")
		long := s.x - l.s0
		add("area of V with its sign lost", 2*m0-own, l)
		if math.Abs(v1) < 1e-3*math.Abs(v0) {
			add("area of V without its half", m0+v0*long, l)
		}
		if s.x < l.s1-1e-3 {
			m1 := at(l.s1-1e-9, "M")
			line := m0 + (m1-m0)*long/(l.s1-l.s0)
			add("straight line under a load", line, l)
			add("curve bulging the wrong way", 2*line-own, l)
		}
	}
	if t.frame.fixed[s.m.a] && s.x < 1e-6 || t.frame.fixed[s.m.b] && s.x > s.m.length-1e-6 {
		add("moment zero at a fixed end", 0)
	}
}
