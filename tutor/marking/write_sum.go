package marking

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A shownSum is a violated sum with a student's numbers.
type shownSum struct{ title, symbols, numbers string }

// sums are the violated sums of which all values were answered.
func (r *Result) sums() []shownSum {
	var all []shownSum
	for _, a := range r.Answers {
		if s, ok := r.sumOf(a); ok {
			all = append(all, s)
		}
	}
	return all
}

// sumOf is the sum that an answer violates, with the student's numbers; false where there is none, where a value in it was not
// answered, or where it is no sum of multiples: a peak lies elsewhere with other forces.
func (r *Result) sumOf(a Answer) (shownSum, bool) {
	if len(a.Violates) == 0 {
		return shownSum{}, false
	}
	v := a.Violates[0]
	shown, whole := shownSum{title: wording.Capital(v.Name) + ":"}, true
	switch {
	case v.row.sum != nil:
		shown.symbols, shown.numbers, whole = r.bodySum(wording.New(r.Marker.Assembly, r.Marker.judge.Style), *v.row.sum, nil)
	case v.row.off != nil:
		return shownSum{}, false
	case v.row.inner.kind == "kept":
		apart, sum := v.row.keptSum(r.Marker)
		shown.symbols, shown.numbers, whole = r.bodySum(wording.New(apart, r.Marker.judge.Style), sum, v.row)
	default:
		shown.symbols, shown.numbers, whole = r.tiedSum(v.row)
	}
	numbers, _ := strings.CutSuffix(shown.numbers, "0")
	if value := strings.TrimPrefix(strings.TrimSuffix(numbers, " = "), "("); !strings.ContainsAny(value, " ·*(") {
		numbers = "" // one value alone is what it comes to
	}
	shown.numbers = numbers + r.comesTo(v) + ", not 0"
	return shown, whole
}

// comesTo is what a violated sum comes to with the student's values, in the course's positive sense.
func (r *Result) comesTo(v Violated) string {
	by, dim := v.By, v.Dim
	switch {
	case v.row.sum != nil && v.row.sum.Moment:
		by, dim = r.Marker.judge.Style.Moments.Value(by), notation.Moment
	case v.row.sum != nil:
		dim = notation.Force
	case v.row.off == nil && v.row.inner.kind == "kept":
		_, sum := v.row.keptSum(r.Marker)
		if by = sum.Residual(r.cutValues(v.row)); sum.Moment {
			by = r.Marker.judge.Style.Moments.Value(by)
		}
	}
	return wording.New(r.Marker.Assembly, r.Marker.judge.Style).Value(by, dim)
}

// bodySum writes a sum of forces, or with cut the sum of a kept piece; the last result tells whether all of them were answered.
func (r *Result) bodySum(say wording.Speaker, sum statics.Sum, cut *row) (symbols, numbers string, whole bool) {
	values := r.own
	if whole = true; cut != nil {
		values, whole = r.cutValues(cut), r.x.answered[cut.items[0]]
	}
	own := func(force int) (exact.Num, bool) {
		if force < len(r.answered) {
			whole = whole && r.answered[force]
		}
		return values[force], true
	}
	return say.Symbols(sum), say.Numbers(sum, own), whole
}

// cutValues are the student's forces, and last the value at the cut in the conventions of the course.
func (r *Result) cutValues(cut *row) []exact.Num {
	return append(slices.Clone(r.own), r.written(cut.items[0]))
}

// written is a student's value in the conventions of the course.
func (r *Result) written(item int) exact.Num {
	if turnsShear(r.Marker, item) {
		return r.x.of[item].Neg()
	}
	return r.x.of[item]
}

// turnsShear reports whether an item is a shear that the course counts in the other sense.
func turnsShear(m *Marker, item int) bool {
	i := m.Items[item]
	return i.Member != statics.None && !i.Place && i.Quantity == statics.ShearForce && m.judge.Style.Shear == notation.CounterClockwiseShear
}

// kept is the piece whose sum a row is.
func (r *row) kept(m *Marker) statics.Kept {
	item := m.Items[r.items[0]]
	return statics.Kept{Solution: m.Solution, Member: item.Member, At: item.Station, Side: r.inner.side}
}

// keptSum is that sum, with V in the sense of the course.
func (r *row) keptSum(m *Marker) (*statics.Assembly, statics.Sum) {
	apart, sum := r.kept(m).Sum(m.Items[r.items[0]].Quantity)
	if turnsShear(m, r.items[0]) {
		terms := slices.Clone(sum.Terms())
		for i := range terms {
			if terms[i].Force == len(apart.Forces)-1 {
				terms[i].Sign = -terms[i].Sign
			}
		}
		sum = sum.With(terms)
	}
	return apart, sum
}

// tiedSum writes a sum that ties N, V and M at places of a member, or at a joint.
func (r *Result) tiedSum(by *row) (symbols, numbers string, whole bool) {
	whole = true
	var terms []wording.Tied
	for k, i := range by.items {
		item := r.Marker.Items[i]
		t := wording.Tied{Name: r.Marker.wanted(item), Value: r.written(i), Dim: item.Dim, Factor: by.factors[k]}
		if turnsShear(r.Marker, i) {
			t.Factor = t.Factor.Neg()
		}
		if by.inner.kind == "area" && item.Quantity == statics.ShearForce && r.Marker.Items[by.targets[0]].Quantity == statics.BendingMoment {
			t.Per = notation.Length
		}
		terms, whole = append(terms, t), whole && r.x.answered[i]
	}
	loads := exact.Num{}
	for _, t := range by.rests {
		loads = loads.Add(t)
	}
	if !loads.IsZero() {
		sign := exact.Int(int64(loads.Sign()))
		terms = append(terms, wording.Tied{Value: loads.Abs(), Dim: r.Marker.Items[by.items[0]].Dim, Factor: sign})
	}
	symbols, numbers = wording.New(r.Marker.Assembly, r.Marker.judge.Style).Tied(terms)
	return symbols, numbers, whole
}
