package marking

import (
	"go/constant"
	"go/token"
	"go/types"
	"math"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// TestWrittenSums has values of no paper in particular put into every sum that ties N, V and M, and into those of free bodies, and works
// out what is written with another reader of arithmetic, that of the compiler: it comes to what is said, in all conventions, and to
// what the sum itself leaves, but for its sense.
func TestWrittenSums(t *testing.T) {
	t.Parallel()
	written := map[string]int{}
	for n, name := range librarytest.Names() {
		p, _ := problems.Library(name)
		c := p.Conventions
		if p.Units.Letters() {
			continue
		}
		c.Decimal = notation.DecimalPoint
		c.Moments, c.Shear = notation.MomentTurn(n%2), notation.ShearTurn(n/2%2)
		m := markerFor(t, p.In(c))
		r := &Result{Marker: m, own: slices.Clone(m.Values), answered: make([]bool, len(m.Forces)), x: values{make([]exact.Num, len(m.Items)), make([]bool, len(m.Items)), make([]bool, len(m.Items))}}
		for i, item := range m.Items {
			r.x.of[i], r.x.answered[i] = exact.Int(int64(7*i%11-4)), true
			if item.Force >= 0 {
				r.own[item.Force], r.answered[item.Force] = r.x.of[i], true
			}
		}
		for _, rows := range [][]row{m.innerRow, m.forceRow} {
			for i := range rows {
				by := &rows[i]
				off, largest, _ := by.residual(r.x)
				if off.IsZero() {
					continue // it is not violated
				}
				v := Violated{Name: m.rowName(by), By: off, Dim: m.Items[by.items[0]].Dim, row: by}
				shown, ok := r.sumOf(Answer{Violates: []Violated{v}})
				if !ok {
					continue
				}
				written[by.inner.kind]++
				left, right, summed := strings.Cut(shown.numbers, " = ")
				if !summed { // one value alone
					left, right = strings.Fields(left)[0], left
				}
				got, said := worked(t, left), worked(t, strings.Fields(right)[0])
				if slack := 0.02*largest.Float() + 0.02; math.Abs(got-said) > slack || math.Abs(math.Abs(said)-math.Abs(off.Float())) > slack && by.sum == nil {
					t.Errorf("%s, %s\n  %s\n  %s\n  which is %g, and the sum leaves %g", name, shown.title, shown.symbols, shown.numbers, got, off.Float())
				}
			}
		}
	}
	for _, kind := range []string{"", "kept", "area", "joint"} {
		if written[kind] < 50 {
			t.Errorf("%d sums of kind %q are written", written[kind], kind)
		}
	}
}

// worked is what a sum of products comes to.
func worked(t *testing.T, text string) float64 {
	t.Helper()
	text = strings.NewReplacer("·", "*", "−", "-", "~", "").Replace(text)
	text = asFloats(text)
	v, err := types.Eval(token.NewFileSet(), nil, token.NoPos, text)
	if err != nil || v.Value == nil {
		t.Fatalf("%s: %v", text, err)
	}
	f, _ := constant.Float64Val(constant.ToFloat(v.Value))
	return f
}

// asFloats writes whole numbers as floating ones, so that 12/13 is no division of integers.
func asFloats(text string) string {
	var b strings.Builder
	for i := 0; i < len(text); {
		j := i
		for j < len(text) && strings.IndexByte("0123456789.", text[j]) >= 0 {
			j++
		}
		if j == i {
			b.WriteByte(text[i])
			i++
			continue
		}
		if b.WriteString(text[i:j]); !strings.Contains(text[i:j], ".") {
			b.WriteString(".0")
		}
		i = j
	}
	return b.String()
}
