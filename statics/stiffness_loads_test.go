package statics

import "gonum.org/v1/gonum/mat"

// apply adds a load: at its node, or as the consistent end forces of its member.
func (s *stiffFrame) apply(l Load) {
	if l.Joint != None {
		s.applyAtJoint(l)
		return
	}
	ends := s.consistent(l)
	var turnedBack mat.VecDense
	turnedBack.MulVec(s.turned(l.Member).T(), mat.NewVecDense(6, ends[:]))
	for i, at := range s.numbers(l.Member) {
		s.load[at] += turnedBack.AtVec(i)
	}
}

func (s *stiffFrame) applyAtJoint(l Load) {
	n := node(s.main[l.Joint])
	if l.Member != None {
		n = s.piece[[2]int{l.Joint, l.Member}]
	}
	if l.Kind == CoupleLoad {
		s.load[n+2] += l.Size.Float()
		return
	}
	x, y := unitOf(l.Along)
	if l.Kind == RopeLoad { // the wheel is as good as taken off: the moments of the pulls about its middle cancel
		again, rise := unitOf(l.Second)
		x, y = x+again, y+rise
	}
	s.load[n] += x * l.Size.Float()
	s.load[n+1] += y * l.Size.Float()
}

// consistent are the forces at the ends of a member, along and square to it and turning, that do the same work as the load
// on the shape functions. Three Gauss points integrate a line times a cubic exactly.
func (s *stiffFrame) consistent(l Load) [6]float64 {
	var ends [6]float64
	ex, ey, length := s.frameOf(l.Member)
	if l.Kind == CoupleLoad {
		for i, slope := range slopes(l.At.Float(), length) {
			ends[i] = slope * l.Size.Float()
		}
		return ends
	}
	x, y := unitOf(l.Along)
	push := func(at, size float64) {
		along, across := (x*ex+y*ey)*size, (y*ex-x*ey)*size
		for i, shape := range shapes(at, length) {
			if i%3 == 0 {
				ends[i] += shape * along
			} else {
				ends[i] += shape * across
			}
		}
	}
	if l.Kind == PointLoad {
		push(l.At.Float(), l.Size.Float())
		return ends
	}
	from, until := l.Start.Float(), l.End.Float()
	share := projection(s.f, l).Float()
	for k, point := range [3]float64{-0.7745966692414834, 0, 0.7745966692414834} {
		weight := [3]float64{5. / 18, 8. / 18, 5. / 18}[k] * (until - from)
		part := (1 + point) / 2
		q := l.First.Float()*(1-part) + l.Last.Float()*part
		push(from+(until-from)*part, q*share*weight)
	}
	return ends
}

// shapes are the displacements at x of a member of which one end is moved by one: along it at places 0 and 3, square to it
// at the others.
func shapes(x, l float64) [6]float64 {
	u := x / l
	return [6]float64{1 - u, 1 - 3*u*u + 2*u*u*u, l * (u - 2*u*u + u*u*u), u, 3*u*u - 2*u*u*u, l * (u*u*u - u*u)}
}

// slopes are the turns at x that go with shapes.
func slopes(x, l float64) [6]float64 {
	u := x / l
	return [6]float64{0, (6*u*u - 6*u) / l, 1 - 4*u + 3*u*u, 0, (6*u - 6*u*u) / l, 3*u*u - 2*u}
}

// ends are the internal forces just inside the start and the end of a member: a load at the very end counts as one on the
// joint.
func (s *stiffFrame) ends(m int) (start, end [3]float64) {
	moved := mat.NewVecDense(6, nil)
	for i, at := range s.numbers(m) {
		moved.SetVec(i, s.answers[at])
	}
	var straight, forces mat.VecDense
	straight.MulVec(s.turned(m), moved)
	forces.MulVec(s.straight(m), &straight)
	for _, l := range s.f.Loads {
		atEnd := l.Kind != SpreadLoad && (l.At.IsZero() || l.At.Equal(s.f.Length(m)))
		if l.Joint == None && l.Member == m && !atEnd {
			c := s.consistent(l)
			forces.SubVec(&forces, mat.NewVecDense(6, c[:]))
		}
	}
	at := forces.AtVec
	return [3]float64{-at(0), at(1), -at(2)}, [3]float64{at(3), -at(4), at(5)}
}
