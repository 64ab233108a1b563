package problems

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"

	"gonum.org/v1/gonum/mat"

	"unpin/statics"
)

// A refFrame is a frame of bent bars, pinned to each other at joints, as the description of problem files has it.
type refFrame struct {
	places   [][2]float64
	parts    [][]int // the joints of each, in order
	supports []refSupport
	loads    []refLoad
	unknowns []refUnknown
}

// A refSupport holds the part that ends at a joint: fixed, pin, or roller along a direction.
type refSupport struct {
	joint, part int
	kind        string
	along       refDirection
}

// A refLoad is a force at a joint, or a rope over a pulley there, on a part or on the pin itself (part −1).
type refLoad struct {
	rope        bool
	joint, part int
	size        float64
	radius      float64
	to          [2]refDirection // of a force only the first
}

// A refDirection is as written and as it is.
type refDirection struct {
	text string
	x, y float64
}

// A refUnknown is what acts on a part at a joint: two components, a roller's one, or three with a couple.
type refUnknown struct {
	joint, part, first, n int
	support, roller       bool
	along                 refDirection
}

func refDirections() []refDirection {
	all := []refDirection{{"up", 0, 1}, {"down", 0, -1}, {"left", -1, 0}, {"right", 1, 0}}
	for _, v := range [][2]float64{{3, 4}, {-4, 3}, {-1, -2}, {5, -12}, {2, 1}} {
		l := math.Hypot(v[0], v[1])
		all = append(all, refDirection{fmt.Sprintf("[%g, %g]", v[0], v[1]), v[0] / l, v[1] / l})
	}
	for _, a := range []float64{75, 210, 315, 37} {
		all = append(all, refDirection{fmt.Sprintf("%gdeg", a), math.Cos(a * math.Pi / 180), math.Sin(a * math.Pi / 180)})
	}
	return all
}

// newRefFrame makes a frame of one to four parts, each pinned to one before, with as many reactions as it takes.
func newRefFrame(r *rand.Rand) *refFrame {
	f := &refFrame{}
	joint := func() int {
		at := [2]float64{float64(r.IntN(33)) / 4, float64(r.IntN(25)) / 4}
		for slices.Contains(f.places, at) {
			at[0] += 0.25
		}
		f.places = append(f.places, at)
		return len(f.places) - 1
	}
	n := 1 + r.IntN(4)
	for i := range n {
		var part []int
		if i > 0 {
			on := f.parts[r.IntN(i)]
			part = []int{on[r.IntN(len(on))]}
		}
		for range 2 + r.IntN(2) {
			part = append(part, joint())
		}
		f.parts = append(f.parts, part)
	}
	f.hold(r, n+2)
	f.load(r)
	return f
}

// hold adds supports with so many reactions in all, at free joints.
func (f *refFrame) hold(r *rand.Rand, missing int) {
	directions := refDirections()
	for _, j := range r.Perm(len(f.places)) {
		if on := f.partsAt(j); len(on) == 1 && missing > 0 {
			kind := []string{"roller", "pin", "fixed"}[r.IntN(min(3, missing))]
			missing -= map[string]int{"roller": 1, "pin": 2, "fixed": 3}[kind]
			f.supports = append(f.supports, refSupport{j, on[0], kind, directions[r.IntN(len(directions))]})
		}
	}
}

// load adds a pulley or two, the end of a rope, and another force.
func (f *refFrame) load(r *rand.Rand) {
	directions := refDirections()
	any := func() refDirection { return directions[r.IntN(len(directions))] }
	for i := range 3 + r.IntN(2) {
		l := refLoad{rope: i == 0 || i == 3, joint: r.IntN(len(f.places)), size: float64(1+r.IntN(60)) / 4}
		if i == 1 {
			l.size = f.loads[0].size // the other end of the rope
		}
		on := f.partsAt(l.joint)
		if l.part = on[r.IntN(len(on))]; len(on) > 1 && r.IntN(2) == 0 {
			l.part = -1
		}
		l.to = [2]refDirection{any(), any()}
		if d := l.to; d[0].x*d[1].x+d[0].y*d[1].y < -1+1e-9 {
			l.to[1] = l.to[0]
		}
		l.radius = []float64{0, 0.2, 0.35, 0.5}[r.IntN(4)]
		f.loads = append(f.loads, l)
	}
}

