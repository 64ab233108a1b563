package judging

import (
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A misreading is a load as a student has it who reads it wrong: the slow way to a slip is to cut the frame with it anew.
type misreading struct {
	slips []string
	load  func(f *statics.Frame, l statics.Load) (statics.Load, bool)
}

// sizes multiplies all that measures a load.
func sizes(l statics.Load, k exact.Num) statics.Load {
	l.Size, l.First, l.Last = l.Size.Mul(k), l.First.Mul(k), l.Last.Mul(k)
	return l
}

func uniform(l statics.Load) bool { return l.Kind == statics.SpreadLoad && l.First.Equal(l.Last) }

var misreadings = []misreading{
	{[]string{"load-left-off", "pin-load-on-neither", "couple-left-out", "rope-counted-once"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		return sizes(l, exact.Num{}), true
	}},
	{[]string{"turn-of-term", "sense-of-term", "turn-of-couple"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		return sizes(l, exact.Int(-1)), true
	}},
	{[]string{"spread-counted-twice"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		return sizes(l, exact.Int(2)), uniform(l)
	}},
	{[]string{"halved-twice"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		return sizes(l, exact.MustParse("1/2")), uniform(l)
	}},
	{[]string{"tension-halved"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		return sizes(l, exact.MustParse("1/2")), l.Kind == statics.RopeLoad
	}},
	{[]string{"wrong-third"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		triangle := l.Kind == statics.SpreadLoad && l.First.IsZero() != l.Last.IsZero()
		l.First, l.Last = l.Last, l.First
		return l, triangle
	}},
	{[]string{"sine-for-cosine"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		aslant := l.Kind != statics.RopeLoad && !l.Along.X.IsZero() && !l.Along.Y.IsZero()
		swap := statics.Vector{X: l.Along.Y.Abs(), Y: l.Along.X.Abs()}
		if l.Along.X.Sign() < 0 {
			swap.X = swap.X.Neg()
		}
		if l.Along.Y.Sign() < 0 {
			swap.Y = swap.Y.Neg()
		}
		l.Along = swap
		return l, aslant
	}},
	{[]string{"run-for-slope"}, func(_ *statics.Frame, l statics.Load) (statics.Load, bool) {
		projected := l.Kind == statics.SpreadLoad && l.Per != statics.PerLength
		l.Per = statics.PerLength
		return l, projected
	}},
	{[]string{"whole-member-loaded"}, func(f *statics.Frame, l statics.Load) (statics.Load, bool) {
		spread := uniform(l)
		if spread {
			l.Start, l.End = exact.Num{}, f.Length(l.Member)
		}
		return l, spread
	}},
	{[]string{"square-for-upright"}, func(f *statics.Frame, l statics.Load) (statics.Load, bool) {
		if l.Kind != statics.SpreadLoad || !l.Along.X.IsZero() {
			return l, false
		}
		square := f.Span(l.Member).Left()
		if square.Y.Sign() != l.Along.Y.Sign() {
			square = square.Neg()
		}
		sloping := !square.X.IsZero() && !square.Y.IsZero()
		l.Along = square
		return l, sloping
	}},
}

// What a misread load leads to, found by cutting the frame anew and writing the same sum, is among the candidates of the
// slip it stands for.
func TestMisreadLoads(t *testing.T) {
	found := map[string]int{}
	eachQuestion(t, 0, func(l *sheet, q question) {
		if q.step == statics.None || len(l.Solution.Plan[q.step].Sums) > 1 {
			return
		}
		candidates := l.caseOf(q).lists()[0]
		for _, m := range misreadings {
			for i := range l.Solution.Frame.Loads {
				value, ok := misread(t, l, q, m, i)
				if !ok || value.Equal(q.truth) {
					continue
				}
				found[m.slips[0]]++
				if !slices.ContainsFunc(candidates, func(c slip.Candidate) bool {
					return slices.Contains(m.slips, c.Slip.ID) && c.Value.Equal(value)
				}) {
					t.Errorf("%s: %s = %s with load %d misread by %v", l.name, q.Name, value, i, m.slips)
				}
			}
		}
	})
	t.Log(found)
	if len(found) < len(misreadings) && !testing.Short() {
		t.Errorf("of %d ways to misread a load, these occur: %v", len(misreadings), found)
	}
}

// misread is the force that the sum of a question gives with load i misread.
func misread(t *testing.T, l *sheet, q question, m misreading, i int) (exact.Num, bool) {
	f := l.Solution.Frame
	load, ok := m.load(&f, f.Loads[i])
	if !ok {
		return load.Size, false
	}
	f.Loads = slices.Clone(f.Loads)
	f.Loads[i] = load
	a, err := statics.Cut(f)
	if err != nil {
		t.Fatal(err)
	}
	s := l.Solution.Plan[q.step].Sums[0]
	if s.Moment {
		s = a.MomentSum(s.Body, s.About)
	} else {
		s = a.ForceSum(s.Body, s.Along)
	}
	b, ok := stepBalance(s, q.force, l.Solution.Values)
	if !ok {
		return load.Size, false
	}
	return b.gives, true
}

// The sum over the piece that is kept gives what the diagram has at each place asked about.
func TestSectionsAgreeWithDiagrams(t *testing.T) {
	sections := 0
	eachQuestion(t, 0, func(l *sheet, q question) {
		if q.step != statics.None {
			return
		}
		sections++
		if v := l.Cut(q.member, q.station, q.quantity, l.Solution.Values).Value(); !v.Equal(q.truth) && !q.station.At.Inexact() && q.station.Exact {
			t.Errorf("%s: %s is %s by the sum, %s by the diagram", l.name, q.Name, v, q.truth)
		}
	})
	if sections < 100 {
		t.Errorf("%d sections", sections)
	}
}
