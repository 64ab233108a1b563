package statics

import (
	"slices"

	"unpin/statics/exact"
)

// An oracle solves a frame without any of the engine's ways: it finds the rigid pieces by flooding, makes a body of
// every pin, writes all sums of all bodies at once with the moments about the origin, and clears the whole dense matrix
// column by column. It is slow and obvious.
type oracle struct {
	f        Frame
	body     []int       // of each member
	pin      map[int]int // joint → its body, if pieces of different bodies meet there in a pin
	bodies   int
	unknowns []unknown
	matrix   [][]exact.Num // three rows a body, the last column what the loads do; the third row of a pin stays empty
	pivot    map[int]int   // column → row that gives it
	plain    int           // pins that the engine does not count as bodies
}

// An unknown is a force along an unscaled direction, or a couple, of one body on another.
type unknown struct {
	joint  int
	along  Vector // zero for a couple
	on, by int    // by is None for the ground
}

// survey finds the bodies and the unknowns.
func survey(f Frame) *oracle {
	o := &oracle{f: f, pin: map[int]int{}, pivot: map[int]int{}}
	o.flood()
	for _, c := range f.Connections {
		o.connection(c)
	}
	for _, s := range f.Supports {
		o.support(s)
	}
	return o
}

// consult solves the frame.
func consult(f Frame) *oracle {
	o := survey(f)
	o.matrix = make([][]exact.Num, 3*o.bodies)
	for i := range o.matrix {
		o.matrix[i] = make([]exact.Num, len(o.unknowns)+1)
	}
	for i, u := range o.unknowns {
		o.push(u.on, i, u.joint, u.along, exact.Int(1))
		if u.by != None {
			o.push(u.by, i, u.joint, u.along, exact.Int(-1))
		}
	}
	for _, l := range f.Loads {
		o.load(l)
	}
	o.clear()
	return o
}

// flood numbers the rigid pieces.
func (o *oracle) flood() {
	o.body = make([]int, len(o.f.Members))
	for m := range o.body {
		o.body[m] = None
	}
	for m := range o.body {
		if o.body[m] == None {
			o.spread(m, o.bodies)
			o.bodies++
		}
	}
}

func (o *oracle) spread(m, b int) {
	o.body[m] = b
	for n := range o.f.Members {
		if o.body[n] == None && o.rigid(m, n) {
			o.spread(n, b)
		}
	}
}

// rigid reports whether two members meet at a joint that does not part them.
func (o *oracle) rigid(m, n int) bool {
	a, b := o.f.Members[m], o.f.Members[n]
	for _, j := range []int{a.From, a.To} {
		if (j == b.From || j == b.To) && o.sameAt(j, m, n) {
			return true
		}
	}
	return false
}

func (o *oracle) sameAt(j, m, n int) bool {
	for _, c := range o.f.Connections {
		if c.Joint != j {
			continue
		}
		for _, piece := range c.Pieces {
			if contains(piece, m) {
				return contains(piece, n)
			}
		}
	}
	return true
}

// connection makes a body of a pin, or lists what a slot or sleeve passes to the body of the first member there.
func (o *oracle) connection(c Connection) {
	var met []int
	for m, x := range o.f.Members {
		if (x.From == c.Joint || x.To == c.Joint) && !contains(met, o.body[m]) {
			met = append(met, o.body[m])
		}
	}
	if len(met) < 2 {
		return
	}
	if c.Kind != Pin {
		square := Vector{c.Along.Y.Neg(), c.Along.X}
		o.unknowns = append(o.unknowns, unknown{c.Joint, square, met[0], met[1]})
		if c.Kind == Sleeve {
			o.unknowns = append(o.unknowns, unknown{c.Joint, Vector{}, met[0], met[1]})
		}
		return
	}
	o.pin[c.Joint] = o.bodies
	o.bodies++
	for _, b := range met {
		o.unknowns = append(o.unknowns, unknown{c.Joint, east, b, o.pin[c.Joint]}, unknown{c.Joint, north, b, o.pin[c.Joint]})
	}
	if len(met) == 2 && !o.busy(c.Joint) {
		o.plain++
	}
}

