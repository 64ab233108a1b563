package marking

import (
	"slices"
	"strconv"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// A row is one true sum in the values of the items: its terms add up to zero. It may be held against a student's values.
type row struct {
	items   []int       // that count in it, rising
	factors []exact.Num // of each
	rests   []exact.Num // the terms of loads
	slack   exact.Num   // what rounding the terms of loads may come to
	parts   []part      // the terms of a free body's sum one by one, of items
	short   exact.Num   // by how much the terms of loads come to more when each is rounded to three figures
	ratios  []exact.Num // of each item: what rounding a sine or ratio may come to, for a value of 1
	sum     *statics.Sum
	gives   int   // the item that the plan takes from it, or −1
	targets []int // the items that may be found by it; nil are all
	inner   relation
	// off is what the row comes to with a student's values, and the largest of its terms, where it is no sum of multiples.
	off func(x values) (rest, largest, slack exact.Num)
}

// A part is one term of an item: an item may have two, of its components.
type part struct {
	item   int
	factor exact.Num
}

// A relation says what kind of sum ties N, V and M.
type relation struct {
	kind   string // "kept", "area", "joint", or empty for a sum of a free body
	member int
	joint  int
	side   statics.KeptSide
}

// add adds a term to a row.
func (r *row) add(item int, factor exact.Num) {
	if factor.IsZero() {
		return
	}
	if i := slices.Index(r.items, item); i >= 0 {
		r.factors[i] = r.factors[i].Add(factor)
		return
	}
	r.items, r.factors, r.ratios = append(r.items, item), append(r.factors, factor), append(r.ratios, exact.Num{})
}

// rest adds the term of a load.
func (r *row) rest(term exact.Num) {
	r.rests = append(r.rests, term)
	r.slack = r.slack.Add(judging.OnlyLong(term))
}

// finds reports whether an item may be found by a row.
func (r *row) finds(item int) bool {
	return r.has(item) && (r.targets == nil || slices.Contains(r.targets, item))
}

// has reports whether an item counts in a row.
func (r *row) has(item int) bool { return slices.Contains(r.items, item) }

// values are those of all items as a student has them: what is missing is true.
type values struct {
	of       []exact.Num
	answered []bool
	whole    []bool // the true value, which ends within three figures: nothing was rounded in it
}

// residual is what a row comes to with a student's values, the largest of its terms, and what rounding all of them to three
// figures may come to.
func (r *row) residual(x values) (rest, largest, slack exact.Num) {
	if r.off != nil {
		return r.off(x)
	}
	slack = r.slack
	for i, item := range r.items {
		v := x.of[item]
		t := r.factors[i].Mul(v)
		rest, largest = rest.Add(t), exact.Max(largest, t.Abs())
		if slack = slack.Add(r.ratios[i].Mul(v.Abs())).Add(judging.OnlyLong(t)); !x.whole[item] {
			slack = slack.Add(judging.ThirdFigure(v).Mul(r.factors[i].Abs()))
		}
	}
	for _, t := range r.rests {
		rest, largest = rest.Add(t), exact.Max(largest, t.Abs())
	}
	return rest, largest, slack
}

var percent = exact.MustParse("0.01")

// holds reports whether a student's values satisfy a row: as far as rounding to three figures explains, and to 1 % of the
// largest term. A row that is all zero bears nothing out.
func (r *row) holds(x values) bool {
	rest, largest, slack := r.residual(x)
	return !largest.IsZero() && rest.Abs().Cmp(exact.Min(largest.Mul(percent), slack)) <= 0
}

// idle reports whether a row is all zero.
func (r *row) idle(x values) bool {
	_, largest, _ := r.residual(x)
	return largest.IsZero()
}

// near reports whether a student's values satisfy a row to 1 % of its largest term, whatever rounding explains.
func (r *row) near(x values) bool {
	rest, largest, _ := r.residual(x)
	return !largest.IsZero() && rest.Abs().Cmp(largest.Mul(percent)) <= 0
}

// relate lists the true sums that tie the items to each other.
func (m *Marker) relate() {
	seen := map[string]bool{}
	for _, b := range freeBodies(m.Assembly) {
		for _, s := range sumsOf(m.Assembly, b) {
			if r, ok := m.rowOf(s); ok && !seen[r.text()] {
				seen[r.text()] = true
				m.forceRow = append(m.forceRow, r)
			}
		}
	}
	m.relateInner()
}

// rowOf is a sum of a free body as a row; false where it has no force.
func (m *Marker) rowOf(s statics.Sum) (row, bool) {
	r := row{sum: &s, gives: m.given(s)}
	for _, t := range s.Terms() {
		switch {
		case t.Why != statics.Counts:
		case t.Force == statics.None:
			v := t.Value()
			r.rest(v)
			r.short = r.short.Add(v.Rounded(3).Sub(v))
		default:
			item := m.ofForce(t.Force)
			r.add(item, t.Value())
			r.parts = append(r.parts, part{item, t.Value()})
			k := slices.Index(r.items, item)
			r.ratios[k] = r.ratios[k].Add(judging.OnlyLong(t.Size).Mul(t.Arm))
		}
	}
	return r, len(r.items) > 0
}

// text tells rows apart that are not the same but for a factor.
func (r *row) text() string {
	first := r.factors[0]
	var text string
	for i, item := range r.items {
		k, _ := r.factors[i].Quo(first)
		text += strconv.Itoa(item) + "*" + k.String() + " "
	}
	return text
}

// freeBodies lists the free bodies whose sums a student may write: every connected group of bodies where there are few, else
// groups of up to three, and the whole.
func freeBodies(a *statics.Assembly) []statics.FreeBody {
	n := a.Bodies()
	most := n
	if n > 6 {
		most = 2
	}
	near := make([][]bool, n)
	for i := range near {
		near[i] = make([]bool, n)
	}
	for _, f := range a.Forces {
		if f.By != statics.None && f.On != statics.None {
			near[f.On][f.By], near[f.By][f.On] = true, true
		}
	}
	all := []statics.FreeBody{}
	var grow func(b statics.FreeBody)
	seen := map[string]bool{}
	grow = func(b statics.FreeBody) {
		key := bodyKey(b)
		if seen[key] {
			return
		}
		seen[key] = true
		all = append(all, b)
		if len(b) >= most {
			return
		}
		for i := range n {
			if !b.Has(i) && slices.ContainsFunc(b, func(j int) bool { return near[i][j] }) {
				grown := append(slices.Clone(b), i)
				slices.Sort(grown)
				grow(grown)
			}
		}
	}
	for i := range n {
		grow(statics.FreeBody{i})
	}
	if !seen[bodyKey(a.Whole())] {
		all = append(all, a.Whole())
	}
	slices.SortStableFunc(all, func(b, c statics.FreeBody) int { return sizeOrder(a, b) - sizeOrder(a, c) })
	return all
}

// sizeOrder puts single bodies first, then the whole, then groups by their size.
func sizeOrder(a *statics.Assembly, b statics.FreeBody) int {
	if len(b) == a.Bodies() && len(b) > 1 {
		return 2
	}
	if len(b) == 1 {
		return 1
	}
	return len(b) + 1
}

func bodyKey(b statics.FreeBody) string {
	key := make([]byte, 0, 2*len(b))
	for _, i := range b {
		key = append(key, byte(i), byte(i>>8))
	}
	return string(key)
}

// sumsOf lists the sums of a free body that a student may write: along x and y and perpendicular to inclined forces, about the
// joints of the body and where two unknowns' lines cross.
func sumsOf(a *statics.Assembly, b statics.FreeBody) []statics.Sum {
	one := exact.Int(1)
	along := []statics.Vector{{X: one}, {Y: one}}
	var centres []statics.Point
	centre := func(p statics.Point) {
		if !slices.ContainsFunc(centres, p.Equal) {
			centres = append(centres, p)
		}
	}
	var lines []statics.Force
	for _, i := range a.ForcesOn(b) {
		f := a.Forces[i]
		if sign, _ := a.Facing(b, i); sign == 0 {
			continue
		}
		centre(a.Frame.Joints[f.Joint].At)
		if f.Couple {
			continue
		}
		lines = append(lines, f)
		if !f.Along.X.IsZero() && !f.Along.Y.IsZero() {
			along = append(along, f.Along.Left())
		}
	}
	var all []statics.Sum
	for _, v := range along {
		all = append(all, a.ForceSum(b, v))
	}
	if len(b) == 1 && a.IsPin(b[0]) {
		return all
	}
	for _, i := range b {
		if !a.IsPin(i) {
			for _, j := range a.Parts[i].Joints {
				centre(a.Frame.Joints[j].At)
			}
		}
	}
	for i, f := range lines {
		for _, g := range lines[:i] {
			if p, ok := crossing(a, f, g); ok && within(a, p) {
				centre(p)
			}
		}
	}
	for _, p := range centres {
		all = append(all, a.MomentSum(b, p))
	}
	return all
}

// crossing is the point where the lines of two forces cross.
func crossing(a *statics.Assembly, f, g statics.Force) (statics.Point, bool) {
	p, q := a.Frame.Joints[f.Joint].At, a.Frame.Joints[g.Joint].At
	k, err := p.To(q).Cross(g.Along).Quo(f.Along.Cross(g.Along))
	return p.Plus(f.Along.Times(k)), err == nil
}

// given is the item that the plan takes from a sum by itself, or −1.
func (m *Marker) given(s statics.Sum) int {
	for _, step := range m.Plan {
		if len(step.Gives) == 1 && step.Sums[0].Same(s) {
			return m.ofForce(step.Gives[0])
		}
	}
	return -1
}

// within reports whether a point lies within the frame, or no further from it than it is wide and high.
func within(a *statics.Assembly, p statics.Point) bool {
	joints := a.Frame.Joints
	low, high := joints[0].At, joints[0].At
	for _, j := range joints {
		low = statics.Point{X: exact.Min(low.X, j.At.X), Y: exact.Min(low.Y, j.At.Y)}
		high = statics.Point{X: exact.Max(high.X, j.At.X), Y: exact.Max(high.Y, j.At.Y)}
	}
	size := exact.Max(high.X.Sub(low.X), high.Y.Sub(low.Y))
	in := func(x, low, high exact.Num) bool { return x.Cmp(low.Sub(size)) >= 0 && x.Cmp(high.Add(size)) <= 0 }
	return in(p.X, low.X, high.X) && in(p.Y, low.Y, high.Y)
}
