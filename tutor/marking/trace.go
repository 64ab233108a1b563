package marking

import (
	"slices"

	"unpin/statics/exact"
	"unpin/statics/judging"
)

// A trace finds, among values that are not right, those with which the trouble began, and what follows from which.
type trace struct {
	x      values
	wrong  []bool        // given, and not right
	known  []bool        // right, missing, at fault, or following from these
	from   [][]int       // the faults that a value follows from; of a fault itself
	by     []*row        // the sum by which a value follows
	came   map[int]came  // of a fault: the sums that it may have come from
	faults []int         // in the order in which they were found
	other  map[int][]int // for each fault, those that may stand in its place
	fault  func(i, grade int, broken []*row) blame
	fits   func(r *row) bool
	idle   map[*row]bool // rows that are all zero
	// lenient tells which of the wrong values would stand by themselves: right to 1 % of their sums, further off than rounding
	// explains. One follows from a mistake that has a story; else it stands, and others rest on it.
	lenient []bool
	// far tells which values are further from the true ones than honest rounding leads: they follow from no right values alone.
	far []bool
	// working tells that zeros may follow from a wrong zero: the paper shows work enough.
	working bool
	// nothing tells that no sum bears anything out.
	nothing bool
	// strict tells of each sum what it comes to with the student's values, where what follows has to follow strictly; else it is nil.
	strict map[*row][]rest
	// most is how many faults a strict reading may have; it is given up with more.
	most int
	// solved are the values that are solved together with a force.
	solved func(i int) []int
}

// came is where a fault may have come from: sums that it violates, with so many other unknowns.
type came struct {
	grade int
	rows  []*row
}

// A blame is what can be said of a value that is taken to be at fault.
type blame struct {
	loss  exact.Num // of marks
	story bool      // one mistake leads to it, or there are a few of which it may be asked
}

// order puts the likelier fault first: what loses the fewest marks, then what a mistake leads to. Of several of these the plan's order
// decides: a person names other mistakes than the catalogue, and knows of no order among them.
func (b blame) order(c blame) int {
	if lost := b.loss.Cmp(c.loss); lost != 0 || b.story == c.story {
		return lost
	}
	if b.story {
		return -1
	}
	return 1
}

func newTrace(x values, wrong []bool) *trace {
	t := &trace{x: x, wrong: wrong, from: make([][]int, len(wrong)), by: make([]*row, len(wrong)), other: map[int][]int{}, came: map[int]came{}, idle: map[*row]bool{}}
	t.known = make([]bool, len(wrong))
	for i := range wrong {
		t.known[i] = !wrong[i]
	}
	return t
}

// resolve finds the faults among the items, by rows in which no other item is unknown.
func (t *trace) resolve(items []int, rows []row) {
	var holding, broken []*row
	for i := range rows {
		r := &rows[i]
		switch {
		case !slices.ContainsFunc(r.items, func(i int) bool { return !t.known[i] && slices.Contains(items, i) }):
		case t.nothing:
			broken = append(broken, r)
		case t.isStrict(r) && !r.idle(t.x), !t.isStrict(r) && t.fits(r):
			holding = append(holding, r)
		case r.idle(t.x):
			holding, t.idle[r] = append(holding, r), true
		default:
			broken = append(broken, r)
		}
	}
	for {
		t.close(holding)
		left := slices.DeleteFunc(slices.Clone(items), func(i int) bool { return t.known[i] })
		if len(left) == 0 || t.most > 0 && len(t.faults) > t.most {
			return
		}
		if t.strict != nil {
			t.pickStrictly(left, t.violated(broken, holding), holding)
		} else {
			t.pick(left, broken, holding)
		}
	}
}

