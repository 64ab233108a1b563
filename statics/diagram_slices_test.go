package statics

import (
	"fmt"
	"testing"

	"unpin/statics/exact"
)

// TestAgainstSlices cuts every member of random frames at many places, adds up all that acts on the starting side, with
// the spread loads integrated anew up to each cut, and compares the sums with the polynomials (S12, S13).
func TestAgainstSlices(t *testing.T) {
	t.Parallel()
	cuts, withheld := 0, 0
	overSeeds(t, 1500, 200, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		z := slicer{s: s, o: survey(f)}
		for _, d := range s.Diagrams {
			if d.Withheld {
				withheld++
				continue
			}
			if err := z.member(d); err != nil {
				return fmt.Errorf("%s: %w", f.Members[d.Member].Name, err)
			}
		}
		cuts += z.cuts
		return nil
	})
	t.Logf("%d cuts, %d members withheld", cuts, withheld)
	if cuts < 2000 || withheld < 10 {
		t.Errorf("%d cuts, %d members withheld", cuts, withheld)
	}
}

type slicer struct {
	s    *Solution
	o    *oracle
	cuts int
}

// member compares at both ends of each stretch and at two places between, and each derivative.
func (z *slicer) member(d Diagram) error {
	if err := covers(d); err != nil {
		return err
	}
	for _, p := range d.Stretches {
		width := p.Until.Sub(p.From)
		for k, side := range []Side{After, Both, Both, Before} {
			x := p.From.Add(width.Mul(frac(int64(k), 3)))
			got, want := p.At(x), z.cut(d.Member, x, side == Before)
			if !got.Equal(want) {
				return fmt.Errorf("at %s, side %d: %s, cut %s", x, side, show(got), show(want))
			}
			if from, ok := d.Section(x, side); !ok || !from.Equal(want) {
				return fmt.Errorf("section at %s, side %d: %s, cut %s", x, side, show(from), show(want))
			}
			z.cuts++
		}
		if !samePoly(p.M.Derivative(), p.V) {
			return fmt.Errorf("dM/dx of %v is not %v", p.M, p.V)
		}
	}
	return nil
}

// covers reports whether the stretches follow one on another from the start of the member to its end.
func covers(d Diagram) error {
	var x exact.Num
	for _, p := range d.Stretches {
		if !p.From.Equal(x) || p.Until.Cmp(p.From) <= 0 {
			return fmt.Errorf("a stretch from %s to %s begins after %s", p.From, p.Until, x)
		}
		x = p.Until
	}
	if !x.Equal(d.Length) {
		return fmt.Errorf("the stretches end at %s of %s", x, d.Length)
	}
	return nil
}

func samePoly(p, q exact.Poly) bool {
	p, q = p.Trim(), q.Trim()
	if p.Degree() != q.Degree() {
		return false
	}
	for i := range p {
		if !p[i].Equal(q[i]) {
			return false
		}
	}
	return true
}

func show(i InternalForces) string { return fmt.Sprintf("N %s, V %s, M %s", i.N, i.V, i.M) }

// cut is N, V and M at distance x of member m, just before it or just after it.
func (z *slicer) cut(m int, x exact.Num, before bool) InternalForces {
	fx, fy, turn := z.startingSide(m, x, before)
	f := z.s.Frame
	a, b := f.Joints[f.Members[m].From].At, f.Joints[f.Members[m].To].At
	ex, ey := b.X.Sub(a.X), b.Y.Sub(a.Y)
	length := root(ex.Square().Add(ey.Square()))
	ex, ey = over(ex, length), over(ey, length)
	px, py := a.X.Add(ex.Mul(x)), a.Y.Add(ey.Mul(x))
	return InternalForces{
		N: fx.Mul(ex).Add(fy.Mul(ey)).Neg(),
		V: fy.Mul(ex).Sub(fx.Mul(ey)),
		M: px.Mul(fy).Sub(py.Mul(fx)).Sub(turn), // the moment about the place, turned round
	}
}

// startingSide is the force, and its moment about the origin, of all that acts on the side of the member's start.
func (z *slicer) startingSide(m int, x exact.Num, before bool) (fx, fy, turn exact.Num) {
	add := func(dx, dy, t exact.Num) { fx, fy, turn = fx.Add(dx), fy.Add(dy), turn.Add(t) }
	joints, members := z.reach(m)
	for i, f := range z.s.Forces {
		if sign := z.onBody(f, m); joints[f.Joint] && sign != 0 {
			add(z.push(i, sign))
		}
	}
	for _, l := range z.s.Frame.Loads {
		switch {
		case z.o.bodyOfLoad(l) != z.o.body[m]:
		case l.Joint != None && joints[l.Joint], l.Joint == None && members[l.Member]:
			add(whole(z.s.Frame, l))
		case l.Joint == None && l.Member == m && l.Kind == SpreadLoad:
			if until := exact.Min(x, l.End); until.Cmp(l.Start) > 0 {
				add(spreadBetween(z.s.Frame, l, l.Start, until))
			}
		case l.Joint == None && l.Member == m && (l.At.Cmp(x) < 0 || l.At.Equal(x) && !before):
			add(whole(z.s.Frame, l))
		}
	}
	return fx, fy, turn
}

