package statics

// A Cause is what makes a motion possible.
type Cause int

// The causes of a motion. The last four are critical forms: the forces would do by their number.
const (
	TooFewForces  Cause = iota // fewer forces hold what moves than it has sums
	AllParallel                // the forces and bars that hold one group are all parallel, and it slides perpendicular to them
	AllConcurrent              // their lines all pass through one point, about which it turns
	HingesInLine               // two groups, hinged to each other and to what is at rest, with the three hinges in one line
	BadPlaces                  // enough forces, but no form that has a name
)

// String names the cause in one word or two.
func (c Cause) String() string {
	return [...]string{"too few", "parallel", "concurrent", "hinges in line", "badly placed"}[c]
}

// A Reason says why a motion is possible.
type Reason struct {
	Cause  Cause
	Groups []FreeBody // what moves, bodies that move as one in one group; a pin goes with the first part it joins
	Forces []int      // that hold the groups: to each other, and to the ground and what else is at rest
	Main   int        // AllConcurrent, AllParallel: the group that is so held; the others, if any, are bars
	Bars   []Link     // that hold the main group
	Point  Point      // AllConcurrent
	Along  Vector     // AllParallel: the direction of the forces, unscaled
	Hinges [3]Hinge   // HingesInLine: that between the groups in the middle
}

// Needed is how many forces hold so many groups, if they are well placed.
func (r *Reason) Needed() int { return 3 * len(r.Groups) }

// A Hinge is the point about which two groups can turn on each other: that through which the lines of all forces between
// them pass, or a direction where these are parallel.
type Hinge struct {
	At       Point
	Joint    int // where a pin or support holds them, or None: only the lines of forces cross here
	Forces   []int
	Parallel bool // they slide on each other, perpendicular to Along
	Along    Vector
}

// A Link is a bar, a group that holds another as one force would, in the line of its two hinges.
type Link struct {
	Group int
	Ends  [2]int // joints: at what is at rest, and at the main group
}

// Reason says why a motion, one of those that Motions lists, is possible. What it names is read off the motion and so
// exact (S16): no force does work in it (S7), hence those that hold one group against rest pass through the point about which it
// turns, or stand perpendicular to the way it slides.
func (a *Assembly) Reason(m Motion) Reason {
	g := a.grouped(m)
	r := Reason{Groups: g.bodies}
	for i := range a.Forces {
		if on, by := g.sides(i); on != by {
			r.Forces = append(r.Forces, i)
		}
	}
	switch {
	case len(r.Forces) < r.Needed():
	case len(g.bodies) == 2 && g.hinges(&r):
		r.Cause = HingesInLine
	case g.barred(&r):
		r.Cause, r.Point = AllConcurrent, g.moves[r.Main].Centre
		if move := g.moves[r.Main]; move.Turn.IsZero() {
			r.Cause, r.Along = AllParallel, move.Slide.Left()
		}
	default:
		r.Cause = BadPlaces
	}
	return r
}

// A grouping is the bodies of a motion in groups that move as one.
type grouping struct {
	*Assembly
	bodies []FreeBody
	moves  []BodyMotion // of each group
	of     []int        // group of each body, or None: at rest
}

func (a *Assembly) grouped(m Motion) *grouping {
	g := &grouping{Assembly: a, of: noneFor(a.Bodies())}
	for _, b := range m {
		if !a.IsPin(b.Body) {
			g.put(b)
		}
	}
	for _, b := range m {
		if a.IsPin(b.Body) {
			g.of[b.Body] = g.carrier(b.Body)
		}
	}
	for b, k := range g.of {
		if k != None {
			g.bodies[k] = append(g.bodies[k], b)
		}
	}
	return g
}

// put adds a part to the group that moves as it does.
func (g *grouping) put(b BodyMotion) {
	for k := range g.moves {
		if g.moves[k].SameAs(b) {
			g.of[b.Body] = k
			return
		}
	}
	g.of[b.Body] = len(g.moves)
	g.moves, g.bodies = append(g.moves, b), append(g.bodies, nil)
}

// carrier is the group that a moving pin goes with: that of the first part on it that moves.
func (g *grouping) carrier(pin int) int {
	for _, i := range g.forcesOn[pin] {
		if f := &g.Forces[i]; f.Kind != Reaction && g.of[f.On] != None {
			return g.of[f.On]
		}
	}
	return None
}

// sides are the groups on both sides of a force, None for what is at rest.
func (g *grouping) sides(i int) (on, by int) {
	f := &g.Forces[i]
	on, by = g.of[f.On], None
	if f.By != None {
		by = g.of[f.By]
	}
	return on, by
}

// against is how group j moves as seen from group k; None is what is at rest.
func (g *grouping) against(j, k int) BodyMotion {
	if k == None {
		return g.moves[j]
	}
	v, w := g.moves[j].at(Point{}), g.moves[k].at(Point{})
	return turning(g.moves[j].Turn.Sub(g.moves[k].Turn), Point{}, v.Plus(w.Neg()))
}
