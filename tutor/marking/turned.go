package marking

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
)

// turnOver finds diagrams with all values in the opposite sense, of all members or of one, and turns them round.
func (w *work) turnOver() {
	over := func(group []int) bool {
		values := slices.DeleteFunc(group, func(i int) bool { return w.given[i] == nil || w.x.of[i].IsZero() })
		if len(values) < 2 || slices.ContainsFunc(values, func(i int) bool { return w.Items[i].Value.IsZero() || !w.fitsTurned(i) }) {
			return false
		}
		for _, i := range values {
			w.turned[i], w.x.of[i] = true, w.x.of[i].Neg()
		}
		return true
	}
	for q := range statics.BendingMoment + 1 {
		if over(diagrams(w.Items, q, func(int) bool { return true })) {
			continue
		}
		for member := range w.Frame.Members {
			over(diagrams(w.Items, q, func(m int) bool { return m == member }))
		}
	}
}

// diagrams lists the items of a quantity along some members.
func diagrams(items []problems.Item, q statics.Quantity, along func(member int) bool) []int {
	var all []int
	for i, item := range items {
		if item.Member != statics.None && along(item.Member) && item.Quantity == q && !item.Place {
			all = append(all, i)
		}
	}
	return all
}

// fitsTurned reports whether a value is right, or what the student's forces give, in the opposite sense alone.
func (w *work) fitsTurned(i int) bool {
	v := w.given[i].typed
	if v.Means(w.Items[i].Value) {
		return false
	}
	if negated(v).Means(w.Items[i].Value) {
		return true
	}
	turned := w.x
	turned.of = slices.Clone(w.x.of)
	turned.of[i] = turned.of[i].Neg()
	for j := range w.innerRow {
		r := &w.innerRow[j]
		if r.inner.kind == "kept" && r.off == nil && r.items[0] == i {
			if r.holds(w.x) {
				return false
			}
			if r.holds(turned) {
				return true
			}
		}
	}
	return false
}
