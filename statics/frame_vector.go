package statics

import "unpin/statics/exact"

// To is the vector from p to q.
func (p Point) To(q Point) Vector { return Vector{q.X.Sub(p.X), q.Y.Sub(p.Y)} }

// Plus is the point at v from p.
func (p Point) Plus(v Vector) Point { return Point{p.X.Add(v.X), p.Y.Add(v.Y)} }

// Equal reports whether p and q are the same place.
func (p Point) Equal(q Point) bool { return p.X.Equal(q.X) && p.Y.Equal(q.Y) }

// Plus is v + w.
func (v Vector) Plus(w Vector) Vector { return Vector{v.X.Add(w.X), v.Y.Add(w.Y)} }

// Neg is −v.
func (v Vector) Neg() Vector { return Vector{v.X.Neg(), v.Y.Neg()} }

// Times is k·v.
func (v Vector) Times(k exact.Num) Vector { return Vector{v.X.Mul(k), v.Y.Mul(k)} }

// Dot is the scalar product.
func (v Vector) Dot(w Vector) exact.Num { return v.X.Mul(w.X).Add(v.Y.Mul(w.Y)) }

// Cross is v.X·w.Y − v.Y·w.X: positive if w lies counter-clockwise of v.
func (v Vector) Cross(w Vector) exact.Num { return v.X.Mul(w.Y).Sub(v.Y.Mul(w.X)) }

// Left is v turned 90° counter-clockwise.
func (v Vector) Left() Vector { return Vector{v.Y.Neg(), v.X} }

// IsZero reports whether both components are zero.
func (v Vector) IsZero() bool { return v.X.IsZero() && v.Y.IsZero() }

// Length is √(x² + y²).
func (v Vector) Length() exact.Num {
	switch {
	case v.X.IsZero():
		return v.Y.Abs()
	case v.Y.IsZero():
		return v.X.Abs()
	}
	l, err := exact.Hypot(v.X, v.Y)
	if err != nil { // Hypot has an answer for every pair of numbers; a zero length would be noticed at once
		return exact.Num{}
	}
	return l
}

// unit is the vector of length 1 along v, which is not zero, and the length of v.
func (v Vector) unit() (Vector, exact.Num) {
	length := v.Length()
	return v.unitOf(length), length
}

// unitOf is the vector of length 1 along v, whose length is given.
func (v Vector) unitOf(length exact.Num) Vector {
	switch {
	case v.X.IsZero():
		return Vector{Y: exact.Int(int64(v.Y.Sign()))}
	case v.Y.IsZero():
		return Vector{X: exact.Int(int64(v.X.Sign()))}
	case length.IsRational():
		return v.Times(over(one, length))
	}
	return v.Times(over(length, v.Dot(v))) // as 1/√n = √n/n, which takes no division by a root
}

// The directions of the axes.
var (
	east  = Vector{exact.Int(1), exact.Int(0)}
	north = Vector{exact.Int(0), exact.Int(1)}
)
