package main

import (
	"math"
	"strconv"
)

// alteration is one mistake in setting up a sum: terms changed, left out (nil) or added.
type alteration struct {
	kind  string
	swap  map[*term]*term
	stray []*term
}

// changed is a copy of a term with another part and arm.
func (t *term) changed(part, arm float64) *term {
	c := *t
	c.part, c.arm = part, arm
	return &c
}

func alter(kind string, t, to *term) alteration {
	return alteration{kind: kind, swap: map[*term]*term{t: to}}
}

// apply gives the sum as the student has it.
func (e *equation) apply(a alteration) *equation {
	c := *e
	c.terms = nil
	for _, t := range e.terms {
		to, ok := a.swap[t]
		switch {
		case !ok:
			c.terms = append(c.terms, t)
		case to != nil:
			c.terms = append(c.terms, to)
		}
	}
	c.terms = append(c.terms, a.stray...)
	return &c
}

// names gives the words by which a person knows the forces that an alteration touches: Cx, or a load's number.
func (a alteration) names() []string {
	var all []string
	add := func(t *term) {
		if t.u != nil {
			all = append(all, t.u.name)
			return
		}
		all = append(all, loadNames([]*load{t.sh.l})...)
	}
	for t := range a.swap {
		add(t)
	}
	for _, t := range a.stray {
		add(t)
	}
	return all
}

func loadNames(loads []*load) []string {
	var all []string
	for _, l := range loads {
		if l.kind == "point" || l.kind == "couple" {
			all = append(all, strconv.FormatFloat(math.Abs(l.size), 'g', -1, 64)+" kn")
			continue
		}
		for _, w := range []float64{l.w0, l.w1, math.Abs(l.w1 - l.w0)} {
			if w != 0 {
				all = append(all, strconv.FormatFloat(w, 'g', 4, 64)+" kn/m")
			}
		}
	}
	return all
}

func sign(v float64) float64 { return math.Copysign(1, v) }

// differ tells two numbers apart that a student would.
func differ(a, b float64) bool { return math.Abs(a-b) > 2e-3*math.Max(math.Abs(a), math.Abs(b)) }

// alterations lists every mistake that this check knows of in setting up the sum.
func (e *equation) alterations(known map[string]float64) []alteration {
	var all []alteration
	for _, t := range e.terms {
		all = append(all, e.signs(t)...)
		all = append(all, e.arms(t)...)
		all = append(all, e.components(t)...)
		if t.axis == 'c' {
			all = append(all, e.couples(t)...)
		}
		if _, ok := known[t.name()]; ok && t.u != nil {
			all = append(all, e.otherValues(t, known)...)
		}
	}
	for _, sh := range e.shares() {
		all = append(all, e.resultants(sh)...)
	}
	all = append(all, e.wholeLoads()...)
	if e.section == nil {
		all = append(all, e.bodies(known)...)
	}
	all = append(all, e.throughCentre(known)...)
	return append(all, e.pairs(known)...)
}

func (t *term) name() string {
	if t.u != nil {
		return t.u.name
	}
	return ""
}

// signs: one term turned, or left out.
func (e *equation) signs(t *term) []alteration {
	what := "load"
	switch {
	case t.u != nil && t.u.other >= 0:
		what = "pin force"
	case t.u != nil:
		what = "reaction"
	case t.axis == 'c':
		what = "couple"
	case t.sh.l.kind == "ramp" && t.sh.l.w0*t.sh.l.w1 != 0:
		what = "shape of a trapezoid"
	case (t.axis == 'x' || t.axis == 'y') && e.both(t):
		what = "component"
	}
	return []alteration{alter("turned "+what, t, t.changed(t.part, -t.arm)), alter("left out "+what, t, nil)}
}

// both tells whether the other component of the same force is in the sum as well.
func (e *equation) both(t *term) bool { return e.partner(t) != nil }

func (e *equation) partner(t *term) *term {
	for _, o := range e.terms {
		if o != t && o.u == t.u && o.sh == t.sh && o.axis != 'c' {
			return o
		}
	}
	return nil
}

