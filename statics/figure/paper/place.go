package paper

import (
	"math"

	"unpin/statics/figure"
)

// A Place is a place on a sheet of paper, in points of 1/72 inch from its upper left corner, y downward.
type Place struct{ X, Y float64 }

// A local turns places near a point into places on paper: along is toward the ground or along a slot, across to its left.
type local struct {
	at    Place
	along figure.Direction
}

func (k local) to(along, across float64) Place {
	return k.at.by(k.along, along).by(k.along.Left(), across)
}

// panel is a rectangle along a local line.
func (k local) panel(from, until, half float64) []Place {
	return []Place{k.to(from, half), k.to(until, half), k.to(until, -half), k.to(from, -half)}
}

// by is the place at t points from s towards a direction of the frame, in which y runs up.
func (s Place) by(v figure.Direction, t float64) Place { return Place{s.X + v.X*t, s.Y - v.Y*t} }

// toward is the direction, in the frame's sense, from one place to another.
func (s Place) toward(t Place) figure.Direction { return figure.NewDirection(t.X-s.X, s.Y-t.Y) }

// between is the place at share t of the way from s to u.
func (s Place) between(u Place, t float64) Place { return Place{s.X + (u.X-s.X)*t, s.Y + (u.Y-s.Y)*t} }

// distance is how far apart two places are.
func (s Place) distance(u Place) float64 { return math.Hypot(u.X-s.X, u.Y-s.Y) }
