package figure

import "math"

// The order in which labels take their places: what has the least choice of them first.
const (
	RankDimension = iota // the number of a dimension, in or beside its line
	RankValue            // the name or value of a force, couple or load
	RankNote             // a remark
	RankName             // the name of a joint
)

// RankOf is the rank of a note of that role.
func RankOf(role Role) int {
	if role == NameMark {
		return RankName
	}
	return RankNote
}

// Sides are sides of a thing, as a set: those on which its label had better stand. The empty set is any.
type Sides uint8

// The sides.
const (
	AtRight Sides = 1 << iota
	AtLeft
	Above
	Below
)

// SideToward is the side that a direction points to: right or left if it is nearer to level than to upright.
func SideToward(v Direction) Sides {
	switch level := math.Abs(v.X) > math.Abs(v.Y); {
	case level && v.X > 0:
		return AtRight
	case level:
		return AtLeft
	case v.Y > 0:
		return Above
	}
	return Below
}

// OffScale is said of a drawing in which a length beside others is far from its scale.
const OffScale = "not all to scale"

// Head is the arrow head that points in direction v, to the nearest eighth of a turn; along an axis it is open, of two
// strokes, for an assumed sense.
func Head(v Direction, open bool) rune {
	const tilt = 0.3827 // sin 22.5°
	if math.Abs(v.X) > tilt && math.Abs(v.Y) > tilt {
		switch {
		case v.X > 0 && v.Y > 0:
			return '↗'
		case v.X > 0:
			return '↘'
		case v.Y > 0:
			return '↖'
		}
		return '↙'
	}
	known, assumed := '▼', '∨'
	switch SideToward(v) {
	case AtRight:
		known, assumed = '►', '>'
	case AtLeft:
		known, assumed = '◄', '<'
	case Above:
		known, assumed = '▲', '∧'
	}
	if open {
		return assumed
	}
	return known
}
