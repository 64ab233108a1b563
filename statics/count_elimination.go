package statics

import (
	"slices"

	"unpin/statics/exact"
)

// An entry is one coefficient of a row.
type entry struct {
	col int
	k   exact.Num
}

// A row is one linear equation, Σ k·x = rhs, its entries in rising order of column and none zero.
type row struct {
	entries []entry
	rhs     exact.Num
}

// coef is the coefficient of a column.
func (r row) coef(col int) exact.Num {
	if i, ok := slices.BinarySearchFunc(r.entries, col, func(e entry, c int) int { return e.col - c }); ok {
		return r.entries[i].k
	}
	return exact.Num{}
}

// minus is r − f·s. Its entries take their place from the room if they fit.
func (r row) minus(f exact.Num, s row, room []entry) row {
	if most := len(r.entries) + len(s.entries); cap(room) < most {
		room = make([]entry, 0, most)
	}
	out := row{entries: room[:0], rhs: r.rhs.Sub(f.Mul(s.rhs))}
	i, j := 0, 0
	for i < len(r.entries) || j < len(s.entries) {
		switch {
		case j == len(s.entries) || i < len(r.entries) && r.entries[i].col < s.entries[j].col:
			out.entries = append(out.entries, r.entries[i])
			i++
		case i == len(r.entries) || s.entries[j].col < r.entries[i].col:
			out.entries = append(out.entries, entry{s.entries[j].col, f.Mul(s.entries[j].k).Neg()})
			j++
		default:
			if k := r.entries[i].k.Sub(f.Mul(s.entries[j].k)); !k.IsZero() {
				out.entries = append(out.entries, entry{r.entries[i].col, k})
			}
			i, j = i+1, j+1
		}
	}
	return out
}

// A pivot is a row that was chosen to give one column.
type pivot struct{ row, col int }

// An elimination is a set of rows brought to triangular form: the row of each pivot holds no column of an earlier one.
type elimination struct {
	rows   []row
	pivots []pivot
	byCol  [][]int // rows that hold, or held, each column
	active []bool
	queue  queue   // of the active rows, by length
	room   []entry // for rows to come
}

// eliminate brings rows to triangular form. It takes the shortest row first, and in it the rarest column, so that the
// sparse sums of a frame stay sparse. The rows given are changed.
func eliminate(rows []row, columns int) *elimination {
	e := &elimination{rows: rows, byCol: make([][]int, columns), active: make([]bool, len(rows))}
	e.pivots, e.queue = make([]pivot, 0, len(rows)), make(queue, 0, 2*len(rows))
	room := make([]int, 4*columns) // most columns are held by few rows
	for col := range e.byCol {
		e.byCol[col] = room[4*col : 4*col : 4*col+4]
	}
	for i, r := range rows {
		e.active[i] = true
		for _, x := range r.entries {
			e.byCol[x.col] = append(e.byCol[x.col], i)
		}
		e.queue.push(queued{i, len(r.entries)})
	}
	for len(e.queue) > 0 {
		q := e.queue.pop()
		if e.active[q.item] && q.size == len(e.rows[q.item].entries) {
			e.take(q.item)
		}
	}
	return e
}

// take makes row i a pivot, unless it is empty, and clears its column from the rows still waiting.
func (e *elimination) take(i int) {
	e.active[i] = false
	r := e.rows[i]
	if len(r.entries) == 0 {
		return
	}
	best := r.entries[0]
	for _, x := range r.entries[1:] {
		if len(e.byCol[x.col]) < len(e.byCol[best.col]) {
			best = x
		}
	}
	e.pivots = append(e.pivots, pivot{i, best.col})
	for _, o := range e.byCol[best.col] {
		if !e.active[o] {
			continue
		}
		if k := e.rows[o].coef(best.col); !k.IsZero() {
			e.replace(o, e.less(o, over(k, best.k), r))
		}
	}
}

