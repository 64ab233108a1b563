package main

import (
	"fmt"
	"math"
	"math/big"
	"strings"
)

// The oracle solves a frame from its file by elimination in fractions, three sums a part. It shares the list of parts and
// unknowns with the rest, and none of the arithmetic. A root or a sine is carried as a fraction of more than 60 figures.

func rat(f float64) *big.Rat      { return new(big.Rat).SetFloat64(f) }
func sum(a, b *big.Rat) *big.Rat  { return new(big.Rat).Add(a, b) }
func less(a, b *big.Rat) *big.Rat { return new(big.Rat).Sub(a, b) }
func prod(all ...*big.Rat) *big.Rat {
	p := big.NewRat(1, 1)
	for _, r := range all {
		p.Mul(p, r)
	}
	return p
}

// root is the square root of r: exact where it is rational.
func root(r *big.Rat) *big.Rat {
	if n, d := new(big.Int).Sqrt(r.Num()), new(big.Int).Sqrt(r.Denom()); prod(new(big.Rat).SetFrac(n, d), new(big.Rat).SetFrac(n, d)).Cmp(r) == 0 {
		return new(big.Rat).SetFrac(n, d)
	}
	f := new(big.Float).SetPrec(256).SetRat(r)
	out, _ := f.Sqrt(f).Rat(nil)
	return out
}

type pair struct{ x, y *big.Rat }

func exactUnit(p pair) pair {
	l := new(big.Rat).Inv(root(sum(prod(p.x, p.x), prod(p.y, p.y))))
	return pair{prod(p.x, l), prod(p.y, l)}
}

func (p *problem) joint(name string) pair {
	return pair{p.Joints[name][0].rat(), p.Joints[name][1].rat()}
}

// exactDirection is the unit vector of a direction; that of an angle is as good as float64 has it.
func exactDirection(to any, u pair) pair {
	if list, ok := to.([]any); ok {
		return exactUnit(pair{decimal(fmt.Sprint(list[0])).rat(), decimal(fmt.Sprint(list[1])).rat()})
	}
	switch word := fmt.Sprint(to); {
	case word == "along":
		return u
	case word == "normal":
		return pair{u.y, new(big.Rat).Neg(u.x)}
	case strings.HasSuffix(word, "deg"):
		v, _, _ := direction(to, nil)
		return pair{rat(v.x), rat(v.y)}
	default:
		v, _, _ := direction(to, nil)
		return pair{rat(v.x), rat(v.y)}
	}
}

// solveExactly gives the unknowns of a frame in the order of f.unknowns.
func solveExactly(p *problem, f *frame) ([]*big.Rat, error) {
	n := len(f.unknowns)
	if n != 3*f.parts {
		return nil, fmt.Errorf("%d unknowns for %d parts", n, f.parts)
	}
	rows := make([][]*big.Rat, n)
	for i := range rows {
		rows[i] = make([]*big.Rat, n+1)
		for j := range rows[i] {
			rows[i][j] = new(big.Rat)
		}
	}
	addUnknowns(p, f, rows)
	for i, e := range p.Loads {
		for _, l := range f.loads {
			if l.entry == i {
				fx, fy, m := exactLoad(p, e, l)
				for k, v := range []*big.Rat{fx, fy, m} {
					cell := rows[3*l.part+k][n]
					cell.Sub(cell, v)
				}
			}
		}
	}
	return eliminate(rows)
}

func addUnknowns(p *problem, f *frame, rows [][]*big.Rat) {
	for j, u := range f.unknowns {
		at := p.joint(u.joint)
		d := pair{rat(math.Round(u.dir.x)), rat(math.Round(u.dir.y))}
		if u.name == "R"+u.joint {
			for _, to := range p.Supports[u.joint].(map[string]any) {
				d = exactDirection(to, pair{})
			}
		}
		column := []*big.Rat{d.x, d.y, less(prod(at.x, d.y), prod(at.y, d.x))}
		if u.couple {
			column = []*big.Rat{new(big.Rat), new(big.Rat), big.NewRat(1, 1)}
		}
		for k, v := range column {
			rows[3*u.on+k][j].Add(rows[3*u.on+k][j], v)
			if u.other >= 0 {
				rows[3*u.other+k][j].Sub(rows[3*u.other+k][j], v)
			}
		}
	}
}