// pick takes the likeliest of the unknown values as a fault. Others that may have come from one sum as well, and follow from
// it, may stand in its place.
func (t *trace) pick(left []int, broken, holding []*row) {
	left, standing := t.parted(left)
	if len(left) == 0 {
		t.known[standing[0]] = true
		return
	}
	grades := map[int]int{}
	least := len(t.wrong) + 1
	for _, i := range left {
		grades[i] = t.grade(i, broken)
		least = min(least, grades[i])
	}
	left = slices.DeleteFunc(left, func(i int) bool { return grades[i] > least })
	best := left[0]
	if len(left) > 1 || len(standing) > 0 {
		why := t.fault(best, least, t.direct(best, least, broken))
		for _, i := range left[1:] {
			if b := t.fault(i, least, t.direct(i, least, broken)); b.order(why) < 0 {
				best, why = i, b
			}
		}
		if j := t.restsOn(best, standing, holding); j >= 0 && !why.story {
			t.known[j] = true
			return
		}
	}
	t.faults, t.came[best] = append(t.faults, best), came{least, t.direct(best, least, broken)}
	t.known[best], t.from[best] = true, []int{best}
	t.close(holding)
	for _, j := range left {
		if j != best && t.known[j] {
			t.other[best] = append(t.other[best], j)
		}
	}
}

// parted parts the values that stand by themselves from the others.
func (t *trace) parted(all []int) (left, standing []int) {
	for _, i := range all {
		if t.lenient != nil && t.lenient[i] {
			standing = append(standing, i)
		} else {
			left = append(left, i)
		}
	}
	return left, standing
}

// restsOn is the first of the values that stand by themselves from which a value follows, or −1.
func (t *trace) restsOn(i int, standing []int, holding []*row) int {
	for _, j := range standing {
		try := t.copied()
		try.known[j] = true
		if try.close(holding); try.known[i] {
			return j
		}
	}
	return -1
}

// grade is the least number of other unknowns in a sum that a value violates.
func (t *trace) grade(i int, broken []*row) int {
	least := len(t.wrong)
	for _, r := range broken {
		if r.finds(i) {
			least = min(least, t.unknowns(r)-1)
		}
	}
	return least
}

// direct lists the violated sums of a value with so many other unknowns.
func (t *trace) direct(i, grade int, broken []*row) []*row {
	var all []*row
	for _, r := range broken {
		if r.finds(i) && t.unknowns(r)-1 == grade {
			all = append(all, r)
		}
	}
	return all
}

func (t *trace) unknowns(r *row) int {
	n := 0
	for _, i := range r.items {
		if !t.known[i] {
			n++
		}
	}
	return n
}

// close finds what follows from what is known: first by sums with one unknown, of these first by those that rest on the
// fewest faults, then by several sums together.
func (t *trace) close(rows []*row) {
	for {
		var best *row
		var from []int
		for _, r := range rows {
			if t.unknowns(r) != 1 || !t.finds(r) || !t.follows(r) || t.idle[r] && !t.working && !t.carriedOnly(r) {
				continue
			}
			if f := t.rests(r); (best == nil || len(f) < len(from)) && (len(f) > 0 || t.bearsOut(r)) {
				best, from = r, f
			}
		}
		if best == nil {
			if !t.together(rows) {
				return
			}
			continue
		}
		for _, i := range best.items {
			if !t.known[i] {
				t.known[i], t.from[i], t.by[i] = true, from, best
			}
		}
	}
}

// bearsOut reports whether a row of right values shows that what it finds is right but for rounding: that is not far from the true
// one, unless it follows to its third figure, or from one that is; and of a free body the student had at least one of the others. A value
// alone is held against the plan's own sum, as in a lesson.
func (t *trace) bearsOut(r *row) bool {
	if t.far == nil {
		return true
	}
	others, had, far := 0, 0, false
	for _, i := range r.items {
		switch {
		case !t.known[i]:
			far = far || t.far[i]
		case t.x.answered[i] && t.far[i]:
			return true
		case t.x.answered[i]:
			had++
		default:
			others++
		}
	}
	return (!far || t.isStrict(r)) && (had > 0 || others == 0 || r.inner.kind != "")
}

// carriedOnly reports whether all wrong values that are known in a row follow from others: then what is all zero in it was
// borne out by other sums.
func (t *trace) carriedOnly(r *row) bool {
	some := false
	for _, i := range r.items {
		if t.wrong[i] && t.known[i] {
			some = true
			if len(t.from[i]) == 0 || slices.Contains(t.faults, i) {
				return false
			}
		}
	}
	return some
}

