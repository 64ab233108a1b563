package marking

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// The oracle knows nothing of ranks, closures or grades. It tries sets of values, smallest first: a set explains a paper if,
// with its values and those that are right put in, the satisfied sums leave nothing else open, which it finds by elimination
// in fractions of its own.

// explains reports whether a set of values leaves nothing open in the rows that hold.
func explains(rows [][]*big.Rat, wrong []int, set int) bool {
	var columns []int
	for k := range wrong {
		if set&(1<<k) == 0 {
			columns = append(columns, k)
		}
	}
	var left [][]*big.Rat
	for _, r := range rows {
		line := make([]*big.Rat, len(columns))
		for n, k := range columns {
			line[n] = new(big.Rat).Set(r[k])
		}
		left = append(left, line)
	}
	rank := 0
	for c := range columns {
		p := slices.IndexFunc(left[rank:], func(line []*big.Rat) bool { return line[c].Sign() != 0 })
		if p < 0 {
			continue
		}
		left[rank], left[rank+p] = left[rank+p], left[rank]
		for n := range left {
			if n == rank || left[n][c].Sign() == 0 {
				continue
			}
			k := new(big.Rat).Quo(left[n][c], left[rank][c])
			for j := range columns {
				left[n][j].Sub(left[n][j], new(big.Rat).Mul(k, left[rank][j]))
			}
		}
		if rank++; rank == len(left) {
			break
		}
	}
	return rank == len(columns)
}

// least lists the smallest sets that explain a paper.
func least(rows [][]*big.Rat, wrong []int) (sets []int, size int) {
	for size = 0; size <= len(wrong); size++ {
		for set := range 1 << len(wrong) {
			n := 0
			for k := range wrong {
				n += set >> k & 1
			}
			if n == size && explains(rows, wrong, set) {
				sets = append(sets, set)
			}
		}
		if len(sets) > 0 {
			return sets, size
		}
	}
	return nil, size
}

// fractionsOf are the satisfied rows in the wrong values; false where one has a factor that is no fraction.
func fractionsOf(w *work, wrong []int) ([][]*big.Rat, bool) {
	var rows [][]*big.Rat
	for n := range w.forceRow {
		r := &w.forceRow[n]
		if !w.fits(r) {
			continue
		}
		line := make([]*big.Rat, len(wrong))
		for k, i := range wrong {
			line[k] = new(big.Rat)
			if c := slices.Index(r.items, i); c >= 0 {
				f, ok := r.factors[c].Rat()
				if !ok {
					return nil, false
				}
				line[k] = f
			}
		}
		rows = append(rows, line)
	}
	return rows, true
}

// student answers the forces of a problem: some are changed at random, others follow from those by sums, and some are left out.
func student(r *rand.Rand, m *Marker) *Paper {
	p := &Paper{Problem: m.Name, Attempt: 1}
	own := slices.Clone(m.Values)
	known := make([]bool, len(own))
	for _, step := range m.Plan {
		if len(step.Gives) != 1 || step.Relation || step.Check {
			for _, f := range step.Gives {
				known[f] = true
			}
			continue
		}
		f := step.Gives[0]
		own[f] = exact.Num{}
		k := step.Sums[0].Factor(f)
		v, err := step.Sums[0].Residual(own).Neg().Quo(k)
		if err != nil {
			continue
		}
		if own[f] = v; r.IntN(4) == 0 {
			own[f] = v.Mul(exact.Int(int64(2 + r.IntN(3)))).Add(exact.Int(int64(r.IntN(20))))
		}
		known[f] = true
	}
	for i, f := range m.Forces {
		if r.IntN(8) > 0 {
			p.Entries = append(p.Entries, Entry{Line: i + 1, Quantity: f.Name, Value: own[i].Decimal(12)})
		}
	}
	return p
}

// TestFaultsAgainstSubsets holds the faults that are found against those of the oracle, on random students of the library's
// problems and copies of their frames.
func TestFaultsAgainstSubsets(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(16, 1))
	tried, several := 0, 0
	for _, name := range problems.Names() {
		m := markerOf(t, name)
		if len(m.Forces) > 10 {
			continue
		}
		for range 6 {
			p := student(r, m)
			w := &work{reading: m.read(p), scheme: DefaultScheme(), weights: m.weights(DefaultScheme()), blames: map[int]judged{}, judgings: map[judgedKey]judged{}, solved: map[int]int{}}
			w.settleValues()
			w.search()
			if w.trace == nil || slices.Contains(w.forced, true) || w.trace.nothing {
				continue
			}
			var wrong []int
			for i, bad := range w.trace.wrong {
				if bad && m.Items[i].Force != statics.None {
					wrong = append(wrong, i)
				}
			}
			rows, ok := fractionsOf(w, wrong)
			if !ok {
				continue
			}
			tried++
			sets, size := least(rows, wrong)
			taken := 0
			for k, i := range wrong {
				if slices.Contains(w.trace.faults, i) {
					taken |= 1 << k
				}
			}
			if !slices.Contains(sets, taken) || len(w.trace.faults) != size {
				t.Errorf("%s: faults %v; the oracle has sets of %d: %v\n%s", name, w.trace.faults, size, sets, shown(m.Mark(p, DefaultScheme(), ten)))
			}
			for i, others := range w.trace.other {
				for _, o := range others {
					several++
					if other := taken ^ 1<<slices.Index(wrong, i) ^ 1<<slices.Index(wrong, o); !slices.Contains(sets, other) {
						t.Errorf("%s: %s or %s, but the second explains nothing", name, m.Items[i].Name, m.Items[o].Name)
					}
				}
			}
		}
	}
	if tried < 60 || several < 10 {
		t.Errorf("only %d papers and %d other readings were tried", tried, several)
	}
	t.Log(fmt.Sprint(tried, " papers, ", several, " other readings"))
}