// reach floods the part of member m from its start without passing m.
func (z *slicer) reach(m int) (joints, members map[int]bool) {
	f := z.s.Frame
	joints, members = map[int]bool{f.Members[m].From: true}, map[int]bool{}
	for again := true; again; {
		again = false
		for n, x := range f.Members {
			if n != m && z.o.body[n] == z.o.body[m] && !members[n] && (joints[x.From] || joints[x.To]) {
				members[n], joints[x.From], joints[x.To], again = true, true, true, true
			}
		}
	}
	return joints, members
}

// onBody is the sense in which a force acts on the part of member m: +1, −1 or 0.
func (z *slicer) onBody(f Force, m int) int {
	switch {
	case z.o.bodyOf(z.s, f.On) == z.o.body[m]:
		return 1
	case f.By != None && z.o.bodyOf(z.s, f.By) == z.o.body[m]:
		return -1
	}
	return 0
}

// push is force i, and its moment about the origin, as it acts on one side.
func (z *slicer) push(i, sign int) (fx, fy, turn exact.Num) {
	f, value := z.s.Forces[i], z.s.Values[i]
	if sign < 0 {
		value = value.Neg()
	}
	if f.Couple {
		return fx, fy, value
	}
	return forceAt(z.s.Frame.Joints[f.Joint].At, f.Along, value)
}

// TestJointsBalance checks that at every joint the ends of the members there balance what acts on them at the joint:
// round corners, at pins and at supports; and that every free end is free of N, V and M (S13).
func TestJointsBalance(t *testing.T) {
	t.Parallel()
	joints, free := 0, 0
	overSeeds(t, 1500, 200, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		z := slicer{s: s, o: survey(f)}
		for j, meeting := range f.meeting() {
			for _, m := range meeting {
				rest, ends, loaded, ok := z.ends(j, z.o.body[m])
				if !ok {
					continue
				}
				joints++
				if !rest.Equal(InternalForces{}) {
					return fmt.Errorf("at joint %s the ends leave %s", f.Joints[j].Name, show(rest))
				}
				if ends == 1 && !loaded {
					free++
					if at := z.endOf(m, j); !at.Equal(InternalForces{}) {
						return fmt.Errorf("the free end %s has %s", f.Joints[j].Name, show(at))
					}
				}
			}
		}
		return nil
	})
	if free < 100 || joints < 1000 {
		t.Errorf("%d joints, %d free ends", joints, free)
	}
}

// endOf is N, V and M at the end of member m that is joint j.
func (z *slicer) endOf(m, j int) InternalForces {
	d := z.s.Diagrams[m]
	x, side := exact.Num{}, After
	if z.s.Frame.Members[m].To == j {
		x, side = d.Length, Before
	}
	at, _ := d.Section(x, side)
	return at
}

// ends adds up, for one body at joint j, what acts there and what the ends of its members there take: force and couple
// (in the fields N, V and M) that are left over, how many ends there are and whether anything acts there. It is not ok
// if one of them is withheld.
func (z *slicer) ends(j, body int) (rest InternalForces, ends int, loaded, ok bool) {
	f := z.s.Frame
	p := f.Joints[j].At
	add := func(fx, fy, turn exact.Num) {
		about := turn.Sub(p.X.Mul(fy).Sub(p.Y.Mul(fx)))
		rest = InternalForces{rest.N.Add(fx), rest.V.Add(fy), rest.M.Add(about)}
	}
	for m, x := range f.Members {
		if z.o.body[m] != body || x.From != j && x.To != j {
			continue
		}
		if z.s.Diagrams[m].Withheld {
			return rest, 0, false, false
		}
		ends++
		rest = z.take(rest, m, j)
		for i, force := range z.s.Forces {
			if sign := z.onBody(force, m); force.Joint == j && sign != 0 && ends == 1 {
				loaded = true
				add(z.push(i, sign))
			}
		}
	}
	for _, l := range f.Loads {
		if z.o.bodyOfLoad(l) == body && atJoint(f, l, j) {
			loaded = true
			add(whole(f, l))
		}
	}
	return rest, ends, loaded, true
}

// take takes from what acts at joint j the share of the end of member m.
func (z *slicer) take(rest InternalForces, m, j int) InternalForces {
	f := z.s.Frame
	at := z.endOf(m, j)
	e := f.Span(m).Times(over(exact.Int(1), f.Length(m)))
	n := e.Left()
	fx := at.V.Mul(n.X).Sub(at.N.Mul(e.X)) // of the starting side on what lies beyond
	fy := at.V.Mul(n.Y).Sub(at.N.Mul(e.Y))
	if f.Members[m].From == j {
		return InternalForces{rest.N.Sub(fx), rest.V.Sub(fy), rest.M.Add(at.M)}
	}
	return InternalForces{rest.N.Add(fx), rest.V.Add(fy), rest.M.Sub(at.M)}
}

// atJoint reports whether a load acts at joint j, given there or at that end of a member.
func atJoint(f Frame, l Load, j int) bool {
	switch {
	case l.Joint != None:
		return l.Joint == j
	case l.Kind == SpreadLoad:
		return false
	case f.Members[l.Member].From == j:
		return l.At.IsZero()
	}
	return f.Members[l.Member].To == j && l.At.Equal(f.Length(l.Member))
}