// arms: measured from elsewhere, the wrong distance, none.
func (e *equation) arms(t *term) []alteration {
	if t.axis != 'x' && t.axis != 'y' {
		return nil
	}
	var all []alteration
	kind := "arm"
	if t.u != nil {
		kind = "arm of a force"
	}
	set := func(kind string, arm float64) {
		if !zero(arm) && differ(math.Abs(arm), math.Abs(t.arm)) {
			all = append(all, alter(kind, t, t.changed(t.part, math.Copysign(arm, t.arm))))
		}
	}
	d := t.at.sub(e.about)
	for _, joint := range e.labelled() {
		from := t.at.sub(e.t.frame.joints[joint])
		if t.axis == 'x' {
			set(kind+" from another point", from.y)
		} else {
			set(kind+" from another point", from.x)
		}
	}
	if t.axis == 'x' {
		set("horizontal and vertical "+kind+" exchanged", d.x)
	} else {
		set("horizontal and vertical "+kind+" exchanged", d.y)
	}
	if !zero(d.x) && !zero(d.y) {
		set("slant distance as "+kind, d.length())
	}
	set("force without its arm", 1)
	if t.u == nil && t.sh.shape != "couple" && !t.sh.l.joint {
		all = append(all, e.slopes(t)...)
	}
	return all
}

// labelled lists the joints that a student might measure from: those of the body, of a section the ends of the member.
func (e *equation) labelled() []string {
	if e.section != nil {
		return []string{e.section.m.a, e.section.m.b}
	}
	on := map[string]bool{}
	for _, m := range e.t.frame.members {
		if e.parts[m.part] {
			on[m.a], on[m.b] = true, true
		}
	}
	return sorted(on)
}

// slopes: the distance along an inclined member taken for the horizontal one, or the other way.
func (e *equation) slopes(t *term) []alteration {
	m := t.sh.l.m
	if zero(m.u.x) || zero(m.u.y) || t.axis != 'y' {
		return nil
	}
	s := t.at.sub(m.A).dot(m.u)
	arm := m.A.x + s*sign(m.u.x) - e.about.x
	kind := "slope distance taken as horizontal"
	if t.sh.l.run {
		arm = m.A.x + t.sh.l.given*m.u.x - e.about.x
		kind = "horizontal distance taken along the slope"
	}
	if zero(arm) || !differ(arm, t.arm) {
		return nil
	}
	return []alteration{alter(kind, t, t.changed(t.part, arm))}
}

// components: of a force that is inclined to the directions of the sum.
func (e *equation) components(t *term) []alteration {
	if t.axis == 'c' || !differ(t.whole, math.Abs(t.part)) {
		return nil
	}
	other := math.Sqrt(math.Max(0, t.whole*t.whole-t.part*t.part))
	if zero(other) {
		return nil
	}
	what := ""
	if t.u != nil {
		what = " of an unknown"
	}
	set := func(kind string, size float64) alteration {
		return alter(kind, t, t.changed(math.Copysign(size, t.part), t.arm))
	}
	all := []alteration{set("force whole"+what, t.whole)}
	if differ(other, math.Abs(t.part)) {
		all = append(all, set("sine for cosine"+what, other))
		if p := e.partner(t); p != nil && t.axis == 'x' {
			swapped := set("sine for cosine, both"+what, other)
			swapped.swap[p] = p.changed(math.Copysign(t.part, p.part), p.arm)
			all = append(all, swapped)
		}
	}
	if t.u != nil && t.u.other < 0 && t.axis != 'f' {
		all = append(all, e.upright(t)...)
	}
	if t.sh == nil || t.sh.shape != "point" {
		return all
	}
	l := t.sh.l
	if n := l.ratio.length(); n > 1.5 {
		all = append(all, set("slope not divided by the hypotenuse", math.Abs(t.part)*n))
		if p := e.partner(t); p != nil && t.axis == 'x' {
			both := set("slope not divided by the hypotenuse, both", math.Abs(t.part)*n)
			both.swap[p] = p.changed(p.part*n, p.arm)
			all = append(all, both)
		}
	}
	if l.byAngle {
		all = append(all, e.radians(t)...)
	}
	return all
}

