package statics

// A basis is a set of independent rows, taken in one after the other: where it must be told of each row whether it follows
// from those before. An elimination takes all rows at once and chooses their order.
type basis struct {
	rows   []row
	pivots []int // the column that each row has and the later ones have not
}

// add takes a row in if it is independent of those taken before.
func (b *basis) add(r row) bool {
	for i, s := range b.rows {
		if k := r.coef(b.pivots[i]); !k.IsZero() {
			r = r.minus(over(k, s.coef(b.pivots[i])), s, nil)
		}
	}
	if len(r.entries) == 0 {
		return false
	}
	b.rows, b.pivots = append(b.rows, r), append(b.pivots, r.entries[0].col)
	return true
}
