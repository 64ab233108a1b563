package problems

// A Skill is one thing that a problem exercises and that a lesson keeps count of.
type Skill struct{ Name, Doc string }

// skills is the closed list.
var skills = []Skill{
	{"count-unknowns", "count the unknowns and the sums"},
	{"determinacy", "tell determinate from indeterminate and unstable"},
	{"pick-body", "pick the free body to begin with"},
	{"pin-support", "the two forces of a pinned support"},
	{"roller-support", "the one force of a roller"},
	{"fixed-support", "the forces and the couple of a fixed support"},
	{"pin-pair", "the opposite forces at an internal pin"},
	{"load-at-pin", "a load that acts at a pin"},
	{"two-force-member", "the force of a member that is loaded only at its two pins"},
	{"moment-centre", "pick a moment centre"},
	{"axis-force-moment", "the moment of a force parallel to an axis"},
	{"inclined-force-moment", "the moment of an inclined force"},
	{"couple-in-sum", "a couple in a sum"},
	{"uniform-resultant", "the resultant of a uniform load"},
	{"triangle-resultant", "the resultant of a triangular load"},
	{"trapezoid-resultant", "the resultant of a trapezoidal load"},
	{"line-of-action", "where the resultant of a distributed load acts"},
	{"load-across-pin", "a distributed load that crosses a pin"},
	{"components", "the components of an inclined force"},
	{"solve-with-sense", "solve for an unknown and say its sense"},
	{"cut-forces", "shear and moment at a cut"},
	{"corner-forces", "axial force, shear and moment at a corner"},
	{"jumps", "jumps of shear and moment at loads and couples"},
	{"slopes", "slopes and curvature of the diagrams"},
	{"extreme-moment", "where shear is zero and the moment extreme"},
	{"closing-check", "the check by a sum not yet used"},
	{"units-figures", "units and significant figures"},
}

// Skills is the closed list of skills, in teaching order.
func Skills() []Skill { return append([]Skill(nil), skills...) }

func skillNames() []string {
	var names []string
	for _, s := range skills {
		names = append(names, s.Name)
	}
	return names
}
