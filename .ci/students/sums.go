package main

import "math"

// term is one product of a sum: force × arm, or in a sum of forces the component alone, with its sign.
type term struct {
	u     *unknown // who gives it: an unknown (then force is for a value of 1) …
	sh    *share   // … or a share of a load
	axis  byte     // x, y: a component in a sum of moments; f: of a sum of forces; c: a couple
	force vec      // the whole force as it acts on the body
	at    vec
	part  float64 // the component that counts, signed
	arm   float64 // with sign: the term is part × arm; 1 in a sum of forces and for a couple
	whole float64 // size of the whole force
}

func (t *term) size() float64 { return t.part * t.arm }

// equation is a sum of a free body: moments about a point, or forces along a unit direction.
type equation struct {
	t       *task
	parts   map[int]bool
	moment  bool
	about   vec
	along   vec
	terms   []*term
	turn    float64 // of a section: what the kept piece's sum is multiplied by, else 1
	section *section
}

// act adds the terms of a force at a point.
func (e *equation) act(u *unknown, sh *share, force, at vec, couple float64, isCouple bool) {
	whole := force.length()
	if isCouple {
		if e.moment {
			e.terms = append(e.terms, &term{u: u, sh: sh, axis: 'c', at: at, part: couple * e.turn, arm: 1, whole: math.Abs(couple)})
		}
		return
	}
	t := term{u: u, sh: sh, force: force, at: at, whole: whole}
	if !e.moment {
		t.axis, t.part, t.arm = 'f', force.dot(e.along)*e.turn, 1
		e.add(t)
		return
	}
	d := at.sub(e.about)
	x, y := t, t
	x.axis, x.part, x.arm = 'x', force.x*e.turn, -d.y
	y.axis, y.part, y.arm = 'y', force.y*e.turn, d.x
	e.add(x)
	e.add(y)
}

func (e *equation) add(t term) {
	if !zero(t.size()) {
		e.terms = append(e.terms, &t)
	}
}

// inside tells with what sign an unknown acts on the body: 0 where it does not, or acts on both sides.
func (e *equation) inside(u *unknown) float64 {
	sign := 0.0
	if e.parts[u.on] {
		sign++
	}
	if u.other >= 0 && e.parts[u.other] {
		sign--
	}
	return sign
}

// equation makes a sum of unpin's plan anew, from our own frame.
func (t *task) equation(s planSum) *equation {
	e := &equation{t: t, parts: map[int]bool{}, moment: s.Sum == "moment", turn: 1}
	for _, name := range s.Parts {
		e.parts[t.partOf[name]] = true
	}
	if e.moment {
		e.about = vec{fraction(s.About[0]), fraction(s.About[1])}
	} else {
		e.along = vec{fraction(s.Along[0]), fraction(s.Along[1])}.unit()
	}
	e.fill()
	return e
}

func (e *equation) fill() {
	for _, u := range e.t.frame.unknowns {
		if sign := e.inside(u); sign != 0 {
			e.act(u, nil, u.dir.times(sign), u.at, sign, u.couple)
		}
	}
	for _, l := range e.t.frame.loads {
		if e.parts[l.part] {
			for _, sh := range e.t.frame.acting(l) {
				e.act(nil, sh, sh.force, sh.at, sh.couple, sh.shape == "couple")
			}
		}
	}
}

// worth is what a term comes to with the values known, for an unknown one's coefficient.
func (t *term) worth(known map[string]float64) float64 {
	if t.u != nil {
		if v, ok := known[t.u.name]; ok {
			return t.size() * v
		}
	}
	return t.size()
}

// total is the sum of all terms.
func (e *equation) total(known map[string]float64) float64 {
	sum := 0.0
	for _, t := range e.terms {
		sum += t.worth(known)
	}
	return sum
}

// split gives the coefficients of the unknowns sought and the sum of all other terms.
func (e *equation) split(sought []string, known map[string]float64) (k []float64, rest, scale float64) {
	k = make([]float64, len(sought))
terms:
	for _, t := range e.terms {
		if t.u != nil {
			for i, name := range sought {
				if t.u.name == name {
					k[i] += t.size()
					continue terms
				}
			}
		}
		w := t.worth(known)
		rest += w
		scale = math.Max(scale, math.Abs(w))
	}
	return k, rest, scale
}

// idle tells whether every term of a sum is zero.
func (e *equation) idle(known map[string]float64) bool {
	for _, t := range e.terms {
		if !zero(t.worth(known)) {
			return false
		}
	}
	return true
}