func (f *refFrame) partsAt(joint int) []int {
	var on []int
	for p, joints := range f.parts {
		for _, j := range joints {
			if j == joint {
				on = append(on, p)
			}
		}
	}
	return on
}

func refName(j int) string { return string(rune('A' + j)) }

// membersAt are the members of a part that end at a joint, or all of them where that is −1.
func (f *refFrame) membersAt(part, joint int) []string {
	var all []string
	for i, a := range f.parts[part][1:] {
		if b := f.parts[part][i]; joint < 0 || a == joint || b == joint {
			all = append(all, refName(b)+refName(a))
		}
	}
	return all
}

func (f *refFrame) partOf(member string) int {
	for p := range f.parts {
		for _, m := range f.membersAt(p, -1) {
			if m == member {
				return p
			}
		}
	}
	return -1
}

// file is the frame as a problem file.
func (f *refFrame) file() string {
	var joints, members, pins, supports, loads []string
	for j, at := range f.places {
		joints = append(joints, fmt.Sprintf("%s: [%g, %g]", refName(j), at[0], at[1]))
		var pieces []string
		for _, p := range f.partsAt(j) {
			pieces = append(pieces, "["+strings.Join(f.membersAt(p, j), ", ")+"]")
		}
		if len(pieces) > 1 {
			pins = append(pins, refName(j)+": ["+strings.Join(pieces, ", ")+"]")
		}
	}
	for p := range f.parts {
		members = append(members, f.membersAt(p, -1)...)
	}
	for _, s := range f.supports {
		text := s.kind
		if s.kind == "roller" {
			text = "{roller: " + s.along.text + "}"
		}
		supports = append(supports, refName(s.joint)+": "+text)
	}
	for _, l := range f.loads {
		text := fmt.Sprintf("{point: %g, to: %s, joint: %s", l.size, l.to[0].text, refName(l.joint))
		if l.rope {
			text = fmt.Sprintf("{pulley: %s, rope: %g, to: [%s, %s]", refName(l.joint), l.size, l.to[0].text, l.to[1].text)
			if l.radius > 0 {
				text += fmt.Sprintf(", radius: %g", l.radius)
			}
		}
		if l.part >= 0 {
			text += ", on: " + f.membersAt(l.part, l.joint)[0]
		}
		loads = append(loads, "  - "+text+"}")
	}
	return fmt.Sprintf("title: Made\nunits: kN m\njoints: {%s}\nmembers: [%s]\npins: {%s}\nsupports: {%s}\nloads:\n%s\n", strings.Join(joints, ", "),
		strings.Join(members, ", "), strings.Join(pins, ", "), strings.Join(supports, ", "), strings.Join(loads, "\n"))
}

// A refForce is a force at a place.
type refForce struct{ x, y, atX, atY float64 }

// forces are what a load comes to: one force, or two pulls, each on the rim where the way out from the middle is perpendicular to
// the pull and does not lean to the rope's other end; where both ends run the same way, one on each side.
func (f *refFrame) forces(l refLoad) []refForce {
	at := f.places[l.joint]
	if !l.rope {
		return []refForce{{l.size * l.to[0].x, l.size * l.to[0].y, at[0], at[1]}}
	}
	var all []refForce
	for i, u := range l.to {
		other, side := l.to[1-i], 1.0
		lean := -u.y*other.x + u.x*other.y // of the way out to the left of the pull
		if lean > 1e-9 || math.Abs(lean) <= 1e-9 && i == 1 {
			side = -1
		}
		all = append(all, refForce{l.size * u.x, l.size * u.y, at[0] - side*u.y*l.radius, at[1] + side*u.x*l.radius})
	}
	return all
}