// less is row o without f times the row r.
func (e *elimination) less(o int, f exact.Num, r row) row {
	if most := len(e.rows[o].entries) + len(r.entries); cap(e.room) < most {
		e.room = make([]entry, 0, most+4*len(e.rows))
	}
	less := e.rows[o].minus(f, r, e.room)
	n := len(less.entries)
	e.room = less.entries[n:]
	less.entries = less.entries[:n:n]
	return less
}

// replace puts r in the place of the waiting row o.
func (e *elimination) replace(o int, r row) {
	old := e.rows[o]
	e.rows[o] = r
	for _, x := range r.entries {
		if old.coef(x.col).IsZero() {
			e.byCol[x.col] = append(e.byCol[x.col], o)
		}
	}
	e.queue.push(queued{o, len(r.entries)})
}

// rank is the number of independent rows.
func (e *elimination) rank() int { return len(e.pivots) }

// solve gives the value of each column when there are as many pivots as columns.
func (e *elimination) solve() []exact.Num {
	x := make([]exact.Num, len(e.byCol))
	for i := len(e.pivots) - 1; i >= 0; i-- {
		p := e.pivots[i]
		r := e.rows[p.row]
		rest := r.rhs
		for _, t := range r.entries {
			if t.col != p.col {
				rest = rest.Sub(t.k.Mul(x[t.col]))
			}
		}
		x[p.col] = over(rest, r.coef(p.col))
	}
	return x
}

// nullSpace is a basis of the x for which every row's left side is zero, one vector for each column without pivot.
func (e *elimination) nullSpace() [][]exact.Num {
	pivotal := make([]bool, len(e.byCol))
	for _, p := range e.pivots {
		pivotal[p.col] = true
	}
	var basis [][]exact.Num
	for free := range e.byCol {
		if pivotal[free] {
			continue
		}
		x := make([]exact.Num, len(e.byCol))
		x[free] = exact.Int(1)
		for i := len(e.pivots) - 1; i >= 0; i-- {
			p := e.pivots[i]
			var rest exact.Num
			for _, t := range e.rows[p.row].entries {
				if t.col != p.col {
					rest = rest.Sub(t.k.Mul(x[t.col]))
				}
			}
			x[p.col] = over(rest, e.rows[p.row].coef(p.col))
		}
		basis = append(basis, x)
	}
	return basis
}

// SolveEquations finds the n unknowns of n equations Σ factors[i][j]·x[j] + rests[i] = 0; false where they do not give
// all of them, since one follows from the others or contradicts them.
func SolveEquations(factors [][]exact.Num, rests []exact.Num) ([]exact.Num, bool) {
	n := len(rests)
	if n == 1 { // most sums have one unknown
		x, err := rests[0].Neg().Quo(factors[0][0])
		return []exact.Num{x}, err == nil
	}
	if n == 2 {
		x, ok := solveTwo([2][2]exact.Num{{factors[0][0], factors[0][1]}, {factors[1][0], factors[1][1]}}, [2]exact.Num{rests[0].Neg(), rests[1].Neg()})
		if !ok {
			return nil, false
		}
		return x[:], true
	}
	rows := make([]row, n)
	for i := range rows {
		rows[i].rhs = rests[i].Neg()
		for j, k := range factors[i] {
			if !k.IsZero() {
				rows[i].entries = append(rows[i].entries, entry{j, k})
			}
		}
	}
	e := eliminate(rows, n)
	if e.rank() < n {
		return nil, false
	}
	return e.solve(), true
}

// solveTwo finds the two unknowns of two equations Σ factors[i][j]·x[j] = right[i], by Cramer's rule; false where they do not give both.
func solveTwo(factors [2][2]exact.Num, right [2]exact.Num) (x [2]exact.Num, ok bool) {
	minor := func(a, d, b, c exact.Num) exact.Num { return a.Mul(d).Sub(b.Mul(c)) }
	f, g := &factors[0], &factors[1]
	det := minor(f[0], g[1], f[1], g[0])
	if det.IsZero() {
		return x, false
	}
	x[0] = over(minor(right[0], g[1], f[1], right[1]), det)
	x[1] = over(minor(f[0], right[1], right[0], g[0]), det)
	return x, true
}
