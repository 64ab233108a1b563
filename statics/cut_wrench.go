package statics

import (
	"unpin/statics/exact"
)

// A wrench is a set of forces drawn together: a force and a moment about the origin.
type wrench [3]exact.Num

func (w *wrench) add(v *wrench) {
	for i := range w {
		w[i] = w[i].Add(v[i])
	}
}

func (w *wrench) isZero() bool { return w[0].IsZero() && w[1].IsZero() && w[2].IsZero() }

func (w *wrench) neg() wrench { return wrench{w[0].Neg(), w[1].Neg(), w[2].Neg()} }

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