// exactLoad is the force of a load on one member and its moment about the origin.
func exactLoad(p *problem, e loadEntry, l *load) (fx, fy, m *big.Rat) {
	a, b := p.joint(l.m.a), p.joint(l.m.b)
	span := pair{less(b.x, a.x), less(b.y, a.y)}
	length := root(sum(prod(span.x, span.x), prod(span.y, span.y)))
	u := pair{new(big.Rat).Quo(span.x, length), new(big.Rat).Quo(span.y, length)}
	if e.Couple != "" {
		size := e.Couple.rat()
		if e.To == "cw" {
			size.Neg(size)
		}
		return new(big.Rat), new(big.Rat), size
	}
	d := exactDirection(e.To, u)
	var force, s *big.Rat
	if e.Point != "" {
		force, s = e.Point.rat(), exactPlace(e, l, u, length)
	} else {
		force, s = exactResultant(e, u, length)
	}
	x, y := sum(a.x, prod(u.x, s)), sum(a.y, prod(u.y, s))
	fx, fy = prod(force, d.x), prod(force, d.y)
	return fx, fy, less(prod(x, fy), prod(y, fx))
}

func exactPlace(e loadEntry, l *load, u pair, length *big.Rat) *big.Rat {
	switch {
	case e.Joint == l.m.b:
		return length
	case e.Joint != "" || e.At == "":
		return new(big.Rat)
	case strings.HasSuffix(string(e.At), " run"):
		return new(big.Rat).Quo(e.At.rat(), new(big.Rat).Abs(u.x))
	}
	return e.At.rat()
}

// exactResultant integrates a straight-line load: its force, and where that acts along the member.
func exactResultant(e loadEntry, u pair, length *big.Rat) (force, s *big.Rat) {
	s0, s1 := new(big.Rat), length
	if e.From != "" {
		s0 = e.From.rat()
	}
	if e.Until != "" {
		s1 = e.Until.rat()
	}
	w := e.Ramp
	if e.Uniform != "" {
		w = []decimal{e.Uniform, e.Uniform}
	}
	w0, w1 := w[0].rat(), w[1].rat()
	per := big.NewRat(1, 1)
	switch e.Per {
	case "run":
		per.Abs(u.x)
	case "rise":
		per.Abs(u.y)
	}
	long := less(s1, s0)
	total := sum(w0, w1)
	force = prod(per, total, long, big.NewRat(1, 2))
	middle := new(big.Rat).Quo(sum(w0, prod(w1, big.NewRat(2, 1))), prod(total, big.NewRat(3, 1)))
	return force, sum(s0, prod(long, middle))
}

// eliminate solves n rows of n coefficients and a right side.
func eliminate(rows [][]*big.Rat) ([]*big.Rat, error) {
	n := len(rows)
	for c := range n {
		pivot := -1
		for r := c; r < n; r++ {
			if v, _ := rows[r][c].Float64(); math.Abs(v) > 1e-12 {
				pivot = r
				break
			}
		}
		if pivot < 0 {
			return nil, fmt.Errorf("the frame is not determinate")
		}
		rows[c], rows[pivot] = rows[pivot], rows[c]
		for r := range n {
			if r == c || rows[r][c].Sign() == 0 {
				continue
			}
			k := new(big.Rat).Quo(rows[r][c], rows[c][c])
			for j := c; j <= n; j++ {
				rows[r][j] = less(rows[r][j], prod(k, rows[c][j]))
			}
		}
	}
	values := make([]*big.Rat, n)
	for i := range values {
		values[i] = new(big.Rat).Quo(rows[i][n], rows[i][i])
	}
	return values, nil
}
