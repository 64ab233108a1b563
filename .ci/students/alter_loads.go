package main

import "math"

// shares lists the shares of loads in the sum, each once.
func (e *equation) shares() []*share {
	var all []*share
	for _, t := range e.terms {
		if t.sh != nil && t.sh.shape != "couple" && (len(all) == 0 || all[len(all)-1] != t.sh) {
			all = append(all, t.sh)
		}
	}
	return all
}

// retaken gives the terms of a share's force in this sum, taken with another force at another place.
func (e *equation) retaken(sh *share, force, at vec) []*term {
	c := *e
	c.terms = nil
	c.act(nil, sh, force, at, 0, false)
	return c.terms
}

// instead takes the terms of some shares out and puts others in.
func (e *equation) instead(kind string, out []*share, in ...*term) alteration {
	a := alteration{kind: kind, swap: map[*term]*term{}, stray: in}
	for _, t := range e.terms {
		for _, sh := range out {
			if t.sh == sh {
				a.swap[t] = nil
			}
		}
	}
	// where each term has its counterpart the change is one of terms
	var stray []*term
	for _, n := range in {
		found := false
		for t, to := range a.swap {
			if to == nil && t.sh == n.sh && t.axis == n.axis {
				a.swap[t], found = n, true
				break
			}
		}
		if !found {
			stray = append(stray, n)
		}
	}
	a.stray = stray
	return a
}

// resultants: size and place of the resultant of one share.
func (e *equation) resultants(sh *share) []alteration {
	var all []alteration
	m := sh.l.m
	take := func(kind string, scale, s float64) {
		if e.moment || scale != 1 {
			all = append(all, e.instead(kind, []*share{sh}, e.retaken(sh, sh.force.times(scale), m.at(s))...))
		}
	}
	s := sh.at.sub(m.A).dot(m.u)
	if sh.shape == "point" {
		if !sh.l.joint && differ(s, m.length-s) {
			take("place from the wrong end", 1, m.length-s)
		}
		return all
	}
	long := sh.s1 - sh.s0
	far, close := sh.s1, sh.s0
	if e.moment && m.at(far).sub(e.about).length() < m.at(close).sub(e.about).length() {
		far, close = close, far
	}
	if differ(long*sh.l.per, 1) {
		take("intensity used as a force", 1/(long*sh.l.per), s)
	}
	take("load counted twice", 2, s)
	take("resultant at the far end", 1, far)
	take("resultant at the near end", 1, close)
	if sh.s0 > 1e-6 && sh.s1 < m.length-1e-6 || differ(s, m.length-s) && long < m.length-1e-6 {
		take("place from the wrong end", 1, m.length-s)
	}
	if sh.s0 > 1e-6 {
		take("distance to the loaded stretch forgotten", 1, s-sh.s0)
	}
	middle := (sh.s0 + sh.s1) / 2
	if sh.shape == "uniform" {
		take("uniform load halved", 0.5, s)
		return all
	}
	take("triangle as wL at its third", 2, s)
	take("triangle at the middle", 1, middle)
	take("triangle as wL at the middle", 2, middle)
	take("wrong third of the triangle", 1, sh.s0+sh.s1-s)
	return all
}

// wholeLoads: what a load is per, which way it points, and loads that reach beyond the body; altered whole.
func (e *equation) wholeLoads() []alteration {
	var all []alteration
	done := map[*load]bool{}
	for _, sh := range e.shares() {
		l := sh.l
		if done[l] || l.kind == "point" {
			continue
		}
		done[l] = true
		mine := e.of(l)
		scaled := func(kind string, scale float64) {
			var in []*term
			for _, s := range mine {
				in = append(in, e.retaken(s, s.force.times(scale), s.at)...)
			}
			all = append(all, e.instead(kind, mine, in...))
		}
		u := vec{math.Abs(l.m.u.x), math.Abs(l.m.u.y)}
		switch sloping := u.x > 1e-6 && u.y > 1e-6; {
		case sloping && l.per < 1:
			scaled("per run taken per length", 1/l.per)
		case sloping:
			scaled("per length taken per run", u.x)
		}
		all = append(all, e.redirected(l, mine)...)
		if l.several {
			all = append(all, e.crossing(l, mine)...)
		}
		if e.section != nil && l.m == e.section.m {
			continue
		}
		if len(mine) == 2 && e.moment {
			var in []*term
			for _, s := range mine {
				in = append(in, e.retaken(s, s.force, l.m.at((s.s0+s.s1)/2))...)
			}
			all = append(all, e.instead("trapezoid at its middle", mine, in...))
		}
	}
	return all
}

