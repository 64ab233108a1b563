package main

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// member is a straight piece from joint a to joint b; u is its unit direction, part the rigid part that holds it.
type member struct {
	name, a, b string
	A, B       vec
	length     float64
	u          vec
	part       int
}

// at is the point that lies s along the member.
func (m *member) at(s float64) vec { return m.A.add(m.u.times(s)) }

// unknown is one reaction or one component of a pin's force: positive along dir (a couple: counter-clockwise) on part on,
// and reversed on part other, which is -1 for a support.
type unknown struct {
	name      string
	joint     string
	at, dir   vec
	couple    bool
	on, other int
}

// load is a load of the file as it acts on one member (for a load over several members there are several).
type load struct {
	entry   int    // place in the file
	kind    string // point, couple, uniform, ramp
	m       *member
	part    int
	size    float64 // of a point load or of a couple (counter-clockwise +)
	s       float64 // where a point load or a couple stands, along the member
	given   float64 // the distance as written
	run     bool    // the distance is written along the horizontal
	joint   bool    // it stands on a joint, no distance is written
	dir     vec
	degrees float64
	byAngle bool
	ratio   vec     // the direction as written by two numbers, if it is
	s0, s1  float64 // the stretch of a distributed load, along the member
	w0, w1  float64 // its intensities as written
	per     float64 // what they are multiplied by: |dx|/L, |dy|/L or 1
	several bool    // one of several members of one entry
}

// frame is a problem file made ready: members, parts, unknowns and loads.
type frame struct {
	joints   map[string]vec
	members  []*member
	parts    int
	unknowns []*unknown
	loads    []*load
	pins     map[string]bool
	fixed    map[string]bool // joints where a support holds a couple
}

func (f *frame) member(name string) *member {
	for _, m := range f.members {
		if m.name == name {
			return m
		}
	}
	panic("no member " + name)
}

func newFrame(p *problem) *frame {
	f := &frame{joints: map[string]vec{}, pins: map[string]bool{}, fixed: map[string]bool{}}
	for name, xy := range p.Joints {
		f.joints[name] = vec{xy[0].float(), xy[1].float()}
	}
	for _, name := range p.Members {
		a, b := name[:1], name[1:]
		m := &member{name: name, a: a, b: b, A: f.joints[a], B: f.joints[b]}
		m.length = m.B.sub(m.A).length()
		m.u = m.B.sub(m.A).unit()
		f.members = append(f.members, m)
	}
	f.findParts(p)
	f.findSupports(p)
	for i, e := range p.Loads {
		f.addLoad(i, e)
	}
	return f
}

// findParts joins members that meet rigidly and makes the pairs of forces at the pins.
func (f *frame) findParts(p *problem) {
	root := make([]int, len(f.members))
	for i := range root {
		root[i] = i
	}
	var top func(int) int
	top = func(i int) int {
		if root[i] != i {
			root[i] = top(root[i])
		}
		return root[i]
	}
	free := hinged(p)
	for joint := range f.joints {
		var rest []int
		for i, m := range f.members {
			if (m.a == joint || m.b == joint) && !free[joint]["all"] && !free[joint][m.name] {
				rest = append(rest, i)
			}
		}
		for _, i := range rest {
			root[top(i)] = top(rest[0])
		}
	}
	number := map[int]int{}
	for i, m := range f.members {
		t := top(i)
		if _, ok := number[t]; !ok {
			number[t] = len(number)
		}
		m.part = number[t]
	}
	f.parts = len(number)
	for _, joint := range sorted(free) {
		f.pins[joint] = true
		var meet []int
		for _, m := range f.members {
			if (m.a == joint || m.b == joint) && !slices.Contains(meet, m.part) {
				meet = append(meet, m.part)
			}
		}
		if len(meet) != 2 {
			panic("only pins of two parts are made here: " + joint)
		}
		for i, axis := range []vec{{1, 0}, {0, 1}} {
			f.unknowns = append(f.unknowns, &unknown{name: joint + "xy"[i:i+1], joint: joint, at: f.joints[joint], dir: axis, on: meet[0], other: meet[1]})
		}
	}
}

// hinged tells which members are hinged at each pin; all stands for every one.
func hinged(p *problem) map[string]map[string]bool {
	free := map[string]map[string]bool{}
	for joint, list := range p.Pins {
		free[joint] = map[string]bool{}
		for _, name := range names(list) {
			free[joint][name] = true
		}
	}
	return free
}