// solve finds all unknowns from the sums of all parts and pins; it reports whether they can be found well.
func (f *refFrame) solve() (x []float64, ok bool) {
	rows, pinRow := 3*len(f.parts), map[int]int{}
	f.unknowns = nil
	n := 0
	add := func(u refUnknown) {
		u.first = n
		n += u.n
		f.unknowns = append(f.unknowns, u)
	}
	for _, s := range f.supports {
		add(refUnknown{joint: s.joint, part: s.part, n: map[string]int{"roller": 1, "pin": 2, "fixed": 3}[s.kind], support: true, roller: s.kind == "roller", along: s.along})
	}
	for j := range f.places {
		if on := f.partsAt(j); len(on) > 1 {
			pinRow[j] = rows
			rows += 2
			for _, p := range on {
				add(refUnknown{joint: j, part: p, n: 2})
			}
		}
	}
	if n != rows {
		return nil, false
	}
	m, right := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
	enter := func(part, column int, v refForce, couple float64) {
		for i, k := range []float64{v.x, v.y, v.atX*v.y - v.atY*v.x + couple} {
			if column < 0 {
				right.SetVec(3*part+i, right.AtVec(3*part+i)-k)
			} else {
				m.Set(3*part+i, column, k)
			}
		}
	}
	for _, u := range f.unknowns {
		at := f.places[u.joint]
		if u.roller {
			enter(u.part, u.first, refForce{u.along.x, u.along.y, at[0], at[1]}, 0)
			continue
		}
		enter(u.part, u.first, refForce{1, 0, at[0], at[1]}, 0)
		enter(u.part, u.first+1, refForce{0, 1, at[0], at[1]}, 0)
		if u.n == 3 {
			enter(u.part, u.first+2, refForce{}, 1)
		}
		if !u.support {
			m.Set(pinRow[u.joint], u.first, -1)
			m.Set(pinRow[u.joint]+1, u.first+1, -1)
		}
	}
	for _, l := range f.loads {
		for _, v := range f.forces(l) {
			if row := pinRow[l.joint]; l.part < 0 {
				right.SetVec(row, right.AtVec(row)-v.x)
				right.SetVec(row+1, right.AtVec(row+1)-v.y)
			} else {
				enter(l.part, -1, v, 0)
			}
		}
	}
	var lu mat.LU
	if lu.Factorize(m); lu.Cond() > 1e4 {
		return nil, false
	}
	var all mat.VecDense
	if err := lu.SolveVecTo(&all, false, right); err != nil {
		return nil, false
	}
	return all.RawVector().Data, true
}

// at is what acts on a part at a joint, from its support or through its pin.
func (f *refFrame) at(kind statics.ForceKind, joint string, part int) refUnknown {
	for _, u := range f.unknowns {
		if refName(u.joint) == joint && u.part == part && u.support == (kind == statics.Reaction) {
			return u
		}
	}
	panic("nothing acts on the part at " + joint)
}

// section is N, V and M on a member so far from its first joint, from all that acts on that side of its part.
func (f *refFrame) section(x []float64, member string, distance float64) [3]float64 {
	part := f.partOf(member)
	k := strings.Index(strings.Join(f.membersAt(part, -1), " "), member) / 3
	a, b := f.places[f.parts[part][k]], f.places[f.parts[part][k+1]]
	long := math.Hypot(b[0]-a[0], b[1]-a[1])
	ex, ey := (b[0]-a[0])/long, (b[1]-a[1])/long
	cx, cy := a[0]+ex*distance, a[1]+ey*distance
	var fx, fy, turn float64
	add := func(v refForce) {
		fx, fy, turn = fx+v.x, fy+v.y, turn+(v.atX-cx)*v.y-(v.atY-cy)*v.x
	}
	before := map[int]bool{}
	for _, j := range f.parts[part][:k+1] {
		before[j] = true
	}
	for _, u := range f.unknowns {
		at := f.places[u.joint]
		switch {
		case u.part != part || !before[u.joint]:
		case u.roller:
			add(refForce{x[u.first] * u.along.x, x[u.first] * u.along.y, at[0], at[1]})
		default:
			add(refForce{x[u.first], x[u.first+1], at[0], at[1]})
			if u.n == 3 {
				turn += x[u.first+2]
			}
		}
	}
	for _, l := range f.loads {
		if l.part == part && before[l.joint] {
			for _, v := range f.forces(l) {
				add(v)
			}
		}
	}
	return [3]float64{-(fx*ex + fy*ey), fy*ex - fx*ey, -turn}
}