func (e *equation) of(l *load) []*share {
	var mine []*share
	for _, sh := range e.shares() {
		if sh.l == l {
			mine = append(mine, sh)
		}
	}
	return mine
}

// redirected: a load normal to an inclined member taken as vertical, or the other way.
func (e *equation) redirected(l *load, mine []*share) []alteration {
	m := l.m
	if zero(m.u.x) || zero(m.u.y) {
		return nil
	}
	normal := m.u.left()
	to, kind := normal, "vertical load taken as normal"
	switch {
	case math.Abs(l.dir.dot(normal)) > 1-1e-9:
		to, kind = vec{0, 1}, "normal load taken as vertical"
	case zero(l.dir.x):
	default:
		return nil
	}
	if to.dot(l.dir) < 0 {
		to = to.times(-1)
	}
	var in []*term
	for _, s := range mine {
		in = append(in, e.retaken(s, to.times(s.size()), s.at)...)
	}
	return []alteration{e.instead(kind, mine, in...)}
}

// crossing: a load over several members of which only some are on the body, replaced by one resultant of all.
func (e *equation) crossing(l *load, mine []*share) []alteration {
	var out []*share
	var force, moment vec
	beyond := false
	for _, o := range e.t.frame.loads {
		if o.entry != l.entry {
			continue
		}
		if e.section == nil && !e.parts[o.part] {
			beyond = true
		}
		for _, s := range o.whole() {
			force = force.add(s.force)
			moment = moment.add(s.at.times(s.size()))
		}
		out = append(out, e.of(o)...)
	}
	if !beyond {
		return nil
	}
	at := moment.times(1 / force.length())
	return []alteration{e.instead("load across a pin by one resultant", out, e.retaken(mine[0], force, at)...)}
}

// bodies: loads and forces that do not act on this body.
func (e *equation) bodies(known map[string]float64) []alteration {
	var all []alteration
	f := e.t.frame
	near := map[int]bool{}
	for _, u := range f.unknowns {
		switch {
		case u.other >= 0 && e.parts[u.on] && !e.parts[u.other]:
			near[u.other] = true
		case u.other >= 0 && e.parts[u.other] && !e.parts[u.on]:
			near[u.on] = true
		case u.other >= 0 && e.parts[u.on]:
			if v, ok := known[u.name]; ok && !zero(v) {
				c := *e
				c.terms = nil
				c.act(u, nil, u.dir, u.at, 0, false)
				if len(c.terms) > 0 {
					all = append(all, alteration{kind: "pin force inside the body", stray: c.terms})
				}
			}
		}
	}
	for part := range near {
		both := alteration{kind: "all loads of the next part as well"}
		n := 0
		for _, l := range f.loads {
			if l.part != part {
				continue
			}
			c := *e
			c.terms = nil
			for _, sh := range l.whole() {
				c.act(nil, sh, sh.force, sh.at, sh.couple, sh.shape == "couple")
			}
			if len(c.terms) > 0 {
				n++
				all = append(all, alteration{kind: "load of the next part", stray: c.terms})
				both.stray = append(both.stray, c.terms...)
			}
		}
		if n > 1 {
			all = append(all, both)
		}
	}
	if !e.moment {
		all = append(all, e.momentsInForces()...)
	}
	return all
}

// momentsInForces: a couple put in a sum of forces, or a force multiplied by a distance there.
func (e *equation) momentsInForces() []alteration {
	var all []alteration
	for _, l := range e.t.frame.loads {
		if e.parts[l.part] && l.kind == "couple" {
			sh := l.whole()[0]
			for _, s := range []float64{1, -1} {
				all = append(all, alteration{kind: "couple in a sum of forces", stray: []*term{{sh: sh, axis: 'c', at: sh.at, part: s * sh.couple, arm: 1}}})
			}
		}
	}
	for _, t := range e.terms {
		if t.sh != nil && t.sh.shape == "point" && t.sh.l.given > 0 && differ(t.sh.l.given, 1) {
			all = append(all, alter("moment in a sum of forces", t, t.changed(t.part, t.sh.l.given)))
		}
	}
	return all
}
