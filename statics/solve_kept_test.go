package statics

import (
	"fmt"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// Whichever piece is kept, its sums give at every station what the diagram has there.
func TestKeptPieces(t *testing.T) {
	t.Parallel()
	sums := 0
	overSeeds(t, 60, 15, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Count.Determinacy() != Determinate {
			return nil
		}
		for _, d := range s.Diagrams {
			stations := slices.DeleteFunc(d.Stations(), func(st Station) bool { return !st.Exact })
			for _, at := range stations {
				for _, k := range piecesAt(s, d.Member, at, stations) {
					sums++
					for q := AxialForce; q <= BendingMoment; q++ {
						if got := k.gives(q); !got.Equal(at.Of(q)) && !got.Inexact() {
							return fmt.Errorf("%s of member %d at %s, side %d, piece %d from %s: %s, want %s",
								q.Letter(), d.Member, at.At, at.Side, k.Side, k.Other.At, got, at.Of(q))
						}
					}
				}
			}
		}
		return nil
	})
	if sums < 1000 && !testing.Short() || sums < 500 {
		t.Errorf("only %d pieces", sums)
	}
}

// piecesAt are the pieces that can be kept at a station.
func piecesAt(s *Solution, member int, at Station, others []Station) []Kept {
	all := []Kept{{Solution: s, Member: member, At: at}, {Solution: s, Member: member, At: at, Side: ToEnd}}
	for _, other := range others {
		if !other.At.Equal(at.At) || other.Side != at.Side {
			all = append(all, Kept{Solution: s, Member: member, At: at, Side: Between, Other: other})
		}
	}
	return all
}

// gives is the quantity that makes the sum of the piece zero.
func (k Kept) gives(q Quantity) exact.Num {
	_, s := k.Sum(q)
	values := slices.Clone(k.Solution.Values)
	if k.Side == Between {
		values = append(values, k.Other.N, k.Other.V, k.Other.M)
	}
	values = append(values, exact.Num{})
	return over(s.Residual(values).Neg(), s.Factor(len(values)-1))
}
