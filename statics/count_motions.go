package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A Motion is one way in which an unstable frame can move, infinitely little.
type Motion []BodyMotion

// A BodyMotion is how one body moves in a motion: it turns about a point, or slides. Bodies at rest are left out.
type BodyMotion struct {
	Body   int
	Turn   exact.Num // counter-clockwise rate; zero if it slides
	Centre Point     // if it turns
	Slide  Vector    // if it slides
}

// Motions lists as many independent motions as Count.Motions. They are the combinations of rows that come to zero: read as
// velocities, such a combination is the work of every force in the motion (S7).
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

// Undetermined lists the forces that equilibrium alone cannot give: those that some set of forces, which no load calls for,
// holds (S7).
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

// SameAs reports whether two bodies move as one rigid body would.
func (b BodyMotion) SameAs(c BodyMotion) bool {
	if !b.Turn.Equal(c.Turn) {
		return false
	}
	if b.Turn.IsZero() {
		return b.Slide.X.Equal(c.Slide.X) && b.Slide.Y.Equal(c.Slide.Y)
	}
	return b.Centre.Equal(c.Centre)
}

// at is the velocity of the body at a point.
func (b BodyMotion) at(p Point) Vector {
	if b.Turn.IsZero() {
		return b.Slide
	}
	return b.Centre.To(p).Left().Times(b.Turn)
}

// turning is the motion of a body that turns at a rate and whose point p has velocity v.
func turning(rate exact.Num, p Point, v Vector) BodyMotion {
	if rate.IsZero() {
		return BodyMotion{Body: None, Slide: v}
	}
	arm := v.Left()
	return BodyMotion{Body: None, Turn: rate, Centre: p.Plus(Vector{over(arm.X, rate), over(arm.Y, rate)})}
}
