package statics

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// A stiffFrame is a second engine, of another kind: every member is an elastic beam, every rigid piece at a joint has two
// displacements and a turn, and what joins the pieces to pins, to each other and to the ground are constraints with
// multipliers, which are the forces looked for. All is float64, solved densely. A determinate frame has the same forces
// however stiff its members are, so the engine's exact values must come out.
//
// The element is the usual one of the displacement method (Przemieniecki, Theory of Matrix Structural Analysis, 1968,
// chapter 5, from memory): axial, and Euler-Bernoulli bending with cubic shape functions, whose consistent loads are exact.
type stiffFrame struct {
	f       Frame
	body    []int // of each member, flooded as for the oracle
	main    []int // of each joint, the node of the piece that a load or support there holds
	piece   map[[2]int]node
	stiff   [][2]float64 // of each member: EA, EI
	nodes   int
	holds   []constraint
	load    []float64
	matrix  *mat.Dense
	answers []float64 // displacements, then multipliers
}

// A node is the first of the three numbers of a piece's displacements.
type node int

// A constraint is a force along a direction, or a couple, between a node and another, or the ground.
type constraint struct {
	joint   int
	on, by  node // by is ground for a support
	x, y    float64
	couple  bool
	body    int // of the piece it acts on, or None: a pin
	support bool
}

const ground node = -1

// stiffened makes the elastic frame; stiffness gives EA and EI of each member.
func stiffened(f Frame, stiffness func(m int) (ea, ei float64)) *stiffFrame {
	s := &stiffFrame{f: f, body: survey(f).body, piece: map[[2]int]node{}}
	for m := range f.Members {
		ea, ei := stiffness(m)
		s.stiff = append(s.stiff, [2]float64{ea, ei})
	}
	s.main = make([]int, len(f.Joints))
	for j, members := range f.meeting() {
		if len(members) > 0 {
			s.join(j, members)
		}
	}
	for _, sup := range f.Supports {
		s.support(sup)
	}
	s.assemble()
	return s
}

// newNode is a further piece or pin.
func (s *stiffFrame) newNode() node {
	s.nodes++
	return node(3 * (s.nodes - 1))
}

// join makes the nodes of the pieces at a joint and what holds them together.
func (s *stiffFrame) join(j int, members []int) {
	var c *Connection
	for k := range s.f.Connections {
		if s.f.Connections[k].Joint == j {
			c = &s.f.Connections[k]
		}
	}
	if c == nil {
		n := s.newNode()
		s.main[j] = int(n)
		for _, m := range members {
			s.piece[[2]int{j, m}] = n
		}
		return
	}
	var of []node
	for _, piece := range c.Pieces {
		n := s.newNode()
		of = append(of, n)
		for _, m := range piece {
			s.piece[[2]int{j, m}] = n
		}
	}
	if c.Kind == Pin {
		pin := s.newNode()
		s.main[j] = int(pin)
		s.holds = append(s.holds, constraint{joint: j, on: pin, by: ground, couple: true, body: None}) // a pin has no turn of its own
		for p, n := range of {
			b := s.body[c.Pieces[p][0]]
			s.holds = append(s.holds, constraint{joint: j, on: n, by: pin, x: 1, body: b}, constraint{joint: j, on: n, by: pin, y: 1, body: b})
		}
		return
	}
	s.main[j] = int(of[c.Main])
	free := 1 - c.Main
	x, y := unitOf(c.Along)
	h := constraint{joint: j, on: of[free], by: of[c.Main], x: -y, y: x, body: s.body[c.Pieces[free][0]]}
	s.holds = append(s.holds, h)
	if c.Kind == Sleeve {
		h.x, h.y, h.couple = 0, 0, true
		s.holds = append(s.holds, h)
	}
}

func unitOf(v Vector) (x, y float64) {
	x, y = v.X.Float(), v.Y.Float()
	l := math.Hypot(x, y)
	return x / l, y / l
}