// busy reports whether a support or a load acts on the pin at joint j itself.
func (o *oracle) busy(j int) bool {
	for _, s := range o.f.Supports {
		if s.Joint == j && s.On == None && (s.Kind == Pinned || s.Kind == Roller) {
			return true
		}
	}
	for _, l := range o.f.Loads {
		if l.Joint == j && l.Member == None {
			return true
		}
	}
	return false
}

// carrier is the body that something at joint j acts on: the member's, the pin, or the piece that was not set free.
func (o *oracle) carrier(j, member int, couple bool) int {
	if member != None {
		return o.body[member]
	}
	if b, ok := o.pin[j]; ok && !couple {
		return b
	}
	for _, c := range o.f.Connections {
		if c.Joint == j && c.Main != None {
			return o.body[c.Pieces[c.Main][0]]
		}
	}
	for m, x := range o.f.Members {
		if x.From == j || x.To == j {
			return o.body[m]
		}
	}
	return None
}

func (o *oracle) support(s Support) {
	on := o.carrier(s.Joint, s.On, s.Kind == Fixed || s.Kind == Guide)
	add := func(along Vector) { o.unknowns = append(o.unknowns, unknown{s.Joint, along, on, None}) }
	if s.Kind == Pinned || s.Kind == Fixed {
		add(east)
		add(north)
	} else {
		add(s.Along)
	}
	if s.Kind == Fixed || s.Kind == Guide {
		add(Vector{})
	}
}

// push adds k times a force at a joint, or a couple, to a column of the three sums of body b.
func (o *oracle) push(b, column, joint int, along Vector, k exact.Num) {
	turn := exact.Int(1)
	if !along.IsZero() {
		p := o.f.Joints[joint].At
		turn = p.X.Mul(along.Y).Sub(p.Y.Mul(along.X))
	}
	o.enter(b, column, along.X.Mul(k), along.Y.Mul(k), turn.Mul(k))
}

// enter adds to a column of the sums of body b; a pin has no sum of moments.
func (o *oracle) enter(b, column int, x, y, turn exact.Num) {
	for _, pin := range o.pin {
		if pin == b {
			turn = exact.Num{}
		}
	}
	for i, k := range []exact.Num{x, y, turn} {
		o.matrix[3*b+i][column] = o.matrix[3*b+i][column].Add(k)
	}
}

// load enters a load on the right side, with its sign changed.
func (o *oracle) load(l Load) {
	x, y, turn := whole(o.f, l)
	o.enter(o.bodyOfLoad(l), len(o.unknowns), x.Neg(), y.Neg(), turn.Neg())
}

func (o *oracle) bodyOfLoad(l Load) int {
	if l.Joint == None {
		return o.body[l.Member]
	}
	return o.carrier(l.Joint, l.Member, false)
}

// whole is the force of a load and its moment about the origin.
func whole(f Frame, l Load) (x, y, turn exact.Num) {
	if l.Kind == SpreadLoad {
		return spreadBetween(f, l, l.Start, l.End)
	}
	if l.Kind == CoupleLoad {
		return x, y, l.Size
	}
	if l.Kind == RopeLoad {
		return bothPulls(f.Joints[l.Joint].At, l)
	}
	p := Point{}
	if l.Joint != None {
		p = f.Joints[l.Joint].At
	} else {
		p = placeOn(f, l.Member, l.At)
	}
	return forceAt(p, l.Along, l.Size)
}

// bothPulls is the force of a rope over a wheel and its moment about the origin. Each pull acts on the rim where the way out
// from the middle is perpendicular to it and does not lean to the rope's other end; of two such places the first is taken by
// the one pull, and the second by the other.
func bothPulls(middle Point, l Load) (x, y, turn exact.Num) {
	ends := [2]Vector{l.Along, l.Second}
	for i, u := range ends {
		length := root(u.X.Square().Add(u.Y.Square()))
		ways := []Vector{{u.Y.Neg(), u.X}, {u.Y, u.X.Neg()}}
		if i == 1 {
			slices.Reverse(ways)
		}
		for _, n := range ways {
			if other := ends[1-i]; n.X.Mul(other.X).Add(n.Y.Mul(other.Y)).Sign() <= 0 {
				out := over(l.Radius, length)
				dx, dy, dt := forceAt(Point{middle.X.Add(n.X.Mul(out)), middle.Y.Add(n.Y.Mul(out))}, u, l.Size)
				x, y, turn = x.Add(dx), y.Add(dy), turn.Add(dt)
				break
			}
		}
	}
	return x, y, turn
}