func sorted[V any](m map[string]V) []string {
	var keys []string
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

func (f *frame) findSupports(p *problem) {
	for _, joint := range sorted(p.Supports) {
		part := -1
		for _, m := range f.members {
			if m.a == joint || m.b == joint {
				part = m.part
			}
		}
		reaction := func(name string, dir vec, couple bool) {
			f.unknowns = append(f.unknowns, &unknown{name: name, joint: joint, at: f.joints[joint], dir: dir, couple: couple, on: part, other: -1})
		}
		support, path := f.support(p.Supports[joint])
		switch support {
		case "pin", "fixed":
			reaction(joint+"x", vec{1, 0}, false)
			reaction(joint+"y", vec{0, 1}, false)
		default:
			reaction("R"+joint, path, false)
		}
		if support == "fixed" || support == "guide" {
			f.fixed[joint] = true
			reaction("M"+joint, vec{}, true)
		}
	}
}

func (f *frame) support(v any) (string, vec) {
	if byKind, ok := v.(map[string]any); ok {
		for kind, to := range byKind {
			d, _, _ := direction(to, nil)
			return kind, d
		}
	}
	return fmt.Sprint(v), vec{}
}

func (f *frame) addLoad(i int, e loadEntry) {
	on := names(e.On)
	if len(on) == 0 {
		for _, m := range f.members {
			if m.a == e.Joint || m.b == e.Joint {
				on = []string{m.name}
				break
			}
		}
	}
	for _, name := range on {
		m := f.member(name)
		l := &load{entry: i, m: m, part: m.part, per: 1, several: len(on) > 1}
		if list, ok := e.To.([]any); ok {
			l.ratio = vec{number(list[0]), number(list[1])}
		}
		if e.Couple == "" {
			l.dir, l.degrees, l.byAngle = direction(e.To, m)
		}
		switch {
		case e.Point != "":
			l.kind, l.size = "point", e.Point.float()
		case e.Couple != "":
			l.kind, l.size = "couple", e.Couple.float()
			if e.To == "cw" {
				l.size = -l.size
			}
		case e.Uniform != "":
			l.kind, l.w0, l.w1 = "uniform", e.Uniform.float(), e.Uniform.float()
		default:
			l.kind, l.w0, l.w1 = "ramp", e.Ramp[0].float(), e.Ramp[1].float()
		}
		f.place(l, e)
		f.loads = append(f.loads, l)
	}
}

// place reads where a load stands on its member.
func (f *frame) place(l *load, e loadEntry) {
	m := l.m
	l.s1 = m.length
	if e.From != "" {
		l.s0 = e.From.float()
	}
	if e.Until != "" {
		l.s1 = e.Until.float()
	}
	switch e.Per {
	case "run":
		l.per = math.Abs(m.u.x)
	case "rise":
		l.per = math.Abs(m.u.y)
	}
	switch {
	case e.Joint == m.b:
		l.s, l.joint = m.length, true
	case e.Joint == m.a:
		l.joint = true
	case e.At != "":
		l.given = e.At.float()
		l.s = l.given
		if strings.HasSuffix(string(e.At), " run") {
			l.run = true
			l.s = l.given / math.Abs(m.u.x)
		}
	}
}

// share is one simple shape of a load: a force at a point, a couple, or the resultant of a uniform or triangular piece.
type share struct {
	l      *load
	shape  string // point, couple, uniform, triangle
	force  vec
	couple float64
	at     vec
	s0, s1 float64 // of a distributed share, along the member
	q0, q1 float64 // its intensities per length of the member
	w      float64 // the larger intensity, as written
}

// size is that of the whole force.
func (s *share) size() float64 { return s.force.length() }

// shares divides a load into simple shapes, of the stretch between the distances lo and hi along its member.
func (l *load) shares(lo, hi float64) []*share {
	switch l.kind {
	case "couple":
		return []*share{{l: l, shape: "couple", couple: l.size, at: l.m.at(l.s)}}
	case "point":
		return []*share{{l: l, shape: "point", force: l.dir.times(l.size), at: l.m.at(l.s), w: l.size}}
	}
	s0, s1 := math.Max(l.s0, lo), math.Min(l.s1, hi)
	if s1-s0 < 1e-9 {
		return nil
	}
	q := func(s float64) float64 { return l.per * (l.w0 + (l.w1-l.w0)*(s-l.s0)/(l.s1-l.s0)) }
	q0, q1 := q(s0), q(s1)
	base := math.Min(q0, q1)
	var all []*share
	if base > 1e-9 {
		all = append(all, &share{l: l, shape: "uniform", force: l.dir.times(base * (s1 - s0)), at: l.m.at((s0 + s1) / 2), s0: s0, s1: s1, q0: base, q1: base, w: base / l.per})
	}
	if tall := math.Abs(q1 - q0); tall > 1e-9 {
		third := s0 + (s1-s0)/3
		if q1 > q0 {
			third = s1 - (s1-s0)/3
		}
		all = append(all, &share{l: l, shape: "triangle", force: l.dir.times(tall * (s1 - s0) / 2), at: l.m.at(third), s0: s0, s1: s1, q0: q0 - base, q1: q1 - base, w: tall / l.per})
	}
	return all
}

// whole is all shares of a load.
func (l *load) whole() []*share { return l.shares(0, l.m.length) }