// radians: the calculator took degrees for radians, with the angle as written or the acute one to the horizontal.
func (e *equation) radians(t *term) []alteration {
	var all []alteration
	l := t.sh.l
	acute := math.Mod(l.degrees, 180)
	acute = math.Min(acute, 180-acute)
	for i, angle := range []float64{l.degrees, acute} {
		force := turned(angle).times(l.size)
		if i == 1 {
			force = vec{force.x * sign(t.force.x), force.y * sign(t.force.y)}
		}
		part := func(t *term) float64 {
			switch {
			case t.axis == 'x':
				return force.x * e.turn
			case t.axis == 'y':
				return force.y * e.turn
			}
			return force.dot(e.along) * e.turn
		}
		a := alter("degrees as radians", t, t.changed(part(t), t.arm))
		all = append(all, a)
		if p := e.partner(t); p != nil && t.axis == 'x' {
			b := alter("degrees as radians, both", t, t.changed(part(t), t.arm))
			b.swap[p] = p.changed(part(p), p.arm)
			all = append(all, b)
		}
	}
	return all
}

// upright: an inclined roller's reaction taken as vertical.
func (e *equation) upright(t *term) []alteration {
	if zero(t.u.dir.y) || zero(t.u.dir.x) {
		return nil
	}
	d := t.at.sub(e.about)
	a := alteration{kind: "inclined roller taken as vertical", swap: map[*term]*term{t: nil}}
	if p := e.partner(t); p != nil {
		if t.axis == 'y' {
			return nil
		}
		a.swap[p] = nil
	}
	if !zero(d.x) {
		c := *t
		c.axis, c.part, c.arm = 'y', sign(t.u.dir.y)*e.turn, d.x
		a.stray = []*term{&c}
	}
	return []alteration{a}
}

// couples: multiplied by a distance.
func (e *equation) couples(t *term) []alteration {
	var all []alteration
	d := t.at.sub(e.about)
	distances := []float64{math.Abs(d.x), math.Abs(d.y), d.length()}
	if t.sh != nil {
		distances = append(distances, t.sh.l.s)
	}
	for _, by := range distances {
		if !zero(by) && differ(by, 1) {
			all = append(all, alter("couple times a distance", t, t.changed(t.part*by, t.arm)))
		}
	}
	return all
}

// otherValues: the value of another force put in for a known one.
func (e *equation) otherValues(t *term, known map[string]float64) []alteration {
	var all []alteration
	own := known[t.u.name]
	for _, u := range e.t.frame.unknowns {
		v, ok := known[u.name]
		if ok && u != t.u && u.couple == t.u.couple && !zero(v) && !zero(own) && differ(v, own) && differ(v, -own) {
			all = append(all, alter("value of another force", t, t.changed(t.part*v/own, t.arm)))
		}
	}
	return all
}

// throughCentre: a known force that passes the centre given a moment.
func (e *equation) throughCentre(known map[string]float64) []alteration {
	if !e.moment || e.section != nil {
		return nil
	}
	var all []alteration
	give := func(u *unknown, sh *share, force, at vec) {
		d := at.sub(e.about)
		for i, c := range []struct{ part, arm, other float64 }{{force.x, -d.y, d.x}, {force.y, d.x, d.y}} {
			if !zero(c.part) && zero(c.arm) && !zero(c.other) {
				for _, s := range []float64{1, -1} {
					all = append(all, alteration{kind: "force through the centre given a moment", stray: []*term{{u: u, sh: sh, axis: "xy"[i], force: force, at: at, part: c.part, arm: s * c.other, whole: force.length()}}})
				}
			}
		}
	}
	for _, u := range e.t.frame.unknowns {
		if s := e.inside(u); s != 0 && !u.couple {
			if _, ok := known[u.name]; ok {
				give(u, nil, u.dir.times(s), u.at)
			}
		}
	}
	for _, l := range e.t.frame.loads {
		if e.parts[l.part] && l.kind != "couple" {
			for _, sh := range l.whole() {
				give(nil, sh, sh.force, sh.at)
			}
		}
	}
	return all
}

// pairs: both components of a known pin force with the sense they have on the other part.
func (e *equation) pairs(known map[string]float64) []alteration {
	var all []alteration
	for _, t := range e.terms {
		if t.u == nil || t.u.other < 0 || t.u.dir.x == 0 {
			continue
		}
		for _, o := range e.terms {
			if o.u == nil || o.u == t.u || o.u.other < 0 || o.u.joint != t.u.joint {
				continue
			}
			_, ok := known[t.u.name]
			_, too := known[o.u.name]
			if ok && too {
				a := alter("pin force with one sense on both parts", t, t.changed(-t.part, t.arm))
				a.swap[o] = o.changed(-o.part, o.arm)
				all = append(all, a)
			}
		}
	}
	return all
}
