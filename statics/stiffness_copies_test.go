package statics

// AgreesWithStiffness solves a frame as an elastic one by the displacement method, with two sets of stiffnesses, and tells what of
// the forces, or of N, V and M, is not as the engine has it. It gives how many forces and values inside members were compared.
func AgreesWithStiffness(f Frame) (compared int, err error) {
	c := stiffComparison{}
	err = c.frame(f)
	return c.forces + c.inside, err
}
