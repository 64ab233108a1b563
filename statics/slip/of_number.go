package slip

import "unpin/statics/exact"

// OfNumber lists what slips make of a number as it is written down: two figures exchanged, or the decimal point misplaced.
func OfNumber(right exact.Num) []Candidate {
	var all []Candidate
	add := func(id string, values []exact.Num, whole bool) {
		for _, row := range catalogue {
			for _, v := range values {
				if row.ID == id && !v.Equal(right) {
					all = append(all, Candidate{Slip: row, Value: v, Giver: nobody, Whole: whole})
				}
			}
		}
	}
	var moved []exact.Num
	for _, ten := range tens() {
		moved = append(moved, right.Mul(ten))
	}
	add("power-of-ten", distinct(moved), false)
	add("answer-digits-swapped", answersSwapped(right, true), true)
	return all
}