// support adds what holds a joint to the ground.
func (s *stiffFrame) support(sup Support) {
	h := constraint{joint: sup.Joint, on: node(s.main[sup.Joint]), by: ground, body: None, support: true}
	stiff := sup.Kind == Fixed || sup.Kind == Guide
	switch {
	case sup.On != None:
		h.on = s.piece[[2]int{sup.Joint, sup.On}]
	case stiff:
		for _, c := range s.f.Connections {
			if c.Joint == sup.Joint {
				h.on = s.piece[[2]int{sup.Joint, c.Pieces[c.Main][0]}]
			}
		}
	}
	add := func(x, y float64, couple bool) {
		h.x, h.y, h.couple = x, y, couple
		s.holds = append(s.holds, h)
	}
	if sup.Kind == Pinned || sup.Kind == Fixed {
		add(1, 0, false)
		add(0, 1, false)
	} else {
		x, y := unitOf(sup.Along)
		add(x, y, false)
	}
	if stiff {
		add(0, 0, true)
	}
}

// assemble writes the stiffness of all members and the constraints.
func (s *stiffFrame) assemble() {
	n := 3*s.nodes + len(s.holds)
	s.matrix, s.load = mat.NewDense(n, n, nil), make([]float64, n)
	for m := range s.f.Members {
		k := s.element(m)
		at := s.numbers(m)
		for i := range 6 {
			for j := range 6 {
				s.matrix.Set(at[i], at[j], s.matrix.At(at[i], at[j])+k.At(i, j))
			}
		}
	}
	for i, h := range s.holds {
		row := 3*s.nodes + i
		put := func(n node, sign float64) {
			for k, c := range [3]float64{h.x, h.y, map[bool]float64{true: 1}[h.couple]} {
				s.matrix.Set(row, int(n)+k, sign*c)
				s.matrix.Set(int(n)+k, row, -sign*c) // the force on the node, on the side of what resists
			}
		}
		put(h.on, 1)
		if h.by != ground {
			put(h.by, -1)
		}
	}
	for _, l := range s.f.Loads {
		s.apply(l)
	}
}

// numbers are the places of a member's six displacements.
func (s *stiffFrame) numbers(m int) [6]int {
	a, b := s.piece[[2]int{s.f.Members[m].From, m}], s.piece[[2]int{s.f.Members[m].To, m}]
	return [6]int{int(a), int(a) + 1, int(a) + 2, int(b), int(b) + 1, int(b) + 2}
}

// frameOf is the direction of a member and its length.
func (s *stiffFrame) frameOf(m int) (x, y, length float64) {
	span := s.f.Span(m)
	x, y = unitOf(span)
	return x, y, math.Hypot(span.X.Float(), span.Y.Float())
}

// turned is the matrix from the six displacements of a member in the plane to those along and square to it.
func (s *stiffFrame) turned(m int) *mat.Dense {
	x, y, _ := s.frameOf(m)
	t := mat.NewDense(6, 6, nil)
	for k := 0; k < 6; k += 3 {
		t.Set(k, k, x)
		t.Set(k, k+1, y)
		t.Set(k+1, k, -y)
		t.Set(k+1, k+1, x)
		t.Set(k+2, k+2, 1)
	}
	return t
}

// straight is the stiffness of a member along and square to itself.
func (s *stiffFrame) straight(m int) *mat.Dense {
	_, _, l := s.frameOf(m)
	a, b := s.stiff[m][0]/l, s.stiff[m][1]/(l*l*l)
	return mat.NewDense(6, 6, []float64{
		a, 0, 0, -a, 0, 0,
		0, 12 * b, 6 * b * l, 0, -12 * b, 6 * b * l,
		0, 6 * b * l, 4 * b * l * l, 0, -6 * b * l, 2 * b * l * l,
		-a, 0, 0, a, 0, 0,
		0, -12 * b, -6 * b * l, 0, 12 * b, -6 * b * l,
		0, 6 * b * l, 2 * b * l * l, 0, -6 * b * l, 4 * b * l * l,
	})
}

func (s *stiffFrame) element(m int) *mat.Dense {
	t := s.turned(m)
	var kt, k mat.Dense
	kt.Mul(s.straight(m), t)
	k.Mul(t.T(), &kt)
	return &k
}