// rests lists the faults that the known values of a row rest on.
func (t *trace) rests(r *row) []int {
	var all []int
	for _, i := range r.items {
		for _, f := range t.from[i] {
			if !slices.Contains(all, f) {
				all = append(all, f)
			}
		}
	}
	slices.Sort(all)
	return all
}

// finds reports whether a row may give all that is unknown in it.
func (t *trace) finds(r *row) bool {
	return !slices.ContainsFunc(r.items, func(i int) bool { return !t.known[i] && !r.finds(i) })
}

// together finds what several sums give only together, and reports whether there is any. Strictly what they give has to be what was answered,
// to its third figure: sums in which an unknown has small factors each hold for many values of it.
func (t *trace) together(rows []*row) bool {
	var columns []int
	rows = slices.DeleteFunc(slices.Clone(rows), func(r *row) bool { return t.idle[r] || !t.finds(r) || !t.follows(r) })
	for _, r := range rows {
		for _, i := range r.items {
			if !t.known[i] && !slices.Contains(columns, i) {
				columns = append(columns, i)
			}
		}
	}
	var used [][]exact.Num // in reduced form
	var with [][]*row
	for _, r := range rows {
		line := make([]exact.Num, len(columns)+1) // the last is what the sum comes to
		for k, i := range r.items {
			if c := slices.Index(columns, i); c >= 0 {
				line[c] = r.factors[k]
			}
		}
		if rests, ok := t.strict[r]; ok {
			line[len(columns)] = rests[0].off
		}
		used, with = reduce(used, with, line, r)
	}
	found := false
	for n, line := range used {
		only := alone(line[:len(columns)])
		if only < 0 || t.strict != nil && line[len(columns)].Abs().Cmp(judging.ThirdFigure(t.x.of[columns[only]])) > 0 {
			continue
		}
		var from []int
		for _, r := range with[n] {
			from = append(from, t.rests(r)...)
		}
		slices.Sort(from)
		if from = slices.Compact(from); len(from) == 0 && slices.ContainsFunc(with[n], func(r *row) bool { return !t.bearsOut(r) }) {
			continue
		}
		t.from[columns[only]], t.by[columns[only]] = from, with[n][0]
		found = true
		defer func(i int) { t.known[i] = true }(columns[only])
	}
	return found
}

// alone is the only column that is not zero, or −1.
func alone(line []exact.Num) int {
	only := pivot(line)
	if only < 0 || pivot(line[only+1:]) >= 0 {
		return -1
	}
	return only
}

// reduce adds a line to lines in reduced form, unless it follows from them. The last number of a line is what it comes to, and no column.
func reduce(used [][]exact.Num, with [][]*row, line []exact.Num, r *row) ([][]exact.Num, [][]*row) {
	rows := []*row{r}
	for n, u := range used {
		p := pivot(u)
		if k := line[p]; !k.IsZero() {
			subtract(line, u, k)
			rows = append(rows, with[n]...)
		}
	}
	p := pivot(line[:len(line)-1])
	if p < 0 {
		return used, with
	}
	inverse, _ := exact.Int(1).Quo(line[p])
	for c := range line {
		line[c] = line[c].Mul(inverse)
	}
	for n, u := range used {
		if k := u[p]; !k.IsZero() {
			subtract(u, line, k)
			with[n] = append(slices.Clone(with[n]), rows...)
		}
	}
	return append(used, line), append(with, rows)
}

// subtract takes k times u from a line.
func subtract(line, u []exact.Num, k exact.Num) {
	for c := range line {
		if !u[c].IsZero() {
			line[c] = line[c].Sub(u[c].Mul(k))
		}
	}
}

// pivot is the first column that is not zero, or −1.
func pivot(line []exact.Num) int {
	return slices.IndexFunc(line, func(x exact.Num) bool { return !x.IsZero() })
}