func forceAt(p Point, along Vector, size exact.Num) (x, y, turn exact.Num) {
	k := over(size, root(along.X.Square().Add(along.Y.Square())))
	x, y = along.X.Mul(k), along.Y.Mul(k)
	return x, y, p.X.Mul(y).Sub(p.Y.Mul(x))
}

// root is √a of a number whose root is in the exact set.
func root(a exact.Num) exact.Num {
	r, err := a.Sqrt()
	if err != nil {
		panic(err)
	}
	return r
}

// placeOn is the point at distance s from the start of member m.
func placeOn(f Frame, m int, s exact.Num) Point {
	a, b := f.Joints[f.Members[m].From].At, f.Joints[f.Members[m].To].At
	dx, dy := b.X.Sub(a.X), b.Y.Sub(a.Y)
	share := over(s, root(dx.Square().Add(dy.Square())))
	return Point{a.X.Add(dx.Mul(share)), a.Y.Add(dy.Mul(share))}
}

// spreadBetween is the force and the moment about the origin of a spread load between two distances, by Simpson's
// rule, which is exact up to the third power.
func spreadBetween(f Frame, l Load, from, until exact.Num) (x, y, turn exact.Num) {
	width := until.Sub(from)
	for i, weight := range []exact.Num{frac(1, 6), frac(4, 6), frac(1, 6)} {
		s := from.Add(width.Mul(frac(int64(i), 2)))
		share := over(s.Sub(l.Start), l.End.Sub(l.Start))
		q := l.First.Mul(exact.Int(1).Sub(share)).Add(l.Last.Mul(share))
		dx, dy, turned := forceAt(placeOn(f, l.Member, s), l.Along, q.Mul(projection(f, l)).Mul(width).Mul(weight))
		x, y, turn = x.Add(dx), y.Add(dy), turn.Add(turned)
	}
	return x, y, turn
}

// projection is the length on which a spread load is counted, per length of the member.
func projection(f Frame, l Load) exact.Num {
	a, b := f.Joints[f.Members[l.Member].From].At, f.Joints[f.Members[l.Member].To].At
	dx, dy := b.X.Sub(a.X), b.Y.Sub(a.Y)
	length := root(dx.Square().Add(dy.Square()))
	switch l.Per {
	case PerRun:
		return over(dx.Abs(), length)
	case PerRise:
		return over(dy.Abs(), length)
	}
	return exact.Int(1)
}

// clear takes each unknown out of all rows but one.
func (o *oracle) clear() {
	used := map[int]bool{}
	for col := range o.unknowns {
		row := None
		for r := range o.matrix {
			if !used[r] && !o.matrix[r][col].IsZero() {
				row = r
				break
			}
		}
		if row == None {
			continue
		}
		used[row], o.pivot[col] = true, row
		for r := range o.matrix {
			if r != row && !o.matrix[r][col].IsZero() {
				o.subtract(r, row, col)
			}
		}
	}
}

// subtract takes so much of row p from row r that column col of r becomes nought.
func (o *oracle) subtract(r, p, col int) {
	k := over(o.matrix[r][col], o.matrix[p][col])
	for c := range o.matrix[r] {
		if !o.matrix[p][c].IsZero() {
			o.matrix[r][c] = o.matrix[r][c].Sub(k.Mul(o.matrix[p][c]))
		}
	}
}

// sums is the number of sums: three a body, two a pin.
func (o *oracle) sums() int { return 3*o.bodies - len(o.pin) }

func (o *oracle) degree() int { return len(o.unknowns) - len(o.pivot) }

func (o *oracle) motions() int { return o.sums() - len(o.pivot) }

// determined reports whether the sums give unknown i, whatever the others are.
func (o *oracle) determined(i int) bool {
	row, ok := o.pivot[i]
	if !ok {
		return false
	}
	for col := range o.unknowns {
		if col != i && !o.matrix[row][col].IsZero() {
			return false
		}
	}
	return true
}

// value is unknown i, of a frame in which it is determined: the multiplier of its unscaled direction.
func (o *oracle) value(i int) exact.Num {
	row := o.pivot[i]
	return over(o.matrix[row][len(o.unknowns)], o.matrix[row][i])
}
