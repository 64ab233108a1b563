package statics

import "unpin/statics/exact"

// A Quantity is one of the three internal forces.
type Quantity int

// The internal forces.
const (
	AxialForce    Quantity = iota // N
	ShearForce                    // V
	BendingMoment                 // M
)

// Letter is the letter of a quantity: N, V or M.
func (q Quantity) Letter() string { return [...]string{"N", "V", "M"}[q] }

// Of is the quantity among the internal forces at one section.
func (i InternalForces) Of(q Quantity) exact.Num { return [...]exact.Num{i.N, i.V, i.M}[q] }
