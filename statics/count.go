package statics

import (
	"slices"

	"unpin/statics/exact"
)

// Solve cuts a frame, counts, and, if it is determinate, finds every force, a plan and the internal forces. The error
// is that of Cut; a frame that is not determinate is no error.
func Solve(f Frame) (*Solution, error) {
	a, err := Cut(f)
	if err != nil {
		return nil, err
	}
	s := &Solution{Assembly: a}
	if s.solve(); s.Values != nil {
		s.Plan = a.plan(s.Values)
		s.Diagrams = a.diagrams(s.Values)
	}
	return s, nil
}

// solve counts and, if the frame is determinate, finds every force.
func (s *Solution) solve() {
	rows, inexact := s.rows()
	e := eliminate(rows, len(s.Forces))
	s.Count = Count{Unknowns: len(s.Forces), Sums: len(rows), Rank: e.rank(), Inexact: inexact}
	for i := range s.Parts {
		s.Count.Inner += s.Parts[i].Inner
	}
	if s.Count.Verdict() != Determinate {
		return
	}
	s.Values = e.solve()
	for i := range s.Forces {
		if f := &s.Forces[i]; !f.Couple {
			s.Values[i] = s.Values[i].Mul(f.Along.Length())
		}
	}
}

// rows writes ΣFx, ΣFy and, for a part, ΣM of every body. The unknowns are the multipliers of the unscaled directions,
// so that the coefficients are rational wherever the directions are.
func (a *Assembly) rows() (rows []row, inexact bool) {
	rows = make([]row, 3*len(a.Parts)+2*len(a.Pins))
	room := make([]entry, 6*len(a.Forces)) // for three sums of each of two bodies
	rest := rows
	for b := range a.Bodies() {
		n, on := 3, len(a.forcesOn[b])
		if a.IsPin(b) {
			n = 2
		}
		for k := range rest[:n] {
			rest[k].entries, room = room[:0:on], room[on:]
		}
		a.writeRows(b, rest[:n])
		rest = rest[n:]
	}
	for _, r := range rows {
		inexact = inexact || slices.ContainsFunc(r.entries, func(e entry) bool { return e.k.Inexact() })
	}
	return rows, inexact
}

// writeRows writes the rows of body b.
func (a *Assembly) writeRows(b int, of []row) {
	on := a.forcesOn[b]
	centre := &a.Frame.Joints[a.reference(b)].At
	for _, i := range on {
		f := &a.Forces[i]
		unit := f.effect(centre.To(a.Frame.Joints[f.Joint].At))
		for k, c := range unit[:len(of)] {
			if c.IsZero() {
				continue
			}
			if f.On != b {
				c = c.Neg()
			}
			of[k].entries = append(of[k].entries, entry{i, c})
		}
	}
	for _, i := range a.actionsOn[b] {
		whole := a.Loads[i].effect(*centre)
		for k, c := range whole[:len(of)] {
			of[k].rhs = of[k].rhs.Sub(c)
		}
	}
}

// reference is the joint about which rows takes the moments of body b: where most of its unknowns act, so that few of
// them turn it.
func (a *Assembly) reference(b int) int {
	best, most := a.joint(b), 0
	on := a.forcesOn[b]
	for n, i := range on { // those at one joint stand together
		if n > 0 && a.Forces[on[n-1]].Joint == a.Forces[i].Joint {
			continue
		}
		at := n
		for at < len(on) && a.Forces[on[at]].Joint == a.Forces[i].Joint {
			at++
		}
		if at-n > most {
			best, most = a.Forces[i].Joint, at-n
		}
	}
	return best
}

// joint is the pin's joint, or the first of a part's.
func (a *Assembly) joint(b int) int {
	if a.IsPin(b) {
		return a.Pins[b-len(a.Parts)].Joint
	}
	return a.Parts[b].Joints[0]
}

// effect is the force and moment of one unscaled unit of f, at r from the centre.
func (f *Force) effect(r Vector) wrench {
	if f.Couple {
		return wrench{{}, {}, exact.Int(1)}
	}
	return wrench{f.Along.X, f.Along.Y, r.Cross(f.Along)}
}

// effect is the force and moment of the action about the centre.
func (x *Action) effect(centre Point) wrench {
	if x.Shape == Turning {
		return wrench{{}, {}, x.Size}
	}
	f := x.force()
	return wrench{f.X, f.Y, centre.To(x.At).Cross(f)}
}

// force is the action's resultant.
func (x *Action) force() Vector {
	u, _ := x.Along.unit()
	return u.Times(x.Size)
}

// transposed swaps rows and columns; the right sides are dropped.
func transposed(rows []row, columns int) []row {
	t := make([]row, columns)
	for i, r := range rows {
		for _, e := range r.entries {
			t[e.col].entries = append(t[e.col].entries, entry{i, e.k})
		}
	}
	return t
}

// A Motion is one way in which an unstable frame can move, infinitely little.
type Motion []BodyMotion

// A BodyMotion is how one body moves in a motion: it turns about a point, or slides. Bodies at rest are left out.
type BodyMotion struct {
	Body   int
	Turn   exact.Num // counter-clockwise rate; nought if it slides
	Centre Point     // if it turns
	Slide  Vector    // if it slides
}

// Motions lists as many independent motions as Count.Motions.
func (a *Assembly) Motions() []Motion {
	rows, _ := a.rows()
	var motions []Motion
	for _, v := range eliminate(transposed(rows, len(a.Forces)), len(rows)).nullSpace() {
		motions = append(motions, a.motion(v))
	}
	return motions
}

// motion reads the velocities of the bodies, listed as the rows are.
func (a *Assembly) motion(v []exact.Num) Motion {
	var m Motion
	for b := range a.Bodies() {
		move := BodyMotion{Body: b, Slide: Vector{v[0], v[1]}}
		v = v[2:]
		if !a.IsPin(b) {
			move.Turn, v = v[0], v[1:]
		}
		if !move.Turn.IsZero() {
			arm := move.Slide.Left()
			move.Centre = a.Frame.Joints[a.reference(b)].At.Plus(Vector{over(arm.X, move.Turn), over(arm.Y, move.Turn)})
			move.Slide = Vector{}
		}
		if !move.Turn.IsZero() || !move.Slide.IsZero() {
			m = append(m, move)
		}
	}
	return m
}

// Undetermined lists the forces that equilibrium alone cannot give.
func (a *Assembly) Undetermined() []int {
	rows, _ := a.rows()
	var forces []int
	for _, x := range eliminate(rows, len(a.Forces)).nullSpace() {
		for i, k := range x {
			if !k.IsZero() && !slices.Contains(forces, i) {
				forces = append(forces, i)
			}
		}
	}
	slices.Sort(forces)
	return forces
}
